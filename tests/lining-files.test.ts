import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { patternText } from '../src/core/pattern/serialise.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { inkOf } from './support/ink.js';
import { panelSheet } from './support/panel-sheet.js';
import { readPdf } from './support/read-pdf.js';
import type { ReadPage, ReadPath } from './support/read-pdf.js';
import { inProcess } from './support/run.js';

let folder: string;
let small: string;
let large: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-lining-'));
  small = write('small.json', panelSheet({ wedges: 7, rounds: 20 }, 4).pattern);
  large = write('large.json', panelSheet({ wedges: 8, rounds: 80, outline: 'circle' }, 4).pattern);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function write(name: string, pattern: Pattern): string {
  const path = join(folder, name);
  writeFileSync(path, patternText(pattern));
  return path;
}

async function pdfOf(name: string, ...argv: string[]) {
  const file = join(folder, name);
  const { code, err } = await inProcess('lining', ...argv, '-o', file, '--force');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return readPdf(readFileSync(file));
}

/** The greatest distance of two points of a path. */
function widest({ points }: Pick<ReadPath, 'points'>): number {
  let most = 0;
  for (const [ax, ay] of points)
    for (const [bx, by] of points) most = Math.max(most, Math.hypot(ax - bx, ay - by));
  return most;
}

/** The two curves of many points: the cut line by its pen of 0.4 mm, the seam line by its dashes. */
function linesOf({ paths }: ReadPage): { cut: ReadPath; seam: ReadPath } {
  const curves = paths.filter(({ points, kind }) => kind === 'stroke' && points.length > 100);
  const cut = curves.find(({ dashed, penMm }) => !dashed && Math.abs(penMm - 0.4) < 0.001);
  const seam = curves.find(({ dashed, penMm }) => dashed && Math.abs(penMm - 0.3) < 0.001);
  return { cut: cut!, seam: seam! };
}

// ISO 216 A4; Letter is 8.5 × 11 inches of 25.4 mm.
const papers: [paper: string, widthMm: number, heightMm: number][] = [
  ['a4', 210, 297],
  ['letter', 8.5 * 25.4, 11 * 25.4],
];

test.each(papers)('a template on %s measures what it says', async (paper, widthMm, heightMm) => {
  const size = ['--measured', '95mm', '--allowance', '5mm', '--ease', '0', '--opening', '50'];
  const { pages, title, language } = await pdfOf(`${paper}.pdf`, small, ...size, '--paper', paper);
  expect(pages).toHaveLength(1);
  const [page] = pages;
  expect(page.widthMm).toBeCloseTo(widthMm, 4);
  expect(page.heightMm).toBeCloseTo(heightMm, 4);
  expect(title).toBe('Lining: Barley moon');
  expect(language).toBe('en-GB');
  const squares = page.paths.filter(({ points }) => points.length === 4 || points.length === 5);
  const sides = squares.map(({ box }) => [box[2] - box[0], box[3] - box[1]]);
  for (const side of [50, 50.8]) {
    const near = (value: number) => Math.abs(value - side) < 0.01;
    expect(sides.some(([wide, high]) => near(wide) && near(high))).toBe(true);
  }
  // A polygon's corners are not on the arcs' many points: look at the unbroken line by its size.
  const stroked = page.paths.filter(({ kind }) => kind === 'stroke').map(widest);
  for (const across of [105, 95]) {
    expect(stroked.filter((value) => Math.abs(value - across) < 0.1)).toHaveLength(1);
  }
  inSafeArea(page);
});

test('words and drawing stay inside the safe area of both papers', async () => {
  for (const [paper] of papers) {
    const { pages } = await pdfOf('safe.pdf', large, '--paper', paper);
    inSafeArea(pages[0]);
    const text = pages[0].texts.map((one) => one.text.replaceAll('\u00a0', ' ')).join(' ');
    expect(text).toContain('ESTIMATE');
    expect(text).toContain('Print at 100 %, scaling off');
  }
});

function inSafeArea(page: ReadPage): void {
  // 190 × 254 mm in the middle; pens have a width.
  const [left, top] = [(page.widthMm - 190) / 2 - 0.3, (page.heightMm - 254) / 2 - 0.3];
  for (const { box } of page.paths) {
    expect(box[0]).toBeGreaterThan(left);
    expect(box[1]).toBeGreaterThan(top);
    expect(box[2]).toBeLessThan(page.widthMm - left);
    expect(box[3]).toBeLessThan(page.heightMm - top);
  }
  for (const { x, y, widthMm } of page.texts) {
    expect(x).toBeGreaterThan(left);
    expect(x + widthMm).toBeLessThan(page.widthMm - left);
    expect(y).toBeLessThan(page.heightMm - top);
  }
}

