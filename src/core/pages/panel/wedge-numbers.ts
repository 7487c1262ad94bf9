import { finishedEdge } from '../../panel/edge.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { stitchesBefore } from '../../panel/shape.js';
import { black, white } from './cells.js';
import { boxAround, boxOfWord } from './panel-view.js';
import type { Box, Marks } from './panel-view.js';
import type { Face } from '../surface/font.js';
import type { Surface } from '../surface/surface.js';
import { drawText } from '../surface/text.js';

/** Radius of a ring with a wedge's number, and its gap to the rim, millimetres. */
const ringMm = 2.6;
const gapMm = 1;

/** The middle of each ring, millimetres from the panel's centre on the page; wedge 1 first. */
export type WedgeNumbers = readonly { readonly x: number; readonly y: number }[];

/** What the numbers keep clear of. */
type InTheWay = Pick<Marks, 'arrow' | 'arrowHead' | 'triangle'> & {
  readonly words: readonly Box[];
};

/** Steps along the last round from the middle of the wedge, and outward; the nearest first. */
const places = [0, 1, -1, 2, -2, 3, -3, 4, -4]
  .flatMap((step) => [0, 5, 9].map((out) => ({ step, out })))
  .sort((a, b) => a.out + 2 * Math.abs(a.step) - b.out - 2 * Math.abs(b.step));

/**
 * Where the numbers of the wedges stand at any scale: outside the rim, before the middle of their
 * wedge's last round, moved along it where marks are in the way.
 */
export function wedgeNumbers(
  geometry: PanelGeometry,
): (scale: number, marks: InTheWay) => WedgeNumbers {
  const { shape, centres } = geometry;
  const { wedges, rounds } = shape;
  const reachAt = reachOf(finishedEdge(geometry));
  const first = stitchesBefore(shape, rounds);
  // What does not grow with the scale, by wedge and step; found when it is first wanted.
  const rims = Array.from({ length: wedges }, () => new Map<number, Rim>());
  const rimAt = (wedge: number, step: number): Rim => {
    const known = rims[wedge].get(step);
    if (known) return known;
    const within = Math.round((rounds - 1) * (0.5 + step / 10));
    const s = first + wedge * rounds + Math.min(rounds - 1, Math.max(0, within));
    const angle = Math.atan2(centres[2 * s + 1], centres[2 * s]);
    const rim = { across: Math.cos(angle), down: Math.sin(angle), reach: reachAt(angle) };
    rims[wedge].set(step, rim);
    return rim;
  };
  return (scale, marks) => {
    const inTheWay = [...marks.arrow, ...marks.arrowHead, ...marks.triangle];
    const clear = ({ x, y }: { x: number; y: number }) => {
      for (let p = 0; p < inTheWay.length; p += 2)
        if (Math.hypot(inTheWay[p] - x, inTheWay[p + 1] - y) < ringMm + 1.2) return false;
      return !marks.words.some(
        (box) =>
          x > box.left - ringMm - 0.6 &&
          x < box.right + ringMm + 0.6 &&
          y > box.top - ringMm - 0.6 &&
          y < box.bottom + ringMm + 0.6,
      );
    };
    return rims.map((_, wedge) => {
      const at = (step: number, out: number) => {
        const { across, down, reach } = rimAt(wedge, step);
        const distance = reach * scale + gapMm + ringMm + out;
        return { x: distance * across, y: distance * down };
      };
      for (const { step, out } of places) {
        const place = at(step, out);
        if (clear(place)) return place;
      }
      return at(0, 9);
    });
  };
}

/** Where the rim lies from the panel's centre: direction, and distance in millimetres. */
interface Rim {
  readonly across: number;
  readonly down: number;
  readonly reach: number;
}

/** What each ring takes up. */
export const boxesOfRings = (numbers: WedgeNumbers): Box[] =>
  numbers.map((at) => boxOfWord(at, { widthMm: 2 * ringMm, heightMm: 2 * ringMm }));

/** What the rings take up together. */
export function boxOfWedgeNumbers(numbers: WedgeNumbers): Box {
  const [first, ...others] = boxesOfRings(numbers);
  return boxAround(first, ...others);
}

/** Draws the numbers in their rings. */
export function drawWedgeNumbers(
  surface: Surface,
  face: Face,
  numbers: WedgeNumbers,
  centre: { readonly x: number; readonly y: number },
): void {
  const capMm = 2.5;
  const style = { face, sizeMm: capMm / face.capHeight };
  surface.beginGroup('wedge-numbers');
  numbers.forEach(({ x, y }, wedge) => {
    const [atX, atY] = [centre.x + x, centre.y + y];
    const outline = { stroke: black, widthMm: 0.25 };
    surface.circle(atX, atY, ringMm, { fill: white, outline });
    drawText(surface, String(wedge + 1), style, atX, atY + capMm / 2, 'middle');
  });
  surface.endGroup();
}

/** Distance of a closed line from the centre in any direction, at its nearest point. */
function reachOf(ring: Float64Array): (angle: number) => number {
  const angles = Float64Array.from({ length: ring.length / 2 }, (_, p) =>
    Math.atan2(ring[2 * p + 1], ring[2 * p]),
  );
  return (angle) => {
    let nearest = 0;
    let least = Infinity;
    for (let p = 0; p < angles.length; p++) {
      const off = Math.abs(Math.sin((angles[p] - angle) / 2));
      if (off < least) [least, nearest] = [off, p];
    }
    return Math.hypot(ring[2 * nearest], ring[2 * nearest + 1]);
  };
}
