import type { LiningSheet } from './lining-piece.js';
import { mmPerPoint, shortened, drawText, textWidth, unparted, wrapped } from './text.js';
import type { Surface } from './surface.js';

/** Clear print: 12 points at least (UKAAF guidance G003, RNIB clear print). */
const notePoints = 12;
const line = 1.27 * notePoints * mmPerPoint;
const titleMm = 11;

/** The sentences of a template, in the order in which they are needed. */
export function liningNotes(
  { lining, words }: LiningSheet,
  tiles?: { rows: number; columns: number },
): string[] {
  const said = words.lining;
  const { measuredMm, modelAcrossMm: modelMm } = lining;
  return [
    measuredMm === undefined ? said.estimate({ modelMm }) : said.measured({ measuredMm, modelMm }),
    said.print,
    ...(tiles ? [said.sheets(tiles)] : []),
    said.size({ ...lining, seamMm: lining.seamAcrossMm, cutMm: lining.cutAcrossMm }),
    said.cut(lining),
    said.sew(lining),
    said.hinges({ share: lining.openingShare, from: lining.openingFrom }),
    ...(lining.spiral ? [said.spiral] : []),
    said.caution,
  ];
}

/** Draws title and sentences from `top` down, or only measures them; where they end, millimetres. */
export function drawLiningNotes(
  surface: Surface | undefined,
  sheet: LiningSheet,
  notes: readonly string[],
  place: { left: number; top: number; widthMm: number },
): number {
  const { fonts, words } = sheet;
  const { left, top, widthMm } = place;
  const big = { face: fonts.bold, sizeMm: 18 * mmPerPoint };
  const small = { face: fonts.regular, sizeMm: notePoints * mmPerPoint };
  if (surface)
    drawText(surface, shortened(words.lining.title(sheet), big, widthMm), big, left, top + 6);
  const indent = textWidth('00 ', small);
  let y = top + titleMm;
  notes.forEach((note, n) => {
    const lines = wrapped(unparted(note), small, widthMm - indent);
    if (surface) {
      drawText(surface, String(n + 1), { ...small, face: fonts.bold }, left, y + 0.8 * line);
      lines.forEach((text, k) => {
        drawText(surface, text, small, left + indent, y + (k + 0.8) * line);
      });
    }
    y += lines.length * line + 0.6;
  });
  return y;
}
