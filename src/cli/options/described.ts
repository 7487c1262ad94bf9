import { Option } from 'commander';
import type { MakerWish } from '../../core/pattern/wished.js';
import type { Words } from '../../words/index.js';
import { length, list, numberBetween, shift, title, wholeNumber } from './values.js';

/** Where an option stands in help. */
export type Group = keyof Words['cli']['groups'];
/** A word of the options of the command line. */
type OptionWord = keyof Words['cli']['options'];
/** What help says of the default of an option that has no value of its own. */
export type Said = OptionWord | ((words: Words) => string);

/**
 * One option: what commander, help, the guide's table and `--from` need to know of it. Its key in a
 * table is its name in camel case, and names the word that help says of it.
 */
export interface Described<T, Always extends boolean = boolean> {
  readonly flags: string;
  /** Words that it must be one of. */
  readonly choices?: readonly string[];
  /** Smallest and largest number. */
  readonly bounds?: Bounds;
  /** Reads what is typed; as it is, or a switch, when absent. */
  readonly parse?: (text: string, earlier?: T) => T;
  /** What holds when it is not typed: a value, and how help tells it where not as it is. */
  readonly usual?: T;
  readonly said?: Said;
  /** Help's word, where the key is not its name. */
  readonly word?: (words: Words) => string;
  /** What an earlier wish says of it. */
  readonly from?: (wish: MakerWish) => T | undefined;
  readonly group?: Group;
  /** Whether there is always a value. */
  readonly always?: Always;
}

interface Bounds {
  readonly least: number;
  readonly most: number;
}

type More<T> = Pick<Described<T>, 'word' | 'from' | 'said'>;
// Any value may stand in a table: the keys tell which.
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type Table = Readonly<Record<string, Described<any>>>;

type KeysOf<D extends Table, Always extends boolean> = {
  [K in keyof D]: D[K] extends Described<infer _T, Always> ? K : never;
}[keyof D];
type ValueOf<D> = D extends Described<infer T> ? T : never;
/** The values of the options of a table, as commander hands them over. */
export type ValuesOf<D extends Table> = {
  [K in KeysOf<D, true>]: ValueOf<D[K]>;
} & { [K in Exclude<keyof D, KeysOf<D, true>>]?: ValueOf<D[K]> };

/** The same option with a value that holds when it is not typed. */
export const usually = <T>(one: Described<T>, usual: NoInfer<T>): Described<T, true> =>
  ({ ...one, usual }) as Described<T, true>;

/** A whole number. */
export function whole(flags: string, bounds: Bounds, more: More<number> = {}) {
  const { least, most } = bounds;
  const parse = wholeNumber(longName(flags), least, most);
  return { flags, bounds, parse, ...more } as Described<number, false>;
}

/** A plain number. */
export function decimal(flags: string, bounds: Bounds, more: More<number> = {}) {
  const { least, most } = bounds;
  const parse = numberBetween(longName(flags), least, most);
  return { flags, bounds, parse, ...more } as Described<number, false>;
}

/** One word of a few. */
export function choice<const C extends string>(
  flags: string,
  choices: readonly C[],
  more: More<C> = {},
) {
  return { flags, choices, ...more } as Described<C, false>;
}

/** On or off. */
export function flag(flags: string, more: More<true> = {}) {
  return { flags, said: 'off', ...more } as Described<true, false>;
}

/** A text taken as it is: a name of a file, a bead, a size. */
export function text(flags: string, more: More<string> = {}) {
  return { flags, ...more } as Described<string, false>;
}

/** A text on one line. */
export function line(flags: string, more: More<string> = {}) {
  return { flags, parse: title(longName(flags)), ...more } as Described<string, false>;
}

/** A length, millimetres. */
export function size(flags: string, more: More<number> = {}) {
  return { flags, parse: length(longName(flags)), ...more } as Described<number, false>;
}

/** Right and down, millimetres. */
export function offset(flags: string, more: More<[number, number]> = {}) {
  return { flags, parse: shift(longName(flags)), ...more } as Described<[number, number], false>;
}

/** Several, with commas or typed again. */
export function several(flags: string, more: More<string[]> = {}) {
  return { flags, parse: list, ...more } as Described<string[], false>;
}

/** The same table with all its options in a group of help. */
export function inGroup<D extends Table>(group: Group, table: D): D {
  return Object.fromEntries(
    Object.entries(table).map(([key, one]) => [key, { ...one, group }]),
  ) as unknown as D;
}

/** What commander needs of every option of a table, in its order. */
export function optionsOf(table: Table, words: Words): Option[] {
  return Object.entries(table).map(([key, one]) => {
    const said = words.cli.options;
    const about = one.word?.(words) ?? said[key as OptionWord];
    const option = new Option(one.flags, about);
    if (one.choices) option.choices(one.choices);
    if (one.parse) option.argParser(one.parse);
    const shown = typeof one.said === 'string' ? said[one.said] : one.said?.(words);
    if (one.usual !== undefined || shown !== undefined) option.default(one.usual, shown);
    if (one.group) option.helpGroup(words.cli.groups[one.group]);
    return option;
  });
}

/** The same options in a group of help, but for those that stand in one already. */
export function underGroup(words: Words, group: Group, options: readonly Option[]): Option[] {
  return options.map((one) =>
    one.helpGroupHeading === undefined ? one.helpGroup(words.cli.groups[group]) : one,
  );
}

function longName(flags: string): string {
  return /--[a-z-]+/.exec(flags)![0];
}
