import { panelFootprints } from '../../../core/panel/footprints.js';
import type { Footprints } from '../../../core/panel/footprints.js';
import type { PanelGeometry } from '../../../core/panel/geometry.js';
import { stitchesBefore } from '../../../core/panel/shape.js';
import type { PatternBead } from '../../../core/beads/bead.js';
import type { Pattern } from '../../../core/pattern/pattern.js';
import { atHook } from '../../../core/work/at-hook.js';
import { beadSprite } from '../../mat/bead-sprite.js';
import { cellPath } from '../../panel/cells.js';

/** What the work in hand is drawn from. */
export interface WorkDrawing {
  readonly pattern: Pattern;
  /** One mark a stitch, in working order. */
  readonly marks: string;
  readonly worked: number;
  /** The round at hand, and the stitches that are worked next. */
  readonly round: number;
  readonly from: number;
  readonly to: number;
  /** Stitches with a note. */
  readonly noted: ReadonlySet<number>;
  /** A stitch that was tapped, or -1. */
  readonly lit: number;
  /** The whole work, however small its stitches. */
  readonly whole: boolean;
  readonly tones: { readonly ink: string; readonly ground: string; readonly warn: string };
  readonly dots: number;
}

/** Stitches are shown at least this wide, CSS pixels. */
const nearPx = 30;

/** Where a stitch is on the canvas, CSS pixels. */
export interface WorkView {
  readonly geometry: PanelGeometry;
  readonly pxPerMm: number;
  readonly centreX: number;
  readonly centreY: number;
  readonly turn: number;
  place(stitch: number): { x: number; y: number };
  /** The stitch at a place, or -1. */
  stitchAt(x: number, y: number): number;
}

const footprints = new WeakMap<PanelGeometry, Footprints>();
function footprintsOf(geometry: PanelGeometry): Footprints {
  let known = footprints.get(geometry);
  if (!known) footprints.set(geometry, (known = panelFootprints(geometry)));
  return known;
}

/** The work as it lies in the maker's hand: the present stitch on top, at the hook. */
export function workView(
  { pattern, worked, round, whole }: Pick<WorkDrawing, 'pattern' | 'worked' | 'round' | 'whole'>,
  width: number,
  height: number,
): WorkView {
  const { shape } = pattern;
  const { geometry, degrees } = atHook(shape, worked);
  const turn = (degrees * Math.PI) / 180;
  const s = Math.min(worked, geometry.count - 1);
  const outMm = Math.hypot(geometry.centres[2 * s], geometry.centres[2 * s + 1]);
  const reach = (Math.max(3, round) + 1) * shape.roundHeightMm;
  // The hook has room above.
  const all = Math.min(width - 16, height - 76) / (2 * reach);
  const near = Math.max(all, nearPx / shape.stitchWidthMm);
  const pxPerMm = whole ? all : near;
  const centreX = width / 2;
  const centreY =
    whole || near === all ? height / 2 + 28 : Math.max(84, height * 0.3) + outMm * pxPerMm;
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  return {
    ...{ geometry, pxPerMm, centreX, centreY, turn },
    place(stitch) {
      const [x, y] = [geometry.centres[2 * stitch], geometry.centres[2 * stitch + 1]];
      return {
        x: centreX + pxPerMm * (x * cos - y * sin),
        y: centreY + pxPerMm * (x * sin + y * cos),
      };
    },
    stitchAt(x, y) {
      const [dx, dy] = [(x - centreX) / pxPerMm, (y - centreY) / pxPerMm];
      return footprintsOf(geometry).owner(dx * cos + dy * sin, dy * cos - dx * sin);
    },
  };
}

