import { signal } from '@preact/signals';
import { useState } from 'preact/hooks';
import { typedRuns } from '../../../core/thread/find/typed-runs.js';
import type { PatternBead } from '../../../core/beads/bead.js';
import { beadsOfPanel } from '../../../core/pattern/stitches.js';
import { Icon } from '../../parts/icon.js';
import { figure, words } from '../../words.js';
import { BeadRows } from './bead-rows.js';
import { BeadSpot } from './bead-spot.js';
import { work } from './work-store.js';

/** Whether a tap puts down ten of a bead. */
const tens = signal(false);

/**
 * Beads told by tapping them, one after the other.
 *
 * @param ringed places among them that are shown as slips
 */
export function TapBeads(props: {
  told: string;
  change: (told: string) => void;
  ringed?: ReadonlySet<number>;
}) {
  const say = words.value.mending;
  const { told, change, ringed } = props;
  const { pattern, at } = work.value!;
  const beads = beadsOfPanel(pattern, at.panel);
  const named = new Map(beads.map((bead) => [bead.letter, bead]));
  const from = Math.max(0, told.length - 30 - (told.length % 10));
  return (
    <div class="tap-beads">
      {told.length > 0 && (
        <div class="told-beads" data-told={told}>
          <p class="small">{say.tapped(figure(told.length))}</p>
          <BeadRows
            beads={[...told.slice(from)].map((letter, n) => ({
              bead: named.get(letter),
              ringed: ringed?.has(from + n),
            }))}
            most={40}
            lettered
          />
        </div>
      )}
      <div class="bead-keys">
        {beads.map((bead) => (
          <button
            key={bead.letter}
            type="button"
            class="button"
            data-tap-bead={bead.letter}
            onClick={() => change(told + bead.letter.repeat(tens.peek() ? 10 : 1))}
          >
            <BeadSpot bead={bead as PatternBead} sizePx={34} />
            <b>{bead.letter}</b>
            <span class="unseen">{bead.name}</span>
          </button>
        ))}
      </div>
      <div class="row">
        <button
          type="button"
          class="button"
          disabled={told === ''}
          data-take-back
          onClick={() => change(told.slice(0, -1))}
        >
          <Icon name="undo" />
          <span>{say.takeBack}</span>
        </button>
        <button
          type="button"
          class="button"
          aria-pressed={tens.value}
          onClick={() => (tens.value = !tens.value)}
        >
          <span>{say.ten}</span>
        </button>
      </div>
      <Typed letters={beads.map(({ letter }) => letter)} take={(more) => change(told + more)} />
    </div>
  );
}

/** The same beads typed, as lists write them; Enter, the button or another place of the sheet adds them. */
function Typed({ letters, take }: { letters: readonly string[]; take: (beads: string) => void }) {
  const say = words.value.mending;
  const [typed, type] = useState('');
  const [wrong, setWrong] = useState(false);
  const add = (written: string) => {
    if (written.trim() === '') return;
    try {
      take(typedRuns(written, letters));
      type('');
      setWrong(false);
    } catch {
      setWrong(true);
    }
  };
  return (
    <div class="typed-beads">
      <label class="under-name">
        <span>{say.typeThem}</span>
        <input
          type="text"
          autocapitalize="characters"
          autocomplete="off"
          spellcheck={false}
          data-typed-beads
          aria-invalid={wrong}
          value={typed}
          onInput={(event) => type(event.currentTarget.value)}
          onChange={(event) => add(event.currentTarget.value)}
        />
      </label>
      <button
        type="button"
        class="button"
        disabled={typed.trim() === ''}
        data-add-typed
        onClick={() => add(typed)}
      >
        <span>{say.addTyped}</span>
      </button>
      {wrong && <p role="alert">{say.typedWrong(letters.join(' '))}</p>}
    </div>
  );
}
