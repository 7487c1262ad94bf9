import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Bead } from '../../core/beads/bead.js';
import { sampleCardMark, sampleCardSvgs } from '../../core/pages/chart/sample-card.js';
import { RondureError } from '../../core/errors.js';
import { paletteCsv } from '../../core/beads/palette/palette-csv.js';
import type { Words } from '../../words/index.js';
import { bundledFonts } from '../font/fonts.js';
import type { FolderKind } from './output-folder.js';
import { hasCode } from './output-errors.js';
import { rasteriseSvg } from './rasterise.js';

/** More samples than anybody prints; a hundred pages. */
export const mostSamples = 2100;
/** A4 at 200 dots an inch. */
const pageWidthPx = 1654;

/** A folder with a sample card; numbered pages of an older, longer card go when it is replaced. */
export const cardFolder: FolderKind = {
  isOurFile: (name) => name === 'beads.csv' || /^sample-card(-\d+)?\.(svg|png)$/.test(name),
  isOurFolder: async (dir) => {
    try {
      const svg = await readFile(join(dir, 'sample-card.svg'), 'utf8');
      return svg.includes(`<g id="${sampleCardMark}"`);
    } catch (error) {
      if (hasCode(error, 'ENOENT', 'EISDIR', 'ENOTDIR')) return false;
      throw error;
    }
  },
  mark: 'card',
};

/**
 * The sample card of a palette, page by page (`sample-card.svg`, `sample-card-2.svg` …, each with
 * its PNG), and the palette itself as `beads.csv`.
 *
 * @throws RondureError `card-too-long`, `glyph-missing`
 */
export async function sampleFiles(
  beads: readonly Bead[],
  title: string,
  words: Words,
): Promise<Map<string, Uint8Array | string>> {
  if (beads.length > mostSamples) {
    throw new RondureError('card-too-long', { count: beads.length, most: mostSamples });
  }
  const files = new Map<string, Uint8Array | string>([['beads.csv', paletteCsv(beads)]]);
  const pages = sampleCardSvgs({ title, beads, words, fonts: await bundledFonts() });
  for (const [index, svg] of pages.entries()) {
    const name = index === 0 ? 'sample-card' : `sample-card-${index + 1}`;
    files.set(`${name}.svg`, svg);
    files.set(`${name}.png`, await rasteriseSvg(svg, pageWidthPx));
  }
  return files;
}
