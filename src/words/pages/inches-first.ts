import type { PageWords } from './index.js';

/** A number as US English writes it, and several in a range or a product. */
const number = String.raw`\d[\d,]*(?:\.\d+)?`;
const numbers = String.raw`${number}(?:(?:–| to | x )${number})*`;
const length = new RegExp(
  String.raw`(?<![\w.,–])(${numbers})[ \u00a0](mm|cm|m|meters?)\b(?: \(${numbers} in\))?`,
  'g',
);

/**
 * Hooks, needles, beads and their holes are sold in millimetres in the United States too (common
 * practice, no source), so lengths below this are left alone.
 */
const leastMm = 5;
const mmOf = { mm: 1, cm: 10, m: 1000, meter: 1000, meters: 1000 };
const inch = 25.4;
/** International yard, 0.9144 m since 1959. */
const yard = 914.4;

/**
 * A text whose lengths stand in inches, or yards from a metre on, with the metric ones behind in
 * brackets: behind a stroke where brackets are open or open next. Inches that stand there already are
 * worked out anew, so that the same millimetres are the same inches everywhere.
 */
export function inInches(text: string): string {
  return text.replace(length, (whole, metric: string, unit: keyof typeof mmOf, at: number) => {
    const toMm = (one: string) => Number(one.replaceAll(',', '')) * mmOf[unit];
    const longest = Math.max(...metric.split(/–| to | x /).map(toMm));
    if (longest < leastMm) return whole;
    const long = mmOf[unit] === 1000;
    const said = metric.replace(new RegExp(number, 'g'), (one) => inUnit(toMm(one), one, long));
    const before = text.slice(0, at);
    const open = before.split('(').length > before.split(')').length;
    const beside = open || text.startsWith(' (', at + whole.length);
    const [from, to] = beside ? [' / ', ''] : [' (', ')'];
    return `${said}\u00a0${long ? 'yd' : 'in'}${from}${metric}\u00a0${unit}${to}`;
  });
}

/** As fine as the metric number is. */
function inUnit(mm: number, metric: string, long: boolean): string {
  const decimals = metric.split('.')[1]?.length ?? 0;
  if (!long) return rounded(mm / inch, decimals > 0 || mm < inch ? decimals + 1 : 1);
  return rounded(mm / yard, Math.max(decimals, mm < 10 * yard ? 1 : 0));
}

const rounded = (value: number, decimals: number): string =>
  value >= 1000
    ? String(Math.round(value)).replace(/\B(?=(?:\d{3})+$)/g, ',')
    : value.toFixed(decimals);

/**
 * The words of pages with every length in inches first. What is to be measured in millimetres, on
 * the guide to a swatch, stays so; so do the labels of the squares and lines that are drawn true to size.
 */
export function inchesFirst(pages: PageWords): PageWords {
  const { check, marks } = pages.lining;
  const { swatch } = pages;
  const words = mapped(pages) as PageWords;
  return { ...words, lining: { ...words.lining, check, marks }, swatch };
}

function mapped(value: unknown): unknown {
  if (typeof value === 'string') return inInches(value);
  if (typeof value === 'function') {
    const say = value as (...facts: unknown[]) => unknown;
    return (...facts: unknown[]) => mapped(say(...facts));
  }
  if (Array.isArray(value)) return value.map(mapped);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, mapped(one)]));
}
