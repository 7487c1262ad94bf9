// The subject of a picture that stands on a clear or plain ground, told apart here once more, by
// other means than the program's own: how much of it the rim cuts off, and how much of its outline
// melts into the ground. Own definitions.
import { ciede2000 } from '../../dist/core/colour/ciede2000.js';
import { hexToLab65, linearToLab65 } from '../../dist/core/colour/lab.js';
import { finishedEdge } from '../../dist/core/panel/edge.js';
import { insideRing } from '../../dist/core/panel/rings.js';
import { toLinearRaster } from '../../dist/core/picture/sampling/linear.js';
import { panelToPicture } from '../../dist/core/picture/sampling/place.js';

const sidePx = 320;
/** Share of the border that must show one colour, and how far from it is still that colour. */
const borderShare = 0.9;
const oneColour = 6;
const subjectFrom = 12;
/** An outline melts where bead and ground differ by less (CIEDE2000). */
export const meltsUnder = 15;

/**
 * @returns {{ width: number, height: number, mask: Uint8Array, kind: 'clear' | 'plain' } | undefined}
 *   1 where the subject is; undefined where it cannot be told from its ground
 */
export function subjectOf(picture) {
  const reduceBy = Math.max(1, Math.max(picture.width, picture.height) / sidePx);
  const { width, height, data } = toLinearRaster(picture, reduceBy);
  const count = width * height;
  let clear = 0;
  for (let p = 0; p < count; p++) if (data[4 * p + 3] < 0.5) clear++;
  if (clear === count) return undefined;
  if (clear > 0.02 * count) {
    const mask = Uint8Array.from({ length: count }, (_, p) => (data[4 * p + 3] >= 0.5 ? 1 : 0));
    return { width, height, mask, kind: 'clear' };
  }
  const lab = Array.from({ length: count }, (_, p) =>
    linearToLab65(...data.subarray(4 * p, 4 * p + 3)),
  );
  const border = [];
  for (let x = 0; x < width; x++) border.push(x, (height - 1) * width + x);
  for (let y = 1; y < height - 1; y++) border.push(y * width, y * width + width - 1);
  const middle = [0, 1, 2].map((c) => median(border.map((p) => lab[p][c])));
  const like = border.filter((p) => ciede2000(...lab[p], ...middle) < oneColour);
  if (like.length < borderShare * border.length) return undefined;
  const ground = new Uint8Array(count);
  const queue = [...like];
  for (const p of queue) ground[p] = 1;
  for (let at = 0; at < queue.length; at++) {
    const p = queue[at];
    const x = p % width;
    for (const [q, there] of [
      [p - 1, x > 0],
      [p + 1, x + 1 < width],
      [p - width, p >= width],
      [p + width, p + width < count],
    ]) {
      // prettier-ignore
      if (!there || ground[q] || ciede2000(...lab[q], ...middle) >= subjectFrom) continue;
      ground[q] = 1;
      queue.push(q);
    }
  }
  const mask = ground.map((is) => 1 - is);
  const share = mask.reduce((sum, is) => sum + is, 0) / count;
  return share < 0.01 || share > 0.95 ? undefined : { width, height, mask, kind: 'plain' };
}

/** Share of the subject that lies outside the finished edge. */
export function cutShare({ width, height, mask }, picture, place, geometry) {
  const edge = finishedEdge(geometry);
  const [a, b, c, d, e, f] = panelToPicture(place, picture);
  const det = a * d - b * c;
  let [out, all] = [0, 0];
  for (let p = 0; p < mask.length; p++) {
    if (!mask[p]) continue;
    const x = (((p % width) + 0.5) * picture.width) / width - e;
    const y = ((Math.floor(p / width) + 0.5) * picture.height) / height - f;
    all++;
    if (!insideRing(edge, (d * x - c * y) / det, (a * y - b * x) / det)) out++;
  }
  return all === 0 ? 0 : out / all;
}

/**
 * Share of the outline that melts into the ground. The outline runs between touching stitches, one
 * of which lies mostly on the subject (`share` at least a half). It is seen where within a stitch a
 * bead differs from the ground's by 15: either of the two, or one of the subject beside them, since
 * a border drawn half a stitch farther in is a border all the same (edges are matched with the same
 * tolerance). `strict` counts the two beads alone, and so a border that has moved as lost: about a
 * tenth of a black outline on white.
 *
 * @param {Float64Array} share of each stitch that lies on the subject
 * @param {(s: number) => string | undefined} hexOf
 * @returns {{ melted: number, strict: number } | undefined} 0 to 1
 */
export function meltedShare(share, neighbours, hexOf) {
  let [melted, strict, all] = [0, 0, 0];
  const lab = new Map();
  const labOf = (hex) => lab.get(hex) ?? lab.set(hex, hexToLab65(hex)).get(hex);
  const differ = (one, other) => ciede2000(...labOf(one), ...labOf(other)) >= meltsUnder;
  const ground = mostOf([...share.keys()].filter((s) => share[s] < 0.02).map(hexOf));
  for (let s = 0; s < share.length; s++) {
    if (share[s] < 0.5 || hexOf(s) === undefined) continue;
    const own = [s, ...neighbours(s).filter((n) => share[n] >= 0.5)];
    for (const n of neighbours(s)) {
      if (share[n] >= 0.5 || hexOf(n) === undefined) continue;
      all++;
      if (!differ(hexOf(s), hexOf(n))) strict++;
      const beads = [n, ...own].map(hexOf).filter((hex) => hex !== undefined);
      if (!beads.some((hex) => differ(hex, ground ?? hexOf(n)))) melted++;
    }
  }
  return all === 0 ? undefined : { melted: melted / all, strict: strict / all };
}

function mostOf(hexes) {
  const uses = new Map();
  for (const hex of hexes) if (hex !== undefined) uses.set(hex, (uses.get(hex) ?? 0) + 1);
  return [...uses].sort((a, b) => b[1] - a[1])[0]?.[0];
}

function median(values) {
  return [...values].sort((a, b) => a - b)[values.length >> 1];
}