test.each(papers)('80 rounds come on %s sheets that fit together', async (paper) => {
  const argv = ['--measured', '400mm', '--allowance', '5mm', '--paper', paper];
  const { pages } = await pdfOf('tiles.pdf', large, ...argv);
  const tiles = pages.slice(1);
  expect(tiles.length).toBe(6);
  const covered = new Set<number>();
  const degrees = Array.from({ length: 360 }, (_, n) => n);
  for (const page of tiles) {
    const { cut, seam } = linesOf(page);
    // Clipping is not what the reader looks at: every sheet holds the whole outline, moved.
    expect(widest(cut)).toBeCloseTo(410, 1);
    expect(widest(seam)).toBeCloseTo(400, 1);
    const [x, y] = [(cut.box[0] + cut.box[2]) / 2, (cut.box[1] + cut.box[3]) / 2];
    const [left, top] = [(page.widthMm - 190) / 2, (page.heightMm - 254) / 2];
    for (const n of degrees) {
      const at = [x + 205 * Math.cos((n * Math.PI) / 180), y + 205 * Math.sin((n * Math.PI) / 180)];
      const inside = at[0] > left && at[0] < left + 190 && at[1] > top + 8 && at[1] < top + 234;
      if (inside) covered.add(n);
    }
    const words = page.texts.map(({ text }) => text).join(' ');
    expect(words).toMatch(/Row \d of 2, column \d of 3/);
  }
  expect(covered.size).toBe(360);
  const middles = tiles.map((page) => {
    const { box } = linesOf(page).cut;
    return [(box[0] + box[2]) / 2, (box[1] + box[3]) / 2];
  });
  // Neighbours overlap by 12 mm: the outline moves by the sheet's window less that.
  expect(middles[0][0] - middles[1][0]).toBeCloseTo(190 - 12, 2);
  expect(middles[0][1] - middles[1][1]).toBeCloseTo(0, 2);
  expect(middles[0][0] - middles[3][0]).toBeCloseTo(0, 2);
});

test('no word of a piece on several sheets is cut in two by the edge of one', async () => {
  for (const [pattern, size] of [
    [small, '170mm'],
    [large, '230mm'],
    [large, '400mm'],
  ])
    for (const [paper] of papers) {
      const { pages } = await pdfOf('words.pdf', pattern, '--measured', size, '--paper', paper);
      for (const page of pages.slice(1)) {
        const edges = [(page.widthMm - 190) / 2, (page.widthMm + 190) / 2];
        for (const { text, x, widthMm } of page.texts)
          for (const edge of edges)
            expect(x >= edge - 0.1 || x + widthMm <= edge + 0.1, `${size} ${text}`).toBe(true);
        // All is on the piece, the grain's arrow and name too.
        const dashed = page.paths.filter((one) => one.dashed && Math.abs(one.penMm - 0.3) < 0.001);
        const box = dashed.reduce((most, one) => (widest(one) > widest(most) ? one : most)).box;
        const named = page.texts.filter(({ text }) =>
          /^(grain|hinge|cut \d|cut line|seam line)/.test(text),
        );
        for (const { text, x, widthMm } of named) {
          expect(x, text).toBeGreaterThan(box[0]);
          expect(x + widthMm, text).toBeLessThan(box[2]);
        }
      }
    }
});

test('the SVG has millimetres, and its paths measure what it says', async () => {
  const file = join(folder, 'x.svg');
  const argv = ['--measured', '95mm', '--allowance', '5mm', '--ease', '0', '-o', file];
  expect((await inProcess('lining', small, ...argv)).code).toBe(0);
  const svg = readFileSync(file, 'utf8');
  expect(svg).toMatch(/<svg [^>]*width="210mm" height="297mm" viewBox="0 0 210 297"/);
  const d = (id: string) => new RegExp(`<path id="${id}"[^>]* d="([^"]*)"`).exec(svg)![1];
  expect(widest({ points: pointsOfPath(d('cut-line')) })).toBeCloseTo(105, 3);
  expect(widest({ points: pointsOfPath(d('seam-line')) })).toBeCloseTo(95, 3);
  expect(d('cut-line').match(/A5 5 0 0 1/g)).toHaveLength(7);
});

/** Points of a path of M, L and A (clockwise, less than half a turn), arcs by many points. */
function pointsOfPath(d: string): [number, number][] {
  const points: [number, number][] = [];
  for (const [, command, rest] of d.matchAll(/([MLA])([^MLAZ]*)/g)) {
    const numbers = rest.trim().split(/\s+/).map(Number);
    const [x, y] = numbers.slice(-2);
    if (command === 'A') {
      const r = numbers[0];
      const [px, py] = points.at(-1)!;
      const [hx, hy] = [(x - px) / 2, (y - py) / 2];
      const half = Math.hypot(hx, hy);
      const off = Math.sqrt(r * r - half * half) / half;
      const [cx, cy] = [px + hx - off * hy, py + hy + off * hx];
      const from = Math.atan2(py - cy, px - cx);
      const sweep = 2 * Math.asin(half / r);
      for (let k = 1; k < 2000; k++) {
        const angle = from + (sweep * k) / 2000;
        points.push([cx + r * Math.cos(angle), cy + r * Math.sin(angle)]);
      }
    }
    points.push([x, y]);
  }
  return points.filter((_, n) => points.length < 3000 || n % 20 === 0);
}

