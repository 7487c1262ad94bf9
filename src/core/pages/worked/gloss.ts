/** How a bead throws light back. All parts are shares of the bead's own light (linear). */
export interface Gloss {
  /** Strength of the light from the upper left against the even light; 0 = flat. */
  readonly relief: number;
  /** Small sharp highlight, added white light. */
  readonly sparkle: number;
  /** Broad soft sheen, added light. */
  readonly sheen: number;
  /** 0: highlight and sheen are white; 1: they take the bead's colour (metal). */
  readonly tint: number;
  /** Light that has passed through the glass and glows on the far side. */
  readonly glow: number;
  /** How clearly the hole with its thread shows through the bead: a pale stripe along it. */
  readonly through: number;
}

/**
 * Ways a bead can look, judged by eye beside the words of the trade (common practice, no source).
 * They drive the picture of the worked panel and nothing else: beads are chosen by colour alone.
 */
export const looks = {
  glossy: { relief: 0.42, sparkle: 0.5, sheen: 0.05, tint: 0, glow: 0.1, through: 0 },
  matte: { relief: 0.34, sparkle: 0, sheen: 0.03, tint: 0, glow: 0, through: 0 },
  clear: { relief: 0.34, sparkle: 0.6, sheen: 0.04, tint: 0, glow: 0.45, through: 0.5 },
  metal: { relief: 0.7, sparkle: 0.75, sheen: 0.3, tint: 0.7, glow: 0.05, through: 0 },
  soft: { relief: 0.36, sparkle: 0.22, sheen: 0.16, tint: 0.1, glow: 0.08, through: 0 },
} satisfies Record<string, Gloss>;

/** Which look a word in the name of a finish means; the first that fits wins. */
const lookOfWord: readonly [RegExp, keyof typeof looks][] = [
  [/matt|frost|satin/, 'matte'],
  [/metal|galvani|gilt|bronze|steel|iris/, 'metal'],
  [/lined|transparent|clear|crystal/, 'clear'],
  [/pearl|lustre|luster|ceylon|silk|alabaster/, 'soft'],
];

/** How beads of a finish throw light back, by the words in its name; glossy when none is known. */
export function glossOf(finish: string | undefined): Gloss {
  return looks[lookOf(finish)];
}

/** Name of the look that a finish has. */
export function lookOf(finish: string | undefined): keyof typeof looks {
  const name = (finish ?? '').toLowerCase();
  const found = lookOfWord.find(([word]) => word.test(name));
  return found ? found[1] : 'glossy';
}
