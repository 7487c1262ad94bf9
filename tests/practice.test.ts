import { expect, test } from 'vitest';
import { completeShape, stitchesInRound } from '../src/core/panel/shape.js';
import { parentOf } from '../src/core/panel/links.js';
import { checkPattern } from '../src/core/pattern/read/check.js';
import { practicePattern } from '../src/core/teach/practice.js';
import { someBeads } from './support/patterns.js';

test('a practice piece shows every increase and every start, whatever the increase', () => {
  for (const increase of ['first', 'middle', 'last'] as const)
    for (const wedges of [5, 7]) {
      const shape = completeShape({ wedges, rounds: 20, increase, beadDiameterMm: 2.1 });
      const pattern = practicePattern(shape, someBeads(5), 'Practice piece');
      expect(checkPattern(pattern)).toEqual([]);
      expect(pattern.panels[0].rounds.map(({ length }) => length)).toEqual(
        [1, 2, 3, 4].map((r) => stitchesInRound(shape, r)),
      );
      pattern.panels[0].rounds.forEach((marks, n) => {
        const r = n + 1;
        expect(marks[0]).toBe('C');
        if (r === 1) return;
        const parents = [...marks].map((_, i) => parentOf(shape, r, i));
        [...marks].forEach((mark, i) => {
          const shared = parents.filter((one) => one === parents[i]).length === 2;
          if (i > 0) expect(mark).toBe(shared ? 'B' : 'A');
        });
      });
    }
});
