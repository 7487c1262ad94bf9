import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import type { FontChoice, Fonts, FurtherFont, LineBreaks } from '../../core/pages/surface/font.js';
import {
  easternFont,
  easternFonts,
  fontChoiceForPages,
} from '../../core/pages/surface/page-fonts.js';
import type { EasternFont } from '../../core/pages/surface/page-fonts.js';

let loaded: Promise<Fonts> | undefined;

/** The bundled fonts (Noto Sans, OFL), read once. */
export function bundledFonts(): Promise<Fonts> {
  loaded ??= fontsWith({
    further: easternFonts.map((name) => easternFont(name, readEastern)),
  });
  return loaded;
}

/**
 * The bundled fonts for pages in a language, with the face of running text, and the user's own for
 * what they lack.
 *
 * @param language BCP 47; Japanese and Chinese want punctuation and characters of their own form
 */
export async function fontsForPages(language: string, own: readonly FurtherFont[]): Promise<Fonts> {
  const [regular, bold, lineBreaks] = await Promise.all([
    readFile(fontFile('Literata-Regular')),
    readFile(fontFile('Literata-Bold')),
    unicodeBreaks(),
  ]);
  const choice = fontChoiceForPages(language, own, readEastern, lineBreaks);
  return fontsWith({ ...choice, text: { regular, bold } });
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
    import('../../core/pages/surface/font.js'),
    readFile(fontFile('NotoSans-Regular')),
    readFile(fontFile('NotoSans-Bold')),
  ]);
  return loadFonts(regular, bold, choice);
}

/** Two megabytes a weight, so that they are read only when a character asks for them. */
const readEastern = (name: EasternFont) => ({
  regular: readFileSync(fontFile(`NotoSans${name}-Regular`)),
  bold: readFileSync(fontFile(`NotoSans${name}-Bold`)),
});

/** A text without the characters that the bundled fonts cannot draw. */
export async function drawableText(text: string): Promise<string> {
  const { regular, bold } = await bundledFonts();
  const drawn = Array.from(text).filter(
    (character) => regular.has(character) && bold.has(character),
  );
  return drawn.join('').trim();
}

function fontFile(name: string): URL {
  return new URL(`../../../fonts/${name}.ttf`, import.meta.url);
}
