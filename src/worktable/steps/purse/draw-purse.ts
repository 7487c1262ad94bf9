import { workedPxPerMm } from '../../../core/pages/worked/worked.js';
import { part } from '../../../core/lines.js';
import type { Frame } from '../../../core/purse/frame/measures.js';
import { beadSprite } from '../../mat/bead-sprite.js';
import type { Chart } from '../../store/chart.js';
import { cellPath } from '../../panel/cells.js';
import { outlineOf } from '../../panel/outline.js';
import { workedBeads } from '../../panel/lights.js';
import type { Hung } from './hung.js';

type Spots = readonly (readonly [number, number])[];

/** Width of the metal, millimetres (as frames of this kind are; measure yours). */
const metalMm = 4.6;
const threadTone = '#cfc6b8';
const metal = ['#6b5a34', '#c2a566', '#efdca6'] as const;

export function trace(context: CanvasRenderingContext2D, spots: Spots): void {
  context.beginPath();
  spots.forEach(([x, y], n) => (n === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
}

/** One side of the purse in millimetres, its beads seen. */
export function drawSide(
  context: CanvasRenderingContext2D,
  { panel, hanging }: Hung,
  beads: Chart['beads'],
  frame: Frame | undefined,
  pxPerMm: number,
): void {
  if (!hanging) return drawFlat(context, panel, beads, pxPerMm);
  trace(context, [...hanging.rail, ...hanging.belly]);
  context.closePath();
  context.save();
  context.shadowColor = 'rgb(0 0 0 / 0.35)';
  context.shadowBlur = 14;
  context.shadowOffsetY = 6;
  context.fillStyle = threadTone;
  context.fill();
  context.restore();
  const { geometry, beadOf } = panel;
  const { stitchWidthMm, roundHeightMm } = geometry.shape;
  const flat = Math.min(stitchWidthMm, roundHeightMm);
  const sprites = beads.map((bead) => beadSprite(bead, 40));
  for (let s = 0; s < geometry.count; s++) {
    const { [2 * s]: x, [2 * s + 1]: y } = geometry.centres;
    const [hungX, hungY] = hanging.place(x, y);
    const [nextX, nextY] = hanging.place(x * 0.98, y * 0.98);
    const far = Math.hypot(x, y);
    const grown = Math.hypot(hungX - nextX, hungY - nextY) / (0.02 * far);
    const size = flat * Math.min(1.3, Math.max(0.7, grown)) * 1.12;
    const sprite = sprites[beadOf[s]];
    if (sprite) context.drawImage(sprite, hungX - size / 2, hungY - size / 2, size, size);
    else {
      context.strokeStyle = '#a89d8c';
      context.lineWidth = 0.25;
      context.beginPath();
      context.moveTo(hungX - size * 0.25, hungY - size * 0.3);
      context.lineTo(hungX, hungY + size * 0.25);
      context.lineTo(hungX + size * 0.25, hungY - size * 0.3);
      context.stroke();
    }
  }
  if (frame) drawFrame(context, hanging.rail, frame);
}

/** The metal over the rim, its hinges and the balls of its clasp. */
export function drawFrame(context: CanvasRenderingContext2D, rail: Spots, frame: Frame): void {
  context.lineCap = 'round';
  context.lineJoin = 'round';
  metal.forEach((tone, n) => {
    trace(context, rail);
    context.strokeStyle = tone;
    context.lineWidth = metalMm * [1, 0.82, 0.26][n];
    context.stroke();
  });
  if (frame.fixing === 'sewn') {
    const spacing = frame.holeSpacingMm ?? 4;
    context.fillStyle = '#3a3122';
    for (const [x, y] of along(rail, spacing)) {
      context.beginPath();
      context.arc(x, y, 0.5, 0, 7);
      context.fill();
    }
  }
  for (const hinge of [rail[0], rail[rail.length - 1]]) ball(context, hinge, 2.6);
  const [top] = part(rail, 0.5, 0.5);
  ball(context, [top[0] - 2.6, top[1] - 5.6], 3.4);
  ball(context, [top[0] + 2.6, top[1] - 5.6], 3.4);
}

function ball(context: CanvasRenderingContext2D, [x, y]: readonly [number, number], r: number) {
  const light = context.createRadialGradient(x - r * 0.35, y - r * 0.4, r * 0.1, x, y, r);
  light.addColorStop(0, '#fff3cf');
  light.addColorStop(0.45, metal[1]);
  light.addColorStop(1, metal[0]);
  context.fillStyle = light;
  context.beginPath();
  context.arc(x, y, r, 0, 7);
  context.fill();
}

/** Places on a line, so many millimetres apart. */
function along(line: Spots, everyMm: number): [number, number][] {
  const found: [number, number][] = [];
  let left = everyMm / 2;
  for (let n = 1; n < line.length; n++) {
    const [[ax, ay], [bx, by]] = [line[n - 1], line[n]];
    const long = Math.hypot(bx - ax, by - ay);
    let at = left;
    for (; at <= long; at += everyMm)
      found.push([ax + ((bx - ax) * at) / long, ay + ((by - ay) * at) / long]);
    left = at - long;
  }
  return found;
}

/** A panel without a frame lies flat. */
function drawFlat(
  context: CanvasRenderingContext2D,
  panel: Hung['panel'],
  beads: Chart['beads'],
  pxPerMm: number,
): void {
  const { edge } = outlineOf(panel.geometry);
  context.save();
  context.shadowColor = 'rgb(0 0 0 / 0.35)';
  context.shadowBlur = 14;
  context.shadowOffsetY = 6;
  context.fillStyle = '#7e756b';
  context.fill(edge);
  context.restore();
  const widthPx = pxPerMm > 4 ? 720 : 480;
  const worked = workedBeads(panel, beads, widthPx);
  context.save();
  context.clip(edge);
  if (worked) {
    const half = widthPx / 2 / workedPxPerMm(panel.geometry.shape, widthPx);
    context.drawImage(worked, -half, -half, 2 * half, 2 * half);
  } else {
    for (let s = 0; s < panel.geometry.count; s++) {
      context.fillStyle = beads[panel.beadOf[s]]?.hex ?? threadTone;
      context.fill(cellPath(panel, s));
    }
  }
  context.restore();
}

/** The opened purse: the cloth inside behind, the front folded toward the one who looks. */
export function drawInside(
  context: CanvasRenderingContext2D,
  front: Hung,
  back: Hung,
  beads: Chart['beads'],
  frame: Frame,
  pxPerMm: number,
  cloth: string,
): void {
  const hanging = back.hanging!;
  drawSide(context, front, beads, undefined, pxPerMm);
  // Into the mouth one sees the cloth; the front's rail has come down toward the eye.
  const fold = hanging.rail.map(([x, y]): [number, number] => [x, -0.42 * y]);
  trace(context, [...hanging.rail, ...[...fold].reverse()]);
  context.closePath();
  context.fillStyle = cloth;
  context.fill();
  context.save();
  context.clip();
  context.fillStyle = 'rgb(0 0 0 / 0.16)';
  context.beginPath();
  const deep = Math.max(...fold.map(([, y]) => y));
  const wide = Math.abs(hanging.rail[0][0]);
  context.ellipse(0, deep * 0.4, wide * 0.8, deep * 1.3, 0, 0, 7);
  context.fill();
  // The lining's seam runs just below the metal.
  context.strokeStyle = 'rgb(255 255 255 / 0.75)';
  context.setLineDash([1.6, 1.2]);
  context.lineWidth = 0.4;
  trace(
    context,
    hanging.rail.map(([x, y]): [number, number] => [x * 0.92, y * 0.92]),
  );
  context.stroke();
  context.setLineDash([]);
  context.restore();
  drawFrame(context, hanging.rail, frame);
  drawFrame(context, fold, { ...frame, fixing: 'glued' });
}
