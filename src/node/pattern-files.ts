import { chartSvg } from '../core/draw/chart.js';
import { wedgesSvg } from '../core/draw/wedges.js';
import type { PanelSheet } from '../core/draw/sheet.js';
import { renderWorked, workedWidthPx } from '../core/draw/worked.js';
import { panelFootprints } from '../core/geometry/footprints.js';
import { panelGeometry } from '../core/geometry/panel.js';
import { sampledWithoutTurn } from '../core/leaned.js';
import { patternText } from '../core/pattern/serialise.js';
import type { Pattern, PatternBead } from '../core/pattern/schema.js';
import { lettersInWorkingOrder } from '../core/pattern/stitches.js';
import type { Picture } from '../core/picture.js';
import { materialsCsv } from '../core/texts/materials.js';
import { roundsText } from '../core/texts/rounds.js';
import { stringingCsv, stringingText } from '../core/texts/stringing.js';
import type { Words } from '../words/index.js';
import { comparePng } from './compare-png.js';
import { bundledFonts } from './fonts.js';
import { withPngText } from './png-text.js';
import { encodePng, rasteriseSvg } from './rasterise.js';

/** Keyword of the PNG text chunk that carries the pattern. */
export const patternKeyword = 'rondure-pattern';
/** A4 at 300 dots an inch. */
const chartWidthPx = 2480;

/**
 * Every file of one panel, by name, made from the pattern alone.
 *
 * @param said told before each slow step, for a line of progress
 */
export async function patternFiles(
  pattern: Pattern,
  words: Words,
  said: (step: 'drawing' | 'rendering') => void = () => {},
): Promise<Map<string, Uint8Array | string>> {
  const panel = 0;
  const { startDegrees } = pattern.panels[panel];
  const geometry = panelGeometry(pattern.shape, { startDegrees });
  const footprints = panelFootprints(geometry);
  const json = patternText(pattern);
  const fonts = await bundledFonts();
  const sheet: PanelSheet = { pattern, panel, geometry, footprints, words, fonts };
  said('drawing');
  const chartPng = rasteriseSvg(chartSvg(sheet), chartWidthPx);
  said('rendering');
  const widthPx = workedWidthPx(pattern.shape);

  const beads = beadsOfStitches(pattern, panel);
  const upright = renderWorked({
    geometry,
    hexOf: (s) => beads[s]?.hex,
    finishOf: (s) => beads[s]?.finish,
    widthPx,
  });
  const workedPng = encodePng(upright);
  const compare = comparePicture(pattern, panel, geometry, upright, words);
  const files = new Map<string, Uint8Array | string>([
    ['pattern.json', json],
    ['chart.svg', chartSvg({ ...sheet, patternJson: json })],
    ['chart.png', withPngText(await chartPng, patternKeyword, json)],
    ['wedges.svg', wedgesSvg(sheet)],
    ['worked.png', await workedPng],
    ['rounds.txt', roundsText(pattern, panel, words)],
    ['stringing.txt', stringingText(pattern, panel, words)],
    ['stringing.csv', stringingCsv(pattern, panel)],
    ['materials.csv', materialsCsv(pattern)],
  ]);
  const comparison = await compare;
  if (comparison) files.set('compare.png', comparison);
  return files;
}

async function comparePicture(
  pattern: Pattern,
  panel: number,
  geometry: ReturnType<typeof panelGeometry>,
  upright: Picture,
  words: Words,
): Promise<Uint8Array | undefined> {
  const without = sampledWithoutTurn(pattern, panel);
  if (!without) return undefined;
  const leaned = renderWorked({
    geometry,
    hexOf: (s) => without.beadOf[s]?.hex,
    finishOf: (s) => without.beadOf[s]?.finish,
    widthPx: upright.width,
  });
  return comparePng({ upright, leaned, inset: without.picture }, await bundledFonts(), words);
}

/** The bead of each stitch in working order; undefined where it is bare or not decided. */
function beadsOfStitches(pattern: Pattern, panel: number): (PatternBead | undefined)[] {
  const named = new Map(pattern.beads.map((bead) => [bead.letter, bead]));
  return Array.from(lettersInWorkingOrder(pattern.panels[panel]), (letter) => named.get(letter));
}
