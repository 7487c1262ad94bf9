import { useMemo, useState } from 'preact/hooks';
import { lengthIndexAt } from '../../../core/work/round-at-hand.js';
import { notesForSlips, readThread } from '../../../core/work/slips.js';
import { ActionButton } from '../../parts/action-button.js';
import { figure, words } from '../../words.js';
import { SlipList, slipPlaces } from './slip-list.js';
import { TapBeads } from './tap-beads.js';
import { helping, markProgress, plans, progress, threads } from './work-store.js';

/** Something is wrong: what really comes off the thread, against what should. */
export function WrongComing() {
  const say = words.value.mending;
  const [told, setTold] = useState('');
  const { worked } = progress.value!;
  const lengths = plans.value.map(({ length }) => length);
  const wanted = useMemo(
    () =>
      (threads.value[lengthIndexAt(lengths, worked)] ?? []).filter(
        ({ stitch }) => stitch >= worked,
      ),
    [threads.value, worked],
  );
  const read = told === '' ? undefined : readThread(wanted, told, false);
  return (
    <>
      <p>{say.readComing}</p>
      {read && (
        <div class="found" aria-live="polite" data-slips={read.slips?.length ?? 'many'}>
          {!read.slips && (
            <>
              <p>{say.notHere}</p>
              <ActionButton id="where-am-i" />
            </>
          )}
          {read.slips?.length === 0 && <p>{say.agree(figure(told.length))}</p>}
          {read.slips && read.slips.length > 0 && (
            <>
              <SlipList slips={read.slips} before={0} />
              <button
                type="button"
                class="button main"
                data-mend-later
                onClick={() => {
                  const { notes } = progress.peek()!;
                  markProgress({ notes: notesForSlips(notes, read.slips!, false) });
                  helping.value = undefined;
                }}
              >
                <span>{say.noteThem}</span>
              </button>
            </>
          )}
        </div>
      )}
      <TapBeads told={told} change={setTold} ringed={slipPlaces(read?.slips)} />
    </>
  );
}
