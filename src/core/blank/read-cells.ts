import { RondureError } from '../errors.js';
import type { Homography } from '../homography.js';
import { median } from '../median.js';
import { blankPage } from '../pages/chart/blank-page.js';
import type { BlankPage } from '../pages/chart/blank-page.js';
import type { Footprints } from '../panel/footprints.js';
import type { PanelGeometry } from '../panel/geometry.js';
import { layPanel } from '../panel/lay.js';
import { letters } from '../pattern/marks.js';
import { sampleCells } from './cell-samples.js';
import type { CellSamples } from './cell-samples.js';
import { findPage } from './corner-marks.js';
import { groupColours } from './groups.js';
import type { ColourGroup } from './groups.js';
import { isClear, judge } from './judge.js';
import type { Judgement } from './judge.js';
import { pageLight } from './page-light.js';
import { paperWhite } from './paper-white.js';
import type { PageLight, PageWhite } from './paper-white.js';
import type { ReadingWish } from './reading-wish.js';
import { litUnevenly } from './uneven.js';

/** The start mark is black: no lighter than this share of the paper, however blurred. */
const mostStartLight = 0.5;

/** Where a panel's cells lie in a photograph of its blank page. */
export interface SeenPanel {
  readonly geometry: PanelGeometry;
  readonly footprints: Footprints;
  readonly page: BlankPage;
  /** From millimetres of the page to pixels of the photograph. */
  readonly view: Homography;
}

/** A coloured blank as it was read, cell by cell in working order. */
export interface CellReading extends SeenPanel {
  /** What was seen in each; undefined outside the photograph. */
  readonly cells: readonly (CellSamples | undefined)[];
  readonly groups: readonly ColourGroup[];
  readonly judged: readonly Judgement[];
  readonly litUnevenly: boolean;
}

/**
 * Finds the page in its photograph and judges every cell.
 *
 * @throws RondureError `corner-marks-not-found`, `blank-not-coloured`
 */
export function readCells(wish: ReadingWish): CellReading {
  const { picture, pictureName: name, blank } = wish;
  const { startDegrees } = blank.panels[0];
  const { geometry, footprints } = layPanel(blank.shape, { startDegrees });
  const page = blankPage(geometry);
  const found = findPage(picture, page);
  if ('found' in found) {
    throw new RondureError('corner-marks-not-found', { name, found: found.found });
  }
  const light = pageLight(picture, found.view);
  const white = paperWhite(page, light);
  if (!startIsSeen(page, light, white)) {
    throw new RondureError('corner-marks-not-found', { name, found: 4 });
  }
  const cells = sampleCells(geometry, footprints, page, light, white);
  const clear = cells.filter(isClear);
  if (clear.length === 0) throw new RondureError('blank-not-coloured', { name });
  const groups = groupColours(
    clear.map(({ colour }) => colour),
    Float64Array.from(wish.beads.flatMap(({ lab }) => [...lab])),
    // A bead for the uncoloured cells needs a letter too.
    Math.min(wish.colours, wish.unpainted >= 0 ? letters.length - 1 : letters.length),
  );
  const usualEven = median(clear.map(({ even }) => even));
  const judged = cells.map((cell) => judge(cell, groups, wish.unpainted, usualEven));
  const { view } = found;
  const uneven = litUnevenly(page, light, white);
  return { geometry, footprints, page, view, cells, groups, judged, litUnevenly: uneven };
}

/** Whether the black start mark lies where it should: spots on a table may look like corners. */
function startIsSeen(page: BlankPage, light: PageLight, white: PageWhite): boolean {
  const { triangle } = page.marks;
  const x = page.view.centreX + (triangle[0] + triangle[2] + triangle[4]) / 3;
  const y = page.view.centreY + (triangle[1] + triangle[3] + triangle[5]) / 3;
  const seen = light(x, y);
  return seen !== undefined && seen[1] < mostStartLight * white(x, y)[1];
}
