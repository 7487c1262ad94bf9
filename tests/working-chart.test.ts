import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chartSvg } from '../src/core/pages/chart/chart.js';
import { partOf, sectorSheets, spansOf } from '../src/core/pages/chart/sector-sheets.js';
import { workingSheet } from '../src/core/pages/chart/working-chart.js';
import { workingGeometry } from '../src/core/panel/working-face.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { completeShape, stitchesBefore } from '../src/core/panel/shape.js';
import { panelSheet } from './support/panel-sheet.js';

const shapes = fc.record({
  wedges: fc.integer({ min: 4, max: 9 }),
  rounds: fc.integer({ min: 3, max: 14 }),
  hand: fc.constantFrom('right' as const, 'left' as const),
  beadsFace: fc.constantFrom('away' as const, 'toward' as const),
  construction: fc.constantFrom('spiral' as const, 'joined' as const),
  increase: fc.constantFrom('first' as const, 'middle' as const, 'last' as const),
});

/** Signed angle from one stitch to the next as seen on the page, radians; clockwise is positive. */
function turn(centres: Float64Array, a: number, b: number): number {
  const [ax, ay, bx, by] = [centres[2 * a], centres[2 * a + 1], centres[2 * b], centres[2 * b + 1]];
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}

// Common practice, no source: a right-hander crochets toward the left along the upper edge of the
// work, a left-hander toward the right, whichever face the beads lie on.
test('as the worker sees it a right-hander’s work runs anticlockwise, a left-hander’s clockwise', () => {
  fc.assert(
    fc.property(shapes, (wish) => {
      const shape = completeShape({ beadDiameterMm: 2.1, ...wish });
      const seen = workingGeometry({ shape });
      const wanted = wish.hand === 'right' ? -1 : 1;
      for (let r = 2; r <= shape.rounds; r++) {
        const first = stitchesBefore(shape, r);
        let all = 0;
        for (let i = 1; i < shape.wedges * r; i++)
          all += turn(seen.centres, first + i - 1, first + i);
        expect(Math.sign(all)).toBe(wanted);
        expect(Math.abs(all)).toBeGreaterThan(Math.PI);
      }
    }),
    { numRuns: 60 },
  );
});

test('its title and description say that it is as the worker sees it', () => {
  const sheet = panelSheet({ wedges: 7, rounds: 5 }, 3);
  expect(chartSvg(sheet)).toContain('seen on the bead face');
  const svg = chartSvg(workingSheet(sheet));
  expect(svg).toContain(' · Chart as you see it</title>');
  expect(svg).toContain('as you see it while you work; every stitch');
  expect(svg).not.toContain('seen on the bead face');
});

test('with beads away it is the mirror image of the bead face, with beads toward the same', () => {
  fc.assert(
    fc.property(shapes, (wish) => {
      const shape = completeShape({ beadDiameterMm: 2.1, ...wish });
      const face = panelGeometry(shape);
      const seen = workingGeometry(face);
      const across = wish.beadsFace === 'away' ? -1 : 1;
      for (let s = 0; s < face.count; s++) {
        expect(seen.centres[2 * s]).toBeCloseTo(across * face.centres[2 * s], 5);
        expect(seen.centres[2 * s + 1]).toBeCloseTo(face.centres[2 * s + 1], 5);
      }
    }),
    { numRuns: 40 },
  );
});

test('the start lies on top however the bead face is turned', () => {
  const shape = completeShape({ beadDiameterMm: 2.1, wedges: 7, rounds: 12 });
  const turned = workingGeometry(panelGeometry(shape, { startDegrees: 100 }));
  const last = turned.count - 1;
  const degrees =
    (Math.atan2(turned.centres[2 * last], -turned.centres[2 * last + 1]) * 180) / Math.PI;
  expect(Math.abs(degrees)).toBeLessThan(6);
});

test('the drawing names the hook and numbers the wedges', () => {
  const sheet = workingSheet(panelSheet({ wedges: 7, rounds: 9 }, 4));
  const svg = chartSvg(sheet);
  expect(svg).toContain('id="hook"');
  const rings = /id="wedge-numbers"[^]*?<\/g>\s*<\/g>/.exec(svg)?.[0] ?? '';
  expect(rings).toContain('<title>1</title>');
  expect(svg).toMatch(/away from the hook|hook/);
});

const page = { widthMm: 210, heightMm: 297, bottomMm: 287, leastBeadMm: 3.7, textPoints: 10 };

test('wedges are shared out without gap or overlap', () => {
  for (let wedges = 3; wedges <= 12; wedges++) {
    for (let groups = 2; groups <= wedges; groups++) {
      const all = spansOf(wedges, groups).flatMap(({ from, to }) =>
        Array.from({ length: to - from }, (_, n) => from + n),
      );
      expect(all).toEqual(Array.from({ length: wedges }, (_, n) => n));
    }
  }
});

test('no round crosses more than three sheets up to 33 rounds, and every stitch is on one', () => {
  for (const rounds of [24, 29, 33]) {
    const sheet = panelSheet({ wedges: 7, rounds }, 3);
    const sheets = sectorSheets(sheet, page, 'Chart');
    expect(sheets.length, `${rounds} rounds`).toBeLessThanOrEqual(3);
    const held = sheets.map((one) => {
      expect(one.beadMm).toBeGreaterThanOrEqual(3.7 - 1e-9);
      return partOf(sheet.geometry, (one as { span: { from: number; to: number } }).span);
    });
    for (let s = 0; s < sheet.geometry.count; s++) {
      expect(held.filter((part) => part.holds(s))).toHaveLength(1);
    }
  }
});

test('a longer note takes no room from the beads', () => {
  const sheet = panelSheet({ wedges: 7, rounds: 30 }, 3);
  const long = 'A note that goes on and on. '.repeat(20);
  const { booklet } = sheet.words;
  const sector = { ...booklet.work.sector, how: long };
  const words = { ...sheet.words, booklet: { ...booklet, work: { ...booklet.work, sector } } };
  const sizes = [sheet, { ...sheet, words }].map((one) =>
    sectorSheets(one, page, 'Chart').map(({ beadMm }) => beadMm),
  );
  expect(sizes[1]).toEqual(sizes[0]);
});
