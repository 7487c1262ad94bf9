import type { Footprints } from '../../panel/footprints.js';

/** Light under footprints. */
export interface EdgeLight {
  /** Mean linear r, g, b under each stitch that `whole` names; length 3·stitches. */
  readonly linear: Float64Array;
  /** 1 for stitches of some area that lie in the picture wholly; length stitches. */
  readonly whole: Uint8Array;
}

/** Below a pixel the rounding is not small beside the area: such footprints are taken pixel by pixel. */
const leastArea = 1;

/**
 * Mean light under every footprint at once, by Green's theorem: an edge bears the light that lies
 * left of it, which is a difference of row sums for each row that it crosses, and what the edges of a
 * footprint bear adds up to what it covers. An edge between two footprints is gone along once.
 * The same as `meanUnder` but for rounding, 1e-11 at most.
 *
 * @param picture an opaque one, and the row sums of its light
 * @param map from millimetres to pixels: x' = a·x + c·y + e, y' = b·x + d·y + f
 */
export function lightUnderAll(
  footprints: Pick<Footprints, 'all' | 'across'>,
  { width, height }: { readonly width: number; readonly height: number },
  sums: Float64Array,
  [a, b, c, d, e, f]: readonly number[],
): EdgeLight {
  const { corners, from, firstOf } = footprints.all();
  const across = footprints.across();
  const count = firstOf.length - 1;
  const linear = new Float64Array(3 * count);
  const whole = new Uint8Array(count);
  const area = new Float64Array(count);
  const mapped = new Float64Array(corners.length);
  for (let p = 0; p < corners.length; p += 2) {
    mapped[p] = a * corners[p] + c * corners[p + 1] + e;
    mapped[p + 1] = b * corners[p] + d * corners[p + 1] + f;
  }
  for (let s = 0; s < count; s++) {
    const [begin, end] = [from[firstOf[s]], from[firstOf[s + 1]]];
    whole[s] = end > begin ? 1 : 0;
    for (let p = begin; p < end; p += 2) {
      const [x, y] = [mapped[p], mapped[p + 1]];
      if (!(x >= 0 && y >= 0 && x < width && y <= height)) whole[s] = 0;
    }
  }
  const stride = 3 * (width + 1);
  for (let s = 0; s < count; s++) {
    for (let ring = firstOf[s]; ring < firstOf[s + 1]; ring++) {
      const stop = from[ring + 1];
      for (let p = from[ring]; p < stop; p += 2) {
        const other = across[p >> 1];
        if (other >= 0 ? other < s || (!whole[s] && !whole[other]) : !whole[s]) continue;
        const next = p + 2 === stop ? from[ring] : p + 2;
        alongEdge(s, other, p, next);
      }
    }
  }
  for (let s = 0; s < count; s++) {
    if (!whole[s]) continue;
    if (Math.abs(area[s]) < leastArea) {
      whole[s] = 0;
      continue;
    }
    for (let k = 3 * s; k < 3 * s + 3; k++) linear[k] /= area[s];
  }
  return { linear, whole };

  /** Adds what an edge bears to the stitch on this side, and takes it from that on the other. */
  function alongEdge(s: number, other: number, p: number, next: number): void {
    const down = mapped[next + 1] > mapped[p + 1];
    const begin = down ? p : next;
    const end = down ? next : p;
    const ax = mapped[begin];
    const ay = mapped[begin + 1];
    const bx = mapped[end];
    const by = mapped[end + 1];
    if (!(by > ay)) return;
    const slope = (bx - ax) / (by - ay);
    const least = ax < bx ? ax : bx;
    const most = ax < bx ? bx : ax;
    let pixels = 0;
    let red = 0;
    let green = 0;
    let blue = 0;
    let x = ax;
    let y = ay;
    for (let row = Math.trunc(ay); y < by; row++) {
      let toY = row + 1;
      let toX = bx;
      if (toY < by) {
        toX = ax + (toY - ay) * slope;
        toX = toX < least ? least : toX > most ? most : toX;
      } else toY = by;
      const fall = toY - y;
      const left = x < toX ? x : toX;
      const right = x < toX ? toX : x;
      const middle = (left + right) * 0.5;
      pixels += fall * middle;
      const first = Math.trunc(left);
      let at = row * stride + 3 * first;
      if (right <= first + 1) {
        const part = fall * (middle - first);
        const rest = fall - part;
        red += rest * sums[at] + part * sums[at + 3];
        green += rest * sums[at + 1] + part * sums[at + 4];
        blue += rest * sums[at + 2] + part * sums[at + 5];
      } else {
        const perColumn = fall / (right - left);
        for (let column = first; column < right; column++, at += 3) {
          const start = left > column ? left : column;
          const stop = right < column + 1 ? right : column + 1;
          const own = perColumn * (stop - start);
          const part = own * ((start + stop) * 0.5 - column);
          const rest = own - part;
          red += rest * sums[at] + part * sums[at + 3];
          green += rest * sums[at + 1] + part * sums[at + 4];
          blue += rest * sums[at + 2] + part * sums[at + 5];
        }
      }
      x = toX;
      y = toY;
    }
    const sign = down ? 1 : -1;
    area[s] += sign * pixels;
    linear[3 * s] += sign * red;
    linear[3 * s + 1] += sign * green;
    linear[3 * s + 2] += sign * blue;
    if (other < 0) return;
    area[other] -= sign * pixels;
    linear[3 * other] -= sign * red;
    linear[3 * other + 1] -= sign * green;
    linear[3 * other + 2] -= sign * blue;
  }
}
