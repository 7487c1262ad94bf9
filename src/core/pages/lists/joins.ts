import type { Words } from '../../../words/index.js';
import type { Pattern } from '../../pattern/pattern.js';
import { panelJoins, panelLengths } from '../../thread/lengths.js';
import type { Join } from '../../thread/lengths.js';
import { tailCmOf } from '../../thread/need.js';
import { handSaidOf } from '../hand/of-pattern.js';

/** Where a length is joined on, in words. */
export function joinText({ round, stitch, atRoundEnd, clock }: Join, words: Words): string {
  const hour = Math.round(clock) % 12 || 12;
  return words.stringing.join({ round, stitch: stitch + 1, atRoundEnd, hour });
}

/** Where a length ends, and what is done there before the next one goes on. */
export function stopText(
  { length, round, stitch, atRoundEnd, clock }: Join,
  { thread }: Pick<Pattern, 'thread'>,
  words: Words,
): string {
  const hour = Math.round(clock) % 12 || 12;
  const tailCm = tailCmOf(thread);
  const last = atRoundEnd ? { round: round - 1, stitch: 0 } : { round, stitch };
  return words.stringing.stop({ ...last, atRoundEnd, hour, next: length, tailCm });
}

/**
 * What is said among the rounds of a panel where lengths are joined on, by the round (from 1) and
 * the stitch in it (from 0) that the new one begins with; a panel that is worked from one length
 * has none.
 */
export function joinLines(
  pattern: Pick<Pattern, 'shape' | 'beads' | 'panels' | 'thread'>,
  panelIndex: number,
  words: Words,
): Map<number, { readonly stitch: number; readonly line: string }[]> {
  const lengths = panelLengths(pattern, panelIndex);
  const lines = new Map<number, { stitch: number; line: string }[]>();
  for (const join of panelJoins(pattern, panelIndex, lengths)) {
    const { round, stitch } = join;
    const name = words.booklet.length({ length: join.length, lengths: lengths.length });
    const line = `${stopText(join, pattern, words)} (${name})`;
    lines.set(round, [...(lines.get(round) ?? []), { stitch, line }]);
  }
  return lines;
}

/** How lengths are joined, where there are several. */
export function joiningText(pattern: Parameters<typeof handSaidOf>[0], { hands }: Words): string {
  const { ask, steps } = hands['new-length'];
  return [ask, ...steps(handSaidOf(pattern))].join(' ');
}
