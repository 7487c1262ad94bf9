import { upperMedian } from '../../median.js';
/** Lines of one family of a ruling: they run down the picture and have about one distance. */
export interface RulingLine {
  /** Where it lies across the picture at the middle of each strip, pixels. */
  readonly across: Float64Array;
  /** 1 in each strip in which it was seen. */
  readonly found: Uint8Array;
}

/** A family of parallel, evenly set lines, as a lattice of lines and strips of the picture. */
export interface Ruling {
  /** Height of a strip, pixels, and their number. */
  readonly stripPx: number;
  readonly strips: number;
  readonly lines: readonly RulingLine[];
}

/** Strips along the lines; each shall hold enough of a line to tell it from grain. */
const stripsAlong = 24;
/** How far a line may lean: pixels across for each pixel down. */
const [mostSlope, slopeStep] = [0.2, 0.005];
/** Distances between lines that are looked for: pixels, and share of the picture. */
const [leastPeriod, mostPeriodShare] = [7, 0.2];
/** A line is darker than the paper so many pixels to both sides of it. */
const besidePx = 4;
/** More ink than this is no ruling: strokes must not outvote it. */
const mostInk = 60;
/** A row in which more ink gathers is a stroke of the drawing, which has a lean of its own. */
const mostGathered = 16;
/** How like itself, moved by one distance, the row of lines must be (autocorrelation). */
const leastLikeness = 0.25;
/** Ink of a peak, mean along a strip, below which there is no line. */
const leastPeak = 3;
/** From a line to the next, and from strip to strip, it may be off by this share of the distance. */
const mostOff = 0.2;
/** Share of its strips in which a line must be seen, and of all strips of all lines. */
const [lineSeen, familySeen] = [0.4, 0.55];
/** How far beyond the picture lines are thought on, a share of its width. */
const beyond = 0.3;
/** So few lines are a drawing. */
const fewestLines = 5;

/**
 * Finds the lines of ruled or squared paper that run down a picture (turn it for the others). Thin
 * lines are told by ink beside paper on both sides; their lean is the one at which they gather most
 * when looked along, their distance where that row of lines is most like itself moved; then every
 * line is followed from the middle of the picture strip by strip, so that perspective and a curled
 * page are followed too.
 *
 * @param ink how much darker than paper each pixel is, 0 to 255
 * @returns undefined where there is no ruling
 */
export function findRuling(ink: Float32Array, width: number, height: number): Ruling | undefined {
  const stripPx = Math.max(8, Math.ceil(height / stripsAlong));
  const strips = Math.floor(height / stripPx);
  if (strips < 6 || width < 6 * leastPeriod) return undefined;
  const thin = thinInk(ink, width, height);
  const middle = strips >> 1;
  const slope = leanOf(thin, width, (middle - 3) * stripPx, (middle + 3) * stripPx);
  const across = (from: number, to: number, lean: number): Float64Array =>
    smoothed(profile(thin, width, from * stripPx, to * stripPx, lean));
  const start = across(middle - 1, middle + 2, slope);
  const period = periodOf(start);
  if (period === undefined) return undefined;
  const seeds = seedLines(start, period);
  if (seeds.length < fewestLines) return undefined;
  const lines = seeds.map((at) => ({
    across: new Float64Array(strips).fill(at),
    found: new Uint8Array(strips),
  }));
  for (const step of [1, -1])
    follow(lines, across, { middle, strips, step, slope, stripPx, period });
  const kept = lines.filter(({ across: at, found }) => {
    const inside = [...at.keys()].filter((s) => at[s] > 1 && at[s] < width - 2);
    const seen = inside.filter((s) => found[s]).length;
    return inside.length > 0 && seen >= lineSeen * inside.length;
  });
  let [seen, all] = [0, 0];
  for (const { across: at, found } of lines) {
    for (let s = 0; s < strips; s++) {
      if (at[s] <= 1 || at[s] >= width - 2) continue;
      all++;
      seen += found[s];
    }
  }
  if (kept.length < fewestLines || seen < familySeen * all) return undefined;
  return { stripPx, strips, lines: kept };
}

