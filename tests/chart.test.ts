import sharp from 'sharp';
import { wcagContrast } from 'culori';
import { describe, expect, test } from 'vitest';
import { chartSvg, patternInSvg, withPatternInSvg } from '../src/core/pages/chart/chart.js';
import { holeRadius } from '../src/core/panel/edge.js';
import { insideRing } from '../src/core/panel/rings.js';
import { stitchesBefore } from '../src/core/panel/shape.js';
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

/** Where the panel's centre lies on the page: the hole is drawn there. */
function holeOf(svg: string) {
  const hole = /<circle [^>]*cx="([^"]*)" cy="([^"]*)" r="([^"]*)"/.exec(svg) ?? [];
  const [x, y, holeMm] = hole.slice(1).map(Number);
  return { x, y, holeMm };
}

/** Stitches on both sides of the start line: their letters make room for the round's number. */
function besideStart({ shape }: typeof wide.geometry): Set<number> {
  const beside = new Set<number>();
  for (let r = 1; r <= shape.rounds; r++) {
    const first = stitchesBefore(shape, r);
    beside.add(first).add(first + shape.wedges * r - 1);
  }
  return beside;
}

/** The letter of each stitch as drawn: the nearest of its letter, each taken once. */
function lettersByStitch({ geometry, pattern }: typeof wide, svg: string) {
  const { x: centreX, y: centreY, holeMm } = holeOf(svg);
  const scale = holeMm / holeRadius(geometry.shape);
  const marks = pattern.panels[0].rounds.join('');
  const beside = besideStart(geometry);
  const drawn = glyphsIn(svg, groupIn(svg, 'letters')).map((glyph) => ({
    glyph,
    letter: String.fromCodePoint(Number(glyph.id.slice(1))),
    x: (glyph.left + glyph.right) / 2,
    y: (glyph.top + glyph.baseline) / 2,
  }));
  const waiting = new Set(drawn);
  return [...marks].map((mark, s) => {
    const x = centreX + scale * geometry.centres[2 * s];
    const y = centreY + scale * geometry.centres[2 * s + 1];
    let nearest: (typeof drawn)[number] | undefined;
    let least = Infinity;
    for (const one of waiting) {
      const off = one.letter === mark ? Math.hypot(one.x - x, one.y - y) : Infinity;
      if (off < least) [least, nearest] = [off, one];
    }
    if (!nearest) throw new Error(`stitch ${s} has no letter ${mark}`);
    waiting.delete(nearest);
    return { s, beside: beside.has(s), glyph: nearest.glyph };
  });
}

const distance = ([ax, ay]: readonly number[], [bx, by]: readonly number[]) =>
  Math.hypot(ax - bx, ay - by);

