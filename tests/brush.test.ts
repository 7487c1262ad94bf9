import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';
import { withHandLaid } from '../src/core/brush/hand-laid.js';
import { laidEntries } from '../src/core/brush/laid-entries.js';
import { stitchesInLoop, stitchesOnLine } from '../src/core/brush/line.js';
import { movedPart } from '../src/core/brush/moved-part.js';
import { patchAt } from '../src/core/brush/patch.js';
import {
  acrossRounds,
  alongRound,
  inEveryWedge,
  placeOfStitch,
  stitchAtPlace,
  stitchesOfRound,
  stitchesOfWedge,
} from '../src/core/brush/places.js';
import { layPanel } from '../src/core/panel/lay.js';
import { completeShape, stitchCount } from '../src/core/panel/shape.js';
import { checkPattern } from '../src/core/pattern/read/check.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { patternText } from '../src/core/pattern/serialise.js';
import { lettersInWorkingOrder } from '../src/core/pattern/stitches.js';
import { parseWish, wishText } from '../src/core/pattern/read/wish-file.js';
import type { HandLaid } from '../src/core/pattern/wished.js';
import { anyPattern, patternOf, someBeads } from './support/patterns.js';
import { inProcess } from './support/run.js';

const folder = mkdtempSync(join(tmpdir(), 'rondure-brush-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const anyShape = fc.record({
  wedges: fc.integer({ min: 3, max: 12 }),
  rounds: fc.integer({ min: 2, max: 15 }),
});
const anyStitch = anyShape.chain((shape) =>
  fc.record({ shape: fc.constant(shape), s: fc.nat(stitchCount(shape) - 1) }),
);

test('a stitch is where its place says, and rounds and wedges hold every stitch once', () => {
  fc.assert(
    fc.property(anyStitch, ({ shape, s }) => {
      const place = placeOfStitch(shape, s);
      expect(stitchAtPlace(shape, place)).toBe(s);
      expect(stitchesOfRound(shape, place.round)).toContain(s);
      expect(stitchesOfWedge(shape, place.wedge)).toContain(s);
      const all = Array.from({ length: stitchCount(shape) }, (_, n) => n);
      const order = (list: number[]) => list.sort((one, other) => one - other);
      const byWedge = Array.from({ length: shape.wedges }, (_, n) => stitchesOfWedge(shape, n + 1));
      expect(order(byWedge.flat())).toEqual(all);
      const byRound = Array.from({ length: shape.rounds }, (_, n) => stitchesOfRound(shape, n + 1));
      expect(byRound.flat()).toEqual(all);
    }),
  );
});

test('the cell cursor comes back: out and in, once round, and through every wedge', () => {
  fc.assert(
    fc.property(anyStitch, ({ shape, s }) => {
      const { round, wedge } = placeOfStitch(shape, s);
      const out = acrossRounds(shape, s, 'out');
      if (round < shape.rounds) {
        expect(placeOfStitch(shape, out)).toMatchObject({ round: round + 1, wedge });
        expect(acrossRounds(shape, out, 'in')).toBe(s);
      } else expect(out).toBe(s);
      expect(alongRound(shape, alongRound(shape, s, 1), -1)).toBe(s);
      expect(alongRound(shape, s, shape.wedges * round)).toBe(s);
      const alike = inEveryWedge(shape, s);
      expect(alike).toContain(s);
      expect(new Set(alike.map((one) => placeOfStitch(shape, one).wedge)).size).toBe(shape.wedges);
      expect(alongRound(shape, alike[0], round)).toBe(alike[1]);
    }),
  );
});

const seven = layPanel(completeShape({ wedges: 7, rounds: 12, beadDiameterMm: 2.1 }));

test('a line goes from its first stitch to its last without a gap', () => {
  const { centres, count, shape } = seven.geometry;
  const at = (s: number) => ({ xMm: centres[2 * s], yMm: centres[2 * s + 1] });
  fc.assert(
    fc.property(fc.nat(count - 1), fc.nat(count - 1), (a, b) => {
      const line = stitchesOnLine(seven.footprints, at(a), at(b), shape.stitchWidthMm / 6);
      expect(line[0]).toBe(a);
      expect(line.at(-1)).toBe(b);
      // The hole in the middle holds no stitch: a line may cross it.
      for (let n = 1; n < line.length; n++) {
        const near = seven.footprints.neighbours(line[n - 1]);
        const close = Math.hypot(
          centres[2 * line[n]] - centres[2 * line[n - 1]],
          centres[2 * line[n] + 1] - centres[2 * line[n - 1] + 1],
        );
        expect(near.includes(line[n]) || close < 2 * shape.roundHeightMm + 0.5).toBe(true);
      }
    }),
  );
});

