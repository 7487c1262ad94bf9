import { chartPaper, chartSvg, withPatternInSvg } from '../core/draw/chart.js';
import { compareLayout } from '../core/draw/compare.js';
import type { PanelSheet } from '../core/draw/sheet.js';
import { wedgesSvg } from '../core/draw/wedges.js';
import { renderWorked, workedWidthPx } from '../core/draw/worked.js';
import { panelFootprints } from '../core/geometry/footprints.js';
import { panelGeometry } from '../core/geometry/panel.js';
import type { PanelGeometry } from '../core/geometry/panel.js';
import { sampledWithoutTurn } from '../core/leaned.js';
import { panelFile } from '../core/pattern/panel-file.js';
import { patternText } from '../core/pattern/serialise.js';
import type { Pattern, PatternBead } from '../core/pattern/schema.js';
import { lettersInWorkingOrder } from '../core/pattern/stitches.js';
import type { Picture } from '../core/picture.js';
import { materialsCsv } from '../core/texts/materials.js';
import { roundsText } from '../core/texts/rounds.js';
import { shoppingText } from '../core/texts/shopping-text.js';
import { sewingText } from '../core/texts/sewing.js';
import { stringingCsv, stringingText } from '../core/texts/stringing.js';
import type { Words } from '../words/index.js';
import { comparePng } from './compare-png.js';
import { bundledFonts } from './fonts.js';
import { withPngScale, withPngText } from './png-text.js';
import { encodePng, rasteriseSvg } from './rasterise.js';

/** Keyword of the PNG text chunk that carries the pattern. */
export const patternKeyword = 'rondure-pattern';
/** Width of chart.png: A4 at 300 dots an inch, larger paper at as many dots as this leaves. */
const chartWidthPx = (paperMm: number): number => Math.min(4960, Math.round(paperMm * 11.811));

/** The bead of each stitch in working order; undefined where it is bare or not decided. */
type StitchBeads = readonly (PatternBead | undefined)[];

/** Every file by its name. */
export type Files = Map<string, Uint8Array | string>;

/**
 * Every file of a pattern, by name, made from the pattern alone. Those of a second panel begin with
 * `back-`; two panels share the materials, and sewing.txt tells how they are sewn together.
 *
 * @param said told before each slow step, for a line of progress
 */
export async function patternFiles(
  pattern: Pattern,
  words: Words,
  said: (step: 'drawing' | 'rendering') => void = () => {},
): Promise<Files> {
  const json = patternText(pattern);
  const files: Files = new Map([['pattern.json', json]]);
  for (const panel of pattern.panels.keys()) {
    const own = await panelFiles(pattern, panel, json, words, said);
    for (const [name, content] of own) files.set(panelFile(panel, name), content);
  }
  files.set('materials.csv', materialsCsv(pattern));
  files.set('shopping.txt', shoppingText(pattern, words));
  if (pattern.panels.length > 1) files.set('sewing.txt', sewingText(pattern, words));
  return files;
}

/** The files of one panel, named as for the first one. */
async function panelFiles(
  pattern: Pattern,
  panel: number,
  json: string,
  words: Words,
  said: (step: 'drawing' | 'rendering') => void,
): Promise<Files> {
  const { name, startDegrees } = pattern.panels[panel];
  const geometry = panelGeometry(pattern.shape, { startDegrees });
  const footprints = panelFootprints(geometry);
  const fonts = await bundledFonts();
  const sheet: PanelSheet = { pattern, panel, geometry, footprints, words, fonts };
  said('drawing');
  const paper = chartPaper(sheet);
  const chart = chartSvg(sheet, paper);
  const chartPx = chartWidthPx(paper.widthMm);
  // Other threads rasterise and pack while this one goes on painting.
  const chartPng = rasteriseSvg(chart, chartPx);
  said('rendering');
  const beads = beadsOfStitches(pattern, panel);
  const workedPng = encodePng(paint(geometry, beads, workedWidthPx(pattern.shape)));
  const without = sampledWithoutTurn(pattern, panel);
  const side = compareLayout.upright.side;
  const compare =
    without &&
    comparePng(
      {
        upright: paint(geometry, beads, side),
        leaned: paint(geometry, without.beadOf, side),
        inset: without.picture,
        ...(pattern.panels.length > 1 && { panel: name }),
      },
      fonts,
      words,
    );
  const files: Files = new Map([
    ['chart.svg', withPatternInSvg(chart, json)],
    ['wedges.svg', wedgesSvg(sheet)],
    ['rounds.txt', roundsText(pattern, panel, words)],
    ['stringing.txt', stringingText(pattern, panel, words)],
    ['stringing.csv', stringingCsv(pattern, panel)],
  ]);
  const [chartBytes, workedBytes, compareBytes] = await Promise.all([chartPng, workedPng, compare]);
  files.set(
    'chart.png',
    withPngText(withPngScale(chartBytes, chartPx / paper.widthMm), patternKeyword, json),
  );
  files.set('worked.png', workedBytes);
  if (compareBytes) files.set('compare.png', compareBytes);
  return files;
}

/**
 * Makes sure that everything which is lettered on the drawings can be drawn.
 *
 * @throws RondureError `glyph-missing`
 */
export async function requireGlyphs({ title, panels, beads }: Pattern): Promise<void> {
  const { regular, bold } = await bundledFonts();
  const texts = [title, ...panels.map(({ name }) => name), ...beads.flatMap((b) => [b.id, b.name])];
  for (const character of new Set(texts.join(''))) {
    regular.glyph(character);
    bold.glyph(character);
  }
}

function paint(geometry: PanelGeometry, beads: StitchBeads, widthPx: number): Picture {
  return renderWorked({
    geometry,
    hexOf: (s) => beads[s]?.hex,
    finishOf: (s) => beads[s]?.finish,
    widthPx,
  });
}

function beadsOfStitches(pattern: Pattern, panel: number): StitchBeads {
  const named = new Map(pattern.beads.map((bead) => [bead.letter, bead]));
  return Array.from(lettersInWorkingOrder(pattern.panels[panel]), (letter) => named.get(letter));
}
