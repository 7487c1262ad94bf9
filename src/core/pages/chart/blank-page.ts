import type { PanelGeometry } from '../../panel/geometry.js';
import { fitPanel } from '../panel/panel-view.js';
import type { Marks, PanelView } from '../panel/panel-view.js';
import { marginMm, smallestPaper } from '../surface/paper.js';

/** Cells smaller than this are hard to colour by hand: the page asks for larger paper. */
const leastCellMm = 3.3;
/** Room of the two words at the rim: fixed, so that a page is read without knowing its letters. */
export const wordRoom = {
  start: { widthMm: 9, heightMm: 3.4 },
  direction: { widthMm: 26, heightMm: 3.4 },
};

/** How a cell is drawn and read, as a share of its footprint about the stitch's centre. */
export const drawnShare = 0.88;
/** Hole of the first corner mark over its outer size. */
export const markHoleShare = 0.5;

/** Where everything that a reader needs lies on a blank page; millimetres, y down. */
export interface BlankPage {
  readonly paper: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly view: PanelView;
  readonly marks: Marks;
  /** Middles of the corner marks, clockwise from the one with the hole at the top left. */
  readonly corners: readonly (readonly [number, number])[];
  readonly markRadiusMm: number;
}

/** Lays out a blank page from the panel alone, so that its photograph can be read again. */
export function blankPage(geometry: PanelGeometry): BlankPage {
  const { stitchWidthMm, roundHeightMm } = geometry.shape;
  const shorter = Math.min(stitchWidthMm, roundHeightMm);
  const paper = smallestPaper(
    (one) => pageOn(geometry, one).view.scale * shorter * drawnShare >= leastCellMm,
  );
  return pageOn(geometry, paper);
}

function pageOn(
  geometry: PanelGeometry,
  paper: { name: string; widthMm: number; heightMm: number },
): BlankPage {
  const { widthMm, heightMm } = paper;
  const markRadiusMm = 5 * (widthMm / 210);
  const inset = marginMm + markRadiusMm;
  const space = {
    left: marginMm,
    top: marginMm + 2 * markRadiusMm + 9,
    right: widthMm - marginMm,
    bottom: heightMm - marginMm - 2 * markRadiusMm - 14,
  };
  const { view: high, marks } = fitPanel(geometry, space, wordRoom);
  const spare = Math.max(0, space.bottom - high.centreY - marks.box.bottom);
  const view = { ...high, centreY: high.centreY + 0.4 * spare };
  const [left, top, right, bottom] = [inset, inset, widthMm - inset, heightMm - inset];
  return {
    paper: paper.name,
    widthMm,
    heightMm,
    view,
    marks,
    corners: [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ],
    markRadiusMm,
  };
}
