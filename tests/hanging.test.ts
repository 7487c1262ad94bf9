import fc from 'fast-check';
import { expect, test } from 'vitest';
import { layPanel } from '../src/core/panel/lay.js';
import { pairStartDegrees } from '../src/core/panel/meet.js';
import { completeShape } from '../src/core/panel/shape.js';
import { railLengthMm } from '../src/core/purse/frame/rail.js';
import { rimOf } from '../src/core/purse/frame/rim.js';
import { hangPanel } from '../src/core/purse/hanging.js';

const lengthOf = (line: readonly (readonly [number, number])[]) =>
  line.slice(1).reduce((sum, [x, y], n) => sum + Math.hypot(x - line[n][0], y - line[n][1]), 0);

const anyPurse = fc.record({
  wedges: fc.integer({ min: 5, max: 9 }),
  hand: fc.constantFrom('right' as const, 'left' as const),
  construction: fc.constantFrom('spiral' as const, 'joined' as const),
  kind: fc.constantFrom('half-round' as const, 'squared' as const, 'oval' as const),
  heightShare: fc.double({ min: 0.42, max: 0.5, noNaN: true }),
});

function purseOf({
  wedges,
  hand,
  construction,
  kind,
  heightShare,
}: {
  wedges: number;
  hand: 'right' | 'left';
  construction: 'spiral' | 'joined';
  kind: 'half-round' | 'squared' | 'oval';
  heightShare: number;
}) {
  const shape = completeShape({ wedges, rounds: 20, hand, construction, beadDiameterMm: 2.1 });
  const { geometry } = layPanel(shape, { startDegrees: pairStartDegrees(shape) });
  const widthMm = 80;
  const frame = {
    kind,
    widthMm,
    heightMm: Math.round(heightShare * widthMm),
    fixing: 'sewn' as const,
    ratio: 1.15,
    gatherPercent: 0,
  };
  return { geometry, frame, hanging: hangPanel(frame, geometry) };
}

test('the rim lies along rail and seam, each as long as it is, and the hinges are its ends', () => {
  fc.assert(
    fc.property(anyPurse, (wish) => {
      const { geometry, frame, hanging } = purseOf(wish);
      const { plan, rail, belly } = hanging;
      // A drawn line is a little shorter than the curve that it stands for.
      expect(lengthOf(rail) / railLengthMm(frame)).toBeCloseTo(1, 2);
      expect(lengthOf(belly) / plan.seam.lengthMm).toBeCloseTo(1, 2);
      expect(rail[0][1]).toBeCloseTo(0, 6);
      const rim = rimOf(geometry);
      const [left, right] = plan.hinges;
      for (const [hinge, x] of [
        [left, rail[0][0]],
        [right, rail.at(-1)![0]],
      ] as const) {
        const angle = (hinge.degrees * Math.PI) / 180;
        const far = Math.hypot(...(rim.line(0, rim.stitches).slice(0, 2) as [number, number]));
        const [hungX, hungY] = hanging.place(far * Math.sin(angle), -far * Math.cos(angle));
        expect(Math.sign(hungX)).toBe(Math.sign(x));
        expect(Math.hypot(hungX - x, hungY)).toBeLessThan(0.14 * frame.widthMm);
      }
    }),
    { numRuns: 25 },
  );
});

test('no stitch changes sides or lies outside: neighbours keep their turn round the centre', () => {
  fc.assert(
    fc.property(anyPurse, (wish) => {
      const { geometry, hanging } = purseOf(wish);
      const { centres, count } = geometry;
      const corners = [...hanging.rail, ...hanging.belly];
      const low = Math.max(...corners.map(([, y]) => y));
      const high = Math.min(...corners.map(([, y]) => y));
      const wide = Math.max(...corners.map(([x]) => Math.abs(x)));
      const hung = Array.from({ length: count }, (_, s) =>
        hanging.place(centres[2 * s], centres[2 * s + 1]),
      );
      for (const [x, y] of hung) {
        expect(Math.abs(x)).toBeLessThan(wide + 1);
        expect(y).toBeGreaterThan(high - 1);
        expect(y).toBeLessThan(low + 1);
      }
      // Signed areas of small triangles keep their sign: nothing is folded over.
      const turn = (
        [ax, ay]: readonly number[],
        [bx, by]: readonly number[],
        [cx, cy]: readonly number[],
      ) => (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
      for (let s = 0; s < count; s += 7) {
        const [x, y] = [centres[2 * s], centres[2 * s + 1]];
        const flat = [
          [x, y],
          [x + 0.3, y],
          [x, y + 0.3],
        ] as const;
        const [a, b, c] = flat.map(([px, py]) => hanging.place(px, py));
        expect(turn(a, b, c)).toBeGreaterThan(0);
      }
    }),
    { numRuns: 15 },
  );
});
