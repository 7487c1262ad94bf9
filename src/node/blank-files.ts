import { blankPage } from '../core/draw/blank-page.js';
import { blankSvg } from '../core/draw/blank.js';
import { withPatternInSvg } from '../core/draw/chart.js';
import { panelFootprints } from '../core/geometry/footprints.js';
import { panelGeometry } from '../core/geometry/panel.js';
import { patternText } from '../core/pattern/serialise.js';
import type { Pattern } from '../core/pattern/schema.js';
import type { Words } from '../words/index.js';
import { bundledFonts } from './fonts.js';
import { patternKeyword } from './pattern-files.js';
import { withPngScale, withPngText } from './png-text.js';
import { rasteriseSvg } from './rasterise.js';
import { pixelLimit } from './sharp.js';

/** Dots an inch of the PNG, and those of a page that would have too many pixels: A0. */
const dotsPerInch = { usual: 300, large: 200 } as const;

/** Dots a millimetre of a page's PNG, so that what is drawn can be read again. */
function dotsPerMmOf({ widthMm, heightMm }: { widthMm: number; heightMm: number }): number {
  const usual = dotsPerInch.usual / 25.4;
  return widthMm * heightMm * usual ** 2 < pixelLimit ? usual : dotsPerInch.large / 25.4;
}

/** The files of a blank chart by name, and the paper that its page is meant for. */
export async function blankFiles(
  pattern: Pattern,
  words: Words,
): Promise<{ files: Map<string, Uint8Array | string>; paper: string }> {
  const { startDegrees } = pattern.panels[0];
  const geometry = panelGeometry(pattern.shape, { startDegrees });
  const footprints = panelFootprints(geometry);
  const fonts = await bundledFonts();
  const json = patternText(pattern);
  const svg = blankSvg({
    pattern,
    panel: 0,
    geometry,
    footprints,
    words,
    fonts,
  });
  const page = blankPage(geometry);
  const dotsPerMm = dotsPerMmOf(page);
  const png = await rasteriseSvg(svg, Math.round(page.widthMm * dotsPerMm));
  const files = new Map<string, Uint8Array | string>([
    ['blank.json', json],
    ['blank.svg', withPatternInSvg(svg, json)],
    ['blank.png', withPngText(withPngScale(png, dotsPerMm), patternKeyword, json)],
  ]);
  return { files, paper: page.paper };
}
