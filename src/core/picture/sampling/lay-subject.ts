import { finishedEdge, ringLine } from '../../panel/edge.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { millionth } from '../../units.js';

/** What stays free between a subject and the rim, rounds: the seam takes the last one. */
const marginRounds = 1;
/** Directions in which the free part of a panel is looked at. */
const directions = 360;

/** The half-plane x·nx + y·ny <= d. */
interface Side {
  readonly nx: number;
  readonly ny: number;
  readonly d: number;
}

/** Where the middle of a picture comes to lie, and how large. */
export interface Laid {
  readonly mmPerPixel: number;
  readonly centreXmm: number;
  readonly centreYmm: number;
}

/**
 * Lays a hull as large as it goes on the free part of a panel, less a margin of one round. For
 * every place of the hull the largest scale is the least of linear functions of it, so it has one
 * top, which is found by halving, first across and then down.
 *
 * @param hull x, y pairs from the middle of the picture, in its pixels, as it will be turned
 * @param bare 1 for each stitch that a frame covers; it shall not be used
 */
export function laySubject(
  hull: Float64Array,
  geometry: PanelGeometry,
  bare?: Uint8Array,
): Laid | undefined {
  const sides = freeSides(geometry, bare);
  const [x0, y0] = middleOf(hull);
  const reach = sides.map(({ nx, ny }) => {
    let most = 0;
    for (let p = 0; p < hull.length; p += 2) {
      most = Math.max(most, nx * (hull[p] - x0) + ny * (hull[p + 1] - y0));
    }
    return most;
  });
  /** The largest scale with the hull's middle at a point. */
  const scaleAt = (x: number, y: number): number => {
    let least = Infinity;
    for (let k = 0; k < sides.length; k++) {
      const room = sides[k].d - sides[k].nx * x - sides[k].ny * y;
      least = Math.min(least, reach[k] > 1e-9 ? room / reach[k] : room < 0 ? -Infinity : Infinity);
    }
    return least;
  };
  const far = Math.max(...sides.map(({ d }) => d));
  const bestDown = (x: number): number => top(-far, far, (y) => scaleAt(x, y));
  const x = top(-far, far, (at) => scaleAt(at, bestDown(at)));
  const y = bestDown(x);
  const mmPerPixel = scaleAt(x, y);
  if (!(mmPerPixel > 0 && mmPerPixel < Infinity)) return undefined;
  return { mmPerPixel, centreXmm: x - mmPerPixel * x0, centreYmm: y - mmPerPixel * y0 };
}

/** Where a function with one top is largest, to about a thousandth of a millimetre. */
function top(from: number, to: number, f: (at: number) => number): number {
  let [low, high] = [from, to];
  for (let n = 0; n < 44 && high - low > 1e-3; n++) {
    const third = (high - low) / 3;
    if (f(low + third) < f(high - third)) low += third;
    else high -= third;
  }
  return (low + high) / 2;
}

/** Middle of the box around a hull. */
function middleOf(hull: Float64Array): [number, number] {
  let [left, up, right, down] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let p = 0; p < hull.length; p += 2) {
    left = Math.min(left, hull[p]);
    right = Math.max(right, hull[p]);
    up = Math.min(up, hull[p + 1]);
    down = Math.max(down, hull[p + 1]);
  }
  return [(left + right) / 2, (up + down) / 2];
}

/**
 * A convex part of the panel without its margin, and without what a frame covers: the tangents of
 * the finished edge; where stitches are bare, those of the line inside them.
 */
function freeSides(geometry: PanelGeometry, bare?: Uint8Array): Side[] {
  const margin = marginRounds * geometry.shape.roundHeightMm;
  const sides = tangents(finishedEdge(geometry), margin);
  const depth = bareDepth(geometry, bare);
  const { rounds } = geometry.shape;
  for (const inner of new Set(depth)) {
    if (inner === 0 || inner >= rounds) continue;
    const line = ringLine(geometry, rounds - inner);
    const framed = (x: number, y: number) => depth[directionOf(x, y)] === inner;
    sides.push(...tangents(line.subarray(0, line.length - 2), margin, framed));
  }
  return sides;
}

/** How many rounds are bare, from the rim inward, in every direction. */
function bareDepth({ shape, count, centres }: PanelGeometry, bare?: Uint8Array): Int32Array {
  const depth = new Int32Array(directions);
  if (!bare) return depth;
  for (let r = shape.rounds, s = count; r > 0; r--) {
    for (let i = 0; i < shape.wedges * r; i++) {
      if (!bare[--s]) continue;
      const at = directionOf(centres[2 * s], centres[2 * s + 1]);
      // A stitch of the last rounds is wider than one direction.
      for (let k = -2; k <= 2; k++) {
        const near = (at + k + directions) % directions;
        depth[near] = Math.max(depth[near], shape.rounds - r + 1);
      }
    }
  }
  return depth;
}

function directionOf(x: number, y: number): number {
  const turns = Math.atan2(y, x) / (2 * Math.PI);
  return Math.floor((turns + 1) * directions) % directions;
}

/** The half-planes along a ring's sides, moved inward; the step at the end of a spiral is none. */
function tangents(
  ring: Float64Array,
  inward: number,
  wanted: (x: number, y: number) => boolean = () => true,
): Side[] {
  const sides: Side[] = [];
  for (let p = 0; p < ring.length; p += 2) {
    const q = (p + 2) % ring.length;
    // Sines may differ in their last bits between engines; from here on nothing does.
    const [x, y, toX, toY] = [ring[p], ring[p + 1], ring[q], ring[q + 1]].map(millionth);
    const length = Math.sqrt((toX - x) ** 2 + (toY - y) ** 2);
    if (length < 1e-5) continue;
    let [nx, ny] = [(toY - y) / length, (x - toX) / length];
    let d = nx * x + ny * y;
    if (d < 0) [nx, ny, d] = [-nx, -ny, -d];
    if (d < 0.5 * Math.sqrt(x * x + y * y) || !wanted(x, y)) continue;
    sides.push({ nx, ny, d: Math.max(0, d - inward) });
  }
  return sides;
}
