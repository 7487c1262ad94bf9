import { planFrame, stretchIn } from '../../purse/frame/plan.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import type { Frame } from '../../purse/frame/measures.js';
import { black } from './cells.js';
import { boxOfWord } from './panel-view.js';
import type { Box, PanelView, WordSize } from './panel-view.js';
import type { PanelSheet } from './sheet.js';
import type { Surface } from '../surface/surface.js';
import { drawText } from '../surface/text.js';

/** Room between rim and bracket, and what start mark and arrow step back for it, millimetres. */
const outsideMm = 1.3;
export const frameLiftMm = 2.2;
const dotMm = 1.1;

/** The bracket along the stretch of the rim that lies in the frame. */
export interface FrameMark {
  /** x, y pairs of the bracket's line, millimetres from the panel's centre. */
  readonly line: number[];
  /** The two hinges. */
  readonly dots: readonly (readonly [number, number])[];
  readonly word: { readonly x: number; readonly y: number };
  readonly box: Box;
}

/**
 * The bracket at any scale, with its word where it stands clear of the start mark and the arrow.
 */
export function frameMarker(
  geometry: PanelGeometry,
  frame: Frame,
  word: WordSize,
): (scale: number) => FrameMark {
  planFrame(frame, geometry);
  const { rim, first, last } = stretchIn(frame, geometry)!;
  const edge = rim.line(first, last + 1);
  const rimLine = rim.line(0, rim.stitches);
  const step = { x: rimLine.at(-2)!, y: rimLine.at(-1)! };
  const marksAngle = Math.atan2(step.x, -step.y) + geometry.direction * 0.25;
  const ends = [edge.slice(0, 2), edge.slice(-2)].map(([x, y]) => Math.atan2(x, -y));
  // Beside the hinge that is farther from the marks.
  const [near] = ends.sort((a, b) => away(b, marksAngle) - away(a, marksAngle));
  const at = near * 0.72;
  const reach = reachAt(edge, at);
  return (scale) => {
    const line: number[] = [];
    for (let p = 0; p < edge.length; p += 2) {
      const far = Math.hypot(edge[p], edge[p + 1]);
      const grown = scale + outsideMm / far;
      line.push(edge[p] * grown, edge[p + 1] * grown);
    }
    const dots = [line.slice(0, 2), line.slice(-2)].map(([x, y]) => [x, y] as const);
    const half =
      (Math.abs(Math.sin(at)) * word.widthMm + Math.abs(Math.cos(at)) * word.heightMm) / 2;
    const distance = reach * scale + outsideMm + 1.2 + half;
    const place = { x: distance * Math.sin(at), y: -distance * Math.cos(at) };
    const points = [
      ...dots.flatMap(([x, y]) => [
        [x - dotMm, y - dotMm],
        [x + dotMm, y + dotMm],
      ]),
      [place.x - word.widthMm / 2, place.y - word.heightMm / 2],
      [place.x + word.widthMm / 2, place.y + word.heightMm / 2],
    ];
    for (let p = 0; p < line.length; p += 2) points.push([line[p], line[p + 1]]);
    const xs = points.map(([x]) => x);
    const ys = points.map(([, y]) => y);
    const box = {
      left: Math.min(...xs),
      top: Math.min(...ys),
      right: Math.max(...xs),
      bottom: Math.max(...ys),
    };
    return { line, dots, word: place, box };
  };
}

/** What the hinges and the word take up; numbers may stand outside the bracket's line. */
export const boxesOfFrameMark = (mark: FrameMark, word: WordSize): Box[] => [
  ...mark.dots.map(([x, y]) => boxOfWord({ x, y }, { widthMm: 2 * dotMm, heightMm: 2 * dotMm })),
  boxOfWord(mark.word, word),
];

/** Draws the bracket, its hinges and its word. */
export function drawFrameMark(
  surface: Surface,
  { words }: PanelSheet,
  { centreX, centreY }: PanelView,
  mark: FrameMark,
  label: { face: PanelSheet['fonts']['bold']; sizeMm: number },
  named = true,
): void {
  const line = mark.line.map((v, p) => v + (p % 2 === 0 ? centreX : centreY));
  surface.beginGroup('frame', words.frame.group);
  surface.strokePath([line], { stroke: black, widthMm: 0.3 });
  for (const [x, y] of mark.dots) surface.circle(centreX + x, centreY + y, dotMm, { fill: black });
  const baseline = centreY + mark.word.y + label.sizeMm * 0.26;
  if (named) drawText(surface, words.frame.word, label, centreX + mark.word.x, baseline, 'middle');
  surface.endGroup();
}

/** Angle between two directions, 0 to π. */
function away(a: number, b: number): number {
  return Math.abs(Math.atan2(Math.sin(a - b), Math.cos(a - b)));
}

/** Distance of the line from the centre at a face angle. */
function reachAt(line: readonly number[], angle: number): number {
  let best = 0;
  let least = Infinity;
  for (let p = 0; p < line.length; p += 2) {
    const off = away(Math.atan2(line[p], -line[p + 1]), angle);
    if (off < least) [least, best] = [off, Math.hypot(line[p], line[p + 1])];
  }
  return best;
}
