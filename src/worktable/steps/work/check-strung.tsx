import { useMemo, useState } from 'preact/hooks';
import { putAt } from '../../../core/work/progress.js';
import { notesForSlips, readThread } from '../../../core/work/slips.js';
import { figure, words } from '../../words.js';
import { BeadRows } from './bead-rows.js';
import { SlipList, slipPlaces } from './slip-list.js';
import { TapBeads } from './tap-beads.js';
import {
  helping,
  markProgress,
  plans,
  progress,
  putStrung,
  stringLength,
  strung,
  strungStitches,
  threads,
  work,
} from './work-store.js';

/** Beads of which a picture is shown to compare with. */
const mostShown = 200;

/** Is it right? The thread is compared with the list, by eye or by tapping it in. */
export function CheckStrung() {
  const say = words.value.mending;
  const [told, setTold] = useState('');
  const length = stringLength.value;
  const plan = plans.value[length];
  const on = strung.value;
  const before = progress.value!.checked[length] ?? 0;
  const named = new Map(work.value!.pattern.beads.map((bead) => [bead.letter, bead]));
  const stitches = strungStitches.value;
  /** The thread as it should be from the last check on, the first strung first. */
  const wanted = useMemo(() => {
    const from = stitches[before] ?? -1;
    return [...(threads.value[length] ?? [])].reverse().filter(({ stitch }) => stitch <= from);
  }, [threads.value, length, before, stitches]);
  /** How far the list has come with so many of these beads. */
  const inList = (beads: number) =>
    beads < wanted.length
      ? stitches.findIndex((stitch) => stitch <= wanted[beads].stitch)
      : stitches.length;
  const read = told === '' ? undefined : readThread(wanted, told, true);
  const right = (checked: number) => {
    markProgress({ checked: putAt(progress.peek()!.checked, length, checked) });
    helping.value = undefined;
  };
  const since = wanted.filter(({ stitch }) => stitch > (stitches[on] ?? -1));
  return (
    <>
      {told === '' && since.length > 0 && (
        <>
          <p>{say.checkHow(figure(before))}</p>
          <div class="compare">
            <BeadRows
              beads={since.slice(-mostShown).map(({ letter }) => ({ bead: named.get(letter) }))}
              most={34}
              lettered
            />
          </div>
          <button type="button" class="button main" data-right onClick={() => right(on)}>
            <span>{say.checkRight}</span>
          </button>
        </>
      )}
      <p>{say.readStrung(figure(before))}</p>
      {read && (
        <div class="found" aria-live="polite" data-slips={read.slips?.length ?? 'many'}>
          {!read.slips && <p>{say.tooMany}</p>}
          {read.slips?.length === 0 && (
            <>
              <p>{say.agree(figure(told.length))}</p>
              <button
                type="button"
                class="button main"
                data-right
                onClick={() => {
                  const good = inList(told.length);
                  if (good > on) putStrung(good);
                  right(good);
                }}
              >
                <span>{say.goThere}</span>
              </button>
            </>
          )}
          {read.slips && read.slips.length > 0 && (
            <>
              <SlipList slips={read.slips} before={before} />
              <div class="row">
                <button
                  type="button"
                  class="button main"
                  data-take-off={before + read.slips[0].at}
                  onClick={() => {
                    const good = inList(read.slips![0].wantedAt);
                    putStrung(good);
                    right(good);
                  }}
                >
                  <span>{say.takeOff(figure(before + read.slips[0].at))}</span>
                </button>
                <button
                  type="button"
                  class="button"
                  data-mend-later
                  onClick={() => {
                    const { notes } = progress.peek()!;
                    const covered = inList(read.covered);
                    if (covered > on) putStrung(covered);
                    markProgress({ notes: notesForSlips(notes, read.slips!, true) });
                    right(covered);
                  }}
                >
                  <span>{say.mendLater}</span>
                </button>
              </div>
            </>
          )}
        </div>
      )}
      {plan && <TapBeads told={told} change={setTold} ringed={slipPlaces(read?.slips)} />}
    </>
  );
}
