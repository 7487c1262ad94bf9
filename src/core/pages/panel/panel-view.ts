import { finishedEdge, ringLine } from '../../panel/edge.js';
import type { PanelGeometry } from '../../panel/geometry.js';

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
 * `lift` moves them outward, millimetres. The arrow passes outside of `numbers`.
 */
export function marksAt(
  geometry: PanelGeometry,
  edge: Float64Array,
  step: { x: number; y: number },
  scale: number,
  words: { start: WordSize; direction: WordSize },
  lift = 0,
  numbers: readonly Box[] = [],
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

  const reached = farthest(edge) * scale;
  const under = numbers.filter(({ left, right, top, bottom }) => {
    const at = Math.atan2((left + right) / 2, -(top + bottom) / 2);
    const ahead = direction * Math.atan2(Math.sin(at - angle), Math.cos(at - angle)) * reached;
    return ahead > 0 && ahead < Math.min(0.5 * reached, 40) + 12;
  });
  const clear = under.map(
    ({ left, right, top, bottom }) =>
      Math.hypot(
        Math.max(Math.abs(left), Math.abs(right)),
        Math.max(Math.abs(top), Math.abs(bottom)),
      ) + 2.2,
  );
  const ring = Math.max(reached + 2.4 + lift, ...clear);
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
  outer?: {
    readonly lift?: number;
    readonly boxAt: (scale: number) => Box;
    /** Numbers at the rim that the arrow passes outside of. */
    readonly numbersAt?: (scale: number) => readonly Box[];
  },
): { view: PanelView; marks: Marks } {
  const edge = finishedEdge(geometry);
  const rim = ringLine(geometry, geometry.shape.rounds);
  const step = { x: rim[rim.length - 2], y: rim[rim.length - 1] };
  const width = space.right - space.left;
  const height = space.bottom - space.top;
  let scale = width / (2 * farthest(edge));
  const marksOf = (at: number): Marks => {
    const numbers = outer?.numbersAt?.(at);
    const marks = marksAt(geometry, edge, step, at, words, outer?.lift, numbers);
    if (!outer) return marks;
    const { left, top, right, bottom } = outer.boxAt(at);
    grow(marks.box, left, top);
    grow(marks.box, right, bottom);
    return marks;
  };
  let marks = marksOf(scale);
  for (let turn = 0; turn < 40; turn++) {
    const { left, top, right, bottom } = marks.box;
    const before = scale;
    scale *= Math.min(width / (right - left), height / (bottom - top));
    scale = Math.floor(scale * 1e6) / 1e6;
    if (scale === before) break;
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

function boxOf(points: readonly number[]): Box {
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

/** What the start mark and its word take up. */
export const boxesOfStart = ({ triangle, startWord }: Marks, word: WordSize): Box[] => [
  boxOf(triangle),
  boxOfWord(startWord, word),
];

/** What the marks at the rim take up, piece by piece; the arrow in short pieces. */
export function boxesOfMarks(
  marks: Marks,
  words: { readonly start: WordSize; readonly direction: WordSize },
): Box[] {
  const { arrow, arrowHead, directionWord } = marks;
  const boxes = [...boxesOfStart(marks, words.start), boxOf(arrowHead)];
  for (let p = 2; p < arrow.length; p += 2) boxes.push(boxOf(arrow.slice(p - 2, p + 2)));
  return [...boxes, boxOfWord(directionWord, words.direction)];
}

/** The smallest box around all of some. */
export function boxAround(first: Box, ...others: readonly (Box | undefined)[]): Box {
  const box = { ...first };
  for (const other of others) {
    if (!other) continue;
    grow(box, other.left, other.top);
    grow(box, other.right, other.bottom);
  }
  return box;
}

/** The box of a word that stands around a place. */
export function boxOfWord(
  { x, y }: { x: number; y: number },
  { widthMm, heightMm }: WordSize,
): Box {
  return {
    left: x - widthMm / 2,
    top: y - heightMm / 2,
    right: x + widthMm / 2,
    bottom: y + heightMm / 2,
  };
}

function growByWord(box: Box, x: number, y: number, { widthMm, heightMm }: WordSize): void {
  grow(box, x - widthMm / 2, y - heightMm / 2);
  grow(box, x + widthMm / 2, y + heightMm / 2);
}
