import type { PagePart } from '../surface/page-part.js';
import { testSquarePart, testSquaresMm } from '../surface/print-check.js';
import type { Area } from '../surface/print-sheet.js';
import { drawText, mmPerPoint, wrapped } from '../surface/text.js';
import type { SwatchGuide } from './guide-facts.js';
import { guideType, titleBlock } from './guide-text.js';
import { drawTurnGauge } from './turn-gauge.js';

const lineMm = 5.2;
const afterMm = 1.6;

/** The sheet to lay the swatch on: the gauge, the two squares to measure, and how to read it. */
export function gaugeSheet(guide: SwatchGuide, area: Area, paperWidthMm: number): PagePart[] {
  const said = guide.words.swatch.guide;
  const radius = (area.right - area.left) / 2;
  const squares = area.bottom - testSquaresMm[1];
  const left = area.left + testSquaresMm[0] + testSquaresMm[1] + 10;
  const style = { face: guide.fonts.regular, sizeMm: 11.5 * mmPerPoint };
  const [scale, read] = [said.scale, said.read].map((text) =>
    wrapped(text, style, area.right - left),
  );
  const lines = scale.length + read.length;
  // As low as the squares reach, and higher where there is more to read.
  const top = Math.min(squares + 4, area.bottom - (lines - 1) * lineMm - afterMm - 1.5);
  const text = (said: readonly string[], y: number): PagePart => ({
    as: 'text',
    draw: (surface) =>
      said.forEach((line, n) => drawText(surface, line, style, left, y + n * lineMm)),
  });
  return [
    ...titleBlock(said.gaugeTitle, guideType(guide, area, 12)).partsAt(area.top - 1),
    {
      as: 'picture',
      alt: said.gaugeAlt,
      draw: (surface) =>
        drawTurnGauge(surface, guide, { x: paperWidthMm / 2, y: area.top + 12 + radius, radius }),
    },
    testSquarePart(guide, 0, { x: area.left, y: squares }, said.scale),
    testSquarePart(guide, 1, { x: area.left + testSquaresMm[0] + 5, y: squares }, said.scale),
    text(scale, top),
    text(read, top + scale.length * lineMm + afterMm),
  ];
}
