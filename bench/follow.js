// What a picture that moves costs: Charting.follow over a curved drag with turning and zoom, and the
// longest steps of settle, against a yardstick in the same run: 200,000 × ciede2000Fast.
import { readFileSync } from 'node:fs';
import { readPalette } from '../dist/core/beads/palette/read-palette.js';
import { Charting } from '../dist/core/charting.js';
import { ciede2000Fast } from '../dist/core/colour/ciede2000.js';
import { thumbnailOf } from '../dist/core/picture/thumbnail.js';
import { readPicture } from '../dist/node/read/read-picture.js';

const top = new URL('../', import.meta.url);
const frames = 30;

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
    const charting = new Charting({
      picture,
      pictureName: file,
      title: file,
      beads,
      colours: 8,
      shape: { wedges: 7, rounds, beadDiameterMm: 2.1 },
      place: placeAt(0),
      art,
      background: '#ffffff',
    });
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
  }
  return rows;
}
