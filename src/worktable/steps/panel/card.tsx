import { useState } from 'preact/hooks';
import { acrossRange } from '../../../core/panel/across.js';
import { acrossMm } from '../../../core/panel/edge.js';
import { shapeLimits } from '../../../core/panel/shape.js';
import { Choice } from '../../parts/choice.js';
import { NumberField } from '../../parts/number-field.js';
import { chart, piece, pieces } from '../../store/store.js';
import { figure, words } from '../../words.js';
import { shaped, shapeOf, withAcross, withRounds } from './shape-wish.js';
import { LaidNote } from '../brush/laid-note.js';
import { StitchForm } from './stitch-form.js';

/** The card of the step Panel. */
export function PanelCard() {
  const say = words.value.panel;
  const { shape } = piece.value.wish;
  const now = shapeOf(piece.value);
  return (
    <>
      <h2>{say.step}</h2>
      <div class="numbers">
        <NumberField
          name={say.rounds}
          unit={say.roundsUnit}
          value={now.rounds}
          least={shapeLimits.rounds.least}
          most={60}
          step={1}
          done={say.steps.rounds}
          put={(was, rounds) => withRounds(was, Math.round(rounds))}
        />
        <NumberField
          name={say.size}
          unit={say.mm}
          value={Math.round(piece.value.wish.acrossMm ?? acrossMm(now))}
          least={30}
          most={250}
          step={1}
          done={say.steps.size}
          put={withAcross}
        />
        <NumberField
          name={say.wedges}
          unit=""
          value={shape.wedges}
          least={shapeLimits.wedges.least}
          most={shapeLimits.wedges.most}
          step={1}
          done={say.steps.wedges}
          put={(was, wedges) => shaped(was, { wedges: Math.round(wedges) })}
        />
      </div>
      <p class="small">{sizeSentence()}</p>
      <p class="small">{say.wedgesHow}</p>
      <LaidNote />
      <StitchForm />
      <h3>{say.way}</h3>
      <Choice name={say.hand} of={['hand-right', 'hand-left']} />
      <Choice name={say.face} of={['face-away', 'face-toward']} />
      <Choice name={say.construction} of={['rounds-spiral', 'rounds-joined']} />
      <Choice name={say.increase} of={['increase-last', 'increase-middle', 'increase-first']} />
      <Choice name={say.outline} of={['outline-own', 'outline-polygon', 'outline-circle']} />
      <div class="numbers">
        <NumberField
          name={say.lean}
          unit={say.leanUnit}
          value={now.lean}
          least={shapeLimits.lean.least}
          most={shapeLimits.lean.most}
          step={0.05}
          done={say.steps.lean}
          put={(was, lean) => shaped(was, { lean: Math.round(lean * 100) / 100 })}
        />
      </div>
      <p class="small">{say.leanHow}</p>
      <Start />
    </>
  );
}

function sizeSentence(): string {
  const say = words.value.panel;
  const shape = shapeOf(piece.value);
  const rounds = figure(shape.rounds);
  const { leastMm, mostMm } = acrossRange({ shape, swatch: piece.value.swatch });
  if (piece.value.swatch || Math.abs(mostMm - leastMm) < 0.5) {
    return say.sizeSure({ mm: figure(Math.round(10 * mostMm) / 10), rounds });
  }
  return say.sizeHow({
    least: figure(Math.floor(leastMm)),
    most: figure(Math.ceil(mostMm)),
    rounds,
  });
}

/** Where round 1 begins: by itself, or as the maker says. */
function Start() {
  const say = words.value.panel;
  const { startDegrees } = piece.value.wish;
  const drawn = chart.value?.panels[0]?.geometry.startDegrees ?? 0;
  const put = (degrees: number | undefined) => (now: typeof piece.value) => ({
    ...now,
    wish: { ...now.wish, startDegrees: degrees },
  });
  const [own, setOwn] = useState(startDegrees !== undefined);
  return (
    <>
      <label class="tick">
        <input
          type="checkbox"
          checked={!own && startDegrees === undefined}
          onChange={(event) => {
            const byItself = event.currentTarget.checked;
            setOwn(!byItself);
            if (byItself) pieces.change(say.steps.start, put(undefined));
          }}
        />
        <span>
          {say.start}: {say.byItself}
        </span>
      </label>
      {(own || startDegrees !== undefined) && (
        <div class="numbers">
          <NumberField
            name={say.start}
            unit={say.startUnit}
            value={startDegrees ?? drawn}
            least={-180}
            most={180}
            step={1}
            done={say.steps.start}
            put={(now, degrees) => put(degrees)(now)}
          />
        </div>
      )}
      <p class="small">{say.startHow}</p>
    </>
  );
}
