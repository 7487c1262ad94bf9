import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { ciede2000Fast } from '../src/core/colour/ciede2000.js';
import { hexToLab65 } from '../src/core/colour/lab.js';
import type { RondureError } from '../src/core/errors.js';
import { readJars } from '../src/core/beads/palette/photo/read-jars.js';
import type { JarGrid } from '../src/core/beads/palette/photo/grid.js';
import { readPicture } from '../src/node/read/read-picture.js';
import { toLinear } from './support/coloured-page.js';
import { jarPhoto } from './support/jar-photo.js';
import type { JarPhoto } from './support/jar-photo.js';
import { photograph } from './support/photograph.js';

const hexes = [
  ...['#f8f6f0', '#d8b066', '#b3262e', '#2f6f9f'],
  ...['#1d5a3c', '#111111', '#e7a3b5', '#7a4b2a'],
  ...['#8f9aa0', '#f2d13d', '#5b3a8e', '#4fb3a5'],
];
const grid = { rows: 3, columns: 4 };
const small = { ...grid, hexes, widthPx: 800, heightPx: 600, beadPx: 7 };
/** Half the light on one side, a warm lamp, grain, a turned camera and JPEG. */
const hard = {
  light: [0.85, 0.45],
  lamp: [1, 0.9, 0.75],
  noise: 4,
  quality: 80,
  turnDegrees: 3,
} as const;

async function read(wish: JarPhoto, asked: JarGrid = wish) {
  const picture = await readPicture(await jarPhoto(wish), 'jars.jpg');
  return readJars(picture, asked, 'jars.jpg');
}

/** CIEDE2000 of each jar to the colour that was painted. */
async function differences(wish: JarPhoto): Promise<number[]> {
  const { jars } = await read(wish);
  expect(jars.map(({ row, column }) => [row, column])).toEqual(
    wish.hexes.map((_, n) => [Math.floor(n / wish.columns) + 1, (n % wish.columns) + 1]),
  );
  return jars.map(({ hex }, n) => between(hex, wish.hexes[n]!));
}

const between = (one: string, other: string) =>
  ciede2000Fast(...hexToLab65(one), ...hexToLab65(other));
const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;

