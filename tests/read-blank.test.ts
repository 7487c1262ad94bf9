import { mkdirSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { blankPattern } from '../src/core/blank/blank-pattern.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { checkPattern } from '../src/core/pattern/read/check.js';
import { lettersInWorkingOrder } from '../src/core/pattern/stitches.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { cellPatch } from '../src/core/blank/cell-patch.js';
import { likelyBeads } from '../src/core/blank/likely-beads.js';
import { readBlank } from '../src/core/blank/read-blank.js';
import { readCells } from '../src/core/blank/read-cells.js';
import { undecided } from '../src/core/beads/bead.js';
import type { ShapeWish } from '../src/core/panel/shape.js';
import { readPicture } from '../src/node/read/read-picture.js';
import { en } from '../src/words/index.js';
import { colouredPage, noise } from './support/coloured-page.js';
import { fonts } from './support/panel-sheet.js';
import { photograph } from './support/photograph.js';
import type { Camera } from './support/photograph.js';

/** The maker's beads: eight that are coloured with, and four more that lie between them. */
const beads = readPalette(
  `id,name,hex
k1,night,#1d2a4d
k2,kingfisher,#1f7fa8
k3,rust,#b5502a
k4,barley,#d9b36a
k5,reed,#4f7a3a
k6,berry,#8e2346
k7,lilac,#9f86c0
k8,gorse,#ece04a
d1,mint,#9fd6b4
d2,cocoa,#5b3a29
d3,rose,#e08aa0
d4,slate,#6f7a80
`,
  'beads.csv',
).beads;

interface Setting {
  readonly about: string;
  readonly shape: Partial<ShapeWish>;
  readonly colours: number;
  readonly grain: number;
  readonly ragged: number;
  readonly camera: Partial<Camera>;
}

const flat: Camera = {
  width: 1000,
  height: 1400,
  pitch: 0,
  yaw: 0,
  roll: 0,
  distance: 1.5,
  focal: 1.36,
  table: [0.12, 0.07, 0.04],
  lamp: [1, 1, 1],
  fallX: 0,
  fallY: 0,
  corners: 0,
  blur: 0.4,
  grain: 2,
  quality: 92,
};

const settings: Setting[] = [
  {
    about: 'a scan: flat, even, white all around',
    shape: {},
    colours: 6,
    grain: 0.3,
    ragged: 0.1,
    camera: { table: [1, 1, 1], blur: 0.5, grain: 1, quality: 90 },
  },
  {
    about: 'a scan laid in upside down, a degree askew, on a black lid',
    shape: { wedges: 6, rounds: 18 },
    colours: 8,
    grain: 0.3,
    ragged: 0.15,
    camera: { table: [0.01, 0.01, 0.01], roll: 181, focal: 1.33 },
  },
  {
    about: 'a phone from the near side, 25 degrees, wooden table, light falling off by a third',
    shape: {},
    colours: 5,
    grain: 0.4,
    ragged: 0.2,
    camera: { pitch: 25, fallY: 0.35, focal: 1.25 },
  },
  {
    about: 'from the corner: 20 degrees both ways and turned by 8, yellow lamp',
    shape: { rounds: 16 },
    colours: 7,
    grain: 0.35,
    ragged: 0.2,
    camera: { pitch: 20, yaw: -20, roll: 8, focal: 1.2, lamp: [1, 0.86, 0.62], blur: 0.8 },
  },
  {
    about: 'held sideways (a quarter turn), 30 degrees, dark corners, daylight from one side',
    shape: { wedges: 8, rounds: 15 },
    colours: 6,
    grain: 0.4,
    ragged: 0.2,
    camera: {
      width: 1400,
      height: 1000,
      roll: 90,
      pitch: 30,
      focal: 1.25,
      corners: 0.35,
      fallX: 0.3,
      lamp: [0.9, 0.95, 1],
    },
  },
  {
    about: 'a steep look of 38 degrees, light table',
    shape: { rounds: 14 },
    colours: 6,
    grain: 0.3,
    ragged: 0.15,
    camera: { pitch: 38, focal: 1.3, distance: 1.7, table: [0.6, 0.57, 0.5] },
  },
  {
    about: 'a dim room: half the light, noise, yellowish, poor JPEG',
    shape: { rounds: 14, hand: 'left' },
    colours: 5,
    grain: 0.3,
    ragged: 0.2,
    camera: { pitch: -15, yaw: 12, focal: 1.25, lamp: [0.5, 0.42, 0.3], grain: 5, quality: 60 },
  },
  {
    about: 'out of focus by two pixels',
    shape: { rounds: 13, outline: 'circle', construction: 'joined' },
    colours: 6,
    grain: 0.35,
    ragged: 0.2,
    camera: { pitch: 12, roll: -5, focal: 1.25, blur: 2, quality: 80 },
  },
  {
    about: 'a small picture sent by messenger: 0.9 megapixels, JPEG 55',
    shape: { rounds: 14 },
    colours: 6,
    grain: 0.3,
    ragged: 0.15,
    camera: { width: 820, height: 1120, pitch: 15, yaw: 8, focal: 1.25, blur: 0.5, quality: 55 },
  },
  {
    about: 'hasty colouring: much paper shows through, ragged edges, uneven light both ways',
    shape: { rounds: 17 },
    colours: 4,
    grain: 0.6,
    ragged: 0.35,
    camera: { pitch: 18, yaw: -10, roll: 3, focal: 1.2, fallX: 0.35, fallY: 0.25, corners: 0.2 },
  },
];

/** A made-up motif of rings, petals and flecks; every ninth or so cell stays white. */
function motif(shape: { wedges: number; rounds: number }, colours: number, seed: number) {
  const of: number[] = [];
  for (let r = 1; r <= shape.rounds; r++) {
    for (let i = 0; i < shape.wedges * r; i++) {
      const petal = Math.floor((3 * i) / r) % colours;
      const fleck = noise(r, i, seed);
      const bead =
        fleck < 0.2 ? Math.floor(fleck * 5 * colours) : r % 4 === 0 ? r % colours : petal;
      of.push(noise(i, r, seed + 1) < 0.11 ? undecided : bead);
    }
  }
  return of;
}

test.each(settings.map((setting, n) => ({ ...setting, n })))(
  'reads $about',
  async ({ shape, colours, grain, ragged, camera, n }) => {
    const wish = { wedges: 7, rounds: 20, beadDiameterMm: 2.1, ...shape };
    const blank = blankPattern({ title: 'Barley moon', shape: wish });
    const geometry = panelGeometry(blank.shape, { startDegrees: blank.panels[0].startDegrees });
    const footprints = panelFootprints(geometry);
    const sheet = { pattern: blank, panel: 0, geometry, footprints, words: en, fonts };
    const wanted = motif(blank.shape, colours, n + 1);
    // Four cells go wrong on paper: two half white, two half another colour.
    const painted = wanted.flatMap((bead, s) => (bead >= 0 && s > 30 ? [s] : []));
    const sloppy = [0.2, 0.4, 0.6, 0.8].map((share) => painted[Math.floor(share * painted.length)]);
    const second = (s: number) => beads[(wanted[s] + 1) % colours].hex;
    const halves = new Map(sloppy.map((s, k) => [s, k % 2 === 0 ? undefined : second(s)]));
    const hexOf = (s: number) => (wanted[s] >= 0 ? beads[wanted[s]].hex : undefined);
    const page = await colouredPage(sheet, { hexOf, grain, ragged, halves, seed: 11 * n + 3 });
    const jpeg = await photograph(page, { ...flat, ...camera });
    if (process.env.KEEP_PHOTOS) {
      mkdirSync(process.env.KEEP_PHOTOS, { recursive: true });
      writeFileSync(`${process.env.KEEP_PHOTOS}/${n}.jpg`, jpeg);
    }

    const name = 'photo.jpg';
    const { pattern, report } = readBlank({
      picture: await readPicture(jpeg, name),
      pictureName: name,
      blank,
      title: 'Read',
      beads,
      colours: 8,
      unpainted: undecided,
    });
    expect(checkPattern(pattern)).toEqual([]);
    expect(report.litUnevenly).toBe(false);
    const idOf = new Map(pattern.beads.map(({ letter, id }) => [letter, id]));
    const read = Array.from(lettersInWorkingOrder(pattern.panels[0]), (mark) => idOf.get(mark));
    const want = wanted.map((bead) => (bead >= 0 ? beads[bead].id : undefined));
    const doubted = new Set(
      report.doubts.map(({ round, stitch }) => {
        return (blank.shape.wedges * round * (round - 1)) / 2 + stitch - 1;
      }),
    );
    const wrong = want.flatMap((id, s) => (read[s] === id || halves.has(s) ? [] : [s]));
    if (process.env.DBG)
      console.log(
        n,
        'wrong',
        wrong.length,
        'doubted',
        doubted.size,
        sloppy.filter((s) => doubted.has(s)).length,
      );
    expect(wrong.length / want.length).toBeLessThanOrEqual(0.01);
    // What was read wrongly, and what was coloured badly, is named; and little else is.
    expect(wrong.filter((s) => !doubted.has(s))).toEqual([]);
    expect(sloppy.filter((s) => !doubted.has(s))).toEqual([]);
    expect(doubted.size / want.length).toBeLessThan(0.05);
  },
);

test.each([
  ['a shadow with a soft edge over half of the page', 0.5, true],
  ['a faint one', 0.12, false],
])('tells %s', async (_, depth, told) => {
  const blank = blankPattern({
    title: 'x',
    shape: { wedges: 7, rounds: 10, beadDiameterMm: 2.1 },
  });
  const geometry = panelGeometry(blank.shape, { startDegrees: blank.panels[0].startDegrees });
  const footprints = panelFootprints(geometry);
  const sheet = { pattern: blank, panel: 0, geometry, footprints, words: en, fonts };
  const hexOf = (s: number) => (s % 3 ? beads[s % 2].hex : undefined);
  const page = await colouredPage(sheet, { hexOf, grain: 0.3, ragged: 0.1, seed: 3 });
  page.light.forEach((light, n) => {
    const [x, y] = [Math.floor(n / 3) % page.width, Math.floor(n / 3 / page.width)];
    const lit = 1 / (1 + Math.exp(-(x - 0.35 * page.width - 0.3 * y) / 25));
    page.light[n] = light * (1 - depth + depth * lit);
  });
  const jpeg = await photograph(page, { ...flat, pitch: 15, focal: 1.25 });
  const { report } = readBlank({
    picture: await readPicture(jpeg, 'photo.jpg'),
    pictureName: 'photo.jpg',
    blank,
    title: 'x',
    beads,
    colours: 3,
    unpainted: undecided,
  });
  expect(report.litUnevenly).toBe(told);
});

test('the cutting about a cell shows it where its outline lies, upright, however the photograph was taken', async () => {
  const blank = blankPattern({
    title: 'x',
    shape: { wedges: 6, rounds: 8, beadDiameterMm: 2.1 },
  });
  const geometry = panelGeometry(blank.shape, { startDegrees: blank.panels[0].startDegrees });
  const footprints = panelFootprints(geometry);
  const sheet = { pattern: blank, panel: 0, geometry, footprints, words: en, fonts };
  // One berry cell among reed ones.
  const [berry, reed] = [beads[5], beads[4]];
  const at = 90;
  const hexOf = (s: number) => (s === at ? berry.hex : reed.hex);
  const page = await colouredPage(sheet, { hexOf, grain: 0.1, ragged: 0.1, seed: 5 });
  const jpeg = await photograph(page, { ...flat, roll: 170, pitch: 20, yaw: -10, focal: 1.05 });
  const picture = await readPicture(jpeg, 'photo.jpg');
  const wish = { picture, pictureName: 'photo.jpg', blank, title: 'x', beads, colours: 4 };
  const reading = readCells({ ...wish, unpainted: undecided });
  const side = 210;
  const { picture: patch, outline } = cellPatch(picture, reading, at, side);
  expect([patch.width, patch.height]).toEqual([side, side]);
  // By the crayons of the test: berry is red, reed is green; the middle of the outline is the cell's.
  const xs = [...outline].filter((_, p) => p % 2 === 0);
  const ys = [...outline].filter((_, p) => p % 2 === 1);
  const reds: number[][] = [];
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      const [r, g, b] = patch.data.subarray(4 * (y * side + x));
      if (r > g + 25 && r > b) reds.push([x, y]);
    }
  }
  expect(reds.length).toBeGreaterThan(150);
  const mean = (c: number) => reds.reduce((sum, one) => sum + one[c], 0) / reds.length;
  const middle = (of: number[]) => (Math.min(...of) + Math.max(...of)) / 2;
  // A cell is 30 pixels wide there: a tenth of it.
  expect(Math.abs(mean(0) - middle(xs))).toBeLessThan(3);
  expect(Math.abs(mean(1) - middle(ys))).toBeLessThan(3);
  expect(reading.judged[at].bead).toBe(5);
});

test('the beads a doubtful cell may be begin with those in question, nearest first', () => {
  const group = (bead: number, L: number, a: number, b: number) => ({
    colour: [L, a, b] as const,
    spread: 1,
    bead,
    next: undefined,
    difference: 0,
  });
  const groups = [group(3, 40, 0, 0), group(1, 50, 0, 0), group(2, 60, 0, 0), group(0, 90, 0, 0)];
  const cell = { lab: new Float32Array(), paper: 0, colour: [58, 0, 0] as const, even: 1 };
  // On the grey axis CIEDE2000 follows lightness.
  expect(likelyBeads(cell, groups, { bead: 1, doubt: 'between', other: 0 })).toEqual([1, 0, 2]);
  expect(likelyBeads(cell, groups, { bead: undecided, doubt: 'partly' })).toEqual([2, 1, 3]);
  expect(likelyBeads(undefined, groups, { bead: undecided, doubt: 'outside' })).toEqual([0, 2, 1]);
});
