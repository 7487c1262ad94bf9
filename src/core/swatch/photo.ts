import { RondureError, warning } from '../errors.js';
import type { Warning } from '../errors.js';
import type { Point } from '../homography.js';
import { directionOf, naturalOutline } from '../panel/shape.js';
import { millionth } from '../units.js';
import { firstCamera, panelPoint, seenBy } from './camera.js';
import type { Camera } from './camera.js';
import { leastSquares } from './least-squares.js';
import type { Fit } from './least-squares.js';
import { unitPlaces } from './model.js';
import type { Estimate, SwatchWorked } from './swatch.js';

/** A bead middle that was pointed at: the first stitch of a wedge (from 1) in a round; pixels. */
export interface PhotoPoint {
  /** Round of the stitch, from 1. */
  round: number;
  /** Wedge, from 1, whose first stitch it is. */
  wedge: number;
  /** Pixels from the left of the photograph. */
  x: number;
  /** Pixels from its top. */
  y: number;
}

/** What was pointed at on a photograph of the bead face. */
export interface PhotoWish {
  /** How the swatch was worked. */
  worked: Omit<SwatchWorked, 'outline'> & { outline?: SwatchWorked['outline'] };
  /** Middle of the hole at the centre, pixels. */
  centre: Point;
  /** First stitches of wedges. */
  points: readonly PhotoPoint[];
  /** How far each point may be off, pixels. */
  pixels: number;
  /** Two points of a ruler that lies level with the beads, their distance and how finely it is known. */
  ruler?: { from: Point; to: Point; mm: number; offMm: number };
}

/** What a photograph tells. */
export interface PhotoResult {
  /** How far a stitch sits behind its parent, in stitch widths. */
  lean: Estimate;
  /** With a ruler only. */
  roundHeightMm?: Estimate;
  /** Whether the camera may have stood anywhere; else it is taken to have looked straight down. */
  perspective: boolean;
  /** Root mean square distance of the points from where they should be, pixels. */
  offPixels: number;
  /** What does not fit together. */
  warnings: Warning[];
}

/** Leans from which the search starts. */
const startLeans = [0.5, 0, 1, -0.5, -1];
/** Points that miss their place by more than so many times what was said of them do not fit. */
const misses = 3;

/**
 * Lean, and with a ruler round height, from a photograph: the panel's model, seen by a camera, is
 * laid on the points by least squares. With four points or more on the last round the camera may
 * stand anywhere (perspective); otherwise it is taken to look straight down.
 *
 * The least and the most are what follows, to first order, when every point is off as far as it
 * may be in the worst direction.
 *
 * @throws RondureError `photo-points-too-few`, `photo-points-in-line`, `photo-lean-impossible`
 */
export function solvePhoto(wish: PhotoWish): PhotoResult {
  const { worked } = wish;
  const first = fitted(wish, worked.outline ?? 'circle');
  const outline = worked.outline ?? naturalOutline(worked.increase, leanIn(first));
  return outline === 'circle' || worked.outline
    ? resultOf(wish, first)
    : resultOf(wish, fitted(wish, outline));
}

interface Fitted extends Fit {
  camera: Camera;
}

const leanIn = ({ unknowns }: Fit) => unknowns[unknowns.length - 1];

function fitted(wish: PhotoWish, outline: SwatchWorked['outline']): Fitted {
  const { worked, points, centre } = wish;
  const rim = points.filter(({ round }) => round === worked.rounds);
  const camera: Camera = rim.length >= 4 ? 'perspective' : 'straight';
  const others = new Set(points.map(({ round }) => round));
  if (others.size < 2) throw new RondureError('photo-points-too-few', { rims: rim.length });
  const direction = directionOf(worked);
  const middles = (lean: number): Point[] => {
    const place = unitPlaces({ ...worked, outline, lean });
    return points.map(({ round, wedge }) => {
      const { angle, distance } = place(round, (wedge - 1) * round);
      return [direction * distance * Math.sin(angle), -distance * Math.cos(angle)];
    });
  };
  const seen = points.map(({ x, y }): Point => [x, y]);
  const residualsOf = (unknowns: Float64Array) => {
    const panel: Point[] = [[0, 0], ...middles(unknowns[unknowns.length - 1])];
    return Float64Array.from(
      [centre, ...seen].flatMap(([u, v], n) => {
        const [x, y] = seenBy(camera, unknowns, panel[n]);
        return [x - u, y - v];
      }),
    );
  };
  let best: Fit | undefined;
  for (const lean of startLeans) {
    const panel = middles(lean);
    const four = points.flatMap(({ round }, n) => (round === worked.rounds ? [n] : [])).slice(0, 4);
    const guess =
      camera === 'perspective'
        ? firstCamera(
            camera,
            four.map((n) => panel[n]),
            four.map((n) => seen[n]),
          )
        : firstCamera(camera, [[0, 0], farthest(panel, panel)], [centre, farthest(seen, panel)]);
    if (!guess) continue;
    const start = Float64Array.of(...guess, lean);
    const fit = leastSquares(residualsOf, start, stepsFor(guess, camera, worked.rounds));
    if (fit && (!best || fit.cost < best.cost)) best = fit;
  }
  if (!best) throw new RondureError('photo-points-in-line', undefined);
  return { ...best, camera };
}

