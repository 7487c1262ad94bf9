import { makeBlank } from '../../core/pages/blank-outputs.js';
import type { BlankTools } from '../../core/pages/blank-outputs.js';
import type { PanelSheet } from '../../core/pages/panel/sheet.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { pixelLimit } from '../../core/picture/limits.js';
import type { Words } from '../../words/index.js';
import { bundledFonts } from '../font/fonts.js';
import { rasteriseSvg } from './rasterise.js';

/** Dots an inch of the PNG, and those of a page that would have too many pixels: A0. */
const dotsPerInch = { usual: 300, large: 200 } as const;

/** Dots a millimetre of a page's PNG, so that what is drawn can be read again. */
function dotsPerMmOf({ widthMm, heightMm }: { widthMm: number; heightMm: number }): number {
  const usual = dotsPerInch.usual / 25.4;
  return widthMm * heightMm * usual ** 2 < pixelLimit ? usual : dotsPerInch.large / 25.4;
}

/**
 * The files of a blank chart by name, and the paper that its page is meant for.
 *
 * @param pdf makes the page as a PDF; without it there is none
 */
export async function blankFiles(
  pattern: Pattern,
  words: Words,
  pdf?: (sheet: PanelSheet) => Promise<Uint8Array>,
): Promise<{ files: Map<string, Uint8Array | string>; paper: string }> {
  const tools: BlankTools = {
    async png(svg, page) {
      const dotsPerMm = dotsPerMmOf(page);
      return { png: await rasteriseSvg(svg, Math.round(page.widthMm * dotsPerMm)), dotsPerMm };
    },
    ...(pdf && { pdf }),
  };
  return makeBlank(pattern, { words, fonts: await bundledFonts(), tools });
}
