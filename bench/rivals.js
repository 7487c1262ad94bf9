// What a maker would do by hand instead: take the nearest bead for every stitch, then keep the K
// most used. Its mean colour difference over ours, on the same stitches and palettes. The bar
// stands on made-up pictures; real ones of few colours leave less to gain, and are shown too.
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import sharp from 'sharp';
import { chooseBeads, nearestBead } from '../dist/core/choice/choose.js';
import { srgbToLab65 } from '../dist/core/colour/lab.js';
import { pictureColours, randomColours } from './synthetic.js';

const seeds = [1, 2, 3, 4, 5, 6];
const fixtures = [
  'kingfisher.svg',
  'lighthouse.svg',
  'barley-moon.svg',
  'pictures/cat-chelsea.png',
  'pictures/dahlia.jpg',
];

/** The K beads that are nearest to the most stitches, most used first; ties: lower index. */
function mostUsed(stitches, palette, most) {
  const uses = new Array(palette.length / 3).fill(0);
  for (let i = 0; i < stitches.length; i += 3) {
    uses[nearestBead(palette, stitches[i], stitches[i + 1], stitches[i + 2])] += 1;
  }
  const order = uses.map((_, bead) => bead).sort((p, q) => uses[q] - uses[p] || p - q);
  return order.slice(0, most);
}

/** The rival's mean over ours, over every picture, each with a palette of its own. */
function rivalOverOurs(pictures, beads, most) {
  let rival = 0;
  let ours = 0;
  pictures.forEach((stitches, k) => {
    const palette = randomColours(beads, 101 + k);
    const keep = mostUsed(stitches, palette, most);
    rival += chooseBeads({ stitches, palette, most, keep }).objective;
    ours += chooseBeads({ stitches, palette, most }).objective;
  });
  return rival / ours;
}

/** L, a, b of a fixture shrunk to 38 × 38 cells; length 3·1,444. */
async function fixtureColours(file) {
  const bytes = readFileSync(new URL(`../fixtures/${file}`, import.meta.url));
  const pixels = await sharp(bytes)
    .flatten({ background: '#ffffff' })
    .resize(38, 38, { fit: 'cover' })
    .toColourspace('srgb')
    .removeAlpha()
    .raw()
    .toBuffer();
  const lab = new Float64Array(pixels.length);
  for (let k = 0; k < pixels.length; k += 3) {
    lab.set(srgbToLab65(pixels[k], pixels[k + 1], pixels[k + 2]), k);
  }
  return lab;
}

/** @returns {Promise<{ name: string, value: number, bar: string, ok: boolean }[]>} */
export async function run() {
  const made = seeds.map((seed) => pictureColours(1470, seed));
  const real = await Promise.all(fixtures.map(fixtureColours));
  const cases = [
    ['made-up pictures', made, 120, 1],
    ['made-up pictures', made, 300, 1.08],
    ['fixtures', real, 300, 1],
    ['fixtures', real, 600, 1],
  ];
  return cases.flatMap(([what, pictures, beads, least]) =>
    [6, 12].map((most) => {
      const value = rivalOverOurs(pictures, beads, most);
      const name = `nearest-then-keep-${most} over ours, mean difference, ${what}, ${beads} beads`;
      return { name, value, bar: `≥ ${least}`, ok: value >= least };
    }),
  );
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.table(await run());