/** Draws it: what is worked as cloth, what is to come of the round as beads that wait. */
export function drawWork(pen: CanvasRenderingContext2D, drawing: WorkDrawing): void {
  const { pattern, marks, worked, round, tones, dots } = drawing;
  const [width, height] = [pen.canvas.width / dots, pen.canvas.height / dots];
  const view = workView(drawing, width, height);
  const { geometry, pxPerMm } = view;
  const beads = new Map(pattern.beads.map((bead) => [bead.letter, bead]));
  const { shape } = geometry;
  const first = stitchesBefore(shape, round);
  const end = Math.min(geometry.count, stitchesBefore(shape, round + 1));
  const seen = (s: number) => {
    const { x, y } = view.place(s);
    const far = pxPerMm * Math.max(shape.stitchWidthMm, shape.roundHeightMm);
    return x > -far && y > -far && x < width + far && y < height + far;
  };
  pen.setTransform(dots, 0, 0, dots, 0, 0);
  pen.clearRect(0, 0, width, height);
  const panel = { geometry, footprints: footprintsOf(geometry), beadOf: new Int16Array() };
  pen.save();
  pen.translate(view.centreX, view.centreY);
  pen.rotate(view.turn);
  pen.scale(pxPerMm, pxPerMm);
  pen.lineWidth = 1 / pxPerMm;
  for (let s = 0; s < worked; s++) {
    if (!seen(s)) continue;
    const path = cellPath(panel, s);
    pen.globalAlpha = s < first ? 0.62 : 1;
    pen.fillStyle = beads.get(marks[s])?.hex ?? '#ffffff';
    pen.fill(path);
    pen.globalAlpha = 1;
    pen.strokeStyle = '#8a8a8a';
    pen.stroke(path);
  }
  pen.restore();
  const size = pxPerMm * Math.min(shape.stitchWidthMm, shape.roundHeightMm) * 0.96;
  for (let s = Math.max(first, worked); s < end; s++) {
    if (seen(s))
      coming(pen, view.place(s), { bead: beads.get(marks[s]), size, drawing, stitch: s });
  }
  if (worked < geometry.count) marker(pen, view.place(first), size, tones.warn);
  for (const s of drawing.noted) if (seen(s)) flag(pen, view.place(s), tones);
  if (drawing.lit >= 0) ring(pen, view.place(drawing.lit), size * 0.72, tones.ink, 4);
  if (worked < geometry.count)
    hook(pen, view.place(worked), shape.hand === 'right' ? 1 : -1, tones);
}

/** A bead of the round that waits, with its letter where there is room. */
function coming(
  pen: CanvasRenderingContext2D,
  { x, y }: { x: number; y: number },
  f: { bead: PatternBead | undefined; size: number; drawing: WorkDrawing; stitch: number },
): void {
  const { bead, size, drawing, stitch } = f;
  const { tones, dots, from, to } = drawing;
  const next = stitch >= from && stitch < to;
  if (next) ring(pen, { x, y }, size / 2 + 2, tones.ink, 4);
  pen.globalAlpha = next ? 1 : 0.8;
  if (bead) {
    const sprite = beadSprite(bead, Math.max(4, Math.round(size * dots)));
    pen.drawImage(sprite, x - size / 2, y - size / 2, size, size);
  } else {
    pen.fillStyle = tones.ink;
    pen.beginPath();
    pen.arc(x, y, Math.max(2, size * 0.12), 0, 7);
    pen.fill();
  }
  pen.globalAlpha = 1;
}

function ring(
  pen: CanvasRenderingContext2D,
  { x, y }: { x: number; y: number },
  radius: number,
  ink: string,
  width: number,
): void {
  pen.strokeStyle = ink;
  pen.lineWidth = width;
  pen.beginPath();
  pen.arc(x, y, radius, 0, 7);
  pen.stroke();
}

/** The marker that hangs in the first stitch of the round: an open ring of wire. */
function marker(
  pen: CanvasRenderingContext2D,
  { x, y }: { x: number; y: number },
  size: number,
  tone: string,
): void {
  pen.strokeStyle = tone;
  pen.lineWidth = Math.max(2.5, size * 0.12);
  pen.beginPath();
  pen.ellipse(x, y + size * 0.34, size * 0.26, size * 0.42, 0, -1.1, 4.6);
  pen.stroke();
}

/** A paper flag on a pin. */
function flag(
  pen: CanvasRenderingContext2D,
  { x, y }: { x: number; y: number },
  tones: WorkDrawing['tones'],
): void {
  pen.fillStyle = tones.warn;
  pen.strokeStyle = tones.ground;
  pen.lineWidth = 1.5;
  pen.beginPath();
  pen.moveTo(x, y);
  pen.lineTo(x, y - 16);
  pen.lineTo(x + 12, y - 12);
  pen.lineTo(x, y - 8);
  pen.closePath();
  pen.stroke();
  pen.fill();
}

/** A crochet hook that comes from the hand that holds it; its tip stands at the present stitch. */
function hook(
  pen: CanvasRenderingContext2D,
  { x, y }: { x: number; y: number },
  side: 1 | -1,
  { ink, ground }: WorkDrawing['tones'],
): void {
  const tip = { x: x + side * 6, y: y - 24 };
  pen.lineCap = 'round';
  const stroke = (width: number, tone: string) => {
    pen.lineWidth = width;
    pen.strokeStyle = tone;
    pen.beginPath();
    pen.moveTo(tip.x + side * 9, tip.y + 9);
    pen.lineTo(tip.x, tip.y);
    pen.lineTo(tip.x + side * 96, tip.y - 30);
    pen.stroke();
  };
  stroke(9, ground);
  stroke(5, ink);
}
