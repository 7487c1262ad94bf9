import fc from 'fast-check';
import { expect, test } from 'vitest';
import { RondureError } from '../src/core/errors.js';
import type { Curve } from '../src/core/pages/surface/curve.js';
import { liningSteps } from '../src/core/pages/lining/lining-notes.js';
import { acrossMm, finishedEdge } from '../src/core/panel/edge.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { closedRim, planLining } from '../src/core/purse/lining/plan.js';
import type { LiningWish } from '../src/core/purse/lining/plan.js';
import {
  lengthOfOutline,
  outlineCurve,
  spotFromTop,
  support,
  widestMm,
} from '../src/core/purse/lining/soft-outline.js';
import type { SoftOutline } from '../src/core/purse/lining/soft-outline.js';
import { completeShape, naturalOutline } from '../src/core/panel/shape.js';
import type { Shape } from '../src/core/panel/shape.js';
import { frameSchema } from '../src/core/purse/frame/schema.js';
import { en } from '../src/words/index.js';
import type { Pattern } from '../src/core/pattern/pattern.js';

const turn = 2 * Math.PI;
const degrees = Array.from({ length: 360 }, (_, n) => (n * turn) / 360);

const anyShape: fc.Arbitrary<Shape> = fc
  .record({
    wedges: fc.integer({ min: 3, max: 12 }),
    rounds: fc.integer({ min: 4, max: 80 }),
    increase: fc.constantFrom('first' as const, 'middle' as const, 'last' as const),
    lean: fc.double({ min: -1, max: 1, noNaN: true }),
    circle: fc.boolean(),
    construction: fc.constantFrom('spiral' as const, 'joined' as const),
    hand: fc.constantFrom('right' as const, 'left' as const),
    beadDiameterMm: fc.double({ min: 1.3, max: 2.6, noNaN: true }),
  })
  .map(({ circle, ...wish }) => {
    const outline = circle ? 'circle' : naturalOutline(wish.increase, wish.lean);
    return completeShape({ ...wish, outline });
  });

function patternOf(shape: Shape, starts: readonly (number | undefined)[] = [undefined]): Pattern {
  const rounds = Array.from({ length: shape.rounds }, (_, n) => 'A'.repeat(shape.wedges * (n + 1)));
  const panels = starts.map((startDegrees, n) => ({
    name: ['front', 'back'][n],
    startDegrees: startDegrees ?? panelGeometry(shape).startDegrees,
    rounds,
  }));
  const beads = [{ letter: 'A', id: 'a', name: 'a', hex: '#123456' }];
  return { format: 'rondure-pattern', version: 1, title: 'x', shape, beads, panels };
}

/** Support of a curve by its pieces alone: ends, and the arcs that face the direction. */
function supportOfCurve({ start, pieces }: Curve, angle: number): number {
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  let most = start[0] * ux + start[1] * uy;
  let from = start;
  for (const { to, arc } of pieces) {
    most = Math.max(most, to[0] * ux + to[1] * uy);
    if (arc) {
      const [cx, cy] = arc.centre;
      expect(Math.hypot(from[0] - cx, from[1] - cy)).toBeCloseTo(arc.radiusMm, 8);
      const first = Math.atan2(from[1] - cy, from[0] - cx);
      const ahead = (((angle - first) % turn) + turn) % turn;
      if (ahead <= arc.sweep) most = Math.max(most, cx * ux + cy * uy + arc.radiusMm);
    }
    from = to;
  }
  expect(Math.hypot(from[0] - start[0], from[1] - start[1])).toBeLessThan(1e-9);
  return most;
}

