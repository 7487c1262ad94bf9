import fc from 'fast-check';
import { expect, test } from 'vitest';
import { carlsonRD, carlsonRF, ellipseArc } from '../src/core/purse/frame/elliptic.js';
import { frameText, parseFrame } from '../src/core/purse/frame/frame-file.js';
import { bareUnderFrame, planFrame, roundsForFrame } from '../src/core/purse/frame/plan.js';
import { railLengthMm } from '../src/core/purse/frame/rail.js';
import { wornWidthMm } from '../src/core/purse/frame/worn.js';
import { acrossMm, ringLine } from '../src/core/panel/edge.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import type { Frame } from '../src/core/purse/frame/measures.js';
import { completeShape, stitchCount, stitchesBefore } from '../src/core/panel/shape.js';
import type { Shape } from '../src/core/panel/shape.js';

const half = Math.PI / 2;
const frame: Frame = {
  kind: 'half-round',
  widthMm: 85,
  heightMm: 45,
  fixing: 'sewn',
  ratio: 1.15,
  gatherPercent: 0,
};

// Abramowitz & Stegun, Handbook of Mathematical Functions, table 17.1: E(m) to nine decimals
// (typed from memory; each agrees with the arithmetic-geometric mean below).
const completeE: [number, number][] = [
  [0, 1.570796327],
  [0.1, 1.530757637],
  [0.2, 1.489035058],
  [0.3, 1.445363064],
  [0.4, 1.399392139],
  [0.5, 1.350643881],
  [0.6, 1.298428034],
  [0.7, 1.241670567],
  [0.8, 1.178489924],
  [0.9, 1.104774733],
  [1, 1],
];

test.each(completeE)('a quarter of an ellipse with m = %d is E(m)', (m, published) => {
  expect(ellipseArc(1, Math.sqrt(1 - m), half)).toBeCloseTo(published, 8);
});

// B. C. Carlson, Numerical computation of real or complex elliptic integrals (1995), section 3:
// values to check a program by (typed from memory).
test('the symmetric integrals have their published values', () => {
  expect(carlsonRF(1, 2, 0)).toBeCloseTo(1.3110287771461, 12);
  expect(carlsonRF(0.5, 1, 0)).toBeCloseTo(1.8540746773014, 12);
  expect(carlsonRF(2, 3, 4)).toBeCloseTo(0.58408284167715, 12);
  expect(carlsonRD(0, 2, 1)).toBeCloseTo(1.7972103521034, 12);
  expect(carlsonRD(2, 3, 4)).toBeCloseTo(0.16510527294261, 12);
});

/** E(m) by the arithmetic-geometric mean (DLMF 19.8.6), a way of its own. */
function completeByMean(m: number): number {
  let [a, g, c] = [1, Math.sqrt(1 - m), Math.sqrt(m)];
  let sum = (c * c) / 2;
  for (let n = 0; n < 8; n++) {
    [a, g, c] = [(a + g) / 2, Math.sqrt(a * g), (a - g) / 2];
    sum += 2 ** n * c * c;
  }
  return (half / a) * (1 - sum);
}

test('a quarter of any ellipse agrees with the arithmetic-geometric mean to 1e-12', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.05, max: 1, noNaN: true }), (b) => {
      const expected = completeByMean(1 - b * b);
      expect(Math.abs(ellipseArc(1, b, half) / expected - 1)).toBeLessThan(1e-12);
      // The same ellipse lying on its side.
      expect(Math.abs(ellipseArc(b, 1, half) / expected - 1)).toBeLessThan(1e-12);
    }),
  );
});

test('any arc of an ellipse agrees with the sum of its chords', () => {
  const side = fc.double({ min: 5, max: 60, noNaN: true });
  const angle = fc.double({ min: 0.01, max: 3.1, noNaN: true });
  fc.assert(
    fc.property(side, side, angle, (a, b, phi) => {
      const chords = (n: number) => {
        let sum = 0;
        for (let p = 0; p < n; p++) {
          const [s, t] = [(phi * p) / n, (phi * (p + 1)) / n];
          sum += Math.hypot(a * (Math.sin(t) - Math.sin(s)), b * (Math.cos(t) - Math.cos(s)));
        }
        return sum;
      };
      // Chords are short by a share of 1/n²: the next step of Richardson takes that away.
      const best = (4 * chords(2000) - chords(1000)) / 3;
      expect(Math.abs(ellipseArc(a, b, phi) / best - 1)).toBeLessThan(1e-9);
    }),
    { numRuns: 40 },
  );
});