describe('colours from a photograph', () => {
  // Truth is what was painted; the mean light of a painted bead is its colour, highlights included.
  it.each([
    ['glossy beads', { ...hard, seed: 7 }, 3, 7],
    [
      'matte beads, lit from the right, aslant',
      { ...hard, light: [0.45, 0.85], finish: 'matte', keystone: 0.12, seed: 8 },
      3,
      5,
    ],
    ['beads on paper on a dark table', { ...hard, turnDegrees: 0, table: 0.08, seed: 9 }, 3, 7],
    ['single beads', { ...hard, count: 1, beadPx: 12, heap: 0.05, seed: 11 }, 3.5, 8],
    ['balls', { ...hard, turnDegrees: -3, beads: 'balls', seed: 10 }, 3, 7],
  ] as const)('of %s are near', async (_, more, mostMean, mostWorst) => {
    const found = await differences({ ...small, ...more });
    expect(mean(found)).toBeLessThan(mostMean);
    expect(Math.max(...found)).toBeLessThan(mostWorst);
  });

  it('hardly depend on the light: uneven and warm against even and white', async () => {
    const even = await read({ ...small, light: [0.9, 0.9], seed: 7 });
    const uneven = await read({ ...small, ...hard, turnDegrees: 0, seed: 7 });
    const apart = even.jars.map(({ hex }, n) => between(hex, uneven.jars[n].hex));
    expect(mean(apart)).toBeLessThan(0.6);
    expect(Math.max(...apart)).toBeLessThan(1.5);
    expect(uneven.notes).toEqual([]);
  });

  it.each([
    [1, 5],
    [7, 9],
  ])('are read from %i rows of %i', async (rows, columns) => {
    const many = Array.from({ length: rows * columns }, (_, n) => hexes[1 + (n % 11)]);
    const found = await differences({
      ...small,
      ...hard,
      rows,
      columns,
      hexes: many,
      beadPx: rows * columns > 20 ? 4 : 7,
      turnDegrees: 1,
      seed: 3,
    });
    expect(mean(found)).toBeLessThan(3.5);
  });

  it('say which places are empty', async () => {
    const gap = hexes.map((hex, n) => (n === 5 ? undefined : hex));
    const { jars, notes } = await read({ ...small, hexes: gap, light: [0.9, 0.8], seed: 4 });
    expect(jars).toHaveLength(11);
    expect(notes).toEqual([{ code: 'jars-empty', facts: { places: ['r2c2'] } }]);
  });

  it('are not guessed when the grid is another one, or when nothing lies there', async () => {
    const picture = await readPicture(await jarPhoto({ ...small, ...hard, seed: 5 }), 'jars.jpg');
    for (const asked of [
      { rows: 4, columns: 4 },
      { rows: 3, columns: 3 },
      { rows: 2, columns: 4 },
      { rows: 6, columns: 8 },
      { rows: 3, columns: 2 },
      { rows: 1, columns: 1 },
      { rows: 60, columns: 60 },
    ]) {
      const refusal = () => readJars(picture, asked, 'jars.jpg').notes;
      expect.soft(refusal, JSON.stringify(asked)).toThrow(/do not lie in/);
    }
    const nothing = await jarPhoto({ ...small, hexes: [], light: [0.8, 0.6], noise: 4, seed: 6 });
    const empty = await readPicture(nothing, 'jars.jpg');
    const code = (() => {
      try {
        return readJars(empty, grid, 'jars.jpg').jars.length;
      } catch (error) {
        return (error as RondureError).code;
      }
    })();
    expect(code).toBe('jars-none');
  });

  it('say when the paper is burnt out', async () => {
    const { notes } = await read({ ...small, light: [1.6, 1.5], seed: 5 });
    expect(notes.map((note) => note.code)).toContain('paper-too-bright');
  });

  it('say when a heap is mixed, and when the paper is dark', async () => {
    const mixed = await read({ ...small, ...hard, seed: 7, mixed: [5, '#f2d13d'] });
    expect(mixed.notes).toEqual([{ code: 'jar-mixed', facts: { places: ['r2c2'] } }]);
    const dark = await read({ ...small, ...hard, light: [0.12, 0.08], seed: 7 });
    expect(dark.notes).toEqual([{ code: 'paper-too-dark', facts: undefined }]);
  });

  it('are read from paper that lies askew on a table and does not fill the picture', async () => {
    const flat = { ...small, widthPx: 1200, heightPx: 850, beadPx: 10, quality: 95, seed: 21 };
    const jpeg = sharp(await jarPhoto({ ...flat, beads: 'balls' }));
    const { data, info } = await jpeg.raw().toBuffer({ resolveWithObject: true });
    const page = { ...info, light: Float32Array.from(data, toLinear) };
    const photo = await photograph(page, {
      ...{ width: 1000, height: 750, pitch: 18, yaw: -6, roll: 4, distance: 1.5, focal: 1.1 },
      ...{ table: [0.12, 0.07, 0.04], lamp: [1, 0.86, 0.62], fallX: 0.45, fallY: 0.2 },
      ...{ corners: 0.3, blur: 0.6, grain: 3, quality: 78 },
    });
    const picture = await readPicture(photo, 'jars.jpg');
    const { jars, notes } = readJars(picture, grid, 'jars.jpg');
    const found = jars.map(({ hex }, n) => between(hex, hexes[n]));
    expect(notes).toEqual([]);
    expect(mean(found)).toBeLessThan(3);
    expect(Math.max(...found)).toBeLessThan(5);
  });

  it.each(['cat-chelsea.png', 'dahlia.jpg'])('are not seen in other pictures: %s', async (name) => {
    const bytes = await readFile(new URL(`../fixtures/pictures/${name}`, import.meta.url));
    const picture = await readPicture(bytes, name);
    for (const [rows, columns] of [
      [1, 1],
      [2, 3],
    ]) {
      // prettier-ignore
      expect.soft(() => readJars(picture, { rows, columns }, name)).toThrow();
    }
  });
});
