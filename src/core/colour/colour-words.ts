import type {
  BeadLook,
  ColourFamily,
  ColourTone,
  ColourWord,
  FinishKind,
} from '../../words/index.js';
import { hexToLab65 } from './lab.js';

/**
 * L* of Munsell values 2.5, 4.5, 6.5 and 8.5: between black, dark, medium and light grey, and white
 * (ISCC-NBS Method of Designating Colors, NBS Circular 553, 1955; L* by ASTM D1535).
 */
const [blackBelow, darkBelow, lightFrom, whiteFrom] = [25.6, 46.4, 66.6, 86.2];
/** Chroma below which a colour has no hue to speak of; more where it is very light or dark. */
const neutralBelow = { usual: 7, white: 8, black: 9 };

/** From where round the hue circle, in degrees of Lab, and the lightness that needs no word. */
interface Sector {
  readonly from: number;
  readonly family: ColourFamily;
  readonly plain: readonly [darkBelow: number, lightFrom: number];
}

/**
 * The hue names of ISCC-NBS, fewer of them: its borders in Munsell hue, put into degrees of Lab by
 * the Munsell renotation (from memory, checked with the colours of its own names in the tests).
 */
const sectors: readonly Sector[] = [
  { from: 0, family: 'red', plain: [36, 101] },
  { from: 47, family: 'orange', plain: [0, 101] },
  { from: 77, family: 'yellow', plain: [62, 92] },
  { from: 106, family: 'yellow-green', plain: [46.4, 84] },
  { from: 134, family: 'green', plain: [41, 71.6] },
  { from: 180, family: 'blue-green', plain: [41, 71.6] },
  { from: 226, family: 'blue', plain: [36, 61.7] },
  { from: 299, family: 'purple', plain: [36, 61.7] },
  { from: 351, family: 'red', plain: [36, 101] },
];

/**
 * The plain word for a colour, by lightness, chroma and hue.
 *
 * @param lab L, a, b under D65
 */
export function colourWordOf([L, a, b]: readonly [number, number, number]): ColourWord {
  const chroma = Math.hypot(a, b);
  if (L >= whiteFrom && chroma < neutralBelow.white) return { family: 'white' };
  if (L < blackBelow && chroma < neutralBelow.black) return { family: 'black' };
  if (chroma < neutralBelow.usual) {
    return { family: 'grey', tone: L < darkBelow ? 'dark' : L >= lightFrom ? 'light' : undefined };
  }
  // In hundredths of a degree, so that no engine's last bit decides.
  const hue = Math.round(((Math.atan2(b, a) * 180) / Math.PI + 360) * 100) / 100 - 360;
  const degrees = hue < 0 ? hue + 360 : hue;
  const sector = sectors.filter(({ from }) => from <= degrees).at(-1) ?? sectors[0];
  const warm = warmWord(sector.family, L, chroma, degrees);
  if (warm) return warm;
  const [dark, light] = sector.plain;
  if (L < dark) return { family: sector.family, tone: 'dark' };
  if (L >= light && chroma < 70) return { family: sector.family, tone: 'light' };
  return { family: sector.family, tone: chroma < 0.22 * L ? 'greyish' : undefined };
}

/** Colours with a word of their own: light or weak reds, oranges and yellows; and deep violet blue. */
function warmWord(
  family: ColourFamily,
  L: number,
  chroma: number,
  hue: number,
): ColourWord | undefined {
  const dark = L < 36 ? ('dark' as const) : undefined;
  // The blue of a screen and of deep blue glass lies among the violets.
  if (family === 'purple' && hue < 308 && L < 34 && chroma >= 50)
    return { family: 'blue', tone: dark };
  const rosy = family === 'red' && (hue < 12 || hue > 300);
  if ((rosy || (family === 'purple' && hue >= 335)) && L >= 46) {
    return { family: 'pink', tone: pale(L, chroma) };
  }
  if (family === 'red') {
    if (L >= 58 && (chroma < 62 || L >= 66)) return { family: 'pink', tone: pale(L, chroma) };
    const brown = hue > 25 && hue < 300 && L < 46 && chroma < 40;
    const brick = hue > 35 && hue < 300 && L < 50 && chroma < 56;
    if (brown || brick) return { family: 'brown', tone: L < 33 ? 'dark' : undefined };
    return undefined;
  }
  if (family === 'orange') {
    if (L >= lightFrom && chroma < 34) return { family: 'beige', tone: tone(L) };
    const brown = L < 50 || (L < 64 && chroma < 52);
    if (!brown) return { family: 'orange', tone: L >= 80 ? 'light' : undefined };
    return { family: 'brown', tone: L < 33 ? 'dark' : L >= 54 ? 'light' : undefined };
  }
  if (hue >= 77 && hue < 112 && L >= lightFrom && chroma < 34) {
    return { family: 'beige', tone: tone(L) };
  }
  if (family === 'yellow') {
    if (L < 60 && hue < 96) {
      return { family: 'brown', tone: L < 33 ? 'dark' : L >= 54 ? 'light' : undefined };
    }
  }
  return undefined;
}

const pale = (L: number, chroma: number): ColourTone | undefined =>
  L >= 82 ? 'light' : chroma < 18 ? 'greyish' : undefined;
const tone = (L: number): ColourTone | undefined => (L >= 88 ? 'light' : undefined);

/** Which kind of finish a word in a name means; the first that fits wins. */
const finishWords: readonly [RegExp, FinishKind][] = [
  [/matt|frost|satin/, 'matt'],
  [/silver[ -]?lined|s\/l\b/, 'silver-lined'],
  [/lined/, 'lined'],
  [/rainbow|iris|\bab\b|aurora/, 'rainbow'],
  [/metal|galvani|gilt|bronze|steel/, 'metallic'],
  [/pearl|ceylon/, 'pearl'],
  [/lustre|luster/, 'lustre'],
  [/transparent|clear|crystal/, 'transparent'],
  [/opaque|gloss/, 'opaque'],
];

/** What a bead looks like: its colour's plain word and its finish, if that is known. */
export function beadLookOf(bead: {
  readonly hex: string;
  readonly lab?: readonly [number, number, number] | undefined;
  readonly finish?: string | undefined;
}): BeadLook {
  const word = colourWordOf(bead.lab ?? hexToLab65(bead.hex));
  const own = bead.finish?.trim().toLowerCase();
  if (own === undefined || own === '') return word;
  const finish = finishWords.find(([pattern]) => pattern.test(own))?.[1];
  return finish ? { ...word, finish } : { ...word, ownFinish: bead.finish!.trim() };
}
