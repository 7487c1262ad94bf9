import type { Language } from './languages.js';

/** Forms of a word by number (CLDR plural categories); `other` stands in for those left out. */
export type Forms = Partial<Record<Exclude<Intl.LDMLPluralRule, 'other'>, string>> & {
  readonly other: string;
};

/** How one language writes numbers and what goes with them. */
export interface Numbers {
  /** A whole number, its digits in groups: 12,810. */
  readonly count: (value: number) => string;
  /** A number with just so many decimals, or a text with a point given another mark: 3.40. */
  readonly fixed: (value: number | string, digits?: number) => string;
  /** A number with no more decimals than asked for: 82.8, 9. */
  readonly short: (value: number, digits: number) => string;
  /** Millimetres of a size: one with just so many decimals, or a range such as 95–100 without. */
  readonly sizeMm: (size: SizeRange, digits: number) => string;
  /** The same in inches, to a tenth, from the whole millimetres that are written beside them. */
  readonly sizeInches: (size: SizeRange) => string;
  /** The form that goes with a number: of `{ one: 'bead', other: 'beads' }` for 3 `beads`. */
  readonly form: (value: number, forms: Forms) => string;
  /** The number and its form: 3 beads. */
  readonly many: (value: number, forms: Forms) => string;
}

/** A size in millimetres: between what it lies, the same twice where it is known. */
export interface SizeRange {
  /** The least, millimetres. */
  readonly leastMm: number;
  /** The most, millimetres. */
  readonly mostMm: number;
}

interface Marks {
  readonly decimal: string;
  readonly group: string;
  /** Digits from which on they are grouped. */
  readonly from: number;
}

const noBreak = '\u00a0';
const point: Marks = { decimal: '.', group: ',', from: 4 };
const comma: Marks = { decimal: ',', group: '.', from: 4 };
const spaced: Marks = { decimal: ',', group: noBreak, from: 4 };

/**
 * Unicode CLDR, `decimal`, `group` and `minimumGroupingDigits`; a plain no-break space for the
 * narrow one of French. Typed in, not asked of Intl: it differs between builds of Node, and the
 * same input must give the same bytes.
 */
const marksOf: Record<Language, Marks> = {
  'en-GB': point,
  'en-US': point,
  cs: spaced,
  de: comma,
  fr: spaced,
  es: { ...comma, from: 5 },
  it: { ...comma, from: 5 },
  pl: { ...spaced, from: 5 },
  ru: spaced,
  uk: spaced,
  tr: comma,
  ja: point,
  zh: point,
};

/** How a language writes numbers; plural forms are chosen by `Intl.PluralRules`. */
export function numbersIn(language: Language): Numbers {
  const { decimal, group, from } = marksOf[language];
  const rules = new Intl.PluralRules(language);
  const fixed = (value: number | string, digits?: number): string => {
    const text = typeof value === 'string' || digits === undefined ? value : value.toFixed(digits);
    return String(text).replace('.', decimal);
  };
  /** The ends as they are written, once where both are alike. */
  const span = (least: string, most: string): string =>
    least === most ? least : `${least}–${most}`;
  const count = (value: number): string => {
    const [whole, rest] = String(value).split('.');
    const grouped = whole.length < from ? whole : whole.replace(/\B(?=(?:\d{3})+$)/g, group);
    return rest === undefined ? grouped : `${grouped}${decimal}${rest}`;
  };
  const inches = (mm: number): string => fixed(Math.round(mm) / 25.4, 1);
  const form = (value: number, forms: Forms): string => forms[rules.select(value)] ?? forms.other;
  return {
    count,
    fixed,
    short: (value, digits) => fixed(String(Number(value.toFixed(digits)))),
    sizeMm: ({ leastMm, mostMm }, digits) =>
      leastMm === mostMm ? fixed(leastMm, digits) : span(fixed(leastMm, 0), fixed(mostMm, 0)),
    sizeInches: ({ leastMm, mostMm }) => span(inches(leastMm), inches(mostMm)),
    form,
    many: (value, forms) => `${count(value)} ${form(value, forms)}`,
  };
}
