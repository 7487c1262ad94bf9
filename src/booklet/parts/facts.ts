import { greyFills } from '../../core/draw/grey-fills.js';
import type { PanelSheet } from '../../core/draw/sheet.js';
import type { Fonts } from '../../core/draw/font.js';
import type { Pattern } from '../../core/pattern/schema.js';
import type { LanguageChoice, Words } from '../../words/index.js';

/** How a booklet differs from the usual one. */
export interface Edition {
  /** For a printer without colours. */
  readonly grey?: boolean | undefined;
  readonly large?: boolean | undefined;
  /** The hand it is for, where that is not the pattern's own. */
  readonly otherHand?: 'right' | 'left' | undefined;
}

/** What an edition is called, each of its differences. */
export function editionNames({ edition, words }: BookletFacts): string[] {
  const say = words.booklet.edition;
  return [
    ...(edition.otherHand ? [say[edition.otherHand]] : []),
    ...(edition.grey ? [say.grey] : []),
    ...(edition.large ? [say.large] : []),
  ];
}

/** What a booklet is made from. */
export interface BookletFacts {
  readonly pattern: Pattern;
  /** In all of `languages` at once. */
  readonly words: Words;
  /** In each of `languages`. */
  readonly each: readonly Words[];
  readonly languages: LanguageChoice;
  readonly fonts: Fonts;
  readonly author?: string | undefined;
  readonly licence?: string | undefined;
  /** YYYY-MM-DD. */
  readonly date?: string | undefined;
  readonly edition: Edition;
  /** Version of this program. */
  readonly version: string;
}

/** Fills of the beads in an edition without colours. */
export function greysOf({ edition, pattern }: BookletFacts): PanelSheet['greys'] {
  return edition.grey ? greyFills(pattern.beads) : undefined;
}

/** `Chart: front` where there are two panels, else `Chart`. */
export function partName({ pattern, words }: BookletFacts, part: string, panel: number): string {
  if (pattern.panels.length === 1) return part;
  return words.booklet.ofPanel({ part, panel: pattern.panels[panel].name });
}

/** Longer names of panels are shortened in the foot of a page, characters. */
const mostOfName = 30;

/** What the foot of a page says: the part, and panel and length where it belongs to one. */
export function whereOf(
  { pattern, words }: BookletFacts,
  part: string,
  panel?: number,
  length?: { length: number; lengths: number },
): string {
  const say = words.booklet;
  return [
    part,
    ...(panel === undefined ? [] : [say.panel({ panel: inFoot(pattern.panels[panel].name) })]),
    ...(length ? [say.length(length)] : []),
  ].join('  ·  ');
}

function inFoot(name: string): string {
  const characters = Array.from(name);
  if (characters.length <= mostOfName) return name;
  return `${characters.slice(0, mostOfName - 1).join('')}…`;
}
