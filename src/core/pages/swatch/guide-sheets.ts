import type { PagePart } from '../surface/page-part.js';
import { printPapers, safeAreaOf } from '../surface/print-sheet.js';
import type { Area, PrintPaper } from '../surface/print-sheet.js';
import { gaugeSheet } from './gauge-sheet.js';
import type { SwatchGuide } from './guide-facts.js';
import { stepBlocks } from './guide-steps.js';
import { stitchBlocks } from './guide-stitch.js';
import type { Block } from './guide-text.js';
import { rulerHeightMm, rulerPart } from '../surface/print-check.js';

/** One sheet of the guide. */
export type GuideSheet = readonly PagePart[];

/** Sizes in which the sentences are set, points; clear print is 12 at least (UKAAF G003). */
const sizes = [13.5, 13, 12.5, 12];

/**
 * The sheets of a guide: how to make and measure a swatch, the turn gauge, and how the stitch is
 * worked. Each is set as large as its sheet allows; what no size has room for goes on to another.
 */
export function swatchGuideSheets(guide: SwatchGuide, paper: PrintPaper): GuideSheet[] {
  const page = printPapers[paper];
  const area = safeAreaOf(page);
  const { scale } = guide.words.swatch.guide;
  const steps = filled(area, area.bottom - rulerHeightMm, (size) => stepBlocks(guide, area, size));
  return [
    ...steps.map((parts) => [...parts, rulerPart(guide, area, scale)]),
    gaugeSheet(guide, area, page.widthMm),
    ...filled(area, area.bottom, (size) => stitchBlocks(guide, area, size)),
  ];
}

/** Blocks one below the other in the largest size that has room on one sheet, else on several. */
function filled(area: Area, bottom: number, blocksIn: (points: number) => Block[]): PagePart[][] {
  const room = bottom - area.top;
  const all = sizes.map(blocksIn);
  const blocks = all.find((one) => heightOf(one) <= room) ?? all[0];
  const sheets: PagePart[][] = [];
  let y = Infinity;
  for (const { heightMm, partsAt } of blocks) {
    if (y + heightMm > bottom) {
      sheets.push([]);
      y = area.top;
    }
    sheets[sheets.length - 1].push(...partsAt(y));
    y += heightMm;
  }
  return sheets;
}

const heightOf = (blocks: readonly Block[]): number =>
  blocks.reduce((sum, { heightMm }) => sum + heightMm, 0);
