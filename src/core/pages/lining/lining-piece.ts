import type { Words } from '../../../words/index.js';
import { holds, outlineCurve, support } from '../../purse/lining/soft-outline.js';
import type { OutlineSpot, SoftOutline } from '../../purse/lining/soft-outline.js';
import type { Lining } from '../../purse/lining/plan.js';
import { movedCurve } from '../surface/curve.js';
import type { Fonts } from '../surface/font.js';
import { Labels } from '../surface/labels.js';
import type { PagePart } from '../surface/page-part.js';
import type { Surface } from '../surface/surface.js';
import { mmPerPoint, textWidth } from '../surface/text.js';
import type { TextStyle } from '../surface/text.js';

const black = '#000000';
const cutLine = { stroke: black, widthMm: 0.4 } as const;
const seamLine = { stroke: black, widthMm: 0.3, dashMm: [3, 2] } as const;
const mark = { stroke: black, widthMm: 0.3 } as const;
const bar = { stroke: black, widthMm: 0.6 } as const;

/** Pictures of how the pieces are sewn and put in. */
export interface DrawnSteps {
  readonly heightMm: number;
  /** What the pages beside it take of the paper, from its top, millimetres: the sheet may take as much. */
  readonly page: { readonly top: number; readonly bottom: number };
  /** With their top left corner there. */
  parts(left: number, top: number): readonly PagePart[];
}

/** Everything a lining template is drawn from. */
export interface LiningSheet {
  /** The piece of cloth as it is planned. */
  readonly lining: Lining;
  /** Title of the pattern, and the panel's name where there are several. */
  readonly title: string;
  /** Name of the panel that it lines, where there are two. */
  readonly panel?: string | undefined;
  /** Whether common practice is marked as such; a booklet says it once for all. Default true. */
  readonly marked?: boolean;
  /** In place of the sentences that say it; a booklet has them, and says its cautions elsewhere. */
  readonly drawn?: DrawnSteps | undefined;
  /** Words of its language. */
  readonly words: Words;
  /** Fonts that its texts are set in. */
  readonly fonts: Fonts;
}

/** Edges of an outline about the panel's centre. */
export function boxOf(outline: SoftOutline) {
  return {
    left: -support(outline, Math.PI),
    top: -support(outline, -Math.PI / 2),
    right: support(outline, 0),
    bottom: support(outline, Math.PI / 2),
  };
}

/** Where sheets overlap through the middle of a piece, millimetres from the panel's centre. */
export interface MiddleJoin {
  readonly x?: number | undefined;
  readonly y?: number | undefined;
  /** Half the overlap and some room: nothing is to be lettered nearer. */
  readonly clearMm: number;
}

/** The piece with its lines and marks, the panel's centre at x, y; no word stands on a join. */
export function drawLiningPiece(
  surface: Surface,
  sheet: LiningSheet,
  x: number,
  y: number,
  join: MiddleJoin = { clearMm: 0 },
): void {
  const { lining, words } = sheet;
  surface.beginGroup('piece', words.booklet.parts.lining);
  surface.strokeCurve('cut-line', movedCurve(outlineCurve(lining.cut), x, y), cutLine);
  surface.strokeCurve('seam-line', movedCurve(outlineCurve(lining.seam), x, y), seamLine);
  drawMarks(surface, lining, x, y);
  const labels = new Labels(surface);
  const grain = drawMiddle(surface, labels, sheet, x, y, join);
  nameMarks(labels, sheet, x, y, join);
  grain();
  surface.endGroup();
}

/** Marks cross the seam line and reach the cut line, so that they can be snipped or chalked. */
function drawMarks(surface: Surface, lining: Lining, x: number, y: number): void {
  const { top, hinges, gap, allowanceMm } = lining;
  const inward = Math.min(4, 0.06 * lining.seamAcrossMm);
  const across = (spot: OutlineSpot) =>
    Float64Array.of(
      x + spot.x - inward * spot.outX,
      y + spot.y - inward * spot.outY,
      x + spot.x + allowanceMm * spot.outX,
      y + spot.y + allowanceMm * spot.outY,
    );
  surface.beginGroup('centre-top');
  const peak = y + top.y;
  surface.strokePath([Float64Array.of(x, peak + inward, x, peak - allowanceMm)], mark);
  const wing = inward / 2;
  const arrow = Float64Array.of(x, peak, x - wing, peak + inward, x + wing, peak + inward);
  surface.fillPath([arrow], { fill: black });
  surface.endGroup();
  surface.beginGroup('hinges');
  surface.strokePath(hinges.map(across), mark);
  for (const spot of hinges) {
    surface.circle(x + spot.x, y + spot.y, 0.3 * inward, { fill: black });
  }
  surface.endGroup();
  if (gap.length === 0) return;
  surface.beginGroup('turning-gap');
  surface.strokePath([gap[0], gap[2]].map(across), bar);
  surface.endGroup();
}

/** Lettering of a piece; nothing below a size where it would cover the marks. */
function lettering({ lining, fonts }: LiningSheet) {
  const wide = lining.seamAcrossMm;
  if (wide < 40) return undefined;
  const points = wide < 70 ? 8 : 12;
  const small = { face: fonts.regular, sizeMm: points * mmPerPoint };
  return { small, bold: { face: fonts.bold, sizeMm: (points + 2) * mmPerPoint } };
}

/**
 * Grain, number of pieces and sizes: beside a join through the middle, or above it.
 *
 * @returns draws the word beside the grain's arrow, the first to be left out
 */
