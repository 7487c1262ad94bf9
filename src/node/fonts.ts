import { readFile } from 'node:fs/promises';
import { loadFonts } from '../core/draw/font.js';
import type { Fonts } from '../core/draw/font.js';

let loaded: Promise<Fonts> | undefined;

/** The bundled fonts (Noto Sans, OFL), read once. */
export function bundledFonts(): Promise<Fonts> {
  loaded ??= Promise.all(['Regular', 'Bold'].map(fontBytes)).then(([regular, bold]) =>
    loadFonts(regular, bold),
  );
  return loaded;
}

async function fontBytes(weight: string): Promise<Uint8Array> {
  return readFile(new URL(`../../fonts/NotoSans-${weight}.ttf`, import.meta.url));
}
