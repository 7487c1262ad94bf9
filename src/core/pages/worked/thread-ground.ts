import { finishedEdge, holeRadius } from '../../panel/edge.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import type { Canvas } from './bead-light.js';
import { millionth } from '../../units.js';

/** Colour of the crochet thread between beads, a warm grey. */
export const threadRgb = [126, 117, 107] as const;
/** How dark the shadow below the panel is, 0 to 1. */
const shadowDepth = 0.3;
/** Pixels a side of one cell of the coarse shadow. */
const shadowCell = 8;
/** Lines a pixel that the edge is measured on. */
const linesPerPixel = 4;

/**
 * A white page with the panel's cloth on it: thread out to the finished edge, a dark
 * hole at the centre, and a soft shadow below.
 *
 * @param sidePx side of the square page
 * @param pxPerMm the panel's centre comes to the middle of the page
 */
export function threadGround(geometry: PanelGeometry, sidePx: number, pxPerMm: number): Canvas {
  const cover = new Float32Array(sidePx * sidePx);
  const edge = Float64Array.from(finishedEdge(geometry), (length) =>
    millionth(length * pxPerMm + sidePx / 2),
  );
  fillRing(cover, sidePx, edge);
  const shadow = softShadow(cover, sidePx);
  const data = new Uint8ClampedArray(4 * sidePx * sidePx).fill(255);
  const [red, green, blue] = threadRgb;
  for (let y = 0, at = 0; y < sidePx; y++) {
    for (let x = 0; x < sidePx; x++, at += 4) {
      const thread = Math.min(1, cover[at >> 2]);
      const dark = thread < 1 ? shadow(x, y) : 0;
      if (thread === 0 && dark === 0) continue;
      const page = 255 * (1 - shadowDepth * dark) * (1 - thread);
      data[at] = page + red * thread;
      data[at + 1] = page + green * thread;
      data[at + 2] = page + blue * thread;
    }
  }
  darkenHole(data, sidePx, holeRadius(geometry.shape) * pxPerMm);
  return { width: sidePx, height: sidePx, data };
}

/** Adds a closed ring (x, y in pixels) to a map of cover, 0 to 1, by the even-odd rule. */
function fillRing(cover: Float32Array, side: number, ring: Float64Array): void {
  const n = ring.length;
  const crossings: number[][] = Array.from({ length: side * linesPerPixel }, () => []);
  for (let p = 0, q = n - 2; p < n; q = p, p += 2) {
    const up = ring[p + 1] < ring[q + 1];
    const [x0, y0] = up ? [ring[p], ring[p + 1]] : [ring[q], ring[q + 1]];
    const [x1, y1] = up ? [ring[q], ring[q + 1]] : [ring[p], ring[p + 1]];
    const first = Math.max(0, Math.ceil(y0 * linesPerPixel - 0.5));
    for (let line = first; (line + 0.5) / linesPerPixel < y1 && line < crossings.length; line++) {
      crossings[line].push(x0 + (((line + 0.5) / linesPerPixel - y0) / (y1 - y0)) * (x1 - x0));
    }
  }
  crossings.forEach((xs, line) => {
    xs.sort((a, b) => a - b);
    const row = Math.floor(line / linesPerPixel) * side;
    for (let k = 0; k + 1 < xs.length; k += 2) addSpan(cover, row, side, xs[k], xs[k + 1]);
  });
}

function addSpan(cover: Float32Array, row: number, side: number, from: number, to: number): void {
  const left = Math.max(0, from);
  const right = Math.min(side, to);
  const first = Math.floor(left);
  const last = Math.ceil(right) - 1;
  const whole = 1 / linesPerPixel;
  if (first >= last) {
    if (right > left) cover[row + first] += (right - left) * whole;
    return;
  }
  cover[row + first] += (first + 1 - left) * whole;
  for (let at = row + first + 1; at < row + last; at++) cover[at] += whole;
  cover[row + last] += (right - last) * whole;
}

/** The small centre hole: so deep in the cloth that hardly any light comes out of it. */
function darkenHole(data: Uint8ClampedArray, side: number, radius: number): void {
  const from = Math.max(0, Math.floor(side / 2 - radius - 1));
  const to = Math.min(side - 1, Math.ceil(side / 2 + radius + 1));
  for (let y = from; y <= to; y++) {
    for (let x = from; x <= to; x++) {
      const dx = x + 0.5 - side / 2;
      const dy = y + 0.5 - side / 2;
      const inside = radius - Math.sqrt(dx * dx + dy * dy) + 0.5;
      const keep = 1 - 0.65 * Math.min(1, Math.max(0, inside));
      for (let c = 0; c < 3; c++) data[4 * (y * side + x) + c] *= keep;
    }
  }
}

/** The cover, moved down to the right and blurred; read by pixel. */
function softShadow(cover: Float32Array, side: number): (x: number, y: number) => number {
  const cells = Math.ceil(side / shadowCell) + 1;
  let map: Float32Array = new Float32Array(cells * cells);
  for (let y = 0; y < cells; y++) {
    for (let x = 0; x < cells; x++) {
      const fromX = Math.min(side - 1, Math.max(0, x * shadowCell - Math.round(side / 220)));
      const fromY = Math.min(side - 1, Math.max(0, y * shadowCell - Math.round(side / 110)));
      map[y * cells + x] = cover[fromY * side + fromX];
    }
  }
  const reach = Math.max(1, Math.round(side / shadowCell / 90));
  for (let pass = 0; pass < 3; pass++)
    map = boxBlur(boxBlur(map, cells, reach, 1), cells, reach, cells);
  return (x, y) => {
    const x0 = (x / shadowCell) | 0;
    const y0 = (y / shadowCell) | 0;
    const at = y0 * cells + x0;
    const a = map[at];
    const b = map[at + 1];
    const c = map[at + cells];
    const d = map[at + cells + 1];
    if (a === 0 && b === 0 && c === 0 && d === 0) return 0;
    const right = x / shadowCell - x0;
    const top = a + (b - a) * right;
    const low = c + (d - c) * right;
    return top + (low - top) * (y / shadowCell - y0);
  };
}

/** Mean over 2·reach + 1 cells along one direction (`step` cells from one to the next). */
function boxBlur(map: Float32Array, cells: number, reach: number, step: number): Float32Array {
  const out = new Float32Array(map.length);
  const across = step === 1 ? cells : 1;
  for (let line = 0; line < cells; line++) {
    for (let k = 0; k < cells; k++) {
      let sum = 0;
      for (let d = -reach; d <= reach; d++) {
        sum += map[line * across + Math.min(cells - 1, Math.max(0, k + d)) * step];
      }
      out[line * across + k * step] = sum / (2 * reach + 1);
    }
  }
  return out;
}
