import { RondureError } from '../../core/errors.js';
import type { OptionExpected } from '../../words/en/expected.js';

/** Reads option values; each throws `option-value`, which says what was got and what is expected. */
function refuse(option: string, got: string, expected: OptionExpected): never {
  throw new RondureError('option-value', { option, got: got.replace(/\s+/g, ' '), expected });
}

/** A plain decimal number: no exponents, no hexadecimal, nothing around it. */
function plainNumber(text: string): number | undefined {
  return /^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(text) ? Number(text) : undefined;
}

export function wholeNumber(option: string, least: number, most: number) {
  return (text: string): number => {
    const value = /^\d{1,6}$/.test(text) ? Number(text) : NaN;
    if (value >= least && value <= most) return value;
    return refuse(option, text, { kind: 'whole', least, most });
  };
}

export function numberBetween(option: string, least: number, most: number) {
  return (text: string): number => {
    const value = plainNumber(text);
    if (value !== undefined && value >= least && value <= most) return value;
    return refuse(option, text, { kind: 'between', least, most });
  };
}

const mmPerUnit: Record<string, number> = { '': 1, mm: 1, cm: 10, in: 25.4 };

/** `90`, `90mm`, `9cm`, `3.5in`, with or without a space; millimetres. */
export function length(option: string) {
  return (text: string): number => {
    const parts = /^(\d+(?:\.\d*)?|\.\d+) ?(mm|cm|in)?$/.exec(text.trim().toLowerCase());
    const value = parts ? Number(parts[1]) * mmPerUnit[parts[2] ?? ''] : NaN;
    if (value > 0 && value <= 10_000) return value;
    return refuse(option, text, { kind: 'length' });
  };
}

/** The same within bounds (millimetres), where nothing may be meant as well: 0. */
export function lengthBetween(option: string, least: number, most: number) {
  return (text: string): number => {
    const parts = /^(\d+(?:\.\d*)?|\.\d+) ?(mm|cm|in)?$/.exec(text.trim().toLowerCase());
    const value = parts ? Number(parts[1]) * mmPerUnit[parts[2] ?? ''] : NaN;
    if (value >= least && value <= most) return value;
    return refuse(option, text, { kind: 'length-between', least, most });
  };
}

/** `X,Y` in millimetres. */
export function shift(option: string) {
  return (text: string): [number, number] => {
    const values = text.split(',').map((part) => plainNumber(part.trim()));
    const [x, y] = values;
    if (values.length === 2 && x !== undefined && y !== undefined) {
      if (Math.abs(x) <= 1000 && Math.abs(y) <= 1000) return [x, y];
    }
    return refuse(option, text, { kind: 'shift' });
  };
}

/** A list separated by commas; the option may also be given several times. */
export function list(text: string, earlier: string[] = []): string[] {
  const parts = text.split(',').map((part) => part.trim());
  return [...earlier, ...parts.filter((part) => part !== '')];
}

/** Text without control characters and of a sane length. */
export function title(option: string) {
  return (text: string): string => {
    const clean = text.trim();
    // eslint-disable-next-line no-control-regex
    if (clean !== '' && clean.length <= 200 && !/[\u0000-\u001f\u007f]/.test(clean)) return clean;
    return refuse(option, text.slice(0, 40), { kind: 'title' });
  };
}