describe.each(cases)('chart: %s', (_, sheet, svg) => {
  const { geometry, footprints } = sheet;
  const { shape, count, centres, direction } = geometry;
  const { x: centreX, y: centreY, holeMm } = holeOf(svg);
  const letters = lettersByStitch(sheet, svg);

  test('every stitch has one letter, at its centre', () => {
    expect(letters.length).toBe(count);
    // The scale that fits the letters best; the hole says the same, more roughly.
    let above = 0;
    let below = 0;
    for (const { s, beside, glyph } of letters) {
      if (beside) continue;
      const x = (glyph.left + glyph.right) / 2 - centreX;
      above += x * centres[2 * s];
      below += centres[2 * s] ** 2;
    }
    const scale = above / below;
    expect(Math.abs(holeMm / holeRadius(shape) / scale - 1)).toBeLessThan(0.01);
    const cellMm = scale * Math.sqrt(shape.stitchWidthMm * shape.roundHeightMm);
    for (const { s, beside, glyph } of letters) {
      const x = (glyph.left + glyph.right) / 2 - centreX - scale * centres[2 * s];
      const y = (glyph.top + glyph.baseline) / 2 - centreY - scale * centres[2 * s + 1];
      if (beside) expect(Math.hypot(x, y)).toBeLessThan(0.42 * cellMm);
      else {
        expect(Math.abs(x)).toBeLessThan(0.03);
        expect(Math.abs(y)).toBeLessThan(0.06);
      }
    }
  });

  test('every stitch has one cell, which holds its centre', () => {
    const rings = pathsIn(groupIn(svg, 'cells')).flatMap(({ fill, d }) =>
      polylines(d).map((points) => ({ fill, ring: Float64Array.from(points.flat()) })),
    );
    const holes = Array.from({ length: count }, (_, s) => footprints.rings(s).length - 1);
    expect(rings.length).toBe(count + holes.reduce((sum, n) => sum + n, 0));
    const byLetter = new Map(sheet.pattern.beads.map((bead) => [bead.letter, bead.hex]));
    for (const { glyph } of letters) {
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

  test('every round has its number on the border before its first stitch', () => {
    const scale = holeMm / holeRadius(shape);
    const group = groupIn(svg, 'numbers');
    const titles = [...group.matchAll(/<title>(\d+)<\/title>/g)].map(([, title]) => Number(title));
    const expected = Array.from({ length: shape.rounds }, (_, n) => n + 1);
    expect([...titles].sort((a, b) => a - b)).toEqual(expected);
    const digits = glyphsIn(svg, group);
    for (const r of expected.slice(1)) {
      const mine = digits.filter(({ title }) => title === String(r));
      const x = (mine[0].left + mine.at(-1)!.right) / 2 - centreX;
      const y = (mine[0].top + mine[0].baseline) / 2 - centreY;
      const first = (shape.wedges * r * (r - 1)) / 2;
      // Worked just before it: in a spiral the end of the round below, else the end of its own.
      const before = shape.construction === 'spiral' ? first - 1 : first + shape.wedges * r - 1;
      const off = (s: number) =>
        Math.hypot(x - scale * centres[2 * s], y - scale * centres[2 * s + 1]);
      expect(Math.abs(off(first) - off(before)), `round ${r}`).toBeLessThan(0.35);
      expect(off(first)).toBeLessThan(0.75 * scale * shape.stitchWidthMm);
    }
  });

  test('ticks on the rim stand before every tenth stitch of the last round, numbered', () => {
    const scale = holeMm / holeRadius(shape);
    const inRound = shape.wedges * shape.rounds;
    const first = (inRound * (shape.rounds - 1)) / 2;
    const tens = Array.from({ length: Math.floor(inRound / 10) }, (_, n) => 10 * (n + 1));
    const group = groupIn(svg, 'rim-ticks');
    const ticks = pathsIn(group).flatMap(({ d }) => polylines(d));
    const at = (s: number) => [
      centreX + scale * centres[2 * s],
      centreY + scale * centres[2 * s + 1],
    ];
    const rimOf = ticks.map(([[fromX, fromY], [toX, toY]]) => {
      const out = (x: number, y: number) => Math.hypot(x - centreX, y - centreY);
      expect(out(toX, toY)).toBeGreaterThan(out(fromX, fromY));
      // The nearest stitch of all is the one that the tick stands before.
      let nearest = 0;
      for (let s = 1; s < count; s++)
        if (distance(at(s), [fromX, fromY]) < distance(at(nearest), [fromX, fromY])) nearest = s;
      return nearest - first + 1;
    });
    // One may be missing, where the start mark stands.
    expect(tens.length - rimOf.length).toBeLessThanOrEqual(1);
    for (const stitch of rimOf) expect(tens).toContain(stitch);
    const numbers = [...group.matchAll(/<title>(\d+)<\/title>/g)].map(([, n]) => Number(n));
    expect(rimOf.length - numbers.length).toBeLessThanOrEqual(1);
    for (const number of numbers) {
      const digits = glyphsIn(svg, group).filter(({ title }) => title === String(number));
      const [left, right] = [digits[0].left, digits.at(-1)!.right];
      const middle = [(left + right) / 2, (digits[0].top + digits[0].baseline) / 2];
      const nearest = ticks.reduce((best, one) =>
        distance(one[1], middle) < distance(best[1], middle) ? one : best,
      );
      expect(rimOf[ticks.indexOf(nearest)]).toBe(number);
      // Outside the rim: no cell holds it.
      const cells = pathsIn(groupIn(svg, 'cells')).flatMap(({ d }) => polylines(d));
      const within = cells.some((ring) =>
        insideRing(Float64Array.from(ring.flat()), middle[0], middle[1]),
      );
      expect(within).toBe(false);
    }
    expect(svg.includes('Ticks on the rim: every 10th stitch')).toBe(tens.length > 0);
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
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(1.35);
  const ordinary = heights.filter((height) => height > 1.8);
  // Those beside the start line may be a little smaller.
  expect(ordinary.length).toBeGreaterThan(heights.length - 50);
  const digits = glyphsIn(wideSvg, groupIn(wideSvg, 'numbers')).filter(
    ({ title }) => title !== '1',
  );
  expect(Math.min(...digits.map(({ top, bottom }) => bottom - top))).toBeGreaterThanOrEqual(1.2);
  const high = digits.map(({ top, bottom }) => bottom - top).sort((a, b) => a - b);
  expect(high[Math.floor(high.length / 2)]).toBeGreaterThanOrEqual(1.25);
});

test('where a letter is under 2 mm the chart says where they stand larger, and nowhere else', () => {
  for (const [rounds, widthMm, heightMm] of [
    [12, 210, 297],
    [22, 210, 297],
    [26, 210, 297],
    [40, 210, 297],
    [40, 420, 594],
  ]) {
    const sheet = panelSheet({ wedges: 7, rounds }, 7);
    const paper = { name: 'A4', widthMm, heightMm } as unknown as Parameters<typeof chartSvg>[1];
    const svg = chartSvg(sheet, paper);
    const capitals = glyphsIn(svg, groupIn(svg, 'letters'));
    // Those that step aside for a number are the smallest.
    const height = Math.min(...capitals.map(({ top, bottom }) => bottom - top));
    expect(/Larger letters: wedge by wedge/.test(svg), `${rounds}, ${height}`).toBe(height < 2);
  }
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
