import { drawGround, drawPanel } from './draw-panel.js';
import type { Piece } from '../store/piece.js';
import type { PanelDrawing } from './draw-panel.js';

/** Stitches from which drawing all of it is as fast. */
const mostChanged = 600;

/**
 * The stitches in which two drawings of one panel differ, where they differ in nothing else that
 * shows; undefined where more than that is to be drawn.
 */
export function changedStitches(was: PanelDrawing, now: PanelDrawing): number[] | undefined {
  const same =
    was.panel.geometry === now.panel.geometry &&
    was.panel.place === now.panel.place &&
    was.piece.picture === now.piece.picture &&
    was.hand === now.hand &&
    was.handState === now.handState;
  if (!same) return undefined;
  // What is wished shows in the next chart.
  if (was.panel === now.panel) return samePiece(was.piece, now.piece) ? [] : undefined;
  const looks = [was, now].map(({ chart }) =>
    chart.beads.map(({ hex, letter, finish }) => `${letter}${hex}${finish ?? ''}`),
  );
  const [before, after] = [was.panel.beadOf, now.panel.beadOf];
  const changed: number[] = [];
  for (let s = 0; s < after.length; s++) {
    const alike =
      before[s] < 0 || after[s] < 0
        ? before[s] === after[s]
        : looks[0][before[s]] === looks[1][after[s]];
    if (!alike && changed.push(s) > mostChanged) return undefined;
  }
  return changed;
}

/** Whether two pieces differ in nothing but what is wished of them. */
function samePiece(was: Piece, now: Piece): boolean {
  const keys = new Set([...Object.keys(was), ...Object.keys(now)]) as Set<keyof Piece>;
  keys.delete('wish');
  return [...keys].every((key) => was[key] === now[key]);
}

/** What lies below the beads of a drawing, on a canvas of its own: a blurred shadow takes longer than a stroke may. */
export function groundOf(
  { canvas: { width, height } }: CanvasRenderingContext2D,
  drawing: PanelDrawing,
): HTMLCanvasElement {
  const ground = document.createElement('canvas');
  Object.assign(ground, { width, height });
  const context = ground.getContext('2d')!;
  context.imageSmoothingQuality = 'high';
  drawGround(context, drawing);
  return ground;
}

/**
 * Draws what changed and what lies close around it; the rest of the canvas stays as it is.
 *
 * @param ground see `groundOf`; asked for only where something changed
 */
export function drawChanged(
  context: CanvasRenderingContext2D,
  drawing: PanelDrawing,
  changed: readonly number[],
  ground: () => HTMLCanvasElement,
): void {
  if (changed.length === 0) return;
  const { scene, dotsPerPx, panel } = drawing;
  const { centres, shape } = panel.geometry;
  // A bead overlaps its neighbours; its mark and its border are smaller.
  const reach = 1.3 * Math.max(shape.stitchWidthMm, shape.roundHeightMm);
  context.save();
  scene.apply(context, dotsPerPx);
  context.beginPath();
  for (const s of changed) {
    context.rect(centres[2 * s] - reach, centres[2 * s + 1] - reach, 2 * reach, 2 * reach);
  }
  context.clip();
  drawPanel(context, drawing, ground());
  context.restore();
}
