import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { PNG } from 'pngjs';
import { pdfBook } from '../src/booklet/pdf-book.js';
import { linesOf } from '../src/booklet/look.js';
import { scriptOf, setLetterByLetter } from '../src/core/pages/surface/script.js';
import { drawText, textWidth, unbroken } from '../src/core/pages/surface/text.js';
import { patternText } from '../src/core/pattern/serialise.js';
import { fontsForPages } from '../src/node/font/fonts.js';
import { ownFont } from '../src/node/read/own-font.js';
import { panelSheet } from './support/panel-sheet.js';
import { tool } from './support/poppler.js';
import { readPdf } from './support/read-pdf.js';
import { inProcess } from './support/run.js';

const folder = mkdtempSync(join(tmpdir(), 'rondure-letters-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const fixture = (name: string) => new URL(`../fixtures/fonts/${name}`, import.meta.url).pathname;

// Unicode CLDR, main exemplar characters of each language (from memory).
const exemplars: Record<string, string> = {
  cs: 'aábcčdďeéěfghiíjklmnňoópqrřsštťuúůvwxyýzž',
  de: 'aäbcdefghijklmnoöpqrsßtuüvwxyz',
  fr: 'aàâæbcçdeéèêëfghiîïjklmnoôœpqrstuùûüvwxyÿz',
  es: 'aábcdeéfghiíjklmnñoópqrstuúüvwxyz¿¡',
  it: 'aàbcdeéèfghiìjklmnoóòpqrstuùvwxyz',
  pl: 'aąbcćdeęfghijklłmnńoópqrsśtuvwxyzźż',
  ru: 'абвгдеёжзийклмнопрстуфхцчшщъыьэюя',
  uk: 'абвгґдеєжзиіїйклмнопрстуфхцчшщьюяʼ',
  tr: 'abcçdefgğhıiİjklmnoöprsştuüvyz',
};

describe('letters', async () => {
  const fonts = await fontsForPages('en-GB', []);

  test.each(Object.entries(exemplars))('both faces have every letter of %s', (_, letters) => {
    for (const letter of letters + letters.toUpperCase()) {
      expect(fonts.regular.has(letter), letter).toBe(true);
      expect(fonts.bold.has(letter), letter).toBe(true);
    }
  });

  test('kana, and the first and last kanji of JIS X 0208, are there in both weights', () => {
    for (const letter of 'あんアンー、。「」（）０９亜腕弌熙') {
      expect(fonts.regular.glyph(letter).file, letter).toBe('regular-jp');
      expect(fonts.bold.glyph(letter).file, letter).toBe('bold-jp');
    }
  });

  test('characters of simplified Chinese come from the Chinese face, and all do on its pages', async () => {
    expect(fonts.regular.glyph('绒').file).toBe('regular-sc');
    const chinese = await fontsForPages('zh', []);
    for (const letter of '直骨角，。“”') {
      expect(chinese.regular.glyph(letter).file, letter).toBe('regular-sc');
    }
    expect(chinese.regular.glyph('A').file).toBe('regular');
  });

  test('scripts by their Unicode names (UAX #24)', () => {
    expect(['Ж', 'λ', 'あ', 'ア', '海', 'ខ', 'ب', 'ա', '7', '-'].map(scriptOf)).toEqual([
      'Cyrillic',
      'Greek',
      'Hiragana',
      'Katakana',
      'Han',
      'Khmer',
      'Arabic',
      'Armenian',
      undefined,
      undefined,
    ]);
    expect(['ش', 'ש', 'क', 'ก'].map(setLetterByLetter)).toEqual([false, false, false, false]);
  });

  test('Japanese breaks between letters, but never before a full stop or after a bracket (UAX #14)', () => {
    const style = { face: fonts.regular, sizeMm: 4 };
    const text = 'ビーズを「かぎ針」で編む。3A は A を 3 個。';
    const parts = unbroken(text, style);
    expect(parts.join('')).toBe(text);
    expect(parts.length).toBeGreaterThan(12);
    for (const part of parts) {
      expect(part).not.toMatch(/^[、。」ーッ]/);
      expect(part.trimEnd()).not.toMatch(/「$/);
    }
    for (const line of linesOf(text, style, 30)) {
      expect(textWidth(line, style)).toBeLessThanOrEqual(30);
    }
    // Japanese sets no space between a number and what it counts, and parts neither.
    const counted = unbroken('ループを(6) 2つ、1つ先の穴、12段目の147目です。', style);
    expect(counted.join('')).toBe('ループを(6) 2つ、1つ先の穴、12段目の147目です。');
    for (const [n, part] of counted.entries())
      if (/\d$/.test(part)) expect(counted[n + 1]).not.toMatch(/^[つ段目個本]/);
  });
});

describe('in a PDF', async () => {
  const own = [await ownFont(fixture('armenian-few.otf'), 0)];
  const texts = [
    'Ledňáček A3',
    'Зимородок «мыс»',
    'カワセミ 3A、灯台',
    '翠鸟 12 颗珠子',
    'ծիածան 3',
  ];

  async function page(language: string): Promise<Uint8Array> {
    const fonts = await fontsForPages(language, own);
    const book = await pdfBook({ title: 'letters', subject: 'a test', language, fonts });
    const surface = book.page(210, 297);
    texts.forEach((text, n) => {
      drawText(surface, text, { face: fonts.regular, sizeMm: 8 }, 20, 30 + 20 * n);
      drawText(surface, text, { face: fonts.bold, sizeMm: 8 }, 120, 30 + 20 * n);
    });
    return book.finish();
  }

  test.each(['en-GB', 'ja', 'zh'])(
    'all scripts are read back as they were set (%s)',
    async (language) => {
      const file = join(folder, `${language}.pdf`);
      const bytes = await page(language);
      writeFileSync(file, bytes);
      const read = (await readPdf(bytes)).pages[0].texts.map(({ text }) => text).join('');
      const poppler = tool('pdftotext', ['-layout', file, '-']).toString();
      for (const text of texts) {
        expect(read.replaceAll(/\s/g, '')).toContain(text.replaceAll(/\s/g, ''));
        expect(poppler.replaceAll(/\s/g, '')).toContain(text.replaceAll(/\s/g, ''));
      }
      const fonts = tool('pdffonts', [file]).toString().split('\n').slice(2, -1);
      expect(fonts.length).toBeGreaterThanOrEqual(6);
      // Columns of pdffonts: emb, sub, uni.
      for (const line of fonts) expect(line).toMatch(/ yes yes yes /);
    },
  );

  test('the ink of different letters differs: there are no boxes', async () => {
    const file = join(folder, 'ink.pdf');
    const fonts = await fontsForPages('ja', own);
    const book = await pdfBook({ title: 'ink', subject: 'a test', language: 'ja', fonts });
    const surface = book.page(100, 20);
    const letters = Array.from('編針目珠針ծան');
    letters.forEach((letter, n) => {
      drawText(surface, letter, { face: fonts.regular, sizeMm: 8 }, 10 * n + 2, 14);
    });
    writeFileSync(file, await book.finish());
    const png = PNG.sync.read(tool('pdftoppm', ['-r', '127', '-png', file]));
    // 127 dots an inch are 5 a millimetre.
    const inks = letters.map((_, n) => {
      const cell: number[] = [];
      for (let y = 0; y < 100; y++)
        for (let x = 0; x < 50; x++)
          cell.push(png.data[4 * (y * png.width + 50 * n + x)] < 128 ? 1 : 0);
      return cell.join('');
    });
    for (const ink of inks) expect(ink).toContain('1111');
    expect(new Set(inks).size).toBe(letters.length - 1);
    expect(inks[1]).toBe(inks[4]);
  });
});

describe('the option --font', () => {
  const from = join(folder, 'pattern.json');
  const { pattern } = panelSheet({ wedges: 5, rounds: 3 }, 2, { title: 'ծիածան' });
  writeFileSync(from, patternText(pattern));
  const out = join(folder, 'out.pdf');
  const run = (...argv: string[]) => inProcess('booklet', from, '-o', out, '--force', ...argv);

  test('a letter that no font has is named with its script and the cure', async () => {
    const { code, err } = await run();
    expect(code).toBe(3);
    expect(err).toMatch(/no "ծ" \(U\+056E, Armenian script\).*--font/);
  });

  test.each(['armenian-few.ttf', 'armenian-few.otf'])('%s gives it', async (name) => {
    expect(await run('--font', fixture(name))).toMatchObject({ code: 0, err: '' });
    expect(tool('pdftotext', [out, '-']).toString()).toContain('ծիածան');
  });

  test('scripts whose letters join are refused by name', async () => {
    const { pattern: arabic } = panelSheet({ wedges: 5, rounds: 3 }, 2, { title: 'قمر' });
    const file = join(folder, 'arabic.json');
    writeFileSync(file, patternText(arabic));
    const { code, err } = await inProcess('booklet', file, '-o', out, '--force');
    expect(code).toBe(3);
    expect(err).toMatch(/Arabic script/);
  });

  const bad: [string, Uint8Array, RegExp][] = [
    ['web.woff2', Buffer.from('wOF2............'), /web font/],
    ['many.ttc', Buffer.from('ttcf............'), /collection/],
    ['text.ttf', Buffer.from('not a font'), /neither a TrueType nor an OpenType/],
    ['cut.ttf', Buffer.from([0, 1, 0, 0, 0, 9, 0, 0, 0, 0, 0, 0]), /damaged/],
    ['empty.ttf', Buffer.alloc(0), /empty/],
  ];
  test.each(bad)('%s is refused in a sentence', async (name, bytes, said) => {
    const file = join(folder, name);
    writeFileSync(file, bytes);
    const { code, err } = await run('--font', file);
    expect(code).toBe(3);
    expect(err).toMatch(said);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});
