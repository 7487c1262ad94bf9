import { pairStart } from '../../panel/links.js';
import { stitchesBefore } from '../../panel/shape.js';
import type { Shape } from '../../panel/shape.js';

/** A stitch in working order and the share of an error that goes to it. */
export type Onward = readonly [stitch: number, share: number];

/**
 * Where the error of stitch i of round r goes: half to the next stitch on the thread, the other
 * half to the stitches of the next round that are worked into it, a quarter to each of two. With
 * `wedges` above 1 only the first wedge is worked, and its end leads to the beginning of its next
 * row.
 */
export function onwardFrom(shape: Shape, wedges: number, r: number, i: number): Onward[] {
  const inRow = (shape.wedges * r) / wedges;
  const above = stitchesBefore(shape, r + 1);
  const last = r === shape.rounds;
  const onward: Onward[] = [];
  if (i + 1 < inRow) onward.push([stitchesBefore(shape, r) + i + 1, 0.5]);
  else if (!last) onward.push([above, 0.5]);
  if (last) return onward;
  const wedge = Math.floor(i / r);
  const j = i - wedge * r;
  // Children of place j (see parentOf): j before the doubled place m, m and m + 1 at it, else j + 1.
  const m = pairStart(shape, r + 1)!;
  const child = above + wedge * (r + 1) + (j <= m ? j : j + 1);
  if (j === m) onward.push([child, 0.25], [child + 1, 0.25]);
  else onward.push([child, 0.5]);
  return onward;
}
