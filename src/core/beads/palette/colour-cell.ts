import { colorsNamed } from 'culori/fn';
import { formatHex, parseHex } from '../../colour/hex.js';

/** A colour by its English name, such as `navy` (W3C, CSS Color Module Level 4, "Named Colors"). */
export function namedColour(text: string): [number, number, number] | undefined {
  const name = text
    .trim()
    .toLowerCase()
    .replace(/[\s_-]/g, '');
  if (!Object.hasOwn(colorsNamed, name)) return undefined;
  const code = (colorsNamed as Readonly<Record<string, number>>)[name];
  return [code >> 16, (code >> 8) & 255, code & 255];
}

/**
 * Red, green and blue of a cell, 0 to 255, or undefined: `#d9b36a`, `d9b36a`, `#db6`, names of CSS,
 * and as other programs write it `0xd9b36a`, `#d9b36aff` (opaque) and `rgb(217, 179, 106)`.
 */
export function parseColour(cell: string): [number, number, number] | undefined {
  const text = cell.trim();
  const parts = /^rgb\(\s*(\d{1,3})[\s,;]+(\d{1,3})[\s,;]+(\d{1,3})\s*\)$/i.exec(text);
  if (!parts) {
    const hex = text.replace(/^0x/i, '').replace(/^(#[0-9a-f]{6})ff$/i, '$1');
    return parseHex(hex) ?? namedColour(text);
  }
  const [r, g, b] = parts.slice(1).map(Number);
  return Math.max(r, g, b) <= 255 ? [r, g, b] : undefined;
}

const rgbNames = [/^r(ed)?$/i, /^g(reen)?$/i, /^b(lue)?$/i];

/** Rows whose first names columns of red, green and blue get one column `RGB` of colours instead. */
export function withRgbJoined(rows: readonly (readonly string[])[]): string[][] | undefined {
  const names = (rows[0] ?? []).map((cell) => cell.trim());
  const places = rgbNames.map((name) => names.findIndex((cell) => name.test(cell)));
  if (places.includes(-1) || names.some((cell) => /^(l|hex)$/i.test(cell))) return undefined;
  return rows.map((cells, n) => {
    const joined = Array.from(names, (_, k) => (places.includes(k) ? '' : (cells[k] ?? '')));
    const parts = places.map((k) => (cells[k] ?? '').trim());
    const whole = parts.every((part) => /^\d{1,3}$/.test(part) && Number(part) <= 255);
    const [r, g, b] = parts.map(Number);
    return [...joined, n === 0 ? 'RGB' : whole ? formatHex(r, g, b) : parts.join(' ').trim()];
  });
}
