// A picture and a panel as the eye sees them from arm's length: both drawn on the same pixels, so
// that they can be compared. Own definition; the blur stands for an eye that sees the picture and
// no longer the single bead.
import { parseHex } from '../../dist/core/colour/hex.js';
import { hexToLab65, linearToLab65 } from '../../dist/core/colour/lab.js';
import { linearToSrgb8, srgbToLinear } from '../../dist/core/colour/srgb.js';
import { cornerRadius } from '../../dist/core/panel/edge.js';
import { toLinearRaster } from '../../dist/core/picture/sampling/linear.js';
import { panelToPicture } from '../../dist/core/picture/sampling/place.js';

/** Pixels a stitch is across in a view. */
export const pxPerStitch = 5;
/** Standard deviation of the blur, stitches: two beads side by side melt, three in a row do not. */
const blurStitches = 0.5;
/** What lies beyond the rim, linear light: the same grey in every view. */
const beyond = 0.5;

/**
 * The pixels of a view: which stitch each belongs to, -1 beyond the rim and in the hole.
 * @returns {{ side: number, mmPerPx: number, owner: Int32Array, shape: object }}
 */
export function canvasFor({ geometry, footprints }) {
  const { shape } = geometry;
  const pitch = Math.sqrt(shape.stitchWidthMm * shape.roundHeightMm);
  const mmPerPx = pitch / pxPerStitch;
  const side = 2 * Math.ceil(cornerRadius(shape) / mmPerPx + 1);
  const owner = new Int32Array(side * side);
  for (let p = 0; p < owner.length; p++) owner[p] = footprints.owner(...placeOf(p, side, mmPerPx));
  return { side, mmPerPx, owner, shape };
}

/** Middle of a pixel on the panel, millimetres. */
export function placeOf(p, side, mmPerPx) {
  return [
    ((p % side) + 0.5 - side / 2) * mmPerPx,
    (Math.floor(p / side) + 0.5 - side / 2) * mmPerPx,
  ];
}

/** The panel, every footprint in its bead's colour; `hexOf` says which, undefined where bare. */
export function panelView({ side, owner }, hexOf) {
  const linear = new Float64Array(3 * side * side).fill(beyond);
  const light = new Map();
  for (let p = 0; p < owner.length; p++) {
    const hex = owner[p] < 0 ? undefined : hexOf(owner[p]);
    if (hex === undefined) continue;
    if (!light.has(hex))
      light.set(
        hex,
        parseHex(hex).map((code) => srgbToLinear[code]),
      );
    linear.set(light.get(hex), 3 * p);
  }
  return linear;
}

/** The picture as it lies on the panel, over a ground, at the finest detail that the pixels hold. */
export function pictureView({ side, mmPerPx, owner }, picture, place, groundHex) {
  const ground = parseHex(groundHex).map((code) => srgbToLinear[code]);
  const reduceBy = Math.max(1, mmPerPx / place.mmPerPixel);
  const raster = toLinearRaster(picture, reduceBy);
  const toPicture = panelToPicture(place, picture);
  const linear = new Float64Array(3 * side * side).fill(beyond);
  for (let p = 0; p < owner.length; p++) {
    if (owner[p] < 0) continue;
    const [mx, my] = placeOf(p, side, mmPerPx);
    const [a, b, c, d, e, f] = toPicture;
    const x = ((a * mx + c * my + e) * raster.width) / picture.width;
    const y = ((b * mx + d * my + f) * raster.height) / picture.height;
    linear.set(over(raster, x, y, ground), 3 * p);
  }
  return linear;
}

/** Alpha of the picture under every pixel, 0 outside. */
export function alphaView({ side, mmPerPx, owner }, picture, place) {
  const raster = toLinearRaster(picture, Math.max(1, mmPerPx / place.mmPerPixel));
  const [a, b, c, d, e, f] = panelToPicture(place, picture);
  return Float64Array.from(owner, (_, p) => {
    const [mx, my] = placeOf(p, side, mmPerPx);
    const x = Math.floor(((a * mx + c * my + e) * raster.width) / picture.width);
    const y = Math.floor(((b * mx + d * my + f) * raster.height) / picture.height);
    if (x < 0 || y < 0 || x >= raster.width || y >= raster.height) return 0;
    return raster.data[4 * (y * raster.width + x) + 3];
  });
}

/** Between four pixels, over the ground. */
function over({ width, height, data }, x, y, ground) {
  const sum = [0, 0, 0];
  let covered = 0;
  for (const [u, v] of [
    [0, 0],
    [1, 0],
    [0, 1],
    [1, 1],
  ]) {
    // prettier-ignore
    const left = Math.floor(x - 0.5) + u;
    const top = Math.floor(y - 0.5) + v;
    const share = (1 - Math.abs(x - 0.5 - left)) * (1 - Math.abs(y - 0.5 - top));
    if (left < 0 || top < 0 || left >= width || top >= height) continue;
    const at = 4 * (top * width + left);
    for (let c = 0; c < 3; c++) sum[c] += share * data[at + c];
    covered += share * data[at + 3];
  }
  return sum.map((light, c) => light + (1 - covered) * ground[c]);
}

/**
 * What the eye gets: a Gaussian blur in linear light, then Lab (D65).
 * @returns {{ lab: Float64Array, srgb: Uint8Array }} both of length 3·side²
 */
export function seen(linear, side) {
  const sigma = blurStitches * pxPerStitch;
  const reach = Math.ceil(3 * sigma);
  const kernel = Array.from({ length: 2 * reach + 1 }, (_, k) =>
    Math.exp(-((k - reach) ** 2) / (2 * sigma * sigma)),
  );
  const whole = kernel.reduce((sum, one) => sum + one, 0);
  let from = linear;
  for (const step of [1, side]) {
    const to = new Float64Array(from.length);
    for (let p = 0; p < side * side; p++) {
      const at = step === 1 ? p % side : Math.floor(p / side);
      for (let k = -reach; k <= reach; k++) {
        const q = p + step * (Math.min(side - 1, Math.max(0, at + k)) - at);
        for (let c = 0; c < 3; c++) to[3 * p + c] += (kernel[k + reach] / whole) * from[3 * q + c];
      }
    }
    from = to;
  }
  const lab = new Float64Array(from.length);
  const srgb = new Uint8Array(from.length);
  for (let p = 0; p < from.length; p += 3) {
    lab.set(linearToLab65(from[p], from[p + 1], from[p + 2]), p);
    for (let c = 0; c < 3; c++) srgb[p + c] = linearToSrgb8(Math.min(1, Math.max(0, from[p + c])));
  }
  return { lab, srgb };
}

export { hexToLab65 };
