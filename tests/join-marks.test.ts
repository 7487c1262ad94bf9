import { expect, test } from 'vitest';
import { chartSvg } from '../src/core/pages/chart/chart.js';
import { hasJoins, joinMarks } from '../src/core/pages/panel/join-marks.js';
import { stitchesBefore } from '../src/core/panel/shape.js';
import { panelJoins, panelLengths } from '../src/core/thread/lengths.js';
import { panelSheet } from './support/panel-sheet.js';

const distance = ([ax, ay]: readonly number[], [bx, by]: readonly number[]) =>
  Math.hypot(ax - bx, ay - by);

test('marks on the chart where a length is joined on, before its first stitch', () => {
  const thread = { lengthBeads: 250 };
  for (const hand of ['right', 'left'] as const) {
    for (const beadsFace of ['away', 'toward'] as const) {
      const sheet = panelSheet({ wedges: 7, rounds: 20, hand, beadsFace }, 3, { thread });
      const joins = panelJoins(sheet.pattern, 0, panelLengths(sheet.pattern, 0));
      const view = { scale: 1, centreX: 0, centreY: 0 };
      const marks = joinMarks(sheet, { numbers: [] }, view);
      expect(joins.length).toBeGreaterThan(3);
      expect(marks).toHaveLength(joins.length);
      const { centres } = sheet.geometry;
      const width = sheet.geometry.shape.stitchWidthMm;
      joins.forEach(({ round, stitch }, n) => {
        // Stitches before round r: N·r(r - 1)/2.
        const s = (7 * round * (round - 1)) / 2 + stitch;
        const to = (corner: number, t: number) =>
          Math.hypot(marks[n][corner] - centres[2 * t], marks[n][corner + 1] - centres[2 * t + 1]);
        // Its first corner points at the stitch, the opposite one back.
        expect(to(0, s)).toBeLessThan(0.6 * width);
        expect(to(4, s)).toBeGreaterThan(to(0, s) + 0.4 * width);
        expect(to(0, s)).toBeLessThan(to(0, s + 1));
      });
      expect(chartSvg(sheet)).toContain('Join: a new length');
    }
  }
  const one = panelSheet({ wedges: 7, rounds: 5 }, 3);
  expect(hasJoins(one)).toBe(false);
  expect(chartSvg(one)).not.toContain('Join: a new length');
});

test('a join at the start of a round lies beneath the number and stands out above and below', () => {
  const sheet = panelSheet({ wedges: 7, rounds: 12 }, 3, { thread: { lengthBeads: 200 } });
  const view = { scale: 2, centreX: 100, centreY: 100 };
  const { centres, shape } = sheet.geometry;
  const joins = panelJoins(sheet.pattern, 0, panelLengths(sheet.pattern, 0));
  const atStart = joins.filter(({ stitch }) => stitch === 0);
  expect(atStart.length).toBeGreaterThan(0);
  const numbers = joins.map(({ round }) => {
    const s = stitchesBefore(shape, round);
    const [x, y] = [100 + 2 * centres[2 * s], 100 + 2 * centres[2 * s + 1]];
    return { round, x, y, digitMm: 1.5 };
  });
  joinMarks(sheet, { numbers }, view).forEach((mark, n) => {
    if (joins[n].stitch > 0) return;
    const { x, y, digitMm } = numbers[n];
    const middle = [(mark[0] + mark[4]) / 2, (mark[1] + mark[5]) / 2];
    expect(distance(middle, [x, y])).toBeLessThan(1e-9);
    // ISO 9241-303 (from memory) wants signs of 16 minutes of arc at least: 2.8 mm at 600 mm.
    const long = distance([mark[2], mark[3]], [mark[6], mark[7]]);
    expect(long).toBeGreaterThan(2.8);
    expect(long).toBeGreaterThan(digitMm * 1.24 + 1);
    // The numbers of the next rounds are a round away.
    expect(long).toBeLessThan(2 * shape.roundHeightMm);
  });
});
