import type { Words } from '../../../words/index.js';
import type { Lining } from '../../purse/lining/plan.js';
import type { LiningSheet } from './lining-piece.js';
import { mmPerPoint, shortened, drawText, textWidth, wrapped } from '../surface/text.js';
import type { PagePart } from '../surface/page-part.js';

/** Clear print: 12 points at least (UKAAF guidance G003, RNIB clear print). */
const notePoints = 12;
const line = 1.27 * notePoints * mmPerPoint;
const titleMm = 11;
/** Between what it is, what is done, and what to take care of. */
const groupMm = 0.3;

/** Above pictures of the steps. */
const drawnGapMm = 1.5;

/** What is said on a template: what it is, what is done in which order, what to take care of. */
export interface LiningNotes {
  readonly facts: readonly string[];
  readonly steps: readonly string[];
  /** None where it is said elsewhere. */
  readonly caution: string | undefined;
}

/** What is said on a template. */
export function liningNotes(
  { lining, words, marked = true, drawn }: LiningSheet,
  tiles?: { rows: number; columns: number },
): LiningNotes {
  const said = words.lining;
  const { measuredMm, modelAcross: model } = lining;
  return {
    facts: [
      measuredMm === undefined ? said.estimate({ model }) : said.measured({ measuredMm, model }),
      said.size({ ...lining, seamMm: lining.seamAcrossMm, cutMm: lining.cutAcrossMm }),
      said.hinges({ share: lining.openingShare, from: lining.openingFrom, marked }),
      ...(lining.spiral ? [said.spiral] : []),
    ],
    steps: [
      said.print,
      ...(tiles ? [said.sheets(tiles)] : []),
      lining.pieces === 2 ? said.cutTwo : said.cutOne,
      ...(drawn ? [] : liningSteps(lining, words)),
    ],
    caution: drawn ? undefined : said.caution,
  };
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

/** Title, facts and numbered steps from `top` down, and where they end, millimetres. */
export function liningNoteParts(
  sheet: LiningSheet,
  { facts, steps, caution }: LiningNotes,
  place: { left: number; top: number; widthMm: number },
): { parts: PagePart[]; end: number } {
  const { fonts, words, drawn } = sheet;
  const { left, top, widthMm } = place;
  const big = { face: fonts.bold, sizeMm: 18 * mmPerPoint };
  const small = { face: fonts.regular, sizeMm: notePoints * mmPerPoint };
  const bold = { ...small, face: fonts.bold };
  const title = shortened(words.lining.title(sheet), big, widthMm);
  const parts: PagePart[] = [
    { as: 'title', draw: (surface) => drawText(surface, title, big, left, top + 6) },
  ];
  let y = top + titleMm;
  const add = (note: string, number?: number): void => {
    const indent = number === undefined ? 0 : textWidth('0 ', small);
    const lines = wrapped(note, small, widthMm - indent);
    const at = y;
    parts.push({
      as: number === undefined ? 'text' : 'step',
      draw(surface) {
        if (number !== undefined) drawText(surface, String(number), bold, left, at + 0.8 * line);
        lines.forEach((text, k) => {
          drawText(surface, text, small, left + indent, at + (k + 0.8) * line);
        });
      },
    });
    y += lines.length * line + 0.6;
  };
  for (const fact of facts) add(fact);
  y += groupMm;
  steps.forEach((step, n) => add(step, n + 1));
  y += groupMm;
  if (caution !== undefined) add(caution);
  if (drawn) {
    parts.push(...drawn.parts(left, y + drawnGapMm));
    y += drawnGapMm + drawn.heightMm;
  }
  return { parts, end: y };
}