test('the cut line is the seam line and the allowance, in every direction', () => {
  const allowances = fc.double({ min: 0, max: 30, noNaN: true });
  fc.assert(
    fc.property(
      anyShape,
      allowances,
      fc.double({ min: 0, max: 0.2, noNaN: true }),
      (shape, by, share) => {
        const across = acrossMm(shape);
        fc.pre(across >= 10);
        const easeMm = share * across;
        const { seam, cut } = planLining(patternOf(shape), { allowanceMm: by, easeMm, gapMm: 0 });
        const [seamCurve, cutCurve] = [outlineCurve(seam), outlineCurve(cut)];
        for (const angle of degrees) {
          const inner = supportOfCurve(seamCurve, angle);
          expect(Math.abs(supportOfCurve(cutCurve, angle) - inner - by)).toBeLessThan(1e-6);
          expect(Math.abs(support(seam, angle) - inner)).toBeLessThan(1e-6);
        }
        expect(widestMm(seam)).toBeCloseTo(across - easeMm, 6);
        expect(widestMm(cut)).toBeCloseTo(across - easeMm + 2 * by, 6);
      },
    ),
    { numRuns: 60 },
  );
});

test('the outline is the finished edge, with the step of a spiral levelled', () => {
  fc.assert(
    fc.property(anyShape, fc.double({ min: -180, max: 180, noNaN: true }), (shape, start) => {
      const geometry = panelGeometry(shape, { startDegrees: start });
      const edge = finishedEdge(geometry);
      const rim = closedRim(geometry);
      // A step of one round: half of it out, half of it in; corners turn by what the round adds.
      const turned = Math.abs(geometry.turns[shape.rounds + 1] - geometry.turns[shape.rounds]);
      const slide = ((turned * turn) / shape.wedges) * acrossMm(shape);
      const corner = shape.outline === 'circle' ? 1 : 1 / Math.cos(Math.PI / shape.wedges);
      const level = (shape.roundHeightMm / 2) * corner + slide;
      const allowed = shape.construction === 'joined' ? 0.003 * acrossMm(shape) * 0.02 : level;
      for (const angle of degrees) {
        let most = -Infinity;
        for (let p = 0; p < edge.length; p += 2)
          most = Math.max(most, edge[p] * Math.cos(angle) + edge[p + 1] * Math.sin(angle));
        expect(Math.abs(support(rim, angle) - most)).toBeLessThan(allowed + 1e-6);
      }
    }),
    { numRuns: 40 },
  );
});

/** Length along an outline from its top to a spot, by ten thousand chords. */
function chords(outline: SoftOutline, along: number): number {
  let sum = 0;
  let before = spotFromTop(outline, 0);
  for (let n = 1; n <= 400; n++) {
    const spot = spotFromTop(outline, (along * n) / 400);
    sum += Math.hypot(spot.x - before.x, spot.y - before.y);
    before = spot;
  }
  return sum;
}

test('marks lie where they should along the seam', () => {
  const shapes = [
    completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1 }),
    completeShape({ wedges: 6, rounds: 15, beadDiameterMm: 2.1, construction: 'joined' }),
    completeShape({ wedges: 8, rounds: 22, beadDiameterMm: 2.1, outline: 'circle' }),
  ];
  for (const shape of shapes) {
    const { seam, cut, top, hinges, gap } = planLining(patternOf(shape), { gapMm: 35 });
    for (const outline of [seam, cut]) {
      const quarter = lengthOfOutline(outline) / 4;
      const found = chords(outline, quarter);
      expect(found).toBeLessThanOrEqual(quarter + 1e-9);
      expect(found).toBeGreaterThan(quarter - 0.05);
    }
    expect(top.x).toBeCloseTo(0, 6);
    expect(top.y).toBeLessThan(0);
    // The usual start puts a corner (nearly) on top, so that left and right mirror each other.
    expect(hinges[0].x).toBeGreaterThan(0);
    expect(hinges[0].x + hinges[1].x).toBeLessThan(0.8);
    expect(gap).toHaveLength(3);
    // 35 mm along the rim, on one straight side of a polygon: a chord is never longer.
    const apart = Math.hypot(gap[0].x - gap[2].x, gap[0].y - gap[2].y);
    expect(apart).toBeLessThanOrEqual(35 + 1e-9);
    expect(Math.min(...gap.map(({ y }) => y))).toBeGreaterThan(0);
    expect(apart).toBeGreaterThan(33);
  }
});