test('rails of each kind have the length of their plain cases', () => {
  const of = (more: Partial<Frame>) => railLengthMm({ ...frame, ...more });
  // Half a circle.
  expect(of({ widthMm: 80, heightMm: 40 })).toBeCloseTo(40 * Math.PI, 6);
  expect(of({ kind: 'squared', widthMm: 80, heightMm: 40, cornerRadiusMm: 40 })).toBeCloseTo(
    40 * Math.PI,
    6,
  );
  expect(of({ kind: 'oval', widthMm: 80, heightMm: 40, hingeWidthMm: 80 })).toBeCloseTo(
    40 * Math.PI,
    6,
  );
  // Three straight sides; with corners of 15 mm each loses 30 - 7.5π.
  expect(of({ kind: 'squared', cornerRadiusMm: 0 })).toBeCloseTo(175, 6);
  expect(of({ kind: 'squared', cornerRadiusMm: 15 })).toBeCloseTo(175 - 60 + 15 * Math.PI, 6);
  // A circle of 40 mm across that is cut 32 mm wide, 12 mm below its middle (3-4-5).
  const oval = of({ kind: 'oval', widthMm: 40, heightMm: 32, hingeWidthMm: 32 });
  expect(oval).toBeCloseTo(40 * (Math.PI - Math.asin(0.8)), 6);
  // Seen in the trade: half-round, 85 mm wide, 40 to 50 mm high, 13 to 14 cm (from memory).
  expect(of({ heightMm: 40 })).toBeGreaterThan(129);
  expect(of({ heightMm: 50 })).toBeLessThan(146);
});

test('worn width of a polygon depends on how it hangs', () => {
  const hexagon = completeShape({
    wedges: 6,
    rounds: 20,
    construction: 'joined',
    beadDiameterMm: 2.1,
  });
  // A corner on top: across its flats, cos 30° of the diagonal.
  expect(wornWidthMm(hexagon)).toBeCloseTo(acrossMm(hexagon) * Math.cos(Math.PI / 6), 5);
  // A side on top: its diagonal.
  const start = panelGeometry(hexagon).startDegrees;
  expect(wornWidthMm(hexagon, start + 30)).toBeCloseTo(acrossMm(hexagon), 5);
  const round = completeShape({ wedges: 6, rounds: 20, outline: 'circle', beadDiameterMm: 2.1 });
  expect(Math.abs(wornWidthMm(round) - acrossMm(round))).toBeLessThan(0.2);
});

test('the number of rounds comes nearest to the wished width, as a hexagon is worn', () => {
  const shape = completeShape({ wedges: 6, rounds: 20, beadDiameterMm: 2.1 });
  const rounds = roundsForFrame(frame, shape);
  const off = (r: number) => Math.abs(wornWidthMm({ ...shape, rounds: r }) - 85 * 1.15);
  for (let r = 2; r <= 80; r++) expect(off(rounds)).toBeLessThanOrEqual(off(r) + 1e-9);
});

const shapes = fc
  .record({
    wedges: fc.integer({ min: 5, max: 9 }),
    increase: fc.constantFrom('first', 'middle', 'last'),
    lean: fc.constantFrom(-0.5, 0, 0.25, 0.5, 0.8),
    construction: fc.constantFrom('spiral', 'joined'),
    hand: fc.constantFrom('right', 'left'),
    beadsFace: fc.constantFrom('away', 'toward'),
    beadDiameterMm: fc.constantFrom(1.5, 2.1, 3.05),
  })
  .map((wish) => completeShape({ ...wish, rounds: 20 } as Parameters<typeof completeShape>[0]));
const starts = fc.option(fc.integer({ min: -180, max: 180 }), { nil: undefined });
const frames = fc.record({
  kind: fc.constantFrom('half-round', 'squared', 'oval'),
  widthMm: fc.integer({ min: 60, max: 120 }),
  heightShare: fc.double({ min: 0.35, max: 0.55, noNaN: true }),
  fixing: fc.constantFrom('sewn', 'glued'),
  gatherPercent: fc.integer({ min: -5, max: 10 }),
});

/** A panel of the recommended size in a frame. */
function framed(shapeOf: Shape, given: { heightShare: number; widthMm: number }, start?: number) {
  const { heightShare, ...rest } = given;
  const measured = { ...frame, ...rest, heightMm: given.widthMm * heightShare } as Frame;
  const rounds = roundsForFrame(measured, shapeOf, start);
  const shape = { ...shapeOf, rounds };
  const geometry = panelGeometry(shape, start === undefined ? {} : { startDegrees: start });
  return { measured, shape, geometry, plan: planFrame(measured, geometry) };
}

