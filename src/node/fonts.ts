import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import type { FontChoice, Fonts, FurtherFont, LineBreaks } from '../core/draw/font.js';

let loaded: Promise<Fonts> | undefined;

/** The bundled fonts (Noto Sans, OFL), read once. */
export function bundledFonts(): Promise<Fonts> {
  loaded ??= fontsWith({ further: [cjk('JP'), cjk('SC')] });
  return loaded;
}

/**
 * The bundled fonts for pages in a language, and the user's own for what they lack.
 *
 * @param language BCP 47; Japanese and Chinese want punctuation and characters of their own form
 */
export async function fontsForPages(language: string, own: readonly FurtherFont[]): Promise<Fonts> {
  const first = ({ ja: 'JP', zh: 'SC' } as const)[language.slice(0, 2)];
  const east = (['JP', 'SC'] as const)
    .map((name) => cjk(name, name === first))
    .sort((a, b) => Number(b.first) - Number(a.first));
  return fontsWith({ further: [...east, ...own], canAdd: true, lineBreaks: await unicodeBreaks() });
}

/** Line breaking by the Unicode rules (UAX #14), for scripts without spaces. */
async function unicodeBreaks(): Promise<LineBreaks> {
  const { default: LineBreaker } = await import('linebreak');
  return (text) => {
    const breaker = new LineBreaker(text);
    const places: number[] = [];
    for (let next = breaker.nextBreak(); next; next = breaker.nextBreak())
      places.push(next.position);
    return places;
  };
}

/** The font reader is large: it is loaded when first needed, and may be meanwhile. */
async function fontsWith(choice: FontChoice): Promise<Fonts> {
  const [{ loadFonts }, regular, bold] = await Promise.all([
    import('../core/draw/font.js'),
    readFile(fontFile('NotoSans-Regular')),
    readFile(fontFile('NotoSans-Bold')),
  ]);
  return loadFonts(regular, bold, choice);
}

/** What the bundled Japanese and Chinese fonts were cut down to: see fonts/README.md. */
const eastern =
  /[·—‘’“”‥…※\u2190-\u2193\u2460-\u2473\u25a0-\u26ff\u3000-\u9fff\uf900-\ufaff\ufe30-\ufe4f\uff00-\uffef]/u;

/** Two megabytes a weight, so that they are read only when a character asks for them. */
function cjk(name: 'JP' | 'SC', first = false): FurtherFont {
  return {
    name: name.toLowerCase(),
    first,
    mayHave: (character) => eastern.test(character),
    read: () => ({
      regular: readFileSync(fontFile(`NotoSans${name}-Regular`)),
      bold: readFileSync(fontFile(`NotoSans${name}-Bold`)),
    }),
  };
}

/** A text without the characters that the bundled fonts cannot draw. */
export async function drawableText(text: string): Promise<string> {
  const { regular, bold } = await bundledFonts();
  const drawn = Array.from(text).filter(
    (character) => regular.has(character) && bold.has(character),
  );
  return drawn.join('').trim();
}

function fontFile(name: string): URL {
  return new URL(`../../fonts/${name}.ttf`, import.meta.url);
}