test('there is no gap unless one is asked for, and the steps say what to do with it', () => {
  const shape = completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1 });
  expect(planLining(patternOf(shape))).toMatchObject({ gapMm: 0, gap: [] });
  const said = (gapMm: number) => liningSteps({ gapMm, allowanceMm: 5 }, en).join(' ');
  expect(said(0)).toMatch(/Do not turn it.*Fold the open edge/);
  expect(said(0)).not.toMatch(/gap|open between/);
  expect(said(35)).toMatch(/leave 35 mm open.*close it by hand/);
});

test('the hinges stand where the pattern’s frame ends, unless something else is said', () => {
  const shape = completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1, outline: 'circle' });
  const frame = frameSchema.parse({
    kind: 'half-round',
    widthMm: 85,
    heightMm: 42.5,
    fixing: 'sewn',
    ratio: 1.15,
    gatherPercent: 0,
  });
  const pattern = { ...patternOf(shape), frame };
  const lining = planLining(pattern);
  expect(lining.openingFrom).toBe('frame');
  // Half a circle of 85 mm, to the nearest whole stitch on either side.
  const rim = Math.PI * acrossMm(shape);
  const rail = (Math.PI * 85) / 2;
  expect(Math.abs(lining.openingShare * rim - rail)).toBeLessThan(2 * shape.stitchWidthMm);
  expect(planLining(pattern, { openingShare: 0.4 }).openingFrom).toBe('asked');
  expect(planLining(patternOf(shape)).openingFrom).toBe('usual');
});

test('a measured panel of 95 mm with 5 mm allowance is cut 105 mm at the widest', () => {
  // Common practice, no source.
  for (const outline of ['polygon', 'circle'] as const) {
    const shape = completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1, outline });
    const lining = planLining(patternOf(shape), { measuredMm: 95, allowanceMm: 5, easeMm: 0 });
    expect(lining.cutAcrossMm).toBeCloseTo(105, 9);
    const eased = planLining(patternOf(shape), { measuredMm: 95, allowanceMm: 5, easeMm: 2 });
    expect(eased.cutAcrossMm).toBeCloseTo(103, 9);
  }
});

test('two panels share a template only when their linings have the same shape', () => {
  const shape = completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1 });
  expect(planLining(patternOf(shape)).pieces).toBe(2);
  const start = panelGeometry(shape).startDegrees;
  expect(planLining(patternOf(shape, [start, start])).pieces).toBe(2);
  expect(planLining(patternOf(shape, [start, start + 360 / 7])).pieces).toBe(2);
  expect(planLining(patternOf(shape, [start, start + 10]), { panel: 1 }).pieces).toBe(1);
  const round = completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1, outline: 'circle' });
  expect(planLining(patternOf(round, [0, 10])).pieces).toBe(2);
});

const impossible: [why: string, wish: LiningWish, sentence: RegExp][] = [
  ['centimetres taken twice', { measuredMm: 950 }, /99\.7.mm by the model.*49\.9 to 199\.3/],
  ['an inch for the whole', { measuredMm: 25.4 }, /--measured takes/],
  ['ease larger than the panel', { easeMm: 120 }, /ease of 120.*99\.7.*--ease takes 0 to 19\.9/],
  ['a negative allowance', { allowanceMm: -5 }, /allowance of -5.*0 to 30/],
  ['NaN', { allowanceMm: NaN }, /allowance of NaN/],
  ['a gap longer than the seam', { gapMm: 190 }, /turning gap of 190.*0 to 1\d\d/],
  ['a gap beside a wide opening', { openingShare: 0.9, gapMm: 40 }, /turning gap of 40/],
];

test.each(impossible)('%s is refused with the plausible range', (_why, wish, sentence) => {
  const shape = completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1 });
  let caught: unknown;
  try {
    planLining(patternOf(shape), wish);
  } catch (error) {
    caught = error;
  }
  expect(caught).toBeInstanceOf(RondureError);
  expect((caught as RondureError).code).toBe('lining-impossible');
  expect((caught as RondureError).message).toMatch(sentence);
});
