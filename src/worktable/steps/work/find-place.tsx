import { useMemo, useState } from 'preact/hooks';
import { placeOf } from '../../../core/thread/find/find-place.js';
import { placesOnThread } from '../../../core/work/on-thread.js';
import { figure, words } from '../../words.js';
import { TapBeads } from './tap-beads.js';
import { helping, jumpTo, threads, work } from './work-store.js';

/** Places that are shown to choose from. */
const fewPlaces = 3;

/** Where am I? The beads that come next tell. */
export function FindPlace() {
  const say = words.value.mending;
  const [told, setTold] = useState('');
  const { pattern } = work.value!;
  const places = useMemo(
    () => (told === '' ? [] : placesOnThread(threads.peek(), told)),
    [told, threads.value],
  );
  const few = places.length > 0 && places.length <= fewPlaces;
  return (
    <>
      <p>{say.findHow}</p>
      {told !== '' && (
        <div class="found" aria-live="polite" data-places={places.length}>
          {places.length === 0 && <p>{say.findNone}</p>}
          {places.length > 1 && <p>{say.findMore(figure(places.length))}</p>}
          {few &&
            places.map(({ stitch, slips }) => {
              const { round, stitch: i, wedge } = placeOf(pattern, stitch);
              const at = { round: figure(round), stitch: figure(i), wedge: figure(wedge) };
              return (
                <div key={stitch} class="place">
                  <p>
                    {say.found(at)} {slips > 0 && say.foundSlips(figure(slips))}
                  </p>
                  <button
                    type="button"
                    class={`button${places.length === 1 ? ' main' : ''}`}
                    data-go-there={stitch}
                    onClick={() => {
                      jumpTo(stitch);
                      helping.value = undefined;
                    }}
                  >
                    <span>{say.goThere}</span>
                  </button>
                </div>
              );
            })}
        </div>
      )}
      <TapBeads told={told} change={setTold} />
    </>
  );
}
