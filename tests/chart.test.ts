import sharp from 'sharp';
import { wcagContrast } from 'culori';
import { describe, expect, test } from 'vitest';
import { chartSvg, patternInSvg, withPatternInSvg } from '../src/core/draw/chart.js';
import { holeRadius } from '../src/core/geometry/edge.js';
import { insideRing } from '../src/core/geometry/rings.js';
import { stitchesBefore } from '../src/core/shape.js';
import { panelSheet } from './support/panel-sheet.js';
import { glyphsIn, groupIn, pathsIn, polylines } from './support/svg.js';

const wide = panelSheet({ wedges: 7, rounds: 25 }, 24);
const wideSvg = chartSvg(wide);

const cases = [
  ['7 wedges, 25 rounds, 24 colours', wide, wideSvg],
  ...[
    [
      '6 wedges, middle, left hand, toward',
      { wedges: 6, rounds: 22, increase: 'middle', hand: 'left', beadsFace: 'toward' },
    ],
    ['joined, left hand', { wedges: 8, rounds: 9, construction: 'joined', hand: 'left' }],
    ['3 wedges, first', { wedges: 3, rounds: 6, increase: 'first' }],
  ].map(([name, wish]) => {
    const sheet = panelSheet(wish as Parameters<typeof panelSheet>[0], 5);
    return [name, sheet, chartSvg(sheet)];
  }),
] as [string, typeof wide, string][];

/** Letters' middles on the page by stitch: as drawn, group by group in the pattern's order. */
function lettersByStitch(sheet: typeof wide, svg: string) {
  const { shape } = sheet.geometry;
  const marks = sheet.pattern.panels[0].rounds.join('');
  const firsts = new Set(
    sheet.pattern.panels[0].rounds.map((_, n) => stitchesBefore(shape, n + 1)),
  );
  const drawn = glyphsIn(svg, groupIn(svg, 'letters'));
  const waiting = new Map<string, typeof drawn>();
  for (const glyph of drawn) {
    const letter = String.fromCodePoint(Number(glyph.id.slice(1)));
    waiting.set(letter, [...(waiting.get(letter) ?? []), glyph]);
  }
  const found: { s: number; first: boolean; glyph: (typeof drawn)[number] }[] = [];
  for (const [letter, glyphs] of waiting) {
    const stitches = [...marks].flatMap((mark, s) => (mark === letter ? [s] : []));
    const order = [
      ...stitches.filter((s) => !firsts.has(s)),
      ...stitches.filter((s) => firsts.has(s)),
    ];
    expect(glyphs.length).toBe(order.length);
    order.forEach((s, n) => found.push({ s, first: firsts.has(s), glyph: glyphs[n] }));
  }
  return found;
}