/** Ink that has less ink on both sides, across; never more than a ruling has. */
function thinInk(ink: Float32Array, width: number, height: number): Float32Array {
  const thin = new Float32Array(ink.length);
  for (let y = 0; y < height; y++) {
    for (let x = besidePx; x + besidePx < width; x++) {
      const p = y * width + x;
      const beside = Math.max(ink[p - besidePx], ink[p + besidePx]);
      thin[p] = Math.min(mostInk, Math.max(0, ink[p] - beside));
    }
  }
  return thin;
}

/** Mean ink of lines that lean so, by where they cross the middle of the rows. */
function profile(
  thin: Float32Array,
  width: number,
  from: number,
  to: number,
  slope: number,
  step = 1,
): Float64Array {
  const sums = new Float64Array(width);
  const middle = (from + to) / 2;
  let rows = 0;
  for (let y = Math.max(0, from); y < Math.min(to, thin.length / width); y += step) {
    rows++;
    const shift = Math.round(slope * (y + 0.5 - middle));
    const [first, last] = [Math.max(0, -shift), Math.min(width, width - shift)];
    for (let x = first; x < last; x++) sums[x] += thin[y * width + x + shift];
  }
  for (let x = 0; x < width; x++) sums[x] /= Math.max(1, rows);
  return sums;
}

function smoothed(values: Float64Array): Float64Array {
  return values.map((one, x) => ((values[x - 1] ?? one) + 2 * one + (values[x + 1] ?? one)) / 4);
}

/** The lean at which the ink gathers most. */
function leanOf(thin: Float32Array, width: number, from: number, to: number): number {
  let [best, most] = [0, -1];
  const steps = Math.round(mostSlope / slopeStep);
  for (let n = -steps; n <= steps; n++) {
    const row = profile(thin, width, from, to, n * slopeStep, 3);
    const gathered = row.reduce((sum, one) => sum + Math.min(one, mostGathered) ** 2, 0);
    if (gathered > most) [best, most] = [n * slopeStep, gathered];
  }
  return best;
}

/** The distance at which a row of lines is most like itself; undefined where it never is. */
function periodOf(row: Float64Array): number | undefined {
  const mean = row.reduce((sum, one) => sum + one, 0) / row.length;
  const off = row.map((one) => one - mean);
  const longest = Math.floor(mostPeriodShare * row.length);
  const like = new Float64Array(longest + 2);
  for (let lag = 0; lag < like.length; lag++) {
    let sum = 0;
    for (let x = 0; x + lag < off.length; x++) sum += off[x] * off[x + lag];
    like[lag] = sum / (off.length - lag);
  }
  if (!(like[0] > 0)) return undefined;
  const peaks: number[] = [];
  for (let lag = leastPeriod; lag <= longest; lag++) {
    if (like[lag] >= like[lag - 1] && like[lag] > like[lag + 1]) peaks.push(lag);
  }
  const most = Math.max(...peaks.map((lag) => like[lag]));
  if (!(most >= leastLikeness * like[0])) return undefined;
  // Twice the distance is as like; the shortest that is nearly as good is the distance.
  const period = peaks.find((lag) => like[lag] >= 0.7 * most)!;
  const [before, here, after] = [like[period - 1], like[period], like[period + 1]];
  const bend = before - 2 * here + after;
  return bend < 0 ? period + (before - after) / (2 * bend) : period;
}

/** The highest place within a reach of `at`, to a part of a pixel; undefined where no line is. */
function peakNear(row: Float64Array, at: number, reach: number): number | undefined {
  const [first, last] = [Math.max(1, Math.ceil(at - reach)), Math.min(row.length - 2, at + reach)];
  let best = -1;
  for (let x = first; x <= last; x++) {
    if (row[x] < row[x - 1] || row[x] < row[x + 1]) continue;
    if (best < 0 || row[x] > row[best]) best = x;
  }
  if (best < 0 || row[best] < leastPeak) return undefined;
  const bend = row[best - 1] - 2 * row[best] + row[best + 1];
  return bend < 0 ? best + (row[best - 1] - row[best + 1]) / (2 * bend) : best;
}

