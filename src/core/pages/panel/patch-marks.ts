import type { Surface } from '../surface/surface.js';
import type { CellMark } from './grey-fills.js';

/** A patch of a key: a box, its ends round where it is drawn like a bead; edges in millimetres. */
export interface Patch {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly roundEnds?: boolean;
}

const degreesOf: Readonly<Record<Exclude<CellMark, 'plain'>, number>> = {
  rising: -45,
  falling: 45,
  upright: 90,
};
/** From one line to the next, shares of the patch's height. */
const apart = 0.15;
/** Lines end so far inside the patch, and so far from its letter, millimetres. */
const insideMm = 0.3;
const haloMm = 0.5;
/** Shorter pieces of a line are specks. */
const leastMm = 0.4;
const stepMm = 0.05;

/**
 * Hatching over a whole patch, with a clear halo round the letter in its middle.
 *
 * @param letter its width, and its height above the line, millimetres
 */
export function drawPatchMarks(
  surface: Surface,
  { mark, ink }: { readonly mark: CellMark; readonly ink: string },
  patch: Patch,
  letter: { readonly widthMm: number; readonly heightMm: number },
): void {
  if (mark === 'plain') return;
  const high = patch.bottom - patch.top;
  const [x, y] = [(patch.left + patch.right) / 2, (patch.top + patch.bottom) / 2];
  const turn = (degreesOf[mark] * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const reach = Math.hypot(patch.right - patch.left, high) / 2;
  const most = Math.ceil(reach / (apart * high));
  // Beside a wide letter one line at least finds room.
  const clearMm = Math.min(
    letter.widthMm / 2 + haloMm,
    (patch.right - patch.left) / 2 - insideMm - 1.05 * apart * high,
  );
  const clear = (px: number, py: number) =>
    Math.abs(px - x) < clearMm && Math.abs(py - y) < letter.heightMm / 2 + haloMm;
  const lines: number[][] = [];
  for (let n = -most; n <= most; n++) {
    const off = n * apart * high;
    const at = (t: number) => [x + t * cos - off * sin, y + t * sin + off * cos] as const;
    let from: number | undefined;
    for (let t = -reach; t <= reach + stepMm; t += stepMm) {
      const [px, py] = at(t);
      const drawn = isInside(patch, px, py) && !clear(px, py);
      if (drawn) from ??= t;
      else if (from !== undefined) {
        if (t - from > leastMm) lines.push([...at(from), ...at(t - stepMm)]);
        from = undefined;
      }
    }
  }
  if (lines.length > 0) surface.strokePath(lines, { stroke: ink, widthMm: 0.055 * high });
}

function isInside({ left, top, right, bottom, roundEnds }: Patch, x: number, y: number): boolean {
  if (!roundEnds)
    return (
      x > left + insideMm && x < right - insideMm && y > top + insideMm && y < bottom - insideMm
    );
  const radius = (bottom - top) / 2;
  const nearest = Math.min(right - radius, Math.max(left + radius, x));
  return Math.hypot(x - nearest, y - (top + bottom) / 2) < radius - insideMm;
}
