import { build } from 'esbuild';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { shortened, textWidth, wrapped } from '../src/core/pages/surface/text.js';
import { letters } from '../src/core/pattern/marks.js';
import { fonts } from './support/panel-sheet.js';

/** Widths and heights by a reader of the font's own tables, apart from the library that draws. */
function tables(name: string) {
  const file = readFileSync(new URL(`../fonts/${name}`, import.meta.url));
  const at = (tag: string) => {
    for (let n = 0; n < file.readUInt16BE(4); n++) {
      const record = 12 + 16 * n;
      if (file.toString('latin1', record, record + 4) === tag) return file.readUInt32BE(record + 8);
    }
    throw new Error(`no table ${tag}`);
  };
  const em = file.readUInt16BE(at('head') + 18);
  const metrics = file.readUInt16BE(at('hhea') + 34);
  const cmap = at('cmap');
  let format4 = 0;
  for (let n = 0; n < file.readUInt16BE(cmap + 2); n++) {
    const table = cmap + file.readUInt32BE(cmap + 8 + 8 * n);
    if (file.readUInt16BE(table) === 4) format4 = table;
  }
  const segments = file.readUInt16BE(format4 + 6);
  const glyphOf = (point: number) => {
    for (let n = 0; n < segments; n += 2) {
      const end = file.readUInt16BE(format4 + 14 + n);
      const start = file.readUInt16BE(format4 + 16 + segments + n);
      if (point < start || point > end) continue;
      const delta = file.readInt16BE(format4 + 16 + 2 * segments + n);
      const place = format4 + 16 + 3 * segments + n;
      const offset = file.readUInt16BE(place);
      if (offset === 0) return (point + delta) & 0xffff;
      return file.readUInt16BE(place + offset + 2 * (point - start));
    }
    return 0;
  };
  return {
    capHeight: file.readInt16BE(at('OS/2') + 88) / em,
    advance: (character: string) => {
      const glyph = Math.min(glyphOf(character.codePointAt(0) ?? 0), metrics - 1);
      return file.readUInt16BE(at('hmtx') + 4 * glyph) / em;
    },
  };
}

describe.each([
  ['NotoSans-Regular.ttf', fonts.regular],
  ['NotoSans-Bold.ttf', fonts.bold],
])('%s', (name, face) => {
  test('widths and cap height are those of the tables (OpenType 1.9: hmtx, cmap, OS/2)', () => {
    const read = tables(name);
    expect(face.capHeight).toBe(read.capHeight);
    for (const character of `${letters}0123456789éß…·ČŁ`) {
      expect(face.glyph(character).advance, character).toBe(read.advance(character));
    }
  });

  test('every capital stands on the baseline and reaches the cap height', () => {
    for (const letter of 'ABDEFHKLMNPRTXYZ') {
      const { box } = face.glyph(letter);
      expect(Math.abs(box.bottom)).toBeLessThan(0.012);
      expect(Math.abs(box.top + face.capHeight)).toBeLessThan(0.012);
    }
  });

  test('a missing glyph is an error that names the character', () => {
    expect(() => face.glyph('🐟')).toThrowError(
      expect.objectContaining({
        code: 'glyph-missing',
        facts: { character: '🐟', code: 'U+1F41F', script: undefined, canAdd: false },
      }),
    );
  });
});

describe('text', () => {
  const style = { face: fonts.regular, sizeMm: 4 };

  test('a decomposed letter measures as the composed one (Unicode NFC)', () => {
    expect(textWidth('e\u0301', style)).toBe(textWidth('é', style));
  });

  test('shortened text fits and ends in an ellipsis; short text stays', () => {
    expect(shortened('barley', style, 40)).toBe('barley');
    const short = shortened('kingfisher orange lustre', style, 30);
    expect(short).toMatch(/^kingfisher.*…$/);
    expect(textWidth(short, style)).toBeLessThanOrEqual(30);
  });

  test('wrapped lines fit and keep every word', () => {
    const text = 'While crocheting you see the other face of the panel';
    const lines = wrapped(text, style, 30);
    expect(lines.join(' ')).toBe(text);
    for (const line of lines) expect(textWidth(line, style)).toBeLessThanOrEqual(30);
  });
});

test('fonts load in a browser: the bundle needs no node module', async () => {
  const { outputFiles } = await build({
    entryPoints: [new URL('../src/core/pages/chart/chart.ts', import.meta.url).pathname],
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'esm',
  });
  const code = outputFiles[0].text;
  expect(code).not.toMatch(/from\s*["'](node:|fs|path)/);
  expect(code).not.toMatch(/\brequire\(["'](node:|fs["'])/);
});