// Text can be extracted from a font without glyphs as well: only ink shows that it is there.
test('every line of text leaves ink where it stands', async () => {
  const file = join(folder, 'ink.pdf');
  expect((await inProcess('lining', small, '-o', file, '--force')).code).toBe(0);
  const bytes = readFileSync(file);
  const { pages } = await readPdf(bytes);
  const ink = await inkOf(bytes, 1);
  expect(pages[0].texts.length).toBeGreaterThan(40);
  for (const { text, x, y, widthMm } of pages[0].texts) {
    const found = ink(x, y - 2.2, x + widthMm, y);
    expect(found, text).toBeGreaterThan(0.08);
    expect(found, text).toBeLessThan(0.75);
  }
  expect(ink(0, 0, 210, 15)).toBe(0);
});

test('the same pattern gives the same bytes', async () => {
  const files = ['same-1.pdf', 'same-2.pdf'].map((name) => join(folder, name));
  for (const file of files) await inProcess('lining', small, '-o', file);
  expect(readFileSync(files[0]).equals(readFileSync(files[1]))).toBe(true);
});

const wrong: [why: string, argv: string[], code: number, sentence: RegExp][] = [
  ['no file', [], 2, /add -o and a name that ends in \.pdf or \.svg/],
  ['another kind of file', ['-o', 'DIR/x.png'], 2, /--output cannot be .*\.pdf or \.svg/],
  ['a negative allowance', ['--allowance', '-5mm', '-o', 'DIR/x.pdf'], 2, /0 to 30 mm/],
  ['a large allowance', ['--allowance', '5cm', '-o', 'DIR/x.pdf'], 2, /0 to 30 mm/],
  ['an ease in words', ['--ease', 'some', '-o', 'DIR/x.pdf'], 2, /--ease cannot be “some”/],
  ['ease beyond the panel', ['--ease', '45mm', '-o', 'DIR/x.pdf'], 4, /too much for a panel/],
  ['nothing measured', ['--measured', '0', '-o', 'DIR/x.pdf'], 2, /--measured cannot be “0”/],
  ['mm for cm', ['--measured', '95cm', '-o', 'DIR/x.pdf'], 4, /950\.0.mm cannot be this one/],
  ['half the rim twice', ['--opening', '120', '-o', 'DIR/x.pdf'], 2, /from 10 to 90/],
  ['a gap too long', ['--gap', '190mm', '-o', 'DIR/x.pdf'], 4, /finds no room/],
  ['an unknown panel', ['--panel', 'side', '-o', 'DIR/x.pdf'], 2, /panel/],
  ['an unknown paper', ['--paper', 'a5', '-o', 'DIR/x.pdf'], 2, /a4, letter/],
  ['a folder that is a file', ['-o', 'DIR/small.json/x.pdf'], 5, /not a folder/],
];

test.each(wrong)('%s: one sentence, and nothing is written', async (_why, argv, code, sentence) => {
  const before = readdirSync(folder);
  const words = argv.map((word) => word.replace('DIR', folder));
  const made = await inProcess('lining', small, ...words);
  expect(made.err).toMatch(sentence);
  expect(made.err.trim().split('\n')).toHaveLength(1);
  expect({ code: made.code, out: made.out }).toEqual({ code, out: '' });
  expect(readdirSync(folder)).toEqual(before);
});

test('only a template of ours is replaced, and only with --force', async () => {
  const file = join(folder, 'once.pdf');
  expect((await inProcess('lining', small, '-o', file)).code).toBe(0);
  const first = readFileSync(file);
  const again = await inProcess('lining', small, '--measured', '95', '-o', file);
  expect(again.code).toBe(5);
  expect(again.err).toMatch(/there already.*--force/);
  expect(readFileSync(file).equals(first)).toBe(true);
  expect((await inProcess('lining', small, '--measured', '95', '-o', file, '--force')).code).toBe(
    0,
  );
  expect(readFileSync(file).equals(first)).toBe(false);
  writeFileSync(file, '%PDF-1.4 of somebody else');
  const theirs = await inProcess('lining', small, '-o', file, '--force');
  expect(theirs.code).toBe(5);
  expect(theirs.err).toMatch(/did not make/);
  expect(readFileSync(file, 'utf8')).toBe('%PDF-1.4 of somebody else');
  expect(existsSync(join(folder, 'x.png'))).toBe(false);
});