describe.each(cases)('chart: %s', (_, sheet, svg) => {
  const { geometry, footprints } = sheet;
  const { shape, count, centres, direction } = geometry;
  const hole = /<circle [^>]*cx="([^"]*)" cy="([^"]*)" r="([^"]*)"/.exec(svg) ?? [];
  const [centreX, centreY, holeMm] = hole.slice(1).map(Number);
  const letters = lettersByStitch(sheet, svg);

  test('every stitch has one letter, at its centre', () => {
    expect(letters.length).toBe(count);
    // The scale that fits the letters best; the hole says the same, more roughly.
    let above = 0;
    let below = 0;
    for (const { s, first, glyph } of letters) {
      if (first) continue;
      const x = (glyph.left + glyph.right) / 2 - centreX;
      above += x * centres[2 * s];
      below += centres[2 * s] ** 2;
    }
    const scale = above / below;
    expect(Math.abs(holeMm / holeRadius(shape) / scale - 1)).toBeLessThan(0.01);
    for (const { s, first, glyph } of letters) {
      const x = (glyph.left + glyph.right) / 2 - centreX;
      expect(Math.abs(x - scale * centres[2 * s])).toBeLessThan(
        s === shape.wedges ? 0.18 * scale * shape.roundHeightMm : 0.03,
      );
      const y = (glyph.top + glyph.baseline) / 2 - centreY - scale * centres[2 * s + 1];
      if (first && s > 0) expect(y).toBeGreaterThan(0);
      else expect(Math.abs(y)).toBeLessThan(0.06);
    }
  });

  test('every stitch has one cell, which holds its centre', () => {
    const rings = pathsIn(groupIn(svg, 'cells')).flatMap(({ fill, d }) =>
      polylines(d).map((points) => ({ fill, ring: Float64Array.from(points.flat()) })),
    );
    const holes = Array.from({ length: count }, (_, s) => footprints.rings(s).length - 1);
    expect(rings.length).toBe(count + holes.reduce((sum, n) => sum + n, 0));
    const byLetter = new Map(sheet.pattern.beads.map((bead) => [bead.letter, bead.hex]));
    for (const { first, glyph } of letters) {
      if (first) continue;
      const x = (glyph.left + glyph.right) / 2;
      const y = (glyph.top + glyph.baseline) / 2;
      const around = rings.filter(({ ring }) => insideRing(ring, x, y));
      expect(around.length).toBe(1);
      const letter = String.fromCodePoint(Number(glyph.id.slice(1)));
      expect(around[0].fill).toBe(byLetter.get(letter));
    }
  });

  test('doubled pairs are marked, one a wedge from round 2 on', () => {
    const bars = pathsIn(groupIn(svg, 'pairs')).flatMap(({ d }) => polylines(d));
    expect(bars.length).toBe(shape.wedges * (shape.rounds - 1));
  });

  test('the arrow runs with the work, outside the rim', () => {
    const [line, head] = pathsIn(groupIn(svg, 'direction'));
    const arc = polylines(line.d)[0];
    const [tip] = polylines(head.d)[0];
    const from = [arc[0][0] - centreX, arc[0][1] - centreY];
    const to = [tip[0] - centreX, tip[1] - centreY];
    // y points down: a positive cross product is clockwise on the page.
    expect(Math.sign(from[0] * to[1] - from[1] * to[0])).toBe(direction);
    const cells = pathsIn(groupIn(svg, 'cells')).flatMap(({ d }) => polylines(d).flat());
    const rim = Math.max(...cells.map(([x, y]) => Math.hypot(x - centreX, y - centreY)));
    for (const [x, y] of arc) expect(Math.hypot(x - centreX, y - centreY)).toBeGreaterThan(rim);
  });

  test('every round has its number beside its first stitch', () => {
    const titles = [...groupIn(svg, 'numbers').matchAll(/<title>(\d+)<\/title>/g)];
    const expected = Array.from({ length: shape.rounds }, (_, n) => String(n + 1));
    expect(titles.map(([, title]) => title).sort((a, b) => Number(a) - Number(b))).toEqual(
      expected,
    );
  });

  test('the key adds up to all stitches', () => {
    const key = groupIn(svg, 'key');
    const counts = [...key.matchAll(/<title>([\d,]+)<\/title>/g)].map(([, text]) =>
      Number(text.replace(',', '')),
    );
    expect(counts.reduce((sum, n) => sum + n, 0)).toBe(count);
    expect(counts.length).toBe(sheet.pattern.beads.length);
  });

  test('letters contrast with their beads at least 4.5 to 1 (W3C, WCAG 2.1, 1.4.3)', () => {
    const byLetter = new Map(sheet.pattern.beads.map((bead) => [bead.letter, bead.hex]));
    for (const { glyph } of letters) {
      const hex = byLetter.get(String.fromCodePoint(Number(glyph.id.slice(1)))) ?? '';
      expect(wcagContrast(hex, glyph.ink)).toBeGreaterThanOrEqual(4.5);
    }
  });

  test('nothing leaves the page, and key entries do not overlap', () => {
    const page = /viewBox="0 0 (\d+) (\d+)"/.exec(svg) ?? [];
    for (const glyph of glyphsIn(svg)) {
      expect(glyph.left).toBeGreaterThanOrEqual(7.5);
      expect(glyph.right).toBeLessThanOrEqual(Number(page[1]) - 7.5);
      expect(glyph.top).toBeGreaterThanOrEqual(7.5);
      expect(glyph.bottom).toBeLessThanOrEqual(Number(page[2]) - 7.5);
    }
    const inKey = glyphsIn(svg, groupIn(svg, 'key'));
    inKey.forEach((one, n) => {
      for (const other of inKey.slice(n + 1)) {
        if (one.title === other.title) continue;
        const apart =
          one.right <= other.left ||
          other.right <= one.left ||
          one.bottom <= other.top ||
          other.bottom <= one.top;
        expect(apart, `${one.title} / ${other.title}`).toBe(true);
      }
    });
  });

  test('is well-formed SVG of outlines only', async () => {
    expect(svg).not.toMatch(/<text|@font-face|font-family/);
    const { format, width } = await sharp(Buffer.from(svg)).metadata();
    expect(format).toBe('svg');
    expect(width).toBeGreaterThan(0);
  });
});

