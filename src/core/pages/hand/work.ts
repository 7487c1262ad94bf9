import type { Spot } from '../../lines.js';
import type { Pen } from './pen.js';

/** The size at which a stitch is drawn, millimetres: how wide it is, and how high its round. */
export const stitchMm = 9;
export const roundMm = 8;

/** Which face the beads lie on, as the worker sees it. */
export type Face = 'away' | 'toward';

/** How far from the middle of the edge its near and its far loop lie on the page. */
const loopMm = 1.9;

/** Which of the two loops of a top the hook goes under: they are tinted. */
export interface TopLook {
  readonly near?: boolean;
  readonly far?: boolean;
}

/** Of thread that the hand is working with, where the rest of the work is white. */
export const tinted = (pen: Pen) => ({ fill: pen.tints.thread, moves: true });

/**
 * The top of a stitch, seen from above: two loops that meet in a point on the worked side. The
 * worker looks down on the edge, so that its far loop lies higher on the page.
 *
 * @param look the loops that are tinted
 * @param only the loops that are drawn
 */
export function top(
  pen: Pen,
  [x, y]: Spot,
  look: TopLook = {},
  only: TopLook = { near: true, far: true },
): void {
  const half = stitchMm / 2;
  const leaf = (side: 1 | -1, marked: boolean | undefined) =>
    pen.leaf([x + half, y + side * 0.25], [x - half + 0.3, y + side * loopMm], {
      ...(marked && tinted(pen)),
    });
  if (only.far) leaf(-1, look.far);
  if (only.near) leaf(1, look.near);
}

/** The front of a stitch, from where it stands up to its top: two legs. */
export function legs(pen: Pen, foot: Spot, head: Spot, fresh = false): void {
  const look = { wide: 2.1, ...(fresh && tinted(pen)) };
  pen.leaf(foot, [head[0] - 2.7, head[1]], look);
  pen.leaf(foot, [head[0] + 2.7, head[1]], look);
}

/** Where the bead of a stitch is seen, whose top is at a spot. */
export const beadOf = ([x, y]: Spot, face: Face): Spot =>
  face === 'away' ? [x - 0.8, y - 3.4] : [x - 1.2, y + 5];

/** A stitch of a row: bead behind or before it, legs, top. */
export function stitch(
  pen: Pen,
  at: Spot,
  face: Face,
  look: TopLook & { bead?: boolean; lean?: number; fresh?: boolean; topless?: boolean } = {},
): void {
  const { bead = true, lean = stitchMm / 2, fresh = false } = look;
  const drawBead = () => pen.bead(beadOf(at, face), 84, { moves: fresh });
  if (bead && face === 'away') drawBead();
  legs(pen, [at[0] - lean, at[1] + roundMm + 0.4], [at[0], at[1] + 1.4], fresh);
  if (bead && face === 'toward') drawBead();
  if (!look.topless) top(pen, at, fresh ? { near: true, far: true } : look);
}

/** A worked row, the tops of the row below it peeping out. */
export function row(
  pen: Pen,
  {
    face,
    y,
    fromX,
    many,
    hiddenFrom = Infinity,
    look = {},
  }: {
    face: Face;
    y: number;
    /** Of the first stitch from the left. */
    fromX: number;
    many: number;
    /** From there on a further round hides the beads behind this one. */
    hiddenFrom?: number;
    /** Of single stitches, by their number from the left. */
    look?: Record<number, TopLook>;
  },
): void {
  const places = Array.from({ length: many }, (_, n) => fromX + n * stitchMm);
  for (const x of places) {
    // A row may begin at the box's edge.
    if (x > stitchMm) top(pen, [x - stitchMm / 2, y + roundMm]);
  }
  places.forEach((x, n) => {
    stitch(pen, [x, y], face, { ...look[n], bead: face === 'toward' || x < hiddenFrom });
  });
}
