// What a maker would do by hand instead: take the nearest bead for every stitch, then keep the K
// most used. Its mean colour difference over ours, on the same stitches and palettes.
import { pathToFileURL } from 'node:url';
import { chooseBeads, nearestBead } from '../dist/core/choice/choose.js';
import { pictureColours, randomColours } from './synthetic.js';

const seeds = [1, 2, 3, 4, 5, 6];

/** The K beads that are nearest to the most stitches, most used first; ties: lower index. */
function mostUsed(stitches, palette, most) {
  const uses = new Array(palette.length / 3).fill(0);
  for (let i = 0; i < stitches.length; i += 3) {
    uses[nearestBead(palette, stitches[i], stitches[i + 1], stitches[i + 2])] += 1;
  }
  const order = uses.map((_, bead) => bead).sort((p, q) => uses[q] - uses[p] || p - q);
  return order.slice(0, most);
}

/** The rival's mean over ours, over every picture. */
function rivalOverOurs(beads, most) {
  let rival = 0;
  let ours = 0;
  for (const seed of seeds) {
    const stitches = pictureColours(1470, seed);
    const palette = randomColours(beads, 100 + seed);
    const keep = mostUsed(stitches, palette, most);
    rival += chooseBeads({ stitches, palette, most, keep }).objective;
    ours += chooseBeads({ stitches, palette, most }).objective;
  }
  return rival / ours;
}

/** @returns {Promise<{ name: string, value: number, bar: string, ok: boolean }[]>} */
export async function run() {
  const bars = [
    [120, 1],
    [300, 1.08],
  ];
  return bars.flatMap(([beads, least]) =>
    [6, 12].map((most) => {
      const value = rivalOverOurs(beads, most);
      const name = `mean difference of nearest-then-keep-${most} over ours, ${beads} beads`;
      return { name, value, bar: `≥ ${least}`, ok: value >= least };
    }),
  );
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.table(await run());
