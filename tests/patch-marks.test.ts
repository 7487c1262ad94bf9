import { expect, test } from 'vitest';
import { drawPatchMarks } from '../src/core/pages/panel/patch-marks.js';
import type { Polyline, Surface } from '../src/core/pages/surface/surface.js';

/** Patches of keys and tables in the sizes that they are drawn in, millimetres. */
const patches = [
  { left: 10, top: 20, right: 16.2, bottom: 24.9 },
  { left: 10, top: 20, right: 15.1, bottom: 23.6 },
  { left: 10, top: 20, right: 20, bottom: 25.4, roundEnds: true },
];

test.each(['rising', 'falling', 'upright'] as const)(
  'a hatching that is %s is seen on both sides of any letter and leaves it clear',
  (mark) => {
    for (const patch of patches) {
      for (const widthMm of [0.8, 1.6, 2.2, 2.6, 3, 3.6]) {
        const lines: Polyline[] = [];
        const surface = { strokePath: (some: readonly Polyline[]) => void lines.push(...some) };
        const heightMm = 2.4;
        const letter = { widthMm, heightMm };
        drawPatchMarks(surface as unknown as Surface, { mark, ink: '#000000' }, patch, letter);
        const [x, y] = [(patch.left + patch.right) / 2, (patch.top + patch.bottom) / 2];
        const beside = lines.flatMap((line) => [
          [line[0], line[1]],
          [line[2], line[3]],
        ]);
        expect(
          beside.some(([px]) => px < x - widthMm / 2 + 0.2),
          `${widthMm}`,
        ).toBe(true);
        expect(
          beside.some(([px]) => px > x + widthMm / 2 - 0.2),
          `${widthMm}`,
        ).toBe(true);
        for (const [px, py] of beside) {
          expect(px).toBeGreaterThan(patch.left);
          expect(px).toBeLessThan(patch.right);
          const inLetter = Math.abs(px - x) < widthMm / 2 - 0.8 && Math.abs(py - y) < heightMm / 2;
          expect(inLetter).toBe(false);
        }
      }
    }
  },
);
