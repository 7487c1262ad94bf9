// Cuts a picture into regions of one look: P. F. Felzenszwalb and D. P. Huttenlocher, "Efficient
// graph-based image segmentation", International Journal of Computer Vision 59 (2004). Neighbouring
// pixels are joined in order of their CIEDE2000, as long as it is not clearly larger than what the
// two regions hold already.
import { ciede2000Fast } from '../dist/core/colour/ciede2000.js';

/** How much a small region may vary before it is parted, CIEDE2000 · pixels (their k). */
const scale = 30;

/**
 * @param {Float64Array} lab L, a, b of each pixel; length 3·width·height
 * @param {Uint8Array} used 1 for pixels that take part
 * @param {number} leastPx smaller regions join the neighbour that is most like them
 * @returns {Int32Array} region of each pixel, numbered from 0; -1 where not used
 */
export function segments(lab, used, width, height, leastPx) {
  const count = width * height;
  const root = Int32Array.from({ length: count }, (_, p) => p);
  const size = new Int32Array(count).fill(1);
  const inside = new Float64Array(count);
  const find = (p) => {
    while (root[p] !== p) p = root[p] = root[root[p]];
    return p;
  };
  const join = (a, b, apart) => {
    if (size[a] < size[b]) [a, b] = [b, a];
    root[b] = a;
    size[a] += size[b];
    inside[a] = apart;
  };
  const edges = [];
  for (let p = 0; p < count; p++) {
    if (!used[p]) continue;
    const x = p % width;
    for (const [q, there] of [
      [p + 1, x + 1 < width],
      [p + width, p + width < count],
      [p + width + 1, x + 1 < width && p + width < count],
      [p + width - 1, x > 0 && p + width < count],
    ]) {
      if (!there || !used[q]) continue;
      const [a, b] = [3 * p, 3 * q];
      const apart = ciede2000Fast(lab[a], lab[a + 1], lab[a + 2], lab[b], lab[b + 1], lab[b + 2]);
      edges.push({ p, q, apart });
    }
  }
  edges.sort((one, other) => one.apart - other.apart || one.p - other.p || one.q - other.q);
  for (const { p, q, apart } of edges) {
    const [a, b] = [find(p), find(q)];
    if (a === b) continue;
    if (apart <= Math.min(inside[a] + scale / size[a], inside[b] + scale / size[b])) {
      join(a, b, apart);
    }
  }
  for (const { p, q, apart } of edges) {
    const [a, b] = [find(p), find(q)];
    if (a !== b && (size[a] < leastPx || size[b] < leastPx)) join(a, b, apart);
  }
  const number = new Map();
  return Int32Array.from({ length: count }, (_, p) => {
    if (!used[p]) return -1;
    const r = find(p);
    if (!number.has(r)) number.set(r, number.size);
    return number.get(r);
  });
}