test('the stretch is as long as asked, the same on both sides of 12 o’clock, to a stitch', () => {
  fc.assert(
    fc.property(shapes, frames, starts, (shapeOf, given, start) => {
      const { measured, shape, geometry, plan } = framed(shapeOf, given, start);
      const asked = railLengthMm(measured) * (1 + measured.gatherPercent / 100);
      const all = shape.wedges * shape.rounds;
      // The widest stitch along the rim, by its chords, apart from the code under test.
      const line = ringLine(geometry, shape.rounds, all);
      const steps = Array.from({ length: all }, (_, i) =>
        Math.hypot(line[2 * i + 2] - line[2 * i], line[2 * i + 3] - line[2 * i + 1]),
      );
      const widest = Math.max(...steps) * 1.001;
      // Lean may leave an opening between the last stitch and the first: no end can lie inside it.
      const angle = (p: number) => Math.atan2(line[2 * p], -line[2 * p + 1]);
      const short = ((angle(0) - angle(all)) * geometry.direction) / (2 * Math.PI);
      const opening = (short - Math.round(short)) * 2 * Math.PI * Math.hypot(line[0], line[1]);
      const reach = widest + Math.max(0, opening);
      expect(Math.abs(plan.stretchMm - asked)).toBeLessThanOrEqual(reach);
      // Both sides, measured along the rim between 12 o'clock and the hinges.
      const side = (inFrame: (i: number) => boolean, sign: 1 | -1) => {
        let sum = 0;
        for (let i = 0; i < all; i++) {
          if (!inFrame(i)) continue;
          const [x, y] = [line[2 * i] + line[2 * i + 2], line[2 * i + 1] + line[2 * i + 3]];
          if (Math.sign(Math.atan2(x, -y)) === sign) sum += steps[i];
        }
        return sum;
      };
      const inFrame = (i: number) =>
        plan.framed[0].runs.some(({ from, to }) => i + 1 >= from && i + 1 <= to);
      // A stitch across 12 o'clock falls to one side whole; a lean may open the round by a stitch.
      expect(Math.abs(side(inFrame, 1) - side(inFrame, -1))).toBeLessThanOrEqual(3 * widest);
      const [left, right] = plan.hinges;
      expect(left.degrees).toBeGreaterThan(180);
      expect(right.degrees).toBeLessThan(180);
    }),
    { numRuns: 60 },
  );
});

test('with the usual start the middle of the stretch is at 12 o’clock within half a stitch', () => {
  fc.assert(
    fc.property(shapes, frames, (shapeOf, given) => {
      fc.pre(shapeOf.lean === 0.5 && shapeOf.increase === 'last');
      const { shape, geometry, plan } = framed(shapeOf, given);
      const all = shape.wedges * shape.rounds;
      // The rim's join is at the top: the stretch is the begin and the end of the round.
      const [begin, end] = plan.framed[0].runs;
      expect(begin.from).toBe(1);
      expect(end.to).toBe(all);
      const line = ringLine(geometry, shape.rounds, all);
      const step = (i: number) =>
        Math.hypot(line[2 * i + 2] - line[2 * i], line[2 * i + 3] - line[2 * i + 1]);
      const sum = (from: number, to: number) => {
        let length = 0;
        for (let i = from; i < to; i++) length += step(i);
        return length;
      };
      const [after, before] = [sum(0, begin.to), sum(end.from - 1, all)];
      // Half a stitch off the middle makes one side a stitch longer than the other.
      const widest = Math.max(...Array.from({ length: all }, (_, i) => step(i)));
      expect(Math.abs(after - before)).toBeLessThanOrEqual(widest * 1.001);
      // Lean leaves the end of the round a little short of its beginning.
      expect(Math.abs(plan.stretchMm - after - before)).toBeLessThan(widest / 4);
      expect(plan.stitches).toBe(begin.to + all - end.from + 1);
    }),
    { numRuns: 60 },
  );
});

test('left hand with start negated, and beads toward, give the same stitches', () => {
  fc.assert(
    fc.property(shapes, frames, starts, (shapeOf, given, start) => {
      const { measured, shape, geometry, plan } = framed(shapeOf, given, start);
      const other = { ...shape, hand: shape.hand === 'right' ? 'left' : 'right' } as Shape;
      const mirrored = panelGeometry(other, { startDegrees: -geometry.startDegrees });
      const mirror = planFrame(measured, mirrored);
      expect(mirror.framed).toEqual(plan.framed);
      expect(mirror.seam).toEqual(plan.seam);
      // What was left is right.
      const [left, right] = plan.hinges;
      expect(mirror.hinges[1].inFrame).toBe(left.inFrame);
      expect(mirror.hinges[0].inFrame).toBe(right.inFrame);
      expect(mirror.hinges[1].degrees).toBeCloseTo(360 - left.degrees, 5);
      const toward = {
        ...other,
        beadsFace: shape.beadsFace === 'away' ? 'toward' : 'away',
      } as Shape;
      const same = planFrame(
        measured,
        panelGeometry(toward, { startDegrees: geometry.startDegrees }),
      );
      expect(same).toEqual(plan);
    }),
    { numRuns: 40 },
  );
});

