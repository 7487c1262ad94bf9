import { median } from '../median.js';
import { insetRing } from '../pages/chart/blank.js';
import type { BlankPage } from '../pages/chart/blank-page.js';
import { linearToLab65 } from '../colour/lab.js';
import { holeRadius } from '../panel/edge.js';
import type { Footprints } from '../panel/footprints.js';
import type { PanelGeometry } from '../panel/geometry.js';
import { insideRing } from '../panel/rings.js';
import type { PageLight } from './paper-white.js';

/** The part of a cell that is read, about its middle: well inside its outline. */
const readShare = 0.64;
/** Points across the part that is read. */
const across = 9;

/** Colours inside one cell against white paper. */
export interface CellSamples {
  /** L, a, b of each point; paper is 100, 0, 0. */
  readonly lab: Float32Array;
  /** Share of points that look like bare paper. */
  readonly paper: number;
  /** Median L, a, b of the deeper half of the points that do not (of all, where most do). */
  readonly colour: readonly [number, number, number];
  /** How far its lighter points are from white, as a share of its deeper ones. */
  readonly even: number;
}

/** Bare paper: light and without colour (chosen by trial). */
export function looksLikePaper(L: number, a: number, b: number): boolean {
  return L > 91 && a * a + b * b < 49;
}

/** Reads the inside of every cell; undefined where the photograph does not reach it. */
export function sampleCells(
  geometry: PanelGeometry,
  footprints: Footprints,
  page: BlankPage,
  light: PageLight,
  white: (x: number, y: number) => readonly [number, number, number],
): (CellSamples | undefined)[] {
  const { scale, centreX, centreY } = page.view;
  const hole = 1.12 * holeRadius(geometry.shape);
  return Array.from({ length: geometry.count }, (_, s) => {
    const [outer] = footprints.rings(s);
    if (!outer) return undefined;
    const points = pointsIn(insetRing(outer, geometry, s, readShare), hole);
    const lab: number[] = [];
    for (const [x, y] of points) {
      const [onX, onY] = [centreX + scale * x, centreY + scale * y];
      const seen = light(onX, onY);
      if (!seen) continue;
      const paper = white(onX, onY);
      const [r, g, b] = seen.map((v, c) => Math.min(1.1, v / paper[c]));
      lab.push(...linearToLab65(r, g, b));
    }
    return lab.length < 1.5 * points.length || lab.length === 0 ? undefined : summed(lab);
  });
}

function pointsIn(ring: Float64Array, hole: number): [number, number][] {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let p = 0; p < ring.length; p += 2) {
    left = Math.min(left, ring[p]);
    right = Math.max(right, ring[p]);
    top = Math.min(top, ring[p + 1]);
    bottom = Math.max(bottom, ring[p + 1]);
  }
  const points: [number, number][] = [];
  for (let row = 0; row < across; row++) {
    for (let column = 0; column < across; column++) {
      const x = left + ((column + 0.5) / across) * (right - left);
      const y = top + ((row + 0.5) / across) * (bottom - top);
      if (Math.hypot(x, y) > hole && insideRing(ring, x, y)) points.push([x, y]);
    }
  }
  return points;
}

function summed(values: number[]): CellSamples {
  const lab = Float32Array.from(values);
  const painted: number[] = [];
  const n = lab.length / 3;
  for (let p = 0; p < n; p++) {
    if (!looksLikePaper(lab[3 * p], lab[3 * p + 1], lab[3 * p + 2])) painted.push(p);
  }
  const paper = 1 - painted.length / n;
  const kept = painted.length > 0.2 * n ? painted : Array.from({ length: n }, (_, p) => p);
  const away = (p: number) => Math.hypot(100 - lab[3 * p], lab[3 * p + 1], lab[3 * p + 2]);
  const all = Array.from({ length: n }, (_, p) => away(p)).sort((p, q) => p - q);
  const even = all[Math.floor(0.2 * n)] / Math.max(1, all[Math.floor(0.75 * n)]);
  // The half farthest from white: there the paper has taken most of the colour.
  const deep = kept
    .map((p) => [away(p), p])
    .sort((p, q) => q[0] - p[0])
    .slice(0, Math.ceil(kept.length / 2))
    .map(([, p]) => p);
  const colour = [0, 1, 2].map((c) => median(deep.map((p) => lab[3 * p + c])));
  return { lab, paper, colour: colour as [number, number, number], even };
}
