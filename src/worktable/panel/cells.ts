import { parseHex } from '../../core/colour/hex.js';
import { workedPxPerMm } from '../../core/pages/worked/worked.js';
import type { Chart, ChartPanel } from '../store/chart.js';

/** Path of each stitch's cell, millimetres; made when first asked for, kept with the footprints. */
const paths = new WeakMap<ChartPanel['footprints'], Path2D[]>();

/** The outline of the part of the panel that a stitch owns. */
export function cellPath(panel: ChartPanel, s: number): Path2D {
  const { footprints } = panel;
  let known = paths.get(footprints);
  if (!known) paths.set(footprints, (known = []));
  if (!known[s]) {
    const path = new Path2D();
    for (const ring of footprints.rings(s)) {
      for (let p = 0; p < ring.length; p += 2) {
        if (p === 0) path.moveTo(ring[0], ring[1]);
        else path.lineTo(ring[p], ring[p + 1]);
      }
      path.closePath();
    }
    known[s] = path;
  }
  return known[s];
}

let made:
  { key: string; footprints: object; canvas: HTMLCanvasElement; drawn: string[] } | undefined;

/** Milliseconds of drawing cells after which the rest waits for the next frame. */
const goMs = 16;

/**
 * The chart of a panel: a cell a stitch, in its bead's colour, with its letter, which `mirrored` writes for
 * a mirror; only changed cells are drawn, and of many the rest `later`.
 */
export function letteredCells(
  panel: ChartPanel,
  beads: Chart['beads'],
  widthPx: number,
  mirrored: boolean,
  later: () => void,
): HTMLCanvasElement {
  const { geometry, footprints, beadOf } = panel;
  const key = `${widthPx} ${mirrored}`;
  if (made?.key !== key || made.footprints !== footprints) {
    const canvas = document.createElement('canvas');
    canvas.width = canvas.height = widthPx;
    made = { key, footprints, canvas, drawn: [] };
  }
  const { canvas, drawn } = made;
  const context = canvas.getContext('2d')!;
  const scale = workedPxPerMm(geometry.shape, widthPx);
  const inks = beads.map(({ hex }) => inkOn(hex));
  const size = Math.min(geometry.shape.stitchWidthMm, geometry.shape.roundHeightMm) * 0.62;
  context.setTransform(scale, 0, 0, scale, widthPx / 2, widthPx / 2);
  context.lineWidth = 0.9 / scale;
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  context.font = `600 ${size}px system-ui, sans-serif`;
  const until = performance.now() + goMs;
  for (let s = 0; s < geometry.count; s++) {
    if (s % 64 === 0 && performance.now() > until) {
      later();
      break;
    }
    const bead = beads[beadOf[s]];
    const look = bead ? `${bead.hex}${bead.letter}` : `${beadOf[s]}`;
    if (drawn[s] === look) continue;
    drawn[s] = look;
    const path = cellPath(panel, s);
    context.fillStyle = bead?.hex ?? '#ffffff';
    context.fill(path);
    context.strokeStyle = '#8a8a8a';
    context.stroke(path);
    context.fillStyle = bead ? inks[beadOf[s]] : '#555555';
    const { [2 * s]: x, [2 * s + 1]: y } = geometry.centres;
    const letter = bead?.letter ?? (beadOf[s] === -1 ? '·' : '');
    // The whole chart is turned over afterwards: its letters are so already.
    if (mirrored) context.scale(-1, 1);
    context.fillText(letter, mirrored ? -x : x, y + size * 0.05);
    if (mirrored) context.scale(-1, 1);
  }
  return canvas;
}

/** Black or white, whichever reads better (relative luminance of WCAG 2.2). */
function inkOn(hex: string): string {
  const [r, g, b] = (parseHex(hex) ?? [255, 255, 255]).map((code) => {
    const c = code / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b > 0.179 ? '#111111' : '#ffffff';
}