/** Where the lines cross the middle of the picture, from left to right; the distance may change slowly. */
function seedLines(row: Float64Array, period: number): number[] {
  let [origin, most] = [0, -1];
  for (let x = 0; x < period; x++) {
    let sum = 0;
    for (let at = x; at < row.length; at += period) sum += row[Math.floor(at)];
    if (sum > most) [origin, most] = [x, sum];
  }
  const first = origin + period * Math.floor((row.length / 2 - origin) / period);
  const walk = (from: number, sign: 1 | -1): number[] => {
    const found: number[] = [];
    let [at, distance] = [from, period];
    for (;;) {
      const next = at + sign * distance;
      // Lines that lie beyond the picture here may run into it farther up or down.
      if (next < -beyond * row.length || next > (1 + beyond) * row.length) return found;
      const peak = peakNear(row, next, mostOff * period);
      if (peak !== undefined) distance += 0.25 * (Math.abs(peak - at) - distance);
      at = peak ?? next;
      found.push(at);
    }
  };
  const middle = peakNear(row, first, mostOff * period) ?? first;
  return [...walk(middle, -1).reverse(), middle, ...walk(middle, 1)];
}

/** Follows every line from the middle strip to one end of the picture. */
function follow(
  lines: readonly RulingLine[],
  across: (from: number, to: number, lean: number) => Float64Array,
  way: {
    middle: number;
    strips: number;
    step: number;
    slope: number;
    stripPx: number;
    period: number;
  },
): void {
  const { middle, strips, step, stripPx, period } = way;
  /** How far each line goes across from a strip to the next. */
  const drift = new Float64Array(lines.length).fill(step * way.slope * stripPx);
  for (let s = middle; s >= 0 && s < strips; s += step) {
    const lean = (step * upperMedian(drift)) / stripPx;
    const row = across(s, s + 1, lean);
    const off = lines.map(({ across: at, found }, n) => {
      const expected = s === middle ? at[s] : at[s - step] + drift[n];
      const peak = peakNear(row, expected, mostOff * period);
      at[s] = expected;
      found[s] = peak === undefined ? 0 : 1;
      return peak === undefined ? undefined : peak - expected;
    });
    const fit = straightThrough(off);
    lines.forEach(({ across: at }, n) => {
      // Its neighbours know better than a stroke that crosses it.
      const near = off.slice(Math.max(0, n - 3), n + 4).filter((one) => one !== undefined);
      const usual = near.length >= 3 ? upperMedian(near) : fit(n);
      const own = off[n];
      const moved = own !== undefined && Math.abs(own - usual) < 1.5 ? (own + usual) / 2 : usual;
      at[s] += moved;
      if (s !== middle) drift[n] += 0.5 * moved;
    });
  }
}

/** A straight line through what is known of the lines, by their number: for those that lie outside. */
function straightThrough(off: readonly (number | undefined)[]): (n: number) => number {
  const known = off.flatMap((one, n) => (one === undefined ? [] : [[n, one] as const]));
  if (known.length < fewestLines) return () => 0;
  const usual = upperMedian(known.map(([, one]) => one));
  const sure = known.filter(([, one]) => Math.abs(one - usual) < 3);
  const count = Math.max(1, sure.length);
  const [n0, off0] = [0, 1].map((k) => sure.reduce((sum, one) => sum + one[k], 0) / count);
  let [both, square] = [0, 1e-9];
  for (const [n, one] of sure) {
    both += (n - n0) * (one - off0);
    square += (n - n0) ** 2;
  }
  return (n) => off0 + (both / square) * (n - n0);
}
