import { readFile } from 'node:fs/promises';
import type { Fonts } from '../core/draw/font.js';

let loaded: Promise<Fonts> | undefined;

/** The bundled fonts (Noto Sans, OFL), read once. */
export function bundledFonts(): Promise<Fonts> {
  loaded ??= load();
  return loaded;
}

/** The font reader is large: it is loaded when first needed, and may be meanwhile. */
async function load(): Promise<Fonts> {
  const [{ loadFonts }, regular, bold] = await Promise.all([
    import('../core/draw/font.js'),
    fontBytes('Regular'),
    fontBytes('Bold'),
  ]);
  return loadFonts(regular, bold);
}

/** A text without the characters that the bundled fonts cannot draw. */
export async function drawableText(text: string): Promise<string> {
  const { regular, bold } = await bundledFonts();
  const drawn = Array.from(text).filter(
    (character) => regular.has(character) && bold.has(character),
  );
  return drawn.join('').trim();
}

/** Bytes of the bundled TrueType files, for a PDF to embed. */
export async function bundledFontFiles(): Promise<{ regular: Uint8Array; bold: Uint8Array }> {
  const [regular, bold] = await Promise.all([fontBytes('Regular'), fontBytes('Bold')]);
  return { regular, bold };
}

async function fontBytes(weight: string): Promise<Uint8Array> {
  return readFile(new URL(`../../fonts/NotoSans-${weight}.ttf`, import.meta.url));
}
