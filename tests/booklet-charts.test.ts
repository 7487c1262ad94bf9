import fc from 'fast-check';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { cellSize, chartBeadMm } from '../src/core/pages/chart/chart.js';
import { chartSheets } from '../src/core/pages/chart/chart-sheets.js';
import type { ChartSheet } from '../src/core/pages/chart/sheet-surround.js';
import type { GlyphRun, Surface } from '../src/core/pages/surface/surface.js';
import { wedgeSheets, wedgesAlike } from '../src/core/pages/chart/wedge-sheets.js';
import { patternText } from '../src/core/pattern/serialise.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { projectLevel } from '../src/core/pages/lists/level.js';
import { panelSheet } from './support/panel-sheet.js';
import { readPdf } from './support/read-pdf.js';
import { inProcess } from './support/run.js';

const folder = mkdtempSync(join(tmpdir(), 'rondure-charts-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const page = { widthMm: 210, heightMm: 297, bottomMm: 287, leastBeadMm: 4, textPoints: 10 };

/** Letters drawn on a surface, and the points of everything filled. */
function recorder() {
  const letters: { character: string; x: number; y: number; cap: number }[] = [];
  let filled = 0;
  const nothing = () => {};
  const surface: Surface = {
    widthMm: page.widthMm,
    heightMm: page.heightMm,
    fillPath: (rings) => void (filled += rings.length),
    strokePath: nothing,
    strokeCurve: nothing,
    circle: nothing,
    glyphs: ({ glyphs, sizeMm }: GlyphRun) => {
      for (const { glyph, x, y } of glyphs)
        letters.push({ character: glyph.character, x, y, cap: sizeMm * 0.714 });
    },
    beginGroup: nothing,
    endGroup: nothing,
  };
  return { surface, letters, filled: () => filled };
}

const shapes = fc.record({
  wedges: fc.integer({ min: 3, max: 12 }),
  rounds: fc.integer({ min: 2, max: 34 }),
  outline: fc.constantFrom('polygon' as const, 'circle' as const),
  leastBeadMm: fc.constantFrom(4, 6),
});

/** Millimetres on the page from the panel's centre, for a sheet. */
const centreOf = ({ tile, window }: ChartSheet) => ({
  x: window.left - tile.box.left,
  y: window.top - tile.box.top,
});

describe('an enlarged chart', () => {
  test('every stitch is whole on a sheet, no sheet is without beads, beads are large enough', () => {
    fc.assert(
      fc.property(shapes, ({ leastBeadMm, ...shape }) => {
        const sheet = panelSheet(shape, 3);
        const { geometry, footprints } = sheet;
        const { stitchWidthMm, roundHeightMm } = geometry.shape;
        const sheets = chartSheets(sheet, { ...page, leastBeadMm }, 'Chart');
        const scaled = sheets.map((one) => {
          const { surface, letters, filled } = recorder();
          one.drawInWindow(surface);
          expect(filled()).toBeGreaterThan(0);
          return { ...one, letters };
        });
        const scale = sheets[0].beadMm / cellSize(sheet, 1);
        expect(cellSize(sheet, scale)).toBeGreaterThanOrEqual(leastBeadMm - 1e-9);
        for (let s = 0; s < geometry.count; s++) {
          const whole = scaled.some((one) => {
            const { x, y } = centreOf(one);
            return footprints.rings(s).every((ring) =>
              Array.from(ring).every((value, p) => {
                const at = (p % 2 === 0 ? x : y) + scale * value;
                const { left, right, top, bottom } = one.window;
                return p % 2 === 0
                  ? at >= left - 1e-5 && at <= right + 1e-5
                  : at >= top - 1e-5 && at <= bottom + 1e-5;
              }),
            );
          });
          expect(whole, `stitch ${s}`).toBe(true);
        }
        // Letters stand in their cells: one is within three quarters of a stitch of each centre (beside a round number it stands lower).
        for (let s = 0; s < geometry.count; s++) {
          const there = scaled.some((one) => {
            const { x, y } = centreOf(one);
            const [atX, atY] = [
              x + scale * geometry.centres[2 * s],
              y + scale * geometry.centres[2 * s + 1],
            ];
            return one.letters.some(
              (letter) =>
                /[A-C]/.test(letter.character) &&
                Math.hypot(letter.x + 0.45 * letter.cap - atX, letter.y - letter.cap / 2 - atY) <
                  0.75 * scale * Math.max(stitchWidthMm, roundHeightMm),
            );
          });
          expect(there, `letter of stitch ${s}`).toBe(true);
        }
        // All letters of one sheet or another, at least as many as there are stitches.
        const drawn = scaled.flatMap(({ letters }) =>
          letters.filter(({ character }) => /[A-C]/.test(character)),
        );
        expect(drawn.length).toBeGreaterThanOrEqual(geometry.count);
      }),
      { numRuns: 40 },
    );
  });

  test('60 rounds come on few sheets, each drawing only what it shows', () => {
    const sheet = panelSheet({ wedges: 7, rounds: 60 }, 8);
    const sheets = chartSheets(sheet, page, 'Chart');
    expect(sheets.length).toBeLessThanOrEqual(9);
    const drawn = sheets.map((one) => {
      const { surface, letters } = recorder();
      one.drawInWindow(surface);
      return letters.filter(({ character }) => /[A-H]/.test(character));
    });
    const count = drawn.reduce((sum, letters) => sum + letters.length, 0);
    expect(count).toBeGreaterThanOrEqual(sheet.geometry.count);
    expect(count).toBeLessThan(2 * sheet.geometry.count);
    // Capitals are 0.58 of a bead; beside a round number they are smaller.
    const caps = drawn.flat().map(({ cap }) => cap);
    expect(caps.filter((cap) => cap > 2.2).length).toBeGreaterThan(0.95 * caps.length);
    const scale = sheets[0].beadMm / cellSize(sheet, 1);
    for (let s = 0; s < sheet.geometry.count; s++) {
      const whole = sheets.some((one) => {
        const { x, y } = centreOf(one);
        const { left, right, top, bottom } = one.window;
        return sheet.footprints.rings(s).every((ring) =>
          Array.from(ring).every((value, p) => {
            const at = (p % 2 === 0 ? x : y) + scale * value;
            const [least, most] = p % 2 === 0 ? [left, right] : [top, bottom];
            return at >= least - 1e-5 && at <= most + 1e-5;
          }),
        );
      });
      expect(whole, `stitch ${s}`).toBe(true);
    }
  });

  test('neighbours show the same strip of two rounds at least', () => {
    const sheet = panelSheet({ wedges: 6, rounds: 40 }, 3);
    const sheets = chartSheets(sheet, page, 'Chart');
    const scale = sheets[0].beadMm / cellSize(sheet, 1);
    for (const one of sheets) {
      const right = sheets.find(
        ({ tile }) => tile.row === one.tile.row && tile.column === one.tile.column + 1,
      );
      if (!right) continue;
      const shared = one.tile.box.right - right.tile.box.left;
      expect(shared).toBeGreaterThanOrEqual(2 * scale * sheet.geometry.shape.roundHeightMm);
    }
  });
});

describe('wedge charts', () => {
  const repeated = (rounds: number): Pattern => {
    const { pattern } = panelSheet({ wedges: 6, rounds }, 3);
    const [panel] = pattern.panels;
    const alike = panel.rounds.map((_, index) =>
      Array.from({ length: index + 1 }, (_unused, j) => 'ABC'[(index + j) % 3])
        .join('')
        .repeat(6),
    );
    return { ...pattern, panels: [{ ...panel, rounds: alike }] };
  };

  test.each([8, 20, 45])('one triangle of %i rows, all its letters large and there', (rounds) => {
    const sheet = { ...panelSheet({ wedges: 6, rounds }, 3), pattern: repeated(rounds) };
    expect(wedgesAlike(sheet)).toBe(true);
    const sheets = wedgeSheets(sheet, page, 'Wedge chart');
    expect(sheets.length).toBe(rounds === 45 ? 2 : 1);
    const { surface, letters } = recorder();
    sheets[0].drawInWindow(surface);
    const cells = letters.filter(({ character }) => /[ABC]/.test(character));
    expect(cells.length).toBe((rounds * (rounds + 1)) / 2);
    for (const { cap } of cells) expect(cap).toBeGreaterThan(2.1);
  });

  test('only a motif that repeats has one, and its rows are read back from the PDF', async () => {
    expect(wedgesAlike(panelSheet({ wedges: 6, rounds: 9 }, 3))).toBe(false);
    const pattern = repeated(9);
    const from = join(folder, 'repeated.json');
    writeFileSync(from, patternText(pattern));
    const out = join(folder, 'repeated.pdf');
    expect(await inProcess('booklet', from, '-o', out)).toMatchObject({ code: 0 });
    const { pages } = await readPdf(readFileSync(out));
    // The contents name it, too.
    const named = pages.filter(({ texts }) => texts.some(({ text }) => text === 'Wedge chart'));
    expect(named).toHaveLength(2);
    const wedge = named[1];
    for (const [index, marks] of pattern.panels[0].rounds.entries()) {
      const rowsAt = wedge.texts.filter(({ text }) => text === String(index + 1));
      const found = rowsAt.some(({ y }) => {
        const row = wedge.texts
          .filter((one) => /^[ABC]$/.test(one.text) && Math.abs(one.y - y) < 2)
          .sort((a, b) => a.x - b.x);
        return row.map(({ text }) => text).join('') === marks.slice(0, index + 1);
      });
      expect(found, `row ${index + 1}`).toBe(true);
    }
  });
});

test('the project level: rings and quiet repeats are intermediate, pictures complex', () => {
  const { pattern } = panelSheet({ wedges: 6, rounds: 10 }, 6);
  const rings = pattern.panels[0].rounds.map((marks, n) => 'AB'[n % 2].repeat(marks.length));
  const petals = pattern.panels[0].rounds.map((_, n) => `${'A'.repeat(n)}B`.repeat(6));
  const of = (rounds: string[]) => projectLevel({ panels: [{ ...pattern.panels[0], rounds }] });
  expect(of(rings)).toBe('intermediate');
  expect(of(petals)).toBe('intermediate');
  expect(projectLevel(pattern)).toBe('complex');
});

test('a large chart stands alone on its page, a crowded one is enlarged as well', async () => {
  for (const [rounds, enlarged] of [
    [12, false],
    [36, true],
  ] as const) {
    const sheet = panelSheet({ wedges: 7, rounds }, 4);
    expect(chartBeadMm(sheet, 210, 287) < 4).toBe(enlarged);
    const from = join(folder, `${rounds}.json`);
    const out = join(folder, `${rounds}.pdf`);
    writeFileSync(from, patternText(sheet.pattern));
    expect(await inProcess('booklet', from, '-o', out)).toMatchObject({ code: 0 });
    const { pages } = await readPdf(readFileSync(out));
    const sheets = pages.filter(({ texts }) =>
      texts.some(({ text }) => /^Chart, enlarged, wedges? /.test(text)),
    );
    expect(sheets.length > 0).toBe(enlarged);
  }
});

test('the grams beside the totals are those of the beads strung so far', async () => {
  const { pattern } = panelSheet({ wedges: 6, rounds: 12 }, 4);
  const heavy = pattern.beads.map((bead, n) => ({ ...bead, beadsPerGram: 20 + 15 * n }));
  const from = join(folder, 'heavy.json');
  const out = join(folder, 'heavy.pdf');
  writeFileSync(from, patternText({ ...pattern, beads: heavy }));
  expect(await inProcess('booklet', from, '-o', out)).toMatchObject({ code: 0 });
  const { pages } = await readPdf(readFileSync(out));
  // The list of contents names the part too, beside the table of materials.
  const lists = pages
    .slice(2)
    .filter(({ texts }) => texts.some(({ text }) => /^String and work/.test(text)));
  const said = lists.flatMap(({ texts }) =>
    texts.flatMap(({ text, y, x }) => {
      if (!/^\d+\.\d$/.test(text) || x < 170) return [];
      const total = texts.find(
        (one) => Math.abs(one.y - y) < 1 && one.x > 150 && one.x < x && /^[\d,]+$/.test(one.text),
      );
      return total ? [[Number(total.text.replace(',', '')), Number(text)]] : [];
    }),
  );
  expect(said).toHaveLength(12);
  let [beads, grams] = [0, 0];
  for (const [n, marks] of [...pattern.panels[0].rounds].reverse().entries()) {
    beads += marks.length;
    for (const letter of marks)
      grams += 1 / heavy.find((bead) => bead.letter === letter)!.beadsPerGram;
    expect(said).toContainEqual([beads, Number(grams.toFixed(1))]);
    expect(n).toBeLessThan(12);
  }
});

describe('chart --booklet', () => {
  const picture = new URL('../fixtures/barley-moon.svg', import.meta.url).pathname;
  const small = ['--rounds', '6', '--colours', '3'];

  test('writes booklet.pdf with the other files; redraw leaves it and says so, or makes it again', async () => {
    const dir = join(folder, 'moon');
    const made = await inProcess('chart', picture, ...small, '--booklet', '-o', dir, '--json');
    expect(made.code).toBe(0);
    expect((JSON.parse(made.out) as { files: string[] }).files).toContain('booklet.pdf');
    const first = readFileSync(join(dir, 'booklet.pdf'));
    const pattern = join(dir, 'pattern.json');
    const left = await inProcess('redraw', pattern, '--force');
    expect(left.out).toMatch(/booklet\.pdf in the folder was left as it is/);
    expect(readFileSync(join(dir, 'booklet.pdf')).equals(first)).toBe(true);
    const again = await inProcess('redraw', pattern, '--force', '--booklet', '--language', 'en-US');
    expect(again).toMatchObject({ code: 0, err: '' });
    expect(again.out).not.toMatch(/left as it is/);
    expect(readFileSync(join(dir, 'booklet.pdf')).equals(first)).toBe(false);
  });

  test('is the booklet that rondure booklet makes', async () => {
    const dir = join(folder, 'same');
    await inProcess('chart', picture, ...small, '--booklet', '-o', dir);
    const out = join(folder, 'same.pdf');
    await inProcess('booklet', join(dir, 'pattern.json'), '-o', out);
    expect(readFileSync(join(dir, 'booklet.pdf')).equals(readFileSync(out))).toBe(true);
  });

  test('--language without --booklet is refused, and nothing is written', async () => {
    const before = readdirSync(folder);
    const argv = ['chart', picture, ...small, '--language', 'en-GB', '-o', join(folder, 'no')];
    const { code, err } = await inProcess(...argv);
    expect(code).toBe(2);
    expect(err).toMatch(/add --booklet/);
    expect(readdirSync(folder)).toEqual(before);
  });
});
