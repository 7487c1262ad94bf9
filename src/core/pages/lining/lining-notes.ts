import type { Words } from '../../../words/index.js';
import type { Lining } from '../../purse/lining/plan.js';
import type { LiningSheet } from './lining-piece.js';
import { mmPerPoint, shortened, drawText, textWidth, wrapped } from '../surface/text.js';
import type { PagePart } from '../surface/page-part.js';

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
  const { measuredMm, modelAcross: model } = lining;
  return [
    measuredMm === undefined ? said.estimate({ model }) : said.measured({ measuredMm, model }),
    said.print,
    ...(tiles ? [said.sheets(tiles)] : []),
    said.size({ ...lining, seamMm: lining.seamAcrossMm, cutMm: lining.cutAcrossMm }),
    lining.pieces === 2 ? said.cutTwo : said.cutOne,
    ...liningSteps(lining, words),
    said.hinges({ share: lining.openingShare, from: lining.openingFrom }),
    ...(lining.spiral ? [said.spiral] : []),
    said.caution,
  ];
}

/** How the two pieces are sewn and put in; one with a gap for turning is sewn to the panels first. */
export function liningSteps(
  { gapMm, allowanceMm }: Pick<Lining, 'gapMm' | 'allowanceMm'>,
  { lining: said }: Words,
): string[] {
  const sew = said.sew({ gapMm });
  if (gapMm > 0) return [sew, said.close];
  return [sew, said.put, ...(allowanceMm > 0 ? [said.fold({ allowanceMm })] : [])];
}

/** Title and numbered sentences from `top` down, and where they end, millimetres. */
export function liningNoteParts(
  sheet: LiningSheet,
  notes: readonly string[],
  place: { left: number; top: number; widthMm: number },
): { parts: PagePart[]; end: number } {
  const { fonts, words } = sheet;
  const { left, top, widthMm } = place;
  const big = { face: fonts.bold, sizeMm: 18 * mmPerPoint };
  const small = { face: fonts.regular, sizeMm: notePoints * mmPerPoint };
  const title = shortened(words.lining.title(sheet), big, widthMm);
  const parts: PagePart[] = [
    { as: 'title', draw: (surface) => drawText(surface, title, big, left, top + 6) },
  ];
  const indent = textWidth('00 ', small);
  let y = top + titleMm;
  notes.forEach((note, n) => {
    const lines = wrapped(note, small, widthMm - indent);
    const at = y;
    parts.push({
      as: 'step',
      draw(surface) {
        drawText(surface, String(n + 1), { ...small, face: fonts.bold }, left, at + 0.8 * line);
        lines.forEach((text, k) => {
          drawText(surface, text, small, left + indent, at + (k + 0.8) * line);
        });
      },
    });
    y += lines.length * line + 0.6;
  });
  return { parts, end: y };
}
