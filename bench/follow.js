// What a picture that moves costs: Charting.follow over a curved drag with turning and zoom, against a
// yardstick in the same run: 200,000 × ciede2000Fast. And the longest step of Charting.settle against
// the 8 ms after which a worker should look for a newer wish.
import { readFileSync } from 'node:fs';
import { readPalette } from '../dist/core/beads/palette/read-palette.js';
import { Charting } from '../dist/core/charting.js';
import { ciede2000Fast } from '../dist/core/colour/ciede2000.js';
import { thumbnailOf } from '../dist/core/picture/thumbnail.js';
import { readPicture } from '../dist/node/read/read-picture.js';

const top = new URL('../', import.meta.url);
const frames = 30;
const turns = 6;
const mostStepMs = 8;

/** Milliseconds of work of this process: other programs on the machine do not count. */
const workMs = () => process.cpuUsage().user / 1000;
const median = (values) => values.slice().sort((a, b) => a - b)[values.length >> 1];

function yardstick() {
  const times = [];
  let sum = 0;
  for (let turn = 0; turn < 9; turn++) {
    const from = workMs();
    for (let n = 0; n < 200_000; n++) {
      sum += ciede2000Fast(n % 100, (n % 120) - 60, (n % 77) - 38, 50, 20, -30);
    }
    times.push(workMs() - from);
  }
  if (!(sum > 0)) throw new Error('the yardstick measured nothing');
  return median(times);
}

/**
 * Milliseconds of the longest step, each step at its quickest of some turns: the steps are the same
 * every time. What hangs on the pixels alone is worked out before, by a first chart.
 */
function longestStep(wish) {
  const least = [];
  const charting = new Charting(wish);
  for (const step of charting.settle()) if (!step.stage) throw new Error('a step says its stage');
  for (let turn = 0; turn < turns; turn++) {
    charting.change({ place: { ...wish.place, zoom: 1.21 } });
    charting.follow();
    charting.change({ place: wish.place });
    charting.follow();
    const steps = charting.settle();
    for (let n = 0, done = false; !done; n++) {
      const from = performance.now();
      done = steps.next().done;
      least[n] = Math.min(least[n] ?? Infinity, performance.now() - from);
    }
  }
  return Math.max(...least);
}

/** A place on the way of a hand. */
const placeAt = (n) => ({
  place: 'fill',
  zoom: 1.2 + 0.1 * Math.sin(n / 7),
  shiftXmm: 4 * Math.cos(n / 5),
  shiftYmm: 3 * Math.sin(n / 5),
  rotateDegrees: 10 * Math.sin(n / 9),
});

export async function run() {
  const palette = readFileSync(new URL('palettes/drawers.csv', top), 'utf8');
  const { beads } = readPalette(palette, 'drawers.csv', {});
  const rows = [];
  const cases = [
    ['dahlia.jpg', 'photo', 25, 0.5],
    ['rooster.svg', 'drawing', 25, 0.8],
    ['dahlia.jpg', 'photo', 60, 1.5],
    ['rooster.svg', 'drawing', 60, 2.5],
  ];
  for (const [file, art, rounds, bar] of cases) {
    const bytes = readFileSync(new URL(`fixtures/pictures/${file}`, top));
    const picture = thumbnailOf(await readPicture(bytes, file), 1024);
    const wish = {
      picture,
      pictureName: file,
      title: file,
      beads,
      colours: 8,
      shape: { wedges: 7, rounds, beadDiameterMm: 2.1 },
      place: placeAt(0),
      art,
      background: '#ffffff',
    };
    const charting = new Charting(wish);
    const times = [];
    for (let n = 0; n < frames + 5; n++) {
      charting.change({ place: placeAt(n) });
      const from = workMs();
      charting.follow();
      if (n >= 5) times.push(workMs() - from);
    }
    const value = median(times) / yardstick();
    const name = `follow() of a ${art}, ${rounds} rounds, in yardsticks`;
    rows.push({ name, value, bar: `≤ ${bar}`, ok: value <= bar });
    const longest = longestStep({ ...wish, edges: 0.3, lift: 0.5, tidy: 2 }) / mostStepMs;
    const step = `longest step of settle() of a ${art}, ${rounds} rounds, ÷ ${mostStepMs} ms`;
    rows.push({ name: step, value: longest, bar: '≤ 1', ok: longest <= 1 });
  }
  return rows;
}
