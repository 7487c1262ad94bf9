// What a maker gets from a general picture program and a table of beads, on the same stitches: the
// picture shrunk to square cells of a stitch each (means of sRGB codes), then
// - remap: every cell takes the nearest bead, the K most used stay, the others' cells take the
//   nearest of those;
// - quantise: K colours by k-means in Lab, each snapped to its nearest bead.
// Each stitch takes the cell under its centre.
import { nearestBead } from '../../dist/core/beads/choice/choose.js';
import { srgbToLab65 } from '../../dist/core/colour/lab.js';
import { linearToSrgb8 } from '../../dist/core/colour/srgb.js';
import { keepMostUsed, kMeans } from '../rivals.js';
import { pxPerStitch } from './views.js';

/** @returns {{ name: string, beadOf: number[] }[]} a bead of the palette for every stitch */
export function rivalPanels(sourceLinear, { side, mmPerPx }, { centres, count }, beads, most) {
  const stitches = new Float64Array(3 * count);
  for (let s = 0; s < count; s++) {
    const cell = (mm) => {
      const first = Math.floor((mm / mmPerPx + side / 2) / pxPerStitch) * pxPerStitch;
      return Math.min(side - pxPerStitch, Math.max(0, first));
    };
    const [left, top] = [cell(centres[2 * s]), cell(centres[2 * s + 1])];
    const sums = [0, 0, 0];
    for (let y = top; y < top + pxPerStitch; y++) {
      for (let x = left; x < left + pxPerStitch; x++) {
        for (let c = 0; c < 3; c++) sums[c] += linearToSrgb8(sourceLinear[3 * (y * side + x) + c]);
      }
    }
    stitches.set(srgbToLab65(...sums.map((sum) => Math.round(sum / pxPerStitch ** 2))), 3 * s);
  }
  const palette = Float64Array.from(beads.flatMap(({ lab }) => lab));
  const one = { stitches, palette };
  const nearest = (among) =>
    Array.from({ length: count }, (_, s) =>
      nearestBead(palette, ...stitches.subarray(3 * s, 3 * s + 3), among),
    );
  const middles = kMeans(stitches, most);
  const snapped = Array.from({ length: most }, (_, m) =>
    nearestBead(palette, ...middles.subarray(3 * m, 3 * m + 3)),
  );
  return [
    { name: 'remap, keep K', beadOf: keepMostUsed(one, nearest(), most) },
    { name: 'quantise, snap', beadOf: nearest([...new Set(snapped)].sort((a, b) => a - b)) },
  ];
}
