/**
 * The eleven basic colour terms (B. Berlin, P. Kay, Basic Color Terms, 1969), and beige, yellow-green
 * and blue-green, which makers look for under names of their own.
 */
export const colourFamilies: readonly ColourFamily[] = [
  'white',
  'grey',
  'black',
  'pink',
  'red',
  'orange',
  'brown',
  'beige',
  'yellow',
  'yellow-green',
  'green',
  'blue-green',
  'blue',
  'purple',
];
/** One plain colour word. */
export type ColourFamily =
  | 'white'
  | 'grey'
  | 'black'
  | 'pink'
  | 'red'
  | 'orange'
  | 'brown'
  | 'beige'
  | 'yellow'
  | 'yellow-green'
  | 'green'
  | 'blue-green'
  | 'blue'
  | 'purple';
/** What may stand before a colour word. */
export const colourTones: readonly ColourTone[] = ['dark', 'light', 'greyish'];
/** One of those. */
export type ColourTone = 'dark' | 'light' | 'greyish';
/** Finishes of beads, in the words of the trade (common practice, no source). */
export const finishKinds: readonly FinishKind[] = [
  'matt',
  'silver-lined',
  'lined',
  'metallic',
  'rainbow',
  'pearl',
  'lustre',
  'transparent',
  'opaque',
];
/** One of those. */
export type FinishKind =
  | 'matt'
  | 'silver-lined'
  | 'lined'
  | 'metallic'
  | 'rainbow'
  | 'pearl'
  | 'lustre'
  | 'transparent'
  | 'opaque';

/** A colour as one would ask for it in a shop; every language has words for all of it. */
export interface ColourWord {
  /** The colour's family. */
  readonly family: ColourFamily;
  /** How light, dark or strong it is, where that says more. */
  readonly tone?: ColourTone | undefined;
}

/** What a bead looks like, as facts for a sentence. */
export interface BeadLook extends ColourWord {
  /** Its surface, where it is named. */
  readonly finish?: FinishKind | undefined;
  /** The maker's own word for a finish that is none of those. */
  readonly ownFinish?: string | undefined;
}

/** The words of one language: a colour with its tone, and what a finish is called. */
export interface LookWords {
  readonly families: Readonly<Record<ColourFamily, string>>;
  /** A colour's word with its tone. */
  readonly toned: Readonly<Record<ColourTone, (family: string) => string>>;
  /** Colours whose light or dark kind has a word of its own. */
  readonly own?: Partial<Record<ColourFamily, Partial<Record<ColourTone, string>>>>;
  readonly finishes: Readonly<Record<FinishKind, string>>;
  /** Between the colour and the finish behind it. */
  readonly comma?: string;
}

/** Says a colour, and behind it the finish: dark blue, matt. */
export function looksIn({ families, toned, own, finishes, comma = ', ' }: LookWords) {
  const colour = ({ family, tone }: ColourWord): string =>
    tone === undefined
      ? families[family]
      : (own?.[family]?.[tone] ?? toned[tone](families[family]));
  return {
    colour,
    look: (f: BeadLook): string => {
      const finish = f.finish === undefined ? f.ownFinish : finishes[f.finish];
      return finish === undefined ? colour(f) : `${colour(f)}${comma}${finish}`;
    },
  };
}
