import { ringLine } from '../../panel/edge.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { stitchesInRound } from '../../panel/shape.js';

/** Points of the rim a stitch. */
const pointsPerStitch = 8;
const turn = 2 * Math.PI;

/** The finished rim of a panel, measured along it in working order. */
export interface Rim {
  /** Stitches of the last round. */
  readonly stitches: number;
  /** Once round, millimetres; the step of a spiral counts as far as it goes along the rim. */
  readonly lengthMm: number;
  /** Where 12 o'clock lies, millimetres from the start mark along the rim. */
  readonly topMm: number;
  /** Face angle of 12 o'clock as `angleAt` counts it, radians. */
  readonly topAngle: number;
  /** Millimetres from the start mark to the border before stitch i (0 to stitches). */
  borderMm(i: number): number;
  /** Angle at a place along the rim, counted with the work: direction · face angle, unwrapped. */
  angleAt(mm: number): number;
  /** The finished rim from stitch to stitch, x, y pairs in millimetres; `from` may lie after `to`. */
  line(from: number, to: number): number[];
}

/** Measures the rim of a panel. */
export function rimOf(geometry: PanelGeometry): Rim {
  const { shape, direction } = geometry;
  const stitches = stitchesInRound(shape, shape.rounds);
  const n = stitches * pointsPerStitch;
  const line = ringLine(geometry, shape.rounds, n);
  const angles = new Float64Array(n + 1);
  const along = new Float64Array(n + 1);
  const at = (p: number) => direction * Math.atan2(line[2 * p], -line[2 * p + 1]);
  angles[0] = at(0);
  for (let p = 1; p <= n; p++) {
    angles[p] = angles[p - 1] + normalised(at(p) - angles[p - 1]);
    const [dx, dy] = [line[2 * p] - line[2 * p - 2], line[2 * p + 1] - line[2 * p - 1]];
    along[p] = along[p - 1] + Math.hypot(dx, dy);
  }
  // Where lean lets the end of the round stop short of its beginning, or overlap it.
  const reach = (Math.hypot(line[0], line[1]) + Math.hypot(line[2 * n], line[2 * n + 1])) / 2;
  const lengthMm = along[n] + reach * (turn - (angles[n] - angles[0]));
  let topAngle = turn * Math.ceil(angles[0] / turn - 1e-9);
  if (topAngle + turn <= angles[n]) topAngle += turn;
  const topMm =
    topAngle <= angles[n]
      ? between(angles, along, topAngle)
      : along[n] + reach * (topAngle - angles[n]);
  const angleAt = (mm: number): number => {
    const times = Math.floor(mm / lengthMm);
    const rest = mm - times * lengthMm;
    const angle =
      rest <= along[n] ? between(along, angles, rest) : angles[n] + (rest - along[n]) / reach;
    return angle + times * turn;
  };
  return {
    stitches,
    lengthMm,
    topMm,
    topAngle,
    borderMm: (i) => along[i * pointsPerStitch],
    angleAt,
    line(from, to) {
      const points: number[] = [];
      const add = (a: number, b: number) => points.push(...line.subarray(2 * a, 2 * b + 2));
      const [a, b] = [from * pointsPerStitch, to * pointsPerStitch];
      if (from < to) add(a, b);
      else {
        add(a, n);
        add(0, b);
      }
      return points;
    },
  };
}

/** y at x on a line through points with growing x. */
function between(xs: Float64Array, ys: Float64Array, x: number): number {
  let [low, high] = [0, xs.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (xs[middle] <= x) low = middle;
    else high = middle;
  }
  const span = xs[high] - xs[low];
  return span === 0 ? ys[low] : ys[low] + ((ys[high] - ys[low]) * (x - xs[low])) / span;
}

/** An angle brought to -π..π. */
export function normalised(angle: number): number {
  return angle - turn * Math.round(angle / turn);
}