test('a loop around the whole panel holds every stitch, one beside it none', () => {
  const { centres, count } = seven.geometry;
  const square = (x: number) => [
    { xMm: x - 60, yMm: -60 },
    { xMm: x + 60, yMm: -60 },
    { xMm: x + 60, yMm: 60 },
    { xMm: x - 60, yMm: 60 },
  ];
  expect(stitchesInLoop(centres, square(0))).toHaveLength(count);
  expect(stitchesInLoop(centres, square(200))).toEqual([]);
  const right = stitchesInLoop(centres, [
    { xMm: 0, yMm: -99 },
    { xMm: 99, yMm: -99 },
    { xMm: 99, yMm: 99 },
    { xMm: 0, yMm: 99 },
  ]);
  expect(right).toEqual(
    Array.from({ length: count }, (_, s) => s).filter((s) => centres[2 * s] > 0),
  );
});

test('a patch is of one bead, hangs together, and has none of its bead around it', () => {
  const { count } = seven.geometry;
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: -1, max: 1 }), { minLength: count, maxLength: count }),
      fc.nat(count - 1),
      (beadOf, s) => {
        const patch = new Set(patchAt(seven.footprints, beadOf, s));
        expect(patch.has(s)).toBe(true);
        for (const one of patch) {
          expect(beadOf[one]).toBe(beadOf[s]);
          for (const next of seven.footprints.neighbours(one)) {
            expect(patch.has(next)).toBe(beadOf[next] === beadOf[s]);
          }
        }
      },
    ),
    { numRuns: 30 },
  );
});

test('a part that is moved lies there, and what was around it closes over its old place', () => {
  const { centres, count, shape } = seven.geometry;
  const ground = 0;
  const beadOf = new Int16Array(count).fill(ground);
  const part = patchAt(seven.footprints, beadOf, 0).filter(
    (s) => Math.hypot(centres[2 * s] + 10, centres[2 * s + 1]) < 5,
  );
  for (const s of part) beadOf[s] = 3;
  const by = { xMm: 18, yMm: 2 };
  const moved = beadOf.slice();
  for (const [s, bead] of movedPart(seven, beadOf, part, by)) moved[s] = bead;
  for (const s of part) expect(moved[s]).toBe(ground);
  const there = [...moved.keys()].filter((s) => moved[s] === 3);
  expect(Math.abs(there.length - part.length)).toBeLessThan(0.25 * part.length);
  for (const s of there) {
    const far = Math.hypot(centres[2 * s] - 8, centres[2 * s + 1] - 2);
    expect(far).toBeLessThan(5 + shape.roundHeightMm);
  }
  const copied = movedPart(seven, beadOf, part, by, true);
  for (const s of part) expect(copied.has(s)).toBe(false);
  expect(movedPart(seven, beadOf, part, { xMm: 0, yMm: 0 }).size).toBe(0);
});

/** Beads of a pattern and one of the maker's own, anywhere on it. */
const anyLaid = anyPattern.chain((pattern) => {
  const ids = [...pattern.beads.map(({ id }) => id), 'own', '.'];
  const count = stitchCount(pattern.shape);
  return fc.record({
    pattern: fc.constant(pattern),
    placed: fc
      .array(fc.tuple(fc.nat(count - 1), fc.constantFrom(...ids)), { minLength: 1, maxLength: 30 })
      .map((pairs) => new Map(pairs)),
  });
});
const own = { id: 'own', name: 'harbour lamp', hex: '#ffd27f' };
const laidOf = (pattern: Pattern, placed: ReadonlyMap<number, string>): HandLaid => ({
  wedges: pattern.shape.wedges,
  beads: [own],
  ...laidEntries(pattern.shape, [placed]),
});

test('beads laid by hand stand where they were laid, and all else stays as it was', () => {
  fc.assert(
    fc.property(anyLaid, ({ pattern, placed }) => {
      const free = pattern.beads.length < 24 || ![...placed.values()].includes('own');
      fc.pre(free);
      const { pattern: made, lost } = withHandLaid(pattern, laidOf(pattern, placed));
      expect(lost).toBe(0);
      const [was, is] = [pattern, made].map((one) => {
        const idOf = new Map(one.beads.map(({ letter, id }) => [letter, id]));
        return Array.from(lettersInWorkingOrder(one.panels[0]), (mark) => idOf.get(mark) ?? mark);
      });
      is.forEach((id, s) => expect(id).toBe(placed.get(s) ?? was[s]));
      const broken = checkPattern(made).filter(({ code }) => code !== 'letter-out-of-order');
      expect(broken).toEqual([]);
      for (const bead of made.beads) {
        const before = pattern.beads.find(({ id }) => id === bead.id);
        if (before) expect(bead).toEqual(before);
      }
      // Laid again over itself it is the same.
      expect(withHandLaid(made, laidOf(made, placed)).pattern).toEqual(made);
    }),
  );
});

test('what has no stitch any more is counted, and other wedges take none of it', () => {
  const pattern = patternOf(['AAAAAAA', 'A'.repeat(14)], {}, someBeads(1));
  const laid = (wedges: number): HandLaid => ({
    wedges,
    beads: [own],
    front: [
      { bead: 'own', round: 2, stitches: [1, 14, 15] },
      { bead: 'own', round: 3, stitches: [1] },
      { bead: 'nobody', round: 1, stitches: [1] },
    ],
    back: [{ bead: 'own', round: 1, stitches: [1] }],
  });
  const made = withHandLaid(pattern, laid(7));
  expect(made.lost).toBe(4);
  expect(made.pattern.panels[0].rounds).toEqual(['AAAAAAA', 'BAAAAAAAAAAAAB']);
  expect(withHandLaid(pattern, laid(8))).toEqual({ pattern, lost: 6 });
});

