import { access } from 'node:fs/promises';
import { join } from 'node:path';
import type { FolderKind } from './output-folder.js';
import { rasteriseSvg } from './rasterise.js';

/** Side of the pictures, pixels. */
const sidePx = 2000;

/** A folder with pictures and texts for a shop's page. */
export const listingFolder: FolderKind = {
  isOurFile: (name) =>
    ['cover.png', 'purse.png', 'palette.png'].includes(name) ||
    /^listing-[a-zA-Z-]+\.txt$/.test(name),
  isOurFolder: (dir) =>
    access(join(dir, 'listing-en-GB.txt')).then(
      () => true,
      () => false,
    ),
  mark: 'listing',
};

/** The pictures as PNG, and a text in each language. */
export async function listingFiles(
  pictures: readonly { readonly name: string; readonly svg: string }[],
  texts: ReadonlyMap<string, string>,
): Promise<Map<string, Uint8Array | string>> {
  const files = new Map<string, Uint8Array | string>();
  for (const { name, svg } of pictures) files.set(`${name}.png`, await rasteriseSvg(svg, sidePx));
  for (const [language, text] of texts) files.set(`listing-${language}.txt`, text);
  return files;
}
