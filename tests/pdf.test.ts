import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { pdfBook } from '../src/booklet/pdf-book.js';
import { drawText } from '../src/core/pages/surface/text.js';
import { fonts } from './support/panel-sheet.js';
import { readPdf } from './support/read-pdf.js';

async function sample(): Promise<Uint8Array> {
  const book = await pdfBook({ title: 'Měsíc', subject: 'a test', language: 'en', fonts });
  const page = book.page(210, 297);
  const style = { face: fonts.regular, sizeMm: 5 };
  drawText(page, 'AVAST, “Wolf” fiÿ 100 %', style, 20, 30);
  drawText(page, 'Žluť', { face: fonts.bold, sizeMm: 8, ink: '#aa0000' }, 190, 50, 'end');
  page.strokePath([Float64Array.of(10, 10, 110, 10)], { stroke: '#000000', widthMm: 0.3 });
  page.circle(100, 150, 50, { fill: '#ffeeaa', outline: { stroke: '#000000', widthMm: 0.2 } });
  book.page(215.9, 279.4);
  return book.finish();
}

test('the same drawing gives the same bytes', async () => {
  expect(Buffer.from(await sample()).equals(Buffer.from(await sample()))).toBe(true);
});

test('an independent reader finds sizes, lengths, letters, title and language', async () => {
  const pdf = await readPdf(await sample());
  // ISO 216 A4 and Letter (8.5 × 11 in).
  expect(pdf.pages.map((page) => page.widthMm)).toEqual([
    expect.closeTo(210, 4),
    expect.closeTo(8.5 * 25.4, 4),
  ]);
  expect(pdf.pages.map((page) => page.heightMm)).toEqual([
    expect.closeTo(297, 4),
    expect.closeTo(11 * 25.4, 4),
  ]);
  expect(pdf.title).toBe('Měsíc');
  expect(pdf.language).toBe('en');
  const [page] = pdf.pages;
  expect(page.texts.map(({ text }) => text)).toEqual(['AVAST, “Wolf” fiÿ 100 %', 'Žluť']);
  expect(page.texts[0].x).toBeCloseTo(20, 3);
  expect(page.texts[0].y).toBeCloseTo(30, 3);
  expect(page.texts[1].x + page.texts[1].widthMm).toBeCloseTo(190, 2);
  const [line, circle] = page.paths;
  expect(line.box).toEqual([10, 10, 110, 10].map((value) => expect.closeTo(value, 4)));
  expect(circle.box).toEqual([50, 100, 150, 200].map((value) => expect.closeTo(value, 4)));
});

test('fonts are subsets of the bundled TrueType files', async () => {
  const bytes = await sample();
  const text = Buffer.from(bytes).toString('latin1');
  expect(text.match(/\/BaseFont \/[A-Z]{6}\+NotoSans-(Regular|Bold)/g)).not.toBeNull();
  expect(text).not.toMatch(/Helvetica/);
  const whole = readFileSync(new URL('../fonts/NotoSans-Regular.ttf', import.meta.url)).length;
  expect(bytes.length).toBeLessThan(whole / 10);
});