test('a 25th colour has no letter, and says so', () => {
  const pattern = patternOf(['ABC', 'DEFGHJ', 'KLMNPQRST', 'UVWXYZAAAAAA'], {}, someBeads(24));
  const laid = { wedges: 3, beads: [own], front: [{ bead: 'own', round: 4, stitches: [9] }] };
  expect(() => withHandLaid(pattern, laid)).toThrow(
    expect.objectContaining({ code: 'no-letter-free' }),
  );
  // Over the last stitch of a colour, its letter is free.
  const over = { ...laid, front: [{ bead: 'own', round: 1, stitches: [2] }] };
  expect(withHandLaid(pattern, over).pattern.beads[1]).toEqual({ letter: 'B', ...own });
});

const palette = join(folder, 'few.csv');
writeFileSync(
  palette,
  'id,name,hex\nk,black,#101010\nc,cobalt,#1f3fa8\nr,red,#b02020\nw,white,#f4f4f0\no,ochre,#c89030\n',
);
const rooster = 'fixtures/pictures/rooster.svg';

test('the command line goes on with beads laid by hand, whatever is chosen around them', async () => {
  const one = join(folder, 'one');
  const made = await inProcess('chart', rooster, '--beads', palette, '--rounds', '9', '-o', one);
  expect(made.err).toBe('');
  const pattern = parsePattern(readFileSync(join(one, 'pattern.json'), 'utf8'), 'x');
  const [swapped] = pattern.beads;
  const laid: HandLaid = {
    wedges: 7,
    beads: [own],
    front: [
      { bead: '.', round: 1, stitches: [7] },
      { bead: 'own', round: 9, stitches: [1, 2, 63] },
    ],
  };
  const wish = { ...pattern.wish!, instead: { [swapped.id]: 'r' }, laid };
  const from = join(folder, 'wish.json');
  writeFileSync(from, wishText({ wish }));
  const chartFrom = async (name: string, file: string, ...more: string[]) => {
    const out = join(folder, name);
    const again = ['chart', rooster, '--beads', palette, '--from', file, ...more, '-o', out];
    const said = await inProcess(...again, '--json');
    expect(said.code).toBe(0);
    const text = readFileSync(join(out, 'pattern.json'), 'utf8');
    return { text, pattern: parsePattern(text, 'x'), summary: JSON.parse(said.out) };
  };
  const two = await chartFrom('two', from);
  const rim = two.pattern.panels[0].rounds[8];
  const letter = two.pattern.beads.find(({ id }) => id === 'own')!.letter;
  expect(rim.slice(0, 2) + rim.at(-1)).toBe(letter.repeat(3));
  expect(two.pattern.panels[0].rounds[0].at(-1)).toBe('.');
  expect(two.pattern.beads.map(({ id }) => id)).not.toContain(swapped.id);
  expect(two.summary.beads).toBe(stitchCount(pattern.shape) - 1);
  expect(parseWish(two.text, 'x').wish).toEqual(wish);
  // From its own pattern it is the same file, byte for byte; and so it is when it is drawn again.
  expect((await chartFrom('three', join(folder, 'two', 'pattern.json'))).text).toBe(two.text);
  const drawn = join(folder, 'drawn');
  const redrawn = await inProcess('redraw', join(folder, 'two', 'pattern.json'), '-o', drawn);
  expect(redrawn.code, redrawn.err).toBe(0);
  expect(readFileSync(join(drawn, 'pattern.json'), 'utf8')).toBe(two.text);
  // Other colours leave them where they are; other wedges have no place for them, which is said.
  const fewer = await chartFrom('four', from, '--colours', '2');
  expect(fewer.pattern.panels[0].rounds[8].at(-1)).toBe(
    fewer.pattern.beads.find(({ id }) => id === 'own')!.letter,
  );
  const other = await chartFrom('five', from, '--wedges', '6');
  expect(other.summary.warnings.map(({ code }: { code: string }) => code)).toContain(
    'laid-beads-lost',
  );
  expect(other.pattern.wish?.laid).toBeUndefined();
});

test('the text of a pattern reads back to it, beads laid by hand and all', () => {
  fc.assert(
    fc.property(anyLaid, ({ pattern, placed }) => {
      const laid = laidOf(pattern, placed);
      const wish = {
        colours: 4,
        shape: { wedges: pattern.shape.wedges, beadDiameterMm: 2.1 },
        place: { place: 'fit' as const },
        art: 'auto' as const,
        background: 'auto' as const,
        laid,
      };
      const whole = { ...pattern, wish };
      expect(parsePattern(patternText(whole), 'x')).toEqual(whole);
    }),
  );
});