function drawMiddle(
  surface: Surface,
  labels: Labels,
  sheet: LiningSheet,
  x: number,
  centreY: number,
  join: MiddleJoin,
): () => void {
  const { lining, words } = sheet;
  const said = words.lining.marks;
  const styles = lettering(sheet);
  const y = join.y === undefined ? centreY : centreY + join.y - join.clearMm - grainHalf(lining);
  if (!styles) {
    drawGrain(surface, lining, x, y);
    return () => {};
  }
  const { small, bold } = styles;
  const line = 1.4 * small.sizeMm;
  const lines = [
    said.cut({ mm: lining.cutAcrossMm }),
    said.seam({ mm: lining.seamAcrossMm }),
    ...(lining.measuredMm === undefined ? [said.estimate] : []),
  ];
  const half = Math.max(...lines.map((text) => textWidth(text, small))) / 2;
  const middle =
    x +
    (join.x === undefined
      ? Math.min(12, 0.07 * lining.seamAcrossMm)
      : join.x - join.clearMm - half);
  const arrow =
    join.x === undefined ? x - Math.min(35, 0.24 * lining.seamAcrossMm) : middle - half - 8;
  drawGrain(surface, lining, arrow, y);
  const high = grainHalf(lining);
  labels.keepOff(arrow - 1, y - high, arrow + 1, y + high);
  const first = y - (lines.length * line) / 2;
  labels.draw(said.pieces(lining), bold, middle, first, 'middle');
  lines.forEach((text, n) => {
    labels.draw(text, small, middle, first + (n + 1.1) * line, 'middle');
  });
  const head = Math.min(3, 0.15 * high);
  return () => labels.draw(said.grain, small, arrow + head + 1.5, y + high - 1);
}

function nameMarks(
  labels: Labels,
  sheet: LiningSheet,
  x: number,
  y: number,
  join: MiddleJoin,
): void {
  const { lining, words } = sheet;
  const said = words.lining.marks;
  const small = lettering(sheet)?.small;
  if (!small) return;
  const half = textWidth(said.top, small) / 2;
  /** The middle of a text, moved off a join that would part it. */
  const besideJoin = (middle: number, width: number) =>
    join.x === undefined || Math.abs(middle - join.x) > join.clearMm + width / 2
      ? middle
      : join.x - join.clearMm - width / 2;
  const topX = besideJoin(0, 2 * half);
  let upper = lining.top.y + 4.5;
  while (upper < 0 && ![-half, half].every((end) => holds(lining.seam, topX + end, upper, 2.5)))
    upper += 0.5;
  labels.draw(said.top, small, x + topX, y + upper + 0.75 * small.sizeMm, 'middle');
  const [, middle] = lining.gap;
  if (middle) {
    const text = said.gap({ mm: lining.gapMm });
    const { outX, outY } = middle;
    const room = (textWidth(text, small) * Math.abs(outX) + small.sizeMm * Math.abs(outY)) / 2;
    const inward = 6 + room;
    const textX = besideJoin(middle.x - inward * outX, textWidth(text, small));
    const textY = middle.y - inward * outY;
    labels.draw(text, small, x + textX, y + textY + small.sizeMm / 3, 'middle');
  }
  nameHinges(labels, sheet, small, x, y);
}

/** How far the words of the hinges may stand above or below their dots, nearest first. */
const hingeDrops = [0, -4.5, 5.5, -6, 7, -8, 9, -10, 11, -12];

/**
 * The word at both hinges, at the same height: beside the dots, else above or below them, in smaller
 * letters before it is left out. Where there is no room for both the notes name the dots.
 */
function nameHinges(
  labels: Labels,
  { lining, words }: LiningSheet,
  small: TextStyle,
  x: number,
  y: number,
): void {
  const text = words.lining.marks.hinge;
  for (const share of [1, 0.8, 0.7]) {
    const style = { ...small, sizeMm: share * small.sizeMm };
    const wide = textWidth(text, style);
    for (const drop of hingeDrops) {
      const spots = lining.hinges.map((spot) => {
        const side = spot.x > 0 ? -1 : 1;
        const baseline = spot.y + drop + 1.3;
        const inside = (at: number) =>
          [baseline - 0.8 * style.sizeMm, baseline + 0.25 * style.sizeMm].every((level) =>
            [at, at + side * wide].every((end) => holds(lining.seam, end, level, 1.2)),
          );
        let at = spot.x + (drop === 0 ? 5.5 : 2.5) * side;
        while (side * at < 0 && !inside(at)) at += 0.5 * side;
        const anchor: 'end' | 'start' = side < 0 ? 'end' : 'start';
        return { at: x + at, baseline: y + baseline, anchor, inside: inside(at) };
      });
      const between = Math.abs(spots[0].at - spots[1].at) - 2 * wide;
      const fit = spots.every(
        (one) => one.inside && labels.fits(text, style, one.at, one.baseline, one.anchor, 1.5),
      );
      if (!fit || between < 3) continue;
      for (const one of spots) labels.draw(text, style, one.at, one.baseline, one.anchor);
      return;
    }
  }
}

const grainHalf = ({ seamAcrossMm }: Lining) => Math.min(40, 0.2 * seamAcrossMm);

/** An arrow with a head at both ends, straight up and down. */
function drawGrain(surface: Surface, lining: Lining, x: number, y: number): void {
  const half = grainHalf(lining);
  const head = Math.min(3, 0.15 * half);
  surface.beginGroup('grain');
  surface.strokePath([Float64Array.of(x, y - half, x, y + half)], mark);
  for (const side of [-1, 1]) {
    const tip = y + side * half;
    const back = tip - side * 2 * head;
    surface.fillPath([Float64Array.of(x, tip, x - head, back, x + head, back)], { fill: black });
  }
  surface.endGroup();
}
