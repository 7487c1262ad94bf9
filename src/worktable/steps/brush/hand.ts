import { cellPath } from '../../panel/cells.js';
import type { HandScene, PanelHand } from '../../panel/hand.js';
import { brush } from '../../store/brush.js';
import type { BrushTool } from '../../store/brush.js';
import { laidOn } from '../../store/laid.js';
import { placeSaid } from '../../store/place-said.js';
import { piece, shownPanel, view } from '../../store/store.js';
import { loop, partPull } from './part.js';
import { layingPull, pickingPull, replaceAt } from './tools.js';

/** The tool before the one that picks up. */
let before: BrushTool = 'bead';

/** The brush on the panel: by mouse, finger or pen. */
export const brushHand: PanelHand = {
  pens: true,
  quiet: true,
  begin(at, by) {
    if (!shownPanel.peek()) return undefined;
    const { tool } = brush.peek();
    if (tool !== 'pick') before = tool;
    if (tool === 'pick' || (by.other && by.kind === 'mouse')) return pickingPull(at, before);
    if (by.other) return layingPull('away', at);
    if (tool === 'move') return partPull(at);
    if (tool !== 'replace') return layingPull(tool, at);
    replaceAt(at.stitch);
    return { move() {}, end() {}, drop() {} };
  },
  cursor: () => 'crosshair',
  watch: () => brush.value,
  draw,
  says: placeSaid,
};

function draw(context: CanvasRenderingContext2D, { panel, pxPerMm }: HandScene): void {
  const px = 1 / pxPerMm;
  const { shown, part, tool, lineFrom } = brush.peek();
  const { geometry } = panel;
  if (shown) drawLaid(context, panel, px);
  if (tool === 'move' && part.length > 0) {
    context.fillStyle = 'rgb(255 255 255 / 0.45)';
    context.strokeStyle = '#161616';
    context.lineWidth = 1.2 * px;
    for (const s of part) {
      if (s >= geometry.count) continue;
      const path = cellPath(panel, s);
      context.fill(path);
      context.stroke(path);
    }
  }
  if (tool === 'line' && lineFrom >= 0 && lineFrom < geometry.count) {
    context.strokeStyle = '#161616';
    context.lineWidth = 3 * px;
    context.setLineDash([5 * px, 4 * px]);
    context.stroke(cellPath(panel, lineFrom));
    context.setLineDash([]);
  }
  if (loop.length > 1) {
    context.beginPath();
    loop.forEach(({ xMm, yMm }, n) => (n ? context.lineTo(xMm, yMm) : context.moveTo(xMm, yMm)));
    context.lineJoin = 'round';
    context.strokeStyle = '#ffffff';
    context.lineWidth = 5 * px;
    context.stroke();
    context.strokeStyle = '#161616';
    context.lineWidth = 2 * px;
    context.setLineDash([7 * px, 5 * px]);
    context.stroke();
    context.setLineDash([]);
  }
}

/** A ring on every bead that was laid by hand. */
function drawLaid(
  context: CanvasRenderingContext2D,
  { geometry }: HandScene['panel'],
  px: number,
): void {
  const { stitchWidthMm, roundHeightMm } = geometry.shape;
  const radius = 0.34 * Math.min(stitchWidthMm, roundHeightMm);
  const rings = new Path2D();
  for (const s of laidOn(piece.peek(), view.peek().panel).keys()) {
    if (s >= geometry.count) continue;
    const { [2 * s]: x, [2 * s + 1]: y } = geometry.centres;
    rings.moveTo(x + radius, y);
    rings.arc(x, y, radius, 0, 7);
  }
  context.strokeStyle = '#161616';
  context.lineWidth = 3.6 * px;
  context.stroke(rings);
  context.strokeStyle = '#ffffff';
  context.lineWidth = 1.4 * px;
  context.stroke(rings);
}
