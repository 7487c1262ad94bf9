import { linearToSrgb8 } from '../colour/srgb.js';
import { drawnShare } from '../pages/chart/blank-page.js';
import { insetRing } from '../pages/chart/blank.js';
import type { Picture } from '../picture/picture.js';
import { pageLight } from './page-light.js';
import type { SeenPanel } from './read-cells.js';

/** How much of the page is shown about a cell, in widths of a cell. */
const cellsAcross = 7;

/** A cutting of a photograph about one cell, as the paper lies flat and upright. */
export interface CellPatch {
  readonly picture: Picture;
  /** The cell's outline in its pixels: x and y of each corner. */
  readonly outline: Float64Array;
}

/**
 * Cuts the surroundings of a cell out of the photograph and takes the perspective away; grey where
 * the photograph does not reach.
 *
 * @param s stitch in working order, from 0
 * @param sidePx width and height of the cutting
 */
export function cellPatch(
  photo: Picture,
  { geometry, footprints, page, view }: SeenPanel,
  s: number,
  sidePx: number,
): CellPatch {
  const { scale, centreX, centreY } = page.view;
  const { stitchWidthMm, roundHeightMm } = geometry.shape;
  const spanMm = cellsAcross * scale * Math.max(stitchWidthMm, roundHeightMm);
  const left = centreX + scale * geometry.centres[2 * s] - spanMm / 2;
  const top = centreY + scale * geometry.centres[2 * s + 1] - spanMm / 2;
  const light = pageLight(photo, view);
  const data = new Uint8ClampedArray(4 * sidePx * sidePx);
  for (let y = 0, at = 0; y < sidePx; y++) {
    for (let x = 0; x < sidePx; x++, at += 4) {
      const seen = light(left + ((x + 0.5) / sidePx) * spanMm, top + ((y + 0.5) / sidePx) * spanMm);
      for (let c = 0; c < 3; c++) data[at + c] = seen ? linearToSrgb8(seen[c]) : 128;
      data[at + 3] = 255;
    }
  }
  const [ring] = footprints.rings(s);
  const cell = ring ? insetRing(ring, geometry, s, drawnShare) : new Float64Array(0);
  const outline = cell.map((v, p) => {
    const onPage = (p % 2 === 0 ? centreX : centreY) + scale * v;
    return ((onPage - (p % 2 === 0 ? left : top)) / spanMm) * sidePx;
  });
  return { picture: { width: sidePx, height: sidePx, data }, outline };
}
