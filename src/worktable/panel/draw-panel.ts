import { workedPxPerMm } from '../../core/pages/worked/worked.js';
import type { Chart, ChartPanel } from '../store/chart.js';
import type { Piece } from '../store/piece.js';
import type { View } from '../store/view.js';
import { cellPath, letteredCells } from './cells.js';
import type { PanelHand } from './hand.js';
import { drawMore, workedBeads } from './lights.js';
import { outlineOf } from './outline.js';
import { maskOf } from '../picture-in/minded.js';
import { mindedCanvas, pictureCanvas } from './picture-bitmap.js';
import type { Scene } from './scene.js';
import { shadowOf, veil, veiledCopy } from './screen-copies.js';

/** What the panel is drawn from. */
export interface PanelDrawing {
  readonly chart: Chart;
  readonly panel: ChartPanel;
  readonly piece: Piece;
  readonly view: View;
  readonly scene: Scene;
  readonly hand: PanelHand | undefined;
  /** What its drawing hangs on. */
  readonly handState: unknown;
  /** Whether the picture shows around the panel, veiled. */
  readonly around: boolean;
  /** Whether a finger pulls: what is drawn lasts for a moment only. */
  readonly followed: boolean;
  /** Whether what was brushed over is shown. */
  readonly minding: boolean;
  /** Colours of the ground, of ink and of paper. */
  readonly tones: { ground: string; ink: string; paper: string };
  readonly dotsPerPx: number;
}

/** Sizes in which beads are painted: the next above the screen's own is taken. */
const beadSizesPx = [480, 720, 1000, 1400];

/** @param ground what lies below the beads, where it is drawn already */
export function drawPanel(
  context: CanvasRenderingContext2D,
  drawing: PanelDrawing,
  ground?: CanvasImageSource,
): void {
  const { chart, panel, piece, view, scene, dotsPerPx } = drawing;
  const { geometry } = panel;
  const { edge, wedges } = outlineOf(geometry);
  const px = 1 / scene.pxPerMm;
  if (ground) {
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.clearRect(0, 0, context.canvas.width, context.canvas.height);
    context.drawImage(ground, 0, 0);
  } else {
    drawGround(context, drawing);
  }
  // What moves is drawn in a quarter of the time, and drawn anew when it rests.
  context.imageSmoothingQuality = drawing.followed ? 'low' : 'high';
  scene.apply(context, dotsPerPx);
  context.save();
  context.clip(edge);
  const wanted = Math.min(scene.widthPx, scene.heightPx) * dotsPerPx * Math.min(view.zoom, 2);
  const widthPx = beadSizesPx.find((size) => size >= wanted * 0.9) ?? beadSizesPx.at(-1)!;
  const shown =
    view.look === 'beads'
      ? workedBeads(panel, chart.beads, widthPx)
      : letteredCells(panel, chart.beads, widthPx, scene.mirrored, drawMore);
  const half = widthPx / 2 / workedPxPerMm(geometry.shape, widthPx);
  if (shown) context.drawImage(shown, -half, -half, 2 * half, 2 * half);
  else drawFlat(context, drawing);
  if (view.overlay > 0 && piece.picture) {
    context.globalAlpha = view.overlay;
    layPicture(context, drawing);
    context.globalAlpha = 1;
  }
  if (drawing.minding) {
    const mask = maskOf(piece);
    if (mask) layPicture(context, drawing, mindedCanvas(mask.picture));
  }
  context.restore();
  if (view.wedges) {
    context.strokeStyle = '#ffffff';
    context.lineWidth = 4 * px;
    context.stroke(wedges);
    context.strokeStyle = '#1d1d1d';
    context.lineWidth = 1.8 * px;
    context.stroke(wedges);
  }
  drawLit(context, drawing);
  drawing.hand?.draw?.(context, {
    panel,
    pxPerMm: scene.pxPerMm,
    ink: drawing.tones.ink,
    paper: drawing.tones.paper,
  });
}

/** Beads without light, while theirs is worked out. */
function drawFlat(context: CanvasRenderingContext2D, { panel, chart }: PanelDrawing): void {
  const { centres, count, shape } = panel.geometry;
  const radius = 0.47 * Math.min(shape.stitchWidthMm, shape.roundHeightMm);
  for (let s = 0; s < count; s++) {
    const bead = chart.beads[panel.beadOf[s]];
    if (!bead) continue;
    context.fillStyle = bead.hex;
    context.beginPath();
    context.arc(centres[2 * s], centres[2 * s + 1], radius, 0, 7);
    context.fill();
  }
}

/** What lies below the beads: the picture around the panel, veiled, and the panel's shadow. */
export function drawGround(context: CanvasRenderingContext2D, drawing: PanelDrawing): void {
  const { panel, piece, view, scene, tones, dotsPerPx } = drawing;
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.clearRect(0, 0, context.canvas.width, context.canvas.height);
  scene.apply(context, dotsPerPx);
  if (drawing.around && piece.picture) {
    if (!drawing.followed || !slideVeiled(context, drawing)) {
      layPicture(context, drawing);
      context.globalAlpha = veil;
      context.fillStyle = tones.ground;
      const far = 1e4;
      context.fillRect(-far, -far, 2 * far, 2 * far);
      context.globalAlpha = 1;
    }
  }
  const { turnDegrees, zoom, panXmm, panYmm } = view;
  const { width, height } = context.canvas;
  const same = JSON.stringify([width, height, turnDegrees, zoom, panXmm, panYmm, scene.mirrored]);
  const shadow = shadowOf(panel.geometry, context.canvas, scene, dotsPerPx, same);
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.drawImage(shadow, 0, 0);
}

