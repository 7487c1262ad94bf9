// What must survive: small features that stand out, found in the picture itself, pixel by pixel,
// and whether the beads of a panel show them.
import { ciede2000 } from '../dist/core/colour/ciede2000.js';
import { linearToLab65 } from '../dist/core/colour/lab.js';
import { toLinearRaster } from '../dist/core/picture/sampling/linear.js';
import { panelToPicture } from '../dist/core/picture/sampling/place.js';
import { segments } from './segments.js';

/** Stitches that a small feature covers. */
const fewest = 2;
const most = 12;
/** CIEDE2000 by which a feature differs from what surrounds it. */
const standsOut = 20;
/** Pixels that a stitch is across while we look, at most. */
const pxPerStitch = 6;
/** How far around a feature its surroundings reach, stitches. */
const around = 0.75;

/**
 * The small features of a picture as it lies on a panel: regions (see segments.js) that cover 2 to
 * 12 stitches of area, are half a stitch wide somewhere, and differ by more than 20 of CIEDE2000 from the mean of what lies within
 * three quarters of a stitch around them.
 *
 * @param picture width, height and RGBA data; transparent parts count as white
 * @param panel geometry, footprints and place
 * @returns {{ stitches: number[], own: number[], around: number[] }[]} of each feature the stitches
 *   that it covers most, as many as its area holds, and two Labs: its own and its surroundings'
 */
export function smallFeatures(picture, { geometry, footprints, place }) {
  const { stitchWidthMm, roundHeightMm } = geometry.shape;
  const stitchPx = Math.sqrt(stitchWidthMm * roundHeightMm) / place.mmPerPixel;
  const { width, height, data } = toLinearRaster(picture, Math.max(1, stitchPx / pxPerStitch));
  const shrink = picture.width / width;
  const pitch = stitchPx / shrink;
  const count = width * height;
  const linear = Float64Array.from({ length: 3 * count }, (_, k) => {
    const at = 4 * Math.floor(k / 3);
    return data[at + (k % 3)] + 1 - data[at + 3];
  });
  const lab = new Float64Array(3 * count);
  const owner = new Int32Array(count);
  const toPanel = inverse(panelToPicture(place, picture));
  for (let p = 0; p < count; p++) {
    lab.set(linearToLab65(...linear.subarray(3 * p, 3 * p + 3)), 3 * p);
    const [x, y] = [((p % width) + 0.5) * shrink, (Math.floor(p / width) + 0.5) * shrink];
    owner[p] = footprints.owner(...toPanel(x, y));
  }
  const used = Uint8Array.from(owner, (s) => (s >= 0 ? 1 : 0));
  const region = segments(lab, used, width, height, (pitch * pitch) / 2);
  const pixelsOf = new Map();
  region.forEach((r, p) => {
    if (r < 0) return;
    if (!pixelsOf.has(r)) pixelsOf.set(r, []);
    pixelsOf.get(r).push(p);
  });
  const found = [];
  for (const [r, pixels] of pixelsOf) {
    const area = pixels.length / (pitch * pitch);
    if (area < fewest || area > most || isThin(pixels, region, width)) continue;
    const near = ring(pixels, region, r, width, height, around * pitch);
    if (near.length === 0) continue;
    const [own, other] = [meanLab(pixels, linear), meanLab(near, linear)];
    if (ciede2000(...own, ...other) <= standsOut) continue;
    const covers = new Map();
    for (const p of pixels) covers.set(owner[p], (covers.get(owner[p]) ?? 0) + 1);
    const stitches = [...covers]
      .sort(([s, a], [t, b]) => b - a || s - t)
      .slice(0, Math.round(area))
      .map(([s]) => s);
    found.push({ stitches, own, around: other });
  }
  return found;
}

/**
 * How many features are kept: at least half of their stitches show a colour nearer to the feature
 * than to its surroundings.
 *
 * @param {(s: number) => readonly number[]} labOf the colour of a stitch as Lab
 */
export function featuresKept(features, labOf) {
  return features.filter(({ stitches, own, around: other }) => {
    const nearer = stitches.filter((s) => {
      const lab = labOf(s);
      return ciede2000(...lab, ...own) < ciede2000(...lab, ...other);
    });
    return nearer.length >= stitches.length / 2;
  }).length;
}

/** Nowhere 3 pixels wide, that is half a stitch: the blended edge of something else, or a line. */
function isThin(pixels, region, width) {
  const beside = [-width - 1, -width, -width + 1, -1, 1, width - 1, width, width + 1];
  return !pixels.some((p) => beside.every((by) => region[p + by] === region[p]));
}

/** Used pixels outside a region but within `reach` of it. */
function ring(pixels, region, r, width, height, reach) {
  const found = new Set();
  const far = Math.ceil(reach);
  for (const p of pixels) {
    const [x, y] = [p % width, Math.floor(p / width)];
    for (let dy = -far; dy <= far; dy++) {
      for (let dx = -far; dx <= far; dx++) {
        if (dx * dx + dy * dy > reach * reach) continue;
        const [u, v] = [x + dx, y + dy];
        if (u < 0 || v < 0 || u >= width || v >= height) continue;
        const q = v * width + u;
        if (region[q] >= 0 && region[q] !== r) found.add(q);
      }
    }
  }
  return [...found];
}

function meanLab(pixels, linear) {
  const sums = [0, 0, 0];
  for (const p of pixels) for (let c = 0; c < 3; c++) sums[c] += linear[3 * p + c];
  return linearToLab65(...sums.map((sum) => sum / pixels.length));
}

/** From the picture's pixels back to millimetres on the panel. */
function inverse([a, b, c, d, e, f]) {
  const det = a * d - b * c;
  return (x, y) => [(d * (x - e) - c * (y - f)) / det, (a * (y - f) - b * (x - e)) / det];
}
