import { useState } from 'preact/hooks';
import { bareMark } from '../../../core/pattern/marks.js';
import { Heap } from '../../mat/heap.js';
import { ActionButton } from '../../parts/action-button.js';
import { Choice } from '../../parts/choice.js';
import { Icon } from '../../parts/icon.js';
import { brush } from '../../store/brush.js';
import { beadNamed } from '../../store/laid.js';
import { seenChart } from '../../store/seen.js';
import { piece } from '../../store/store.js';
import { figure, words } from '../../words.js';
import { brushBead, takeUp } from './beads.js';
import { LaidSentence } from './laid-note.js';

/** The card of the step Brush. */
export function BrushCard() {
  const say = words.value.brush;
  const { tool } = brush.value;
  return (
    <>
      <h2>{say.step}</h2>
      <InHand />
      <Choice
        name={say.lays}
        of={['brush-bead', 'brush-line', 'brush-ring', 'brush-wedge', 'brush-patch']}
      />
      <Choice name={say.also} of={['brush-replace', 'brush-move', 'brush-pick', 'brush-away']} />
      <p class="small how">{say.how[tool]}</p>
      <div class="row">
        <ActionButton id="every-wedge" />
        {tool === 'move' && <ActionButton id="leave-copy" />}
      </div>
      <Takes />
      <Laid />
      <p class="small">{say.keysHow}</p>
    </>
  );
}

/** The bead that the brush lays. */
function InHand() {
  const say = words.value.brush;
  const id = brushBead();
  const there = seenChart.value?.beads.find((one) => one.id === id);
  const held = there ?? beadNamed(piece.value, id);
  return (
    <div class="in-hand" aria-live="polite">
      {held ? <Heap hex={held.hex} finish={held.finish} count={24} /> : <span class="spot none" />}
      <p>
        {say.inHand}
        <b>{held ? `${there?.letter ?? ''} ${held.name}`.trim() : say.none}</b>
      </p>
    </div>
  );
}

/** The beads that it could lay. */
function Takes() {
  const say = words.value.brush;
  const [all, setAll] = useState(false);
  const beads = seenChart.value?.beads ?? [];
  const others = piece.value.palette.beads.filter(
    (one) => !beads.some((bead) => bead.id === one.id),
  );
  return (
    <fieldset class="choice">
      <legend>{say.take}</legend>
      <div class="row">
        {beads.map(({ id: one, letter, name, hex }) => (
          <Take key={one} id={one} hex={hex} name={`${letter} ${name}`} />
        ))}
        <Take id={bareMark} name={say.none} />
      </div>
      {others.length > 0 && (
        <button type="button" class="button quiet" aria-expanded={all} onClick={() => setAll(!all)}>
          <Icon name="beads" />
          <span>{say.others(figure(others.length))}</span>
        </button>
      )}
      {all && (
        <div class="row">
          {others.map(({ id: one, name, hex }) => (
            <Take key={one} id={one} hex={hex} name={name} />
          ))}
        </div>
      )}
    </fieldset>
  );
}

function Take({ id, name, hex }: { id: string; name: string; hex?: string }) {
  return (
    <button
      type="button"
      class="button dot"
      data-take={id}
      aria-pressed={brushBead() === id}
      onClick={() => takeUp(id)}
    >
      <span class={`spot ${hex ? '' : 'none'}`} style={hex ? { background: hex } : {}} />
      <span>{name}</span>
    </button>
  );
}

/** What lies on the panel by hand. */
function Laid() {
  const say = words.value.brush;
  const some = Object.keys(piece.value.laid).length > 0;
  return (
    <div class="laid">
      <h3>{say.laid}</h3>
      <LaidSentence />
      {some && (
        <div class="row">
          <ActionButton id="show-laid" />
          <ActionButton id="lift-all" />
        </div>
      )}
      {some && <p class="small">{say.laidHow}</p>}
    </div>
  );
}
