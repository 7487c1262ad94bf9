import { stitchCount } from '../../panel/shape.js';
import { rimWedge } from '../../swatch/model.js';
import type { Area } from '../surface/print-sheet.js';
import { drawText, textWidth, wrapped } from '../surface/text.js';
import type { SwatchGuide } from './guide-facts.js';
import { guideType, space, stepBlock, textBlock, titleBlock, together } from './guide-text.js';
import type { Block, GuideType } from './guide-text.js';

/** The least room for a number to be written by hand, and what stays free between two, millimetres. */
const writingMm = 20;
const gapMm = 6;

/** How a swatch is made and measured, and where to write its measures down. */
export function stepBlocks(guide: SwatchGuide, area: Area, points: number): Block[] {
  const { shape, words } = guide;
  const said = words.swatch.guide;
  const type = guideType(guide, area, points);
  const facts = { ...shape, ...guide, rimWedge: rimWedge(shape.wedges), beads: stitchCount(shape) };
  return [
    titleBlock(said.title, type),
    textBlock('text', said.intro, type),
    ...said.steps(facts).map(({ head, text }, n) => stepBlock(n + 1, head, text, type)),
    together(
      space(2),
      textBlock('head', said.write, type),
      ...blanks(said.blanks(facts), type),
      textBlock('text', said.then, type, { style: type.small }),
    ),
  ];
}

/** Two by two: what is to be written, and a line for it. */
function blanks(labels: readonly string[], type: GuideType): Block[] {
  const { plain, lineMm, area } = type;
  const half = (area.right - area.left) / 2;
  const rows = Array.from({ length: Math.ceil(labels.length / 2) }, (_, n) =>
    labels.slice(2 * n, 2 * n + 2).map((label) => wrapped(label, plain, half - gapMm - writingMm)),
  );
  return rows.map((row) => {
    const heightMm = Math.max(...row.map((lines) => lines.length)) * lineMm + 2.4;
    return {
      heightMm,
      partsAt: (top) =>
        row.map((lines, n) => ({
          as: 'step' as const,
          draw(surface) {
            const left = area.left + n * half;
            const last = top + heightMm - 2.4 - 0.2 * lineMm;
            lines.forEach((line, k) =>
              drawText(surface, line, plain, left, last - (lines.length - 1 - k) * lineMm),
            );
            const from = left + textWidth(`${lines.at(-1) ?? ''} `, plain);
            const line = Float64Array.of(from, last + 1, left + half - gapMm, last + 1);
            surface.strokePath([line], { stroke: '#000000', widthMm: 0.2 });
          },
        })),
    };
  });
}
