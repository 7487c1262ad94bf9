// How quick the colour difference is against culori's in the same process, how near it stays, and
// how long a choice of beads takes.
import { pathToFileURL } from 'node:url';
import { differenceCiede2000 } from 'culori';
import { chooseBeads } from '../dist/core/beads/choice/choose.js';
import { ciede2000, ciede2000Fast } from '../dist/core/colour/ciede2000.js';
import { pictureColours, randomColours } from './synthetic.js';

const stitches = 2000;
const beads = 300;

/** Million pairs a second, the best of seven runs over every stitch and bead. */
function millionsASecond(runAllPairs) {
  let best = Infinity;
  for (let turn = 0; turn < 7; turn++) {
    const start = performance.now();
    runAllPairs();
    best = Math.min(best, performance.now() - start);
  }
  return (stitches * beads) / best / 1000;
}

/** Milliseconds, the middle of five runs. */
function middleTime(work) {
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return times.sort((p, q) => p - q)[2];
}

/** @returns {Promise<{ name: string, value: number, bar: string, ok: boolean }[]>} */
export async function run() {
  const one = randomColours(stitches, 1);
  const other = randomColours(beads, 2);
  const out = new Float64Array(stitches * beads);
  const overAll = (difference) => () => {
    for (let i = 0, at = 0; i < stitches; i++) {
      const [L, a, b] = [one[3 * i], one[3 * i + 1], one[3 * i + 2]];
      for (let j = 0; j < beads; j++) {
        out[at++] = difference(L, a, b, other[3 * j], other[3 * j + 1], other[3 * j + 2]);
      }
    }
  };
  // culori gets its colours ready made, as its users would keep them.
  const asObjects = (lab) =>
    Array.from({ length: lab.length / 3 }, (_, k) => ({
      mode: 'lab65',
      l: lab[3 * k],
      a: lab[3 * k + 1],
      b: lab[3 * k + 2],
    }));
  const [ones, others] = [asObjects(one), asObjects(other)];
  const reference = differenceCiede2000();
  const culori = millionsASecond(() => {
    let at = 0;
    for (const p of ones) for (const q of others) out[at++] = reference(p, q);
  });
  const expected = out.slice();
  const farthest = () =>
    out.reduce((most, value, k) => Math.max(most, Math.abs(value - expected[k])), 0);
  const textbook = millionsASecond(overAll(ciede2000));
  const textbookOff = farthest();
  const fast = millionsASecond(overAll(ciede2000Fast));
  const fastOff = farthest();

  // Choosing holds measuring every pair, searching and bounding; culori's part would be the first.
  const bead120 = randomColours(120, 3);
  const choice = (count) => {
    const colours = pictureColours(count, 4);
    const took = middleTime(() => chooseBeads({ stitches: colours, palette: bead120, most: 8 }));
    const objects = asObjects(colours);
    const beadObjects = asObjects(bead120);
    const measuring = middleTime(() => {
      let sum = 0;
      for (const p of objects) for (const q of beadObjects) sum += reference(p, q);
      return sum;
    });
    return { took, share: took / measuring };
  };
  const small = choice(1470);
  const large = choice(12810);
  const row = (name, value, bar, ok) => ({ name, value, bar, ok });
  return [
    row(
      'CIEDE2000 without trigonometry, speed over culori’s',
      fast / culori,
      '≥ 3',
      fast >= 3 * culori,
    ),
    row('CIEDE2000 textbook, speed over culori’s', textbook / culori, '≥ 1', textbook >= culori),
    row('farthest from culori, textbook, × 1e-9', textbookOff * 1e9, '≤ 1', textbookOff <= 1e-9),
    row(
      'farthest from culori, without trigonometry, × 1e-5',
      fastOff * 1e5,
      '≤ 1',
      fastOff <= 1e-5,
    ),
    ...[
      [1470, small],
      [12810, large],
    ].map(([count, { took, share }]) =>
      row(
        `choosing 8 of 120 beads for ${count} stitches (${took.toFixed(0)} ms), over the time culori takes to measure the pairs`,
        share,
        '≤ 1.5',
        share <= 1.5,
      ),
    ),
  ];
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.table(await run());
