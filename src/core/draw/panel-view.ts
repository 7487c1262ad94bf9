import { finishedEdge, ringLine } from '../geometry/edge.js';
import type { PanelGeometry } from '../geometry/panel.js';

export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** How a panel lies on a page: page = centre + scale · panel. */
export interface PanelView {
  readonly scale: number;
  readonly centreX: number;
  readonly centreY: number;
}

/** Where the start mark, the arrow and their words stand, millimetres from the panel's centre. */
export interface Marks {
  /** Corners of the triangle, its tip first. */
  readonly triangle: number[];
  readonly startWord: { x: number; y: number };
  /** The arrow's line, in the direction of work. */
  readonly arrow: number[];
  /** Corners of its head, the tip first. */
  readonly arrowHead: number[];
  readonly directionWord: { x: number; y: number };
  readonly box: Box;
}

export interface WordSize {
  widthMm: number;
  heightMm: number;
}

/**
 * Places a panel's rim marks at one scale; `step` is where the rim's step or wedge line lies, and
 * `lift` moves them outward, millimetres.
 */
export function marksAt(
  geometry: PanelGeometry,
  edge: Float64Array,
  step: { x: number; y: number },
  scale: number,
  words: { start: WordSize; direction: WordSize },
  lift = 0,
): Marks {
  const { direction } = geometry;
  const angle = Math.atan2(step.x, -step.y);
  const stepReach = Math.hypot(step.x, step.y) * scale + lift;
  const at = (a: number, distance: number) => [distance * Math.sin(a), -distance * Math.cos(a)];
  // Along = with the work, out = away from the centre.
  const near = (along: number, out: number) => {
    const [x, y] = at(angle, stepReach + out);
    return [x + direction * along * Math.cos(angle), y + direction * along * Math.sin(angle)];
  };
  const triangle = [...near(0, 0.8), ...near(-2.3, 5), ...near(2.3, 5)];
  const reachOf = (a: number, { widthMm: w, heightMm: h }: WordSize) => ({
    out: (Math.abs(Math.sin(a)) * w + Math.abs(Math.cos(a)) * h) / 2,
    along: (Math.abs(Math.cos(a)) * w + Math.abs(Math.sin(a)) * h) / 2,
  });
  const beside = reachOf(angle, words.start);
  const [startX, startY] = near(-(3 + beside.along), Math.max(3.1, 1 + beside.out));

  const ring = farthest(edge) * scale + 2.4 + lift;
  const from = 4.5 / ring;
  const to = from + Math.min(0.5, 40 / ring);
  const arrow: number[] = [];
  for (let p = 0; p <= 24; p++)
    arrow.push(...at(angle + direction * (from + ((to - from) * p) / 24), ring));
  const arrowHead = [
    ...at(angle + direction * (to + 4 / ring), ring - 0.1),
    ...at(angle + direction * to, ring + 1.9),
    ...at(angle + direction * to, ring - 1.9),
  ];
  const middle = angle + (direction * (from + to)) / 2;
  const above = reachOf(middle, words.direction);
  const [wordX, wordY] = at(middle, ring + 2 + above.out);
  const box = boxOf([...triangle, ...arrow, ...arrowHead]);
  growByWord(box, startX, startY, words.start);
  growByWord(box, wordX, wordY, words.direction);
  for (let p = 0; p < edge.length; p += 2) grow(box, edge[p] * scale, edge[p + 1] * scale);
  return {
    triangle,
    startWord: { x: startX, y: startY },
    arrow,
    arrowHead,
    directionWord: { x: wordX, y: wordY },
    box,
  };
}

/**
 * The largest panel, with its rim marks, that fits a space on the page; centred in its width,
 * at its top.
 *
 * @param outer something that lies between the rim and its marks, which move outward by `lift`
 */
export function fitPanel(
  geometry: PanelGeometry,
  space: Box,
  words: { start: WordSize; direction: WordSize },
  outer?: { lift: number; boxAt: (scale: number) => Box },
): { view: PanelView; marks: Marks } {
  const edge = finishedEdge(geometry);
  const rim = ringLine(geometry, geometry.shape.rounds);
  const step = { x: rim[rim.length - 2], y: rim[rim.length - 1] };
  const width = space.right - space.left;
  const height = space.bottom - space.top;
  let scale = width / (2 * farthest(edge));
  const marksOf = (at: number): Marks => {
    const marks = marksAt(geometry, edge, step, at, words, outer?.lift);
    if (!outer) return marks;
    const { left, top, right, bottom } = outer.boxAt(at);
    grow(marks.box, left, top);
    grow(marks.box, right, bottom);
    return marks;
  };
  let marks = marksOf(scale);
  for (let turn = 0; turn < 40; turn++) {
    const { left, top, right, bottom } = marks.box;
    scale *= Math.min(width / (right - left), height / (bottom - top));
    scale = Math.floor(scale * 1e6) / 1e6;
    marks = marksOf(scale);
  }
  const { left, top, right } = marks.box;
  const centreX = (space.left + space.right - left - right) / 2;
  return { view: { scale, centreX, centreY: space.top - top }, marks };
}

function farthest(ring: Float64Array): number {
  let most = 0;
  for (let p = 0; p < ring.length; p += 2) most = Math.max(most, Math.hypot(ring[p], ring[p + 1]));
  return most;
}

function boxOf(points: number[]): Box {
  const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (let p = 0; p < points.length; p += 2) grow(box, points[p], points[p + 1]);
  return box;
}

function grow(box: Box, x: number, y: number): void {
  box.left = Math.min(box.left, x);
  box.top = Math.min(box.top, y);
  box.right = Math.max(box.right, x);
  box.bottom = Math.max(box.bottom, y);
}

function growByWord(box: Box, x: number, y: number, { widthMm, heightMm }: WordSize): void {
  grow(box, x - widthMm / 2, y - heightMm / 2);
  grow(box, x + widthMm / 2, y + heightMm / 2);
}
