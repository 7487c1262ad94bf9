import { stitchCount } from '../../../core/panel/shape.js';
import { progressOf } from '../../../core/work/progress.js';
import type { PanelAt } from '../../../core/work/progress.js';
import { ActionButton } from '../../parts/action-button.js';
import { figure, words } from '../../words.js';
import { canStayAwake } from './awake.js';
import { canListen } from './ears.js';
import { NoteList } from './notes.js';
import { OutOfBead } from './out-of-bead.js';
import { TimeAndCost } from './time-cost.js';
import { changedChart, markWork, plans, progress, work } from './work-store.js';
import { panelName, panelsOf } from './panel-name.js';
import { canSpeak } from './voice.js';

/** The card of the step Work. */
export function WorkCard() {
  const say = words.value.work;
  const now = work.value;
  if (!now) return <p>{say.waiting}</p>;
  return (
    <>
      <h2>{say.step}</h2>
      <p>{say.intro}</p>
      {changedChart.value && (
        <div class="changed" role="status">
          <p>{say.changed}</p>
          <ActionButton id="take-changed" />
        </div>
      )}
      <PanelChoice />
      <Standing />
      <div class="row">
        <ActionButton id="string" look="main" />
        <ActionButton id="crochet" look="main" />
      </div>
      <Cannot />
      <NoteList />
      <OutOfBead />
      <TimeAndCost />
      <p class="small">{words.value.mending.practiceHow}</p>
      <div class="row">
        <ActionButton id="practice-piece" />
      </div>
    </>
  );
}

/** Why something is not there that other browsers have. */
function Cannot() {
  const { cannot } = words.value.work;
  return (
    <>
      {!canStayAwake() && <p class="small">{cannot.stayAwake}</p>}
      {!canSpeak() && <p class="small">{cannot.speak}</p>}
      {!canListen() && <p class="small">{cannot.listen}</p>}
    </>
  );
}

/** Which panel is at hand: of the pattern, and of those made by it. */
function PanelChoice() {
  const say = words.value.work;
  const { copies, at } = work.value!;
  const all = panelsOf(work.value!);
  return (
    <div class="which">
      <label>
        <span>{say.which}</span>
        <select
          data-panel-at
          value={`${at.panel}:${at.copy}`}
          onChange={(event) => {
            const [panel, copy] = event.currentTarget.value.split(':').map(Number);
            markWork((was) => ({ ...was, at: { panel, copy } }));
          }}
        >
          {all.map((one) => (
            <option key={`${one.panel}:${one.copy}`} value={`${one.panel}:${one.copy}`}>
              {panelName(one)}
              {marksOf(one)}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>{say.copies}</span>
        <input
          type="number"
          inputMode="numeric"
          data-copies
          min={1}
          max={999}
          value={copies}
          onChange={(event) => {
            const wanted = Math.round(event.currentTarget.valueAsNumber);
            if (!(wanted >= 1 && wanted <= 999)) return;
            markWork((was) => ({
              ...was,
              copies: wanted,
              at: { ...was.at, copy: Math.min(was.at.copy, wanted) },
            }));
          }}
        />
      </label>
    </div>
  );
}

/** A tick where a panel is done, a dot where it is begun. */
function marksOf(at: PanelAt): string {
  const now = work.value!;
  const { worked, strung } = progressOf(now, at);
  if (worked >= stitchCount(now.pattern.shape)) return ' ✓';
  return worked > 0 || strung.some((beads) => beads > 0) ? ' …' : '';
}

/** How far the panel at hand has come. */
function Standing() {
  const say = words.value.work;
  const now = work.value!;
  const { strung, worked } = progress.value!;
  const beads = plans.value.reduce((sum, plan) => sum + plan.beads.length, 0);
  const on = strung.reduce((sum, one) => sum + one, 0);
  const stitches = stitchCount(now.pattern.shape);
  return (
    <ul class="standing">
      <li>
        <span>{say.strung({ done: figure(on), all: figure(beads) })}</span>
        <progress max={beads} value={on} aria-hidden="true" />
      </li>
      <li>
        <span>{say.worked({ done: figure(worked), all: figure(stitches) })}</span>
        <progress max={stitches} value={worked} aria-hidden="true" />
      </li>
    </ul>
  );
}
