// Pictures for the choice of beads: photos, drawings and gradients, shrunk to so many cells.
import { readFileSync } from 'node:fs';
import sharp from 'sharp';

/** Part of the picture that is shown: left, top, width, height as shares. */
const whole = [0, 0, 1, 1];

export const photos = [
  ['cat', 'pictures/cat-chelsea.png', whole],
  ['cat, eyes', 'pictures/cat-chelsea.png', [0.2, 0.1, 0.4, 0.6]],
  ['dahlia', 'pictures/dahlia.jpg', whole],
  ['dahlia, rim', 'pictures/dahlia.jpg', [0.5, 0, 0.5, 0.6]],
];
export const drawings = [
  'kingfisher.svg',
  'lighthouse.svg',
  'barley-moon.svg',
  'pictures/alpha-lotus.png',
  'pictures/rooster.svg',
  'pictures/sakura.svg',
  'pictures/sunflower.svg',
].map((file) => [file.replace(/^pictures\//, '').replace(/\..*/, ''), file, whole]);

/** Two gradients without a file: from colour to colour, and light round a middle. */
export const gradients = [
  ['dusk', (u, v) => [40 + 215 * v, 60 + 110 * v * u, 160 - 120 * v + 60 * u]],
  [
    'glow',
    (u, v) => {
      const far = Math.min(1, Math.sqrt((u - 0.5) ** 2 + (v - 0.4) ** 2) * 1.6);
      return [255 - 200 * far, 235 - 190 * far * far, 120 + 40 * u - 60 * far];
    },
  ],
];

/** sRGB bytes of a picture shrunk to side × side cells, on white; length 3·side². */
export async function cells([, source, part], side) {
  if (typeof source === 'function') {
    const bytes = new Uint8Array(3 * side * side);
    for (let k = 0; k < side * side; k++) {
      const [u, v] = [((k % side) + 0.5) / side, (Math.floor(k / side) + 0.5) / side];
      bytes.set(source(u, v).map(Math.round), 3 * k);
    }
    return bytes;
  }
  const file = readFileSync(new URL(`../fixtures/${source}`, import.meta.url));
  const { width, height } = await sharp(file).metadata();
  const [left, top, wide, high] = part;
  return sharp(file)
    .extract({
      left: Math.floor(left * width),
      top: Math.floor(top * height),
      width: Math.floor(wide * width),
      height: Math.floor(high * height),
    })
    .flatten({ background: '#ffffff' })
    .resize(side, side, { fit: 'cover' })
    .toColourspace('srgb')
    .removeAlpha()
    .raw()
    .toBuffer();
}

/** L, a, b of cells; `toLab` turns r, g, b in 0..255 into L, a, b. */
export function labs(bytes, toLab) {
  const lab = new Float64Array(bytes.length);
  for (let k = 0; k < bytes.length; k += 3) lab.set(toLab(bytes[k], bytes[k + 1], bytes[k + 2]), k);
  return lab;
}
