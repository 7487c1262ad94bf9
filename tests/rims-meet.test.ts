import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backStartDegrees, meetingStitch, pairStartDegrees } from '../src/core/panel/meet.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { completeShape, stitchesBefore, stitchesInRound } from '../src/core/panel/shape.js';
import type { Shape } from '../src/core/panel/shape.js';

const anyShape: fc.Arbitrary<Shape> = fc
  .record({
    wedges: fc.integer({ min: 3, max: 12 }),
    rounds: fc.integer({ min: 4, max: 30 }),
    increase: fc.constantFrom('first', 'middle', 'last'),
    lean: fc.double({ min: -1, max: 1, noNaN: true }),
    construction: fc.constantFrom('spiral', 'joined'),
    hand: fc.constantFrom('right', 'left'),
    beadsFace: fc.constantFrom('away', 'toward'),
  } as const)
  .map((one) => completeShape({ ...one, beadDiameterMm: 2.1 }));

describe('the rims of two panels', () => {
  /** Worst distance (mm), angle (stitches) and row between rim stitches laid back to back. */
  function apart(shape: Shape, starts: { front: number; back: number }) {
    const front = panelGeometry(shape, { startDegrees: starts.front });
    const back = panelGeometry(shape, { startDegrees: starts.back });
    const inRim = stitchesInRound(shape, shape.rounds);
    const first = stitchesBefore(shape, shape.rounds);
    let [distance, angle, row] = [0, 0, 0];
    for (let i = 0; i < inRim; i++) {
      const at = 2 * (first + i);
      const under = 2 * (first + inRim - 1 - i);
      // The back is seen from behind: left is right.
      const [x, y] = [front.centres[at], front.centres[at + 1]];
      const [backX, backY] = [-back.centres[under], back.centres[under + 1]];
      distance = Math.max(distance, Math.hypot(x - backX, y - backY));
      const turned = Math.atan2(x * backY - y * backX, x * backX + y * backY);
      angle = Math.max(angle, Math.abs(turned * inRim) / (2 * Math.PI));
      const farther = Math.abs(Math.hypot(x, y) - Math.hypot(backX, backY));
      row = Math.max(row, farther / shape.roundHeightMm);
    }
    return { distance, angle, row };
  }

  it('stitch i of the front lies over stitch N·R-1-i of the back, wherever the front starts', () => {
    fc.assert(
      fc.property(anyShape, fc.double({ min: -720, max: 720, noNaN: true }), (shape, start) => {
        const front = Math.round(start * 1e6) / 1e6;
        const starts = { front, back: backStartDegrees(shape, front) };
        const inRim = stitchesInRound(shape, shape.rounds);
        expect(meetingStitch(shape, starts, 0)).toBe(inRim - 1);
        expect(meetingStitch(shape, starts, 3)).toBe(inRim - 4);
        const { distance, angle, row } = apart(shape, starts);
        if (shape.construction === 'joined') expect(distance).toBeLessThan(2e-5);
        // A spiral climbs one row in a round, in each panel the other way, and its turn is not
        // quite even.
        else
          expect([angle < 0.25, row < 1.0001 / Math.cos(Math.PI / shape.wedges)]).toEqual([
            true,
            true,
          ]);
      }),
      { numRuns: 300, seed: 5 },
    );
  });

  it('both begin their last round at 12 o’clock where no start is given', () => {
    fc.assert(
      fc.property(anyShape, (shape) => {
        const start = pairStartDegrees(shape);
        expect(backStartDegrees(shape, start)).toBeCloseTo(start, 5);
        const usual = panelGeometry(shape).startDegrees;
        // At most half a stitch from the place that a single panel takes.
        const stitches = (Math.abs(start - usual) * stitchesInRound(shape, shape.rounds)) / 360;
        expect(stitches).toBeLessThan(shape.construction === 'joined' ? 1e-4 : 0.76);
      }),
      { numRuns: 200, seed: 6 },
    );
  });

  it('does not meet at a start that is only negated', () => {
    const shape = completeShape({
      wedges: 7,
      rounds: 20,
      beadDiameterMm: 2.1,
      construction: 'joined',
    });
    const front = pairStartDegrees(shape);
    expect(apart(shape, { front, back: -front }).distance).toBeGreaterThan(30);
  });

  it('finds which stitches meet by looking for the nearest', () => {
    const shape = completeShape({
      wedges: 6,
      rounds: 9,
      beadDiameterMm: 2.1,
      construction: 'joined',
    });
    fc.assert(
      fc.property(
        fc.integer({ min: -200, max: 200 }),
        fc.integer({ min: 0, max: 53 }),
        (turn, i) => {
          // Starts a whole number of rim stitches apart.
          const front = pairStartDegrees(shape);
          const starts = { front, back: front + (turn * 360) / 54 };
          const one = panelGeometry(shape, { startDegrees: starts.front }).centres;
          const two = panelGeometry(shape, { startDegrees: starts.back }).centres;
          const first = stitchesBefore(shape, 9);
          let [nearest, least] = [-1, Infinity];
          for (let j = 0; j < 54; j++) {
            const [x, y] = one.subarray(2 * (first + i));
            const [backX, backY] = two.subarray(2 * (first + j));
            // A polygon turned by some stitches is another outline: compare directions.
            const off = Math.abs(Math.atan2(-x * backY - y * backX, -x * backX + y * backY));
            if (off < least) [nearest, least] = [j, off];
          }
          const found = meetingStitch(shape, starts, i);
          expect(Math.min((found - nearest + 54) % 54, (nearest - found + 54) % 54)).toBeLessThan(
            2,
          );
        },
      ),
      { seed: 7 },
    );
  });
});
