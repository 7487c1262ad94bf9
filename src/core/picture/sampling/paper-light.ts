import type { LinearRaster } from './linear.js';

/** The light that paper sends back, told at the middle of square cells; rows from the top. */
export interface PaperLight {
  readonly columns: number;
  readonly rows: number;
  readonly cellPx: number;
  /** Linear red, green, blue of bare paper in each cell; length 3·columns·rows. */
  readonly light: Float64Array;
  /** 1 where bare paper was seen, 0 where its light is drawn over from the cells around. */
  readonly seen: Uint8Array;
}

/** Cells along the longer side: small enough to follow the soft edge of a shadow. */
const cellsAlong = 84;
/** Bare paper is the brighter part of a cell, short of its glints. */
const [fromShare, toShare] = [0.6, 0.92];
/** Cells this bright, against the brightest twentieth, are asked for the colour of the paper. */
const brightFrom = 0.4;
/** How far red and blue, each against green, may lie from the paper's: at a seed, and anywhere. */
const [seedTint, mostTint] = [0.1, 0.3];
/** From a cell to its neighbour paper changes no more than this; a coloured area does. */
const [stepLight, stepTint] = [0.13, 0.07];
/** A dark corner is paper; a black area is not. */
const leastLight = 0.12;

/**
 * Finds how bright, and of what tint, bare paper is everywhere. Starting from cells that have the
 * commonest bright tint, paper spreads to every neighbour that differs little: shadows and the
 * fall-off towards the corners are soft and are followed, coloured areas begin with a step and are
 * left out, and the paper under them is drawn over from around them. A sketch lies in the shadow of
 * hand and phone: a smooth surface, as a lamp makes (see ../paper-surface.ts, for jars and coloured
 * blanks), does not follow the edge of one.
 */
export function paperLight(raster: LinearRaster): PaperLight {
  const cellPx = Math.max(2, Math.round(Math.max(raster.width, raster.height) / cellsAlong));
  const columns = Math.ceil(raster.width / cellPx);
  const rows = Math.ceil(raster.height / cellPx);
  const light = brightParts(raster, columns, rows, cellPx);
  const seen = spread(light, columns, rows);
  fillIn(light, seen, columns, rows);
  return { columns, rows, cellPx, light: softened(light, columns, rows), seen };
}

/** Rec. 709 luminance, never 0. */
function luminance(light: Float64Array, cell: number): number {
  const at = 3 * cell;
  return 1e-6 + 0.2126 * light[at] + 0.7152 * light[at + 1] + 0.0722 * light[at + 2];
}

/** Red and blue, each against green. */
function tintOf(light: Float64Array, cell: number): [number, number] {
  const green = light[3 * cell + 1] + 1e-6;
  return [light[3 * cell] / green, light[3 * cell + 2] / green];
}

function brightParts(
  { width, height, data }: LinearRaster,
  columns: number,
  rows: number,
  cellPx: number,
): Float64Array {
  const light = new Float64Array(3 * columns * rows);
  // In larger cells every fourth pixel tells enough.
  const step = cellPx >= 8 ? 2 : 1;
  const lumas = new Float64Array(cellPx * cellPx);
  const places = new Int32Array(cellPx * cellPx);
  for (let cell = 0; cell < columns * rows; cell++) {
    const left = (cell % columns) * cellPx;
    const top = Math.floor(cell / columns) * cellPx;
    let n = 0;
    for (let y = top; y < Math.min(height, top + cellPx); y += step) {
      for (let x = left; x < Math.min(width, left + cellPx); x += step) {
        const p = 4 * (y * width + x);
        places[n] = p;
        lumas[n++] = 0.2126 * data[p] + 0.7152 * data[p + 1] + 0.0722 * data[p + 2];
      }
    }
    const sorted = lumas.slice(0, n).sort();
    const low = sorted[Math.floor(fromShare * (n - 1))];
    const high = sorted[Math.ceil(toShare * (n - 1))];
    let count = 0;
    for (let k = 0; k < n; k++) {
      if (lumas[k] < low || lumas[k] > high) continue;
      count++;
      for (let c = 0; c < 3; c++) light[3 * cell + c] += data[places[k] + c];
    }
    for (let c = 0; c < 3; c++) light[3 * cell + c] /= count;
  }
  return light;
}