test('25 rounds on A4 can be read: heights of letters and numbers in millimetres', () => {
  expect(wideSvg).toContain('width="210mm" height="297mm"');
  const flat = [...'EFHLTXZ'].map((c) => `b${c.codePointAt(0)}`);
  const letters = glyphsIn(wideSvg, groupIn(wideSvg, 'letters')).filter(({ id }) =>
    flat.includes(id),
  );
  const heights = letters.map(({ top, bottom }) => bottom - top);
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(1.5);
  const ordinary = heights.filter((height) => height > 1.7);
  expect(ordinary.length).toBeGreaterThan(heights.length - 26);
  expect(Math.min(...ordinary)).toBeGreaterThanOrEqual(1.9);
  const digits = glyphsIn(wideSvg, groupIn(wideSvg, 'numbers'));
  expect(Math.min(...digits.map(({ top, bottom }) => bottom - top))).toBeGreaterThanOrEqual(1.35);
});

test('numbers cover no letter', () => {
  const digits = glyphsIn(wideSvg, groupIn(wideSvg, 'numbers'));
  const letters = glyphsIn(wideSvg, groupIn(wideSvg, 'letters'));
  for (const digit of digits) {
    const covered = letters.filter(
      (letter) =>
        letter.left < digit.right &&
        letter.right > digit.left &&
        letter.top < digit.bottom &&
        letter.bottom > digit.top,
    );
    expect(covered).toEqual([]);
  }
});

test('other hands and faces: the arrow turns', () => {
  const turns = (['right', 'left'] as const).flatMap((hand) =>
    (['away', 'toward'] as const).map((beadsFace) => {
      const svg = chartSvg(panelSheet({ wedges: 5, rounds: 4, hand, beadsFace }, 3));
      const [line] = pathsIn(groupIn(svg, 'direction'));
      const points = polylines(line.d)[0];
      return Math.sign(points[points.length - 1][0] - points[0][0]);
    }),
  );
  // At the top of the page clockwise is to the right.
  expect(turns).toEqual([1, -1, -1, 1]);
});

test('bare and open stitches are drawn and counted', () => {
  const sheet = panelSheet({ wedges: 4, rounds: 2 }, 1);
  const rounds = ['A_A.', '.A_.A.AA'];
  const pattern = { ...sheet.pattern, panels: [{ ...sheet.pattern.panels[0], rounds }] };
  const svg = chartSvg({ ...sheet, pattern });
  const counts = [...groupIn(svg, 'key').matchAll(/<title>(\d+)<\/title>/g)].map(([, n]) =>
    Number(n),
  );
  expect(counts).toEqual([6, 4, 2]);
  const dots = pathsIn(groupIn(svg, 'letters')).flatMap(({ d }) => polylines(d));
  expect(dots.length).toBe(4);
});

test('80 rounds ask for larger paper and stay quick', () => {
  const svg = chartSvg(panelSheet({ wedges: 7, rounds: 80 }, 3));
  expect(svg).not.toContain('width="210mm"');
  expect(svg).toMatch(/<title>Print on A\d paper, at full size.<\/title>/);
});

test('the pattern inside reads back as it was', () => {
  const patternJson = JSON.stringify({ title: 'Æ <b> & "c" ]]> ü \u0001' }, null, 2);
  expect(
    patternInSvg(withPatternInSvg(chartSvg(panelSheet({ wedges: 3, rounds: 2 }, 2)), patternJson)),
  ).toBe(patternJson);
  expect(patternInSvg(wideSvg)).toBeUndefined();
});

test('a letter the font lacks is named', () => {
  const sheet = panelSheet({ wedges: 3, rounds: 2 }, 2, { title: 'Fish 鱼' });
  expect(() => chartSvg(sheet)).toThrowError(
    expect.objectContaining({
      code: 'glyph-missing',
      facts: expect.objectContaining({ character: '鱼', code: 'U+9C7C', script: 'Han' }),
    }),
  );
});
