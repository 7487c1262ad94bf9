import fc from 'fast-check';
import { expect, test } from 'vitest';
import { meetingStitch } from '../src/core/panel/meet.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { forOtherHand } from '../src/core/pattern/other-hand.js';
import { sewnPairs } from '../src/core/pages/lists/sewing.js';
import { panelSheet } from './support/panel-sheet.js';

const shapes = fc.record({
  wedges: fc.integer({ min: 3, max: 12 }),
  rounds: fc.integer({ min: 2, max: 14 }),
  hand: fc.constantFrom('right' as const, 'left' as const),
  beadsFace: fc.constantFrom('away' as const, 'toward' as const),
  construction: fc.constantFrom('spiral' as const, 'joined' as const),
  outline: fc.constantFrom('polygon' as const, 'circle' as const),
});

test('an edition for the other hand is the exact mirror image, with the same rounds', () => {
  fc.assert(
    fc.property(shapes, (shape) => {
      const { pattern } = panelSheet(shape, 3);
      const other = forOtherHand(pattern);
      expect(other.panels.map(({ rounds }) => rounds)).toEqual(
        pattern.panels.map(({ rounds }) => rounds),
      );
      expect(other.shape.hand).not.toBe(pattern.shape.hand);
      const of = (one: typeof pattern) =>
        panelGeometry(one.shape, { startDegrees: one.panels[0].startDegrees });
      const [here, there] = [of(pattern), of(other)];
      expect(there.direction).toBe(-here.direction);
      for (let s = 0; s < here.count; s++) {
        // Centres are rounded to a millionth of a millimetre.
        expect(there.centres[2 * s]).toBeCloseTo(-here.centres[2 * s], 5);
        expect(there.centres[2 * s + 1]).toBeCloseTo(here.centres[2 * s + 1], 5);
      }
    }),
    { numRuns: 60 },
  );
});

test('twice the other hand is the same hand again, without the pictures', () => {
  const { pattern } = panelSheet({ wedges: 7, rounds: 5 }, 3);
  const again = forOtherHand(forOtherHand(pattern));
  expect(again).toEqual({
    ...pattern,
    panels: pattern.panels.map(({ name, startDegrees, rounds }) => ({
      name,
      startDegrees,
      rounds,
    })),
  });
});

test('the same stitches of two panels meet, at the mirrored hours', () => {
  fc.assert(
    fc.property(shapes, fc.integer({ min: -180, max: 180 }), (shape, start) => {
      const { pattern: one } = panelSheet(shape, 3);
      const [front] = one.panels;
      const panels = [
        { ...front, startDegrees: start },
        { ...front, name: 'back', startDegrees: -start },
      ];
      const pattern = { ...one, panels };
      const other = forOtherHand(pattern);
      const starts = ({ panels: both }: typeof pattern) => ({
        front: both[0].startDegrees,
        back: both[1].startDegrees,
      });
      const rim = shape.wedges * shape.rounds;
      for (let i = 0; i < rim; i++) {
        expect(meetingStitch(other.shape, starts(other), i)).toBe(
          meetingStitch(pattern.shape, starts(pattern), i),
        );
      }
      const at = new Map(sewnPairs(pattern).map((pair) => [pair.frontHour, pair]));
      for (const pair of sewnPairs(other)) {
        const mirrored = at.get(pair.frontHour === 12 ? 12 : 12 - pair.frontHour)!;
        // Two stitches may lie equally near to an hour.
        const apart = Math.abs(pair.front - mirrored.front);
        expect(Math.min(apart, rim - apart)).toBeLessThanOrEqual(1);
      }
    }),
    { numRuns: 60 },
  );
});
