import { placeOf } from '../../../core/thread/find/find-place.js';
import { runsOf } from '../../../core/pages/lists/runs.js';
import type { Slip } from '../../../core/work/slips.js';
import { figure, words } from '../../words.js';
import { work } from './work-store.js';

const inRuns = (letters: string) =>
  runsOf(letters)
    .map(({ letter, count }) => `${count} ${letter}`)
    .join(' ');

/** Every slip in a line, and what is done about those kinds of slips. */
export function SlipList({ slips, before }: { slips: readonly Slip[]; before: number }) {
  const say = words.value.mending;
  const { pattern } = work.value!;
  const kinds = [...new Set(slips.map(({ kind }) => kind))];
  return (
    <>
      <ul class="slips">
        {slips.map(({ kind, at, wanted, got, stitches }) => {
          const { round, stitch } = placeOf(pattern, stitches[0] ?? 0);
          return (
            <li key={`${at} ${kind}`} data-slip={kind}>
              {say.slip[kind]({
                after: figure(before + at),
                wanted: inRuns(wanted),
                got: inRuns(got),
                round: figure(round),
                stitch: figure(stitch),
              })}
            </li>
          );
        })}
      </ul>
      {kinds.map((kind) => (
        <p key={kind}>{say.ways[kind]}</p>
      ))}
      {kinds.some((kind) => kind !== 'missing') && <p class="caution">{say.broken}</p>}
    </>
  );
}

/** The beads, among those that were told, that are slips. */
export function slipPlaces(slips: readonly Slip[] | undefined): Set<number> {
  const places = new Set<number>();
  for (const { at, got } of slips ?? [])
    for (let n = 0; n < Math.max(1, got.length); n++) places.add(at + n);
  return places;
}
