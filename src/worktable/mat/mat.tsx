import { useRef } from 'preact/hooks';
import { calmChart, calmSeen } from '../store/calm.js';
import { look, view } from '../store/store.js';
import { figure, words } from '../words.js';
import { brushBead, takeUp } from '../steps/brush/beads.js';
import { BeadCard } from './bead-card.js';
import { layInstead } from './bead-wishes.js';
import { Heap } from './heap.js';

/** The bead mat: every chosen bead as a heap with its paper note. */
export function Mat() {
  const say = words.value.table;
  const made = calmSeen.value;
  const beads = made?.beads ?? [];
  const all = made?.counts.reduce((sum, one) => sum + one, 0) ?? 0;
  const { card, litBead, step } = view.value;
  const brushing = step === 'brush';
  const held = brushing ? brushBead() : undefined;
  const carried = useRef<string | undefined>(undefined);
  const cardOf = beads.findIndex(({ id }) => id === card);
  return (
    <section class="mat" aria-label={say.mat}>
      <h2>
        {say.mat}
        {made && <small>{say.matSum({ colours: figure(beads.length), beads: figure(all) })}</small>}
      </h2>
      {beads.length === 0 && <p>{say.matEmpty}</p>}
      {cardOf >= 0 && !brushing && (
        <BeadCard bead={calmChart.value!.beads[cardOf]} count={made!.counts[cardOf]} />
      )}
      <ul>
        {beads.map(({ id, letter, name, hex, finish }, n) => {
          const count = made!.counts[n];
          const open = !brushing && card === id;
          return (
            <li key={id}>
              <button
                type="button"
                draggable
                data-bead={id}
                aria-pressed={brushing ? held === id : litBead === id}
                aria-expanded={open}
                onClick={() =>
                  brushing
                    ? takeUp(id)
                    : look(
                        open ? { card: undefined, litBead: undefined } : { card: id, litBead: id },
                      )
                }
                onDragStart={(event) => {
                  carried.current = id;
                  event.dataTransfer?.setData('text/plain', name);
                }}
                onDragOver={(event) => {
                  if (carried.current && carried.current !== id) event.preventDefault();
                }}
                onDrop={(event) => {
                  const from = carried.current;
                  carried.current = undefined;
                  if (!from || from === id) return;
                  event.preventDefault();
                  event.stopPropagation();
                  layInstead(from, id, 'merge');
                }}
              >
                <Heap hex={hex} finish={finish} count={count} />
                <span class="note">
                  <b>{letter}</b>
                  <span class="name">{name}</span>
                  <span class="count">{figure(count)}</span>
                  <span class="unseen">{brushing ? words.value.brush.heapHint : say.heapHint}</span>
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