/** The one of `from` whose place on the panel is farthest out. */
function farthest(from: readonly Point[], panel: readonly Point[]): Point {
  const out = panel.map(([x, y]) => Math.hypot(x, y));
  return from[out.indexOf(Math.max(...out))];
}

/** Changes of each unknown that move the rim by about a hundredth of a pixel to a pixel. */
function stepsFor(guess: Float64Array, camera: Camera, rounds: number): number[] {
  const scale = Math.hypot(guess[0], guess[camera === 'straight' ? 1 : 3]) || 1;
  const inPlane = (1e-4 * scale) / rounds;
  const steps =
    camera === 'straight'
      ? [inPlane, inPlane, 1e-3, 1e-3]
      : [inPlane, inPlane, 1e-3, inPlane, inPlane, 1e-3, 1e-6 / rounds, 1e-6 / rounds];
  return [...steps, 1e-4];
}

function resultOf(wish: PhotoWish, fit: Fitted): PhotoResult {
  const lean = leanIn(fit);
  if (!(Math.abs(lean) <= 1.001)) throw new RondureError('photo-lean-impossible', { lean });
  const off =
    wish.pixels * fit.gain[fit.gain.length - 1].reduce((sum, one) => sum + Math.abs(one), 0);
  const offPixels = Math.sqrt((2 * fit.cost) / fit.gain[0].length);
  const warnings: Warning[] = [];
  if (offPixels > misses * wish.pixels) {
    warnings.push(warning('photo-points-miss', { pixels: offPixels, wanted: wish.pixels }));
  }
  const value = Math.max(-1, Math.min(1, lean));
  return {
    lean: estimate(value, off),
    ...(wish.ruler && { roundHeightMm: heightOf(wish, wish.ruler, fit) }),
    perspective: fit.camera === 'perspective',
    offPixels: millionth(offPixels),
    warnings,
  };
}

/** The ruler's length in round heights gives the height; its error adds up all that may be off. */
function heightOf(wish: PhotoWish, ruler: NonNullable<PhotoWish['ruler']>, fit: Fitted): Estimate {
  const height = (unknowns: Float64Array, ends: readonly number[]) => {
    const from = panelPoint(fit.camera, unknowns, [ends[0], ends[1]]);
    const to = panelPoint(fit.camera, unknowns, [ends[2], ends[3]]);
    const rounds = from && to ? Math.hypot(to[0] - from[0], to[1] - from[1]) : 0;
    if (!(rounds > 0)) throw new RondureError('photo-points-in-line', undefined);
    return ruler.mm / rounds;
  };
  const ends = [...ruler.from, ...ruler.to];
  const value = height(fit.unknowns, ends);
  let off = (value * ruler.offMm) / ruler.mm;
  for (let k = 0; k < ends.length; k++) {
    const moved = ends.map((one, n) => (n === k ? one + wish.pixels : one));
    off += Math.abs(height(fit.unknowns, moved) - value);
  }
  for (let i = 0; i < fit.gain[0].length; i++) {
    const moved = fit.unknowns.map((one, k) => one + wish.pixels * fit.gain[k][i]);
    off += Math.abs(height(moved, ends) - value);
  }
  return estimate(value, off);
}

function estimate(value: number, off: number): Estimate {
  return {
    value: millionth(value),
    least: millionth(value - off),
    most: millionth(value + off),
  };
}
