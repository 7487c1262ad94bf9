import { markHoleShare } from '../pages/chart/blank-page.js';
import type { BlankPage } from '../pages/chart/blank-page.js';
import type { Picture } from '../picture/picture.js';
import { toLinearRaster } from '../picture/sampling/linear.js';
import { darkSpots } from './dark-spots.js';
import type { DarkSpot } from './dark-spots.js';
import { homographyOf, stretchAt } from '../homography.js';
import type { Homography, Point } from '../homography.js';

/** Marks are looked for in a picture of about this many pixels along its longer side. */
const searchSidePx = 1600;
const leastArea = 30;
const mostDiscs = 26;
const mostRings = 10;
/** How far the shape of a mark may be from what the perspective asks for, as a share. */
const mostMisfit = 0.4;

/** A spot that may be a mark: the variances of the whole disc, its hole filled. */
interface Mark {
  readonly x: number;
  readonly y: number;
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
  readonly area: number;
  /** 0 is a perfect disc or ring. */
  readonly flaw: number;
}

/**
 * Finds the four corner marks of a blank page and the perspective under which the page is seen.
 *
 * @returns the perspective from page millimetres to pixels of the picture, or how many round
 *   spots there were when no four of them fit
 */
export function findPage(
  picture: Picture,
  page: BlankPage,
): { view: Homography } | { found: number } {
  const reduceBy = Math.max(1, Math.max(picture.width, picture.height) / searchSidePx);
  const raster = toLinearRaster(picture, reduceBy);
  const spots = darkSpots(raster, leastArea);
  const discs = best(spots.flatMap(asDisc), mostDiscs);
  const rings = best(spots.flatMap(asRing), mostRings);
  let least = mostMisfit;
  let corners: Point[] | undefined;
  for (const ring of rings) {
    const alike = discs.filter((d) => d.area < 5 * ring.area && ring.area < 5 * d.area);
    for (let a = 0; a < alike.length; a++) {
      for (let b = a + 1; b < alike.length; b++) {
        for (let c = b + 1; c < alike.length; c++) {
          const four = clockwiseFrom(ring, [alike[a], alike[b], alike[c]]);
          const misfit = misfitOf(four, page);
          if (misfit >= least) continue;
          least = misfit;
          corners = four.map(({ x, y }) => [x, y]);
        }
      }
    }
  }
  if (!corners) return { found: discs.length + rings.length };
  const across = picture.width / raster.width;
  const down = picture.height / raster.height;
  const view = homographyOf(
    page.corners,
    corners.map(([x, y]) => [x * across, y * down]),
  );
  return view ? { view } : { found: discs.length + rings.length };
}

function best(marks: Mark[], most: number): Mark[] {
  return marks.sort((p, q) => p.flaw - q.flaw || q.area - p.area).slice(0, most);
}

/** A full ellipse has the area 4π·√det of its variances and reaches 2 standard deviations. */
function asDisc(spot: DarkSpot): Mark[] {
  const { area, x, y, xx, xy, yy, most } = spot;
  const round = area / (4 * Math.PI * Math.sqrt(xx * yy - xy * xy));
  const flaw = Math.abs(round - 1) + Math.max(0, most - 2.1);
  return flaw > 0.35 ? [] : [{ x, y, xx, xy, yy, area, flaw }];
}

/** With a hole of share q the area is (1-q²)/(1+q²) of that, and the reach 2/√(1+q²). */
function asRing(spot: DarkSpot): Mark[] {
  const { area, x, y, xx, xy, yy, least, most } = spot;
  const full = 4 * Math.PI * Math.sqrt(xx * yy - xy * xy);
  const q2 = (1 - area / full) / (1 + area / full);
  if (q2 < 0.06 || q2 > 0.55) return [];
  const reach = 2 / Math.sqrt(1 + q2);
  const flaw =
    Math.max(0, Math.abs(Math.sqrt(q2) - markHoleShare) - 0.1) +
    Math.max(0, most - 1.06 * reach) +
    Math.max(0, 0.6 * Math.sqrt(q2) * reach - least);
  const fill = 1 / (1 + q2);
  const filled = { xx: xx * fill, xy: xy * fill, yy: yy * fill, area: full * fill };
  return flaw > 0.35 ? [] : [{ x, y, ...filled, flaw }];
}

/** The marks in order around their middle, clockwise as seen, beginning with the ring. */
function clockwiseFrom(ring: Mark, discs: readonly Mark[]): Mark[] {
  const all = [ring, ...discs];
  const midX = all.reduce((sum, { x }) => sum + x, 0) / 4;
  const midY = all.reduce((sum, { y }) => sum + y, 0) / 4;
  const angle = ({ x, y }: Mark) => Math.atan2(y - midY, x - midX);
  const order = all.sort((p, q) => angle(p) - angle(q));
  const first = order.indexOf(ring);
  return [...order.slice(first), ...order.slice(0, first)];
}

/** How much the worst mark's shape differs from the disc that the perspective would show there. */
function misfitOf(four: readonly Mark[], page: BlankPage): number {
  const h = homographyOf(
    page.corners,
    four.map(({ x, y }) => [x, y]),
  );
  if (!h) return Infinity;
  let worst = 0;
  for (let n = 0; n < 4; n++) {
    const [x, y] = page.corners[n];
    if (h[6] * x + h[7] * y + 1 <= 0) return Infinity;
    const [ux, uy, vx, vy] = stretchAt(h, x, y);
    // Variances of a disc of radius r are r²/4.
    const quarter = (page.markRadiusMm * page.markRadiusMm) / 4;
    const xx = quarter * (ux * ux + uy * uy);
    const xy = quarter * (ux * vx + uy * vy);
    const yy = quarter * (vx * vx + vy * vy);
    const determinant = xx * yy - xy * xy;
    if (!(determinant > 0) || ux * vy - uy * vx <= 0) return Infinity;
    const mark = four[n];
    const p = (yy * mark.xx - xy * mark.xy) / determinant - 1;
    const q = (yy * mark.xy - xy * mark.yy) / determinant;
    const r = (xx * mark.xy - xy * mark.xx) / determinant;
    const s = (xx * mark.yy - xy * mark.xy) / determinant - 1;
    worst = Math.max(worst, Math.sqrt(p * p + q * q + r * r + s * s));
  }
  return worst;
}
