import { materials } from '../core/pages/lists/materials.js';
import { shoppingList } from '../core/pages/lists/shopping.js';
import { threadItems, toolItems } from '../core/pages/lists/shopping-items.js';
import { rememberedFor } from '../core/remember.js';
import { greyFills } from '../core/pages/panel/grey-fills.js';
import type { PanelSheet } from '../core/pages/panel/sheet.js';
import type { Fonts } from '../core/pages/surface/font.js';
import type { Pattern } from '../core/pattern/pattern.js';
import { textWidth, unbroken } from '../core/pages/surface/text.js';
import type { LanguageChoice, Words } from '../words/index.js';
import { sides } from '../words/pages/pairs.js';
import type { Look } from './look.js';

/** A photograph, its bytes as a JPEG of sRGB. */
export interface Photo {
  readonly jpeg: Uint8Array;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** How a booklet differs from the usual one. */
export interface Edition {
  /** For a printer without colours. */
  readonly grey?: boolean | undefined;
  readonly large?: boolean | undefined;
  /** The hand it is for, where that is not the pattern's own. */
  readonly otherHand?: 'right' | 'left' | undefined;
  /** Whether a single panel is worked once, as in a class; for a purse it is worked twice. */
  readonly once?: boolean | undefined;
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
  /** Where corrections go to: an address, in the author's words. */
  readonly contact?: string | undefined;
  /** How long the work takes, in the author's words. */
  readonly time?: string | undefined;
  /** Of the finished piece, for the cover. */
  readonly photo?: Photo | undefined;
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

/** What is needed, worked out once: pages are tried in more than one way. */
export const neededFor = rememberedFor((facts: BookletFacts) => {
  const { pattern, words } = facts;
  const list = shoppingList(pattern);
  return {
    list,
    charted: materials(pattern),
    thread: threadItems(list, words).map(({ text }) => text),
    tools: toolItems(list, words).map(({ text }) => text),
  };
});

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
    ...(panel === undefined || pattern.panels.length === 1
      ? []
      : [say.panel({ panel: pattern.panels[panel].name })]),
    ...(length ? [say.length(length)] : []),
  ].join('  ·  ');
}

/** Letters of other scripts that look like those of beads. */
const lookAlikes: Readonly<Record<string, string>> = { Р: 'P', В: 'B', С: 'C', К: 'K' };

/** A round's short name, or its whole one where the short one begins like the name of a bead. */
export function roundName({ pattern, words }: BookletFacts, round: number): string {
  const short = words.lists.round(round);
  const [initial] = short;
  const like = lookAlikes[initial] ?? initial;
  const met = like !== initial || pattern.beads.some(({ letter }) => letter === like);
  return met ? sides(words.booklet.work.round(round))[0] : short;
}

/** Width that the head of a column of numbers takes, its words unbroken, millimetres. */
export function headMm(head: string, { small, fonts }: Look): number {
  const style = { ...small, face: fonts.bold, byWords: true };
  const words = sides(head).flatMap((one) => unbroken(one, style));
  return Math.max(...words.map((word) => textWidth(word.trimEnd(), style))) + 3.2;
}

/** How often each line of a list is worked or strung: both panels of a purse have the list of one. */
export const timesWorked = ({ pattern, edition }: BookletFacts): number =>
  pattern.panels.length === 1 && !edition.once ? 2 : 1;

/** Width of a column of them after so much for boxes, its head unbroken, millimetres. */
export function roundNameMm(facts: BookletFacts, look: Look, boxesMm = 0): number {
  const { pattern, words } = facts;
  const name = boxesMm + textWidth(roundName(facts, pattern.shape.rounds), look.cellStrong) + 4.2;
  return Math.max(name, headMm(words.booklet.rounds.round, look) + 1);
}