test('counts add up, and bare stitches are those of the plan', () => {
  fc.assert(
    fc.property(shapes, frames, starts, (shapeOf, given, start) => {
      const { measured, shape, geometry, plan } = framed(shapeOf, given, start);
      const all = shape.wedges * shape.rounds;
      expect(plan.stitches + plan.seam.stitches).toBe(all);
      expect(plan.stretchMm + plan.seam.lengthMm).toBeCloseTo(plan.rimMm, 5);
      const bare = bareUnderFrame(measured, geometry);
      expect(bare).toHaveLength(stitchCount(shape));
      const told = new Set<number>();
      for (const { round, runs, bare: isBare } of plan.framed) {
        if (!isBare) continue;
        for (const { from, to } of runs) {
          for (let i = from; i <= to; i++) told.add(stitchesBefore(shape, round) + i - 1);
        }
      }
      bare.forEach((one, s) => expect(one === 1).toBe(told.has(s)));
      const depth = plan.bareRounds * shape.roundHeightMm;
      if (measured.fixing === 'sewn') expect(plan.bareRounds).toBe(2);
      else {
        expect(depth).toBeGreaterThanOrEqual(5 - 1e-6);
        expect(depth - shape.roundHeightMm).toBeLessThan(5);
      }
      // Inner rounds reach as far as the rim, to a stitch on each side.
      for (const { round, stitches } of plan.framed) {
        const expected = (plan.stitches / all) * shape.wedges * round;
        expect(Math.abs(stitches - expected)).toBeLessThanOrEqual(3);
      }
      if (plan.holes) {
        const { spaces, stitches, more } = plan.holes;
        expect(spaces * stitches + more).toBe(plan.stitches);
      }
    }),
    { numRuns: 40 },
  );
});

test('frames that cannot be, or cannot fit, are refused', () => {
  const shape = completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1 });
  const code = (work: () => unknown): string => {
    try {
      work();
    } catch (error) {
      return (error as { code: string }).code;
    }
    return 'none';
  };
  const fit = (more: Partial<Frame>, rounds = 20) =>
    code(() => planFrame({ ...frame, ...more }, panelGeometry({ ...shape, rounds })));
  expect(fit({})).toBe('none');
  expect(fit({}, 12)).toBe('frame-too-wide');
  expect(fit({ widthMm: 101 })).toBe('frame-too-wide');
  expect(fit({ heightMm: 150 })).toBe('frame-rail-too-long');
  expect(code(() => roundsForFrame({ ...frame, widthMm: 390 }, shape))).toBe('frame-out-of-reach');
  const coarse = completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 40 });
  expect(code(() => roundsForFrame({ ...frame, widthMm: 30 }, coarse))).toBe('frame-out-of-reach');
});

test('frame.json reads back, and says what is wrong in it', () => {
  const text = frameText({ ...frame, kind: 'squared', cornerRadiusMm: 12 });
  expect(parseFrame(text, 'frame.json')).toEqual({ ...frame, kind: 'squared', cornerRadiusMm: 12 });
  const told = (change: (fields: Record<string, unknown>) => unknown): string => {
    try {
      const fields = JSON.parse(text) as Record<string, unknown>;
      parseFrame(JSON.stringify(change(fields)), 'frame.json');
    } catch (error) {
      return (error as { code: string }).code;
    }
    return 'none';
  };
  expect(told((fields) => fields)).toBe('none');
  expect(told(() => [])).toBe('frame-not-ours');
  expect(told((fields) => ({ ...fields, format: 'other' }))).toBe('frame-not-ours');
  expect(told((fields) => ({ ...fields, version: 2 }))).toBe('frame-too-new');
  expect(told((fields) => ({ ...fields, version: 'one' }))).toBe('frame-invalid');
  expect(told((fields) => ({ ...fields, colour: 'red' }))).toBe('frame-invalid');
  expect(told((fields) => ({ ...fields, widthMm: '85' }))).toBe('frame-invalid');
  expect(told(({ heightMm: _gone, ...fields }) => fields)).toBe('frame-invalid');
  expect(told((fields) => ({ ...fields, cornerRadiusMm: 60 }))).toBe('frame-measure-impossible');
  expect(told((fields) => ({ ...fields, widthMm: 5 }))).toBe('frame-measure-impossible');
});