/**
 * Lays the picture around the panel while a finger pulls it: a copy of the screen's own size, to the next
 * whole dot. False where it is turned, mirrored, repeated or far larger than the screen.
 */
function slideVeiled(context: CanvasRenderingContext2D, drawing: PanelDrawing): boolean {
  const copy = slidingCopy(context, drawing);
  if (!copy) return false;
  const { e, f, a, d } = context.getTransform();
  const { centreXmm, centreYmm } = drawing.panel.place!;
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.drawImage(
    copy,
    Math.round(e + a * centreXmm - copy.width / 2),
    Math.round(f + d * centreYmm - copy.height / 2),
  );
  return true;
}

/** Makes that copy, which takes longer than a move of the finger may. */
export function readySlide(context: CanvasRenderingContext2D, drawing: PanelDrawing): void {
  if (drawing.around && drawing.piece.picture) slidingCopy(context, drawing);
}

function slidingCopy(
  { canvas: { width: across, height: down } }: CanvasRenderingContext2D,
  drawing: PanelDrawing,
): HTMLCanvasElement | undefined {
  const { panel, scene, dotsPerPx, tones, view } = drawing;
  const picture = pictureOf(drawing);
  const { place } = panel;
  const turned = place && (place.rotateDegrees !== 0 || place.mirror || place.repeat);
  if (!place || turned || view.turnDegrees !== 0 || scene.mirrored) return undefined;
  const dots = place.mmPerPixel * scene.pxPerMm * dotsPerPx;
  const width = Math.round(picture.width * dots);
  const height = Math.round(picture.height * dots);
  if (width < 1 || height < 1 || width * height > 4 * across * down) return undefined;
  return veiledCopy(picture, width, height, tones.ground);
}

/** The picture of the panel that is looked at. */
function pictureOf({ piece, view }: PanelDrawing): NonNullable<Piece['picture']>['picture'] {
  const own = view.panel === 1 && piece.wish.back === 'own';
  return ((own && piece.backPicture) || piece.picture!).picture;
}

/** The picture, or something else of its proportions, as it lies on the bead face. */
function layPicture(
  context: CanvasRenderingContext2D,
  drawing: PanelDrawing,
  canvas = pictureCanvas(pictureOf(drawing)),
): void {
  const { panel } = drawing;
  const picture = pictureOf(drawing);
  const { place } = panel;
  if (!place) return;
  const { wedges } = panel.geometry.shape;
  const width = picture.width * place.mmPerPixel;
  const height = picture.height * place.mmPerPixel;
  const turns = place.repeat ? wedges : 1;
  for (let k = 0; k < turns; k++) {
    context.save();
    if (place.repeat) {
      context.rotate(repeatDegrees(panel, k) * (Math.PI / 180));
      wedgeClip(context, wedges);
    }
    context.translate(place.centreXmm, place.centreYmm);
    context.rotate((place.rotateDegrees * Math.PI) / 180);
    if (place.mirror) context.scale(-1, 1);
    context.drawImage(canvas, -width / 2, -height / 2, width, height);
    context.restore();
  }
}

/** Where wedge k points at the rim, clockwise from 12 o'clock: from the middle of its last round. */
export function repeatDegrees({ geometry }: ChartPanel, k: number): number {
  const { wedges, rounds } = geometry.shape;
  const { direction, startDegrees, turns } = geometry;
  return startDegrees + direction * ((k + 0.5 + turns[rounds]) * (360 / wedges));
}

function wedgeClip(context: CanvasRenderingContext2D, wedges: number): void {
  const far = 1e4;
  const half = Math.PI / wedges;
  context.beginPath();
  context.moveTo(0, 0);
  context.lineTo(-far * Math.sin(half), -far * Math.cos(half));
  context.lineTo(far * Math.sin(half), -far * Math.cos(half));
  context.closePath();
  context.clip();
}

/** The stitch that is lit up, and the stitches of the bead and of the area that are. */
function drawLit(context: CanvasRenderingContext2D, drawing: PanelDrawing): void {
  const { view, panel, chart, scene } = drawing;
  const { geometry, beadOf } = panel;
  const px = 1 / scene.pxPerMm;
  const bead = chart.beads.findIndex(({ id }) => id === view.litBead);
  const area = new Set(view.litArea);
  if (bead >= 0 || area.size > 0) {
    const radius = 0.24 * Math.min(geometry.shape.stitchWidthMm, geometry.shape.roundHeightMm);
    context.lineWidth = 1.5 * px;
    context.strokeStyle = '#161616';
    context.fillStyle = '#ffffff';
    for (let s = 0; s < geometry.count; s++) {
      if ((bead < 0 || beadOf[s] !== bead) && !area.has(s)) continue;
      context.beginPath();
      context.arc(geometry.centres[2 * s], geometry.centres[2 * s + 1], radius, 0, 7);
      context.fill();
      context.stroke();
    }
  }
  const s = view.litStitch;
  if (s < 0 || s >= geometry.count) return;
  const path = cellPath(panel, s);
  context.lineJoin = 'round';
  context.strokeStyle = '#161616';
  context.lineWidth = 8 * px;
  context.stroke(path);
  context.strokeStyle = '#ffffff';
  context.lineWidth = 4.5 * px;
  context.stroke(path);
}
