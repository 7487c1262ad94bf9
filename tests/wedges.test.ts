import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { wedgesSvg } from '../src/core/pages/chart/wedges.js';
import { stitchesBefore } from '../src/core/panel/shape.js';
import { panelSheet } from './support/panel-sheet.js';
import { glyphsIn, groupIn, pathsIn, polylines } from './support/svg.js';

const ways = [
  // On the bead face a right-hander's work with beads away runs clockwise: rim up, left to right.
  ['right', 'away', 'left to right'],
  ['right', 'toward', 'right to left'],
  ['left', 'away', 'right to left'],
  ['left', 'toward', 'left to right'],
] as const;

describe.each(ways)('wedges: %s hand, beads %s', (hand, beadsFace, reads) => {
  const sheet = panelSheet({ wedges: 7, rounds: 13, hand, beadsFace }, 9);
  const svg = wedgesSvg(sheet);
  const { shape } = sheet.geometry;
  const marks = sheet.pattern.panels[0].rounds.join('');

  test('rows hold their round in reading order, rim up', () => {
    for (let wedge = 0; wedge < 7; wedge++) {
      const glyphs = glyphsIn(svg, groupIn(svg, `wedge-${wedge + 1}-letters`));
      expect(glyphs.length).toBe((13 * 14) / 2);
      const rows = new Map<number, typeof glyphs>();
      for (const glyph of glyphs) {
        rows.set(glyph.baseline, [...(rows.get(glyph.baseline) ?? []), glyph]);
      }
      const fromTop = [...rows.keys()].sort((a, b) => a - b);
      expect(fromTop.length).toBe(13);
      fromTop.forEach((baseline, n) => {
        const r = 13 - n;
        const row = (rows.get(baseline) ?? []).sort((a, b) => a.left - b.left);
        if (reads === 'right to left') row.reverse();
        const text = row.map(({ id }) => String.fromCodePoint(Number(id.slice(1)))).join('');
        const from = stitchesBefore(shape, r) + wedge * r;
        expect(text).toBe(marks.slice(from, from + r));
      });
    }
  });

  test('each arrow points the way that rows are read, above its rim', () => {
    for (let wedge = 1; wedge <= 7; wedge++) {
      const [line, head] = pathsIn(groupIn(svg, `wedge-${wedge}-arrow`));
      const [from] = polylines(line.d)[0];
      const [tip] = polylines(head.d)[0];
      expect(Math.sign(tip[0] - from[0])).toBe(reads === 'left to right' ? 1 : -1);
      const cells = pathsIn(groupIn(svg, `wedge-${wedge}-cells`)).flatMap(({ d }) => polylines(d));
      expect(cells.length).toBe(91);
      expect(tip[1]).toBeLessThan(Math.min(...cells.flat().map(([, y]) => y)));
    }
  });

  test('row numbers stand where rows start; pairs are marked', () => {
    for (let wedge = 1; wedge <= 7; wedge++) {
      const numbers = glyphsIn(svg, groupIn(svg, `wedge-${wedge}-numbers`));
      const letters = glyphsIn(svg, groupIn(svg, `wedge-${wedge}-letters`));
      const middle = letters.reduce((sum, { left }) => sum + left, 0) / letters.length;
      const side = reads === 'left to right' ? -1 : 1;
      for (const { left } of numbers) expect(Math.sign(left - middle)).toBe(side);
      const bars = pathsIn(groupIn(svg, `wedge-${wedge}-pairs`)).flatMap(({ d }) => polylines(d));
      expect(bars.length).toBe(12);
    }
  });
});

test.each([
  [7, 20, 8],
  [12, 3, 2],
  [3, 40, 24],
  [5, 80, 3],
])(
  '%i wedges of %i rounds: no triangle crosses a page or is cut off',
  async (wedges, rounds, colours) => {
    const svg = wedgesSvg(panelSheet({ wedges, rounds }, colours));
    const [width, height] = (/viewBox="0 0 (\d+) (\d+)"/.exec(svg) ?? []).slice(1).map(Number);
    // ISO 216 heights by width.
    const pageMm =
      new Map([
        [210, 297],
        [297, 420],
        [420, 594],
        [594, 841],
      ]).get(width) ?? 0;
    expect(height % pageMm).toBe(0);
    for (let wedge = 1; wedge <= wedges; wedge++) {
      const cells = pathsIn(groupIn(svg, `wedge-${wedge}-cells`)).flatMap(({ d }) => polylines(d));
      expect(cells.length).toBe((rounds * (rounds + 1)) / 2);
      const [first] = cells;
      expect(first[1][0] - first[0][0]).toBeGreaterThanOrEqual(3.39);
      const ys = cells.flat().map(([, y]) => y);
      const page = Math.floor(Math.min(...ys) / pageMm);
      expect(Math.max(...ys)).toBeLessThanOrEqual((page + 1) * pageMm - 8);
    }
    for (const glyph of glyphsIn(svg)) {
      expect(glyph.left).toBeGreaterThanOrEqual(7.5);
      expect(glyph.right).toBeLessThanOrEqual(width - 7.5);
    }
    expect(svg).not.toMatch(/<text|font-family/);
    expect((await sharp(Buffer.from(svg), { limitInputPixels: false }).metadata()).format).toBe(
      'svg',
    );
  },
);

test('wedges that are all alike are one triangle, as large as the page allows, that says so', () => {
  const sheet = panelSheet({ wedges: 6, rounds: 9 }, 3);
  const rounds = sheet.pattern.panels[0].rounds.map((marks, r) => marks.slice(0, r + 1).repeat(6));
  const pattern = { ...sheet.pattern, panels: [{ ...sheet.pattern.panels[0], rounds }] };
  const [many, one] = [wedgesSvg(sheet), wedgesSvg({ ...sheet, pattern })];
  expect(many.match(/<g id="wedge-\d+"/g)).toHaveLength(6);
  expect(one.match(/<g id="wedge-\d+"/g)).toHaveLength(1);
  const height = (svg: string) => Number(/height="([\d.]+)mm"/.exec(svg)![1]);
  expect(height(one)).toBeLessThan(300);
  expect(one).not.toContain('wedge-2');
});
