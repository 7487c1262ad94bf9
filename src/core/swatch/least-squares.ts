import { solve } from '../equations.js';

/** A fit, and how each unknown follows each residual. */
export interface Fit {
  unknowns: Float64Array;
  /** Sum of the squared residuals. */
  cost: number;
  /** Row by unknown, column by residual: change of the unknown when a datum changes by 1. */
  gain: Float64Array[];
}

const mostSteps = 200;

/**
 * Least squares by Levenberg and Marquardt, with central differences (Nocedal and Wright, Numerical
 * Optimization, 2nd ed., 10.3).
 *
 * @param scales how much each unknown may be changed to feel its slope
 * @returns undefined where the unknowns are not settled by the residuals
 */
export function leastSquares(
  residualsOf: (unknowns: Float64Array) => Float64Array,
  start: Float64Array,
  scales: ArrayLike<number>,
): Fit | undefined {
  let unknowns = Float64Array.from(start);
  let residuals = residualsOf(unknowns);
  let cost = squares(residuals);
  let damping = 1e-3;
  for (let step = 0; step < mostSteps && Number.isFinite(cost); step++) {
    const slopes = slopesOf(residualsOf, unknowns, scales);
    const move = solve(normal(slopes, residuals, damping));
    if (!move) return undefined;
    const tried = unknowns.map((value, k) => value - move[k]);
    const after = residualsOf(tried);
    const better = squares(after);
    if (better < cost) {
      const small = cost - better <= 1e-15 * cost;
      [unknowns, residuals, cost] = [tried, after, better];
      damping = Math.max(1e-12, damping / 10);
      if (small) break;
    } else if ((damping *= 10) > 1e8) break;
  }
  const slopes = slopesOf(residualsOf, unknowns, scales);
  const gain = Array.from(unknowns, () => new Float64Array(residuals.length));
  for (let i = 0; i < residuals.length; i++) {
    const unit = new Float64Array(residuals.length);
    unit[i] = 1;
    const column = solve(normal(slopes, unit, 0));
    if (!column) return undefined;
    column.forEach((value, k) => (gain[k][i] = value));
  }
  return Number.isFinite(cost) ? { unknowns, cost, gain } : undefined;
}

const squares = (values: Float64Array) => values.reduce((sum, value) => sum + value * value, 0);

function slopesOf(
  residualsOf: (unknowns: Float64Array) => Float64Array,
  unknowns: Float64Array,
  scales: ArrayLike<number>,
): Float64Array[] {
  return Array.from(unknowns, (value, k) => {
    const moved = (by: number) => {
      const other = Float64Array.from(unknowns);
      other[k] = value + by;
      return residualsOf(other);
    };
    const [ahead, behind] = [moved(scales[k]), moved(-scales[k])];
    return ahead.map((one, i) => (one - behind[i]) / (2 * scales[k]));
  });
}

/** Normal equations, each row scaled to one, since the unknowns differ in size by far. */
function normal(slopes: Float64Array[], residuals: Float64Array, damping: number): number[][] {
  return slopes.map((own, k) => {
    const dot = (other: Float64Array) => own.reduce((sum, value, i) => sum + value * other[i], 0);
    const self = dot(own);
    const row = slopes.map(dot);
    row[k] *= 1 + damping;
    return [...row, dot(residuals)].map((value) => value / (self || 1));
  });
}