/** The commonest tint of the bright cells, brighter ones counting more, and their luminance. */
function commonPaper(
  light: Float64Array,
  count: number,
): { tint: [number, number]; usual: number } {
  const sorted = Float64Array.from({ length: count }, (_, cell) => luminance(light, cell)).sort();
  const top = sorted[Math.floor(0.95 * (count - 1))];
  const votes = new Map<number, [number, number, number, number[]]>();
  for (let cell = 0; cell < count; cell++) {
    const luma = luminance(light, cell);
    if (luma < brightFrom * top) continue;
    const [red, blue] = tintOf(light, cell);
    const key = 1000 * Math.round(red / 0.08) + Math.round(blue / 0.08);
    const vote = votes.get(key) ?? [0, 0, 0, []];
    vote[3].push(luma);
    votes.set(key, [vote[0] + luma, vote[1] + luma * red, vote[2] + luma * blue, vote[3]]);
  }
  const [weight, red, blue, lumas] = [...votes.values()].reduce((a, b) => (b[0] > a[0] ? b : a));
  // Not the brightest: that may be a white border around a grey page.
  lumas.sort((a, b) => a - b);
  const usual = lumas[Math.floor(0.7 * (lumas.length - 1))];
  return { tint: [red / weight, blue / weight], usual };
}

function spread(light: Float64Array, columns: number, rows: number): Uint8Array {
  const count = columns * rows;
  const seen = new Uint8Array(count);
  const { tint, usual } = commonPaper(light, count);
  const offTint = ([red, blue]: [number, number]): number =>
    Math.max(Math.abs(red / tint[0] - 1), Math.abs(blue / tint[1] - 1));
  const queue: number[] = [];
  for (let cell = 0; cell < count; cell++) {
    if (luminance(light, cell) < 0.75 * usual || offTint(tintOf(light, cell)) > seedTint) continue;
    seen[cell] = 1;
    queue.push(cell);
  }
  for (let at = 0; at < queue.length; at++) {
    const cell = queue[at];
    const luma = luminance(light, cell);
    const [red, blue] = tintOf(light, cell);
    for (const next of around(cell, columns, rows)) {
      if (seen[next]) continue;
      const there = luminance(light, next);
      const ratio = there / luma;
      const tintThere = tintOf(light, next);
      if (ratio < 1 - stepLight || ratio > 1 / (1 - stepLight) || there < leastLight * usual)
        continue;
      if (offTint(tintThere) > mostTint) continue;
      if (Math.abs(tintThere[0] / red - 1) > stepTint) continue;
      if (Math.abs(tintThere[1] / blue - 1) > stepTint) continue;
      seen[next] = 1;
      queue.push(next);
    }
  }
  return seen;
}

function around(cell: number, columns: number, rows: number): number[] {
  const x = cell % columns;
  const near: number[] = [];
  if (x > 0) near.push(cell - 1);
  if (x + 1 < columns) near.push(cell + 1);
  if (cell >= columns) near.push(cell - columns);
  if (cell + columns < columns * rows) near.push(cell + columns);
  return near;
}

/** Gives cells without paper the mean of those around that have some, ring by ring, then evens. */
function fillIn(light: Float64Array, seen: Uint8Array, columns: number, rows: number): void {
  const known = seen.slice();
  let open = [...known.keys()].filter((cell) => !known[cell]);
  const hidden = open;
  if (open.length === known.length) return;
  const mean = (from: number[]): number[] =>
    [0, 1, 2].map((c) => from.reduce((sum, n) => sum + light[3 * n + c], 0) / from.length);
  while (open.length > 0) {
    const now: [number, number[]][] = [];
    for (const cell of open) {
      const from = around(cell, columns, rows).filter((n) => known[n]);
      if (from.length > 0) now.push([cell, mean(from)]);
    }
    for (const [cell, colour] of now) {
      light.set(colour, 3 * cell);
      known[cell] = 1;
    }
    open = open.filter((cell) => !known[cell]);
  }
  for (let pass = 0; pass < 60; pass++) {
    for (const cell of hidden) light.set(mean(around(cell, columns, rows)), 3 * cell);
  }
}

/** Each cell with a share of its neighbours, against grain. */
function softened(light: Float64Array, columns: number, rows: number): Float64Array {
  const soft = new Float64Array(light.length);
  for (let cell = 0; cell < columns * rows; cell++) {
    const near = around(cell, columns, rows);
    for (let c = 0; c < 3; c++) {
      const sum = near.reduce((total, n) => total + light[3 * n + c], 0);
      soft[3 * cell + c] = (2 * light[3 * cell + c] + sum) / (2 + near.length);
    }
  }
  return soft;
}
