import { reserveOf } from '../../core/beads/amounts.js';
import type { PatternBead } from '../../core/beads/bead.js';
import { Icon } from '../parts/icon.js';
import { chart, look, piece } from '../store/store.js';
import { figure, words } from '../words.js';
import {
  layAsChosen,
  layInstead,
  nearest,
  setGrams,
  setWanted,
  standsIn,
  wanted,
} from './bead-wishes.js';
import { Heap } from './heap.js';

/** The card of a heap: what the bead is, how much of it, and what else could lie there. */
export function BeadCard({ bead, count }: { bead: PatternBead; count: number }) {
  const say = words.value.beads;
  const own = piece.value.palette.beads.find(({ id }) => id === bead.id);
  const perGram = own?.beadsPerGram ?? bead.beadsPerGram;
  const grams = perGram ? (count + reserveOf(count)) / perGram : undefined;
  const is = wanted(bead.id);
  return (
    <div class="bead-card" data-card={bead.id}>
      <div class="head">
        <h3>
          {bead.letter} {bead.name}
        </h3>
        <button
          type="button"
          class="button quiet"
          onClick={() => look({ card: undefined, litBead: undefined })}
        >
          <Icon name="close" />
          <span>{words.value.table.close}</span>
        </button>
      </div>
      <p>{[bead.id, bead.finish, bead.size].filter(Boolean).join(' · ')}</p>
      <p>
        {say.count(figure(count))}
        {grams !== undefined && ` ${say.grams(figure(grams))}`}
      </p>
      {own && (
        <label class="in-jar">
          <span>{say.inJar}</span>
          <input
            type="number"
            inputMode="decimal"
            min="0"
            step="0.5"
            value={own.grams ?? ''}
            placeholder={say.notKnown}
            onChange={(event) => {
              const typed = event.currentTarget.valueAsNumber;
              setGrams(bead.id, Number.isFinite(typed) ? Math.max(0, typed) : undefined);
            }}
          />
          <span>g</span>
        </label>
      )}
      {own && (
        <div class="row" role="group" aria-label={say.wanted}>
          {(['free', 'always', 'never'] as const).map((one) => (
            <button
              key={one}
              type="button"
              class="button"
              data-wanted={one}
              aria-pressed={is === one}
              onClick={() => setWanted(bead.id, one)}
            >
              <Icon name={one === 'free' ? 'wand' : one === 'always' ? 'pin' : 'close'} />
              <span>{say.wantedWords[one]}</span>
            </button>
          ))}
        </div>
      )}
      {standsIn(bead.id) && (
        <button type="button" class="button" onClick={() => layAsChosen(bead.id)}>
          <Icon name="undo" />
          <span>{say.asChosen}</span>
        </button>
      )}
      <button
        type="button"
        class="button"
        data-runs-out-soon
        onClick={() =>
          look({ step: 'work', card: undefined, litBead: undefined, runsOut: bead.id })
        }
      >
        <Icon name="jar" />
        <span>{words.value.mending.outTitle}</span>
      </button>
      <Others id={bead.id} count={count} />
    </div>
  );
}

function Others({ id, count }: { id: string; count: number }) {
  const say = words.value.beads;
  const near = nearest(id);
  const there = chart.value!.beads.filter((one) => one.id !== id);
  return (
    <>
      {near.length > 0 && (
        <>
          <h4>{say.swapFor}</h4>
          <ul class="others">
            {near.map(({ id: to, name, hex, finish }) => (
              <li key={to}>
                <button type="button" data-swap={to} onClick={() => layInstead(id, to, 'swap')}>
                  <Heap hex={hex} finish={finish} count={Math.min(count, 60)} />
                  <span>{name}</span>
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      {there.length > 0 && (
        <>
          <h4>{say.mergeInto}</h4>
          <div class="row">
            {there.map(({ id: to, letter, name, hex }) => (
              <button
                key={to}
                type="button"
                class="button dot"
                data-merge={to}
                onClick={() => layInstead(id, to, 'merge')}
              >
                <span class="spot" style={{ background: hex }} />
                <span>
                  {letter} {name}
                </span>
              </button>
            ))}
          </div>
        </>
      )}
    </>
  );
}
