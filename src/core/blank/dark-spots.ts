import type { LinearRaster } from '../picture/sampling/linear.js';

/** A connected dark region, by its area and its first and second moments, in pixels. */
export interface DarkSpot {
  readonly area: number;
  readonly x: number;
  readonly y: number;
  /** Variances along x and y, and the covariance. */
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
  /** Least and largest distance of its pixels from its middle, in standard deviations. */
  least: number;
  most: number;
}

/** Darker than this share of the mean around it counts as dark (chosen by trial). */
const darkShare = 0.42;

/**
 * Connected dark regions of a picture, light judged against the neighbourhood so that shade does
 * not matter. Regions at the picture's border, very small and very large ones are left out.
 */
export function darkSpots(raster: LinearRaster, leastArea: number): DarkSpot[] {
  const { width, height } = raster;
  const dark = darkPixels(raster);
  const label = new Int32Array(width * height);
  const spots: DarkSpot[] = [];
  const stack = new Int32Array(width * height);
  const mostArea = 0.03 * width * height;
  for (let first = 0, next = 1; first < dark.length; first++) {
    if (!dark[first] || label[first]) continue;
    const pixels = flood(first, next++);
    if (pixels >= leastArea && pixels <= mostArea) {
      const spot = measured(stack, pixels, width, height);
      if (spot) spots.push(spot);
    }
  }
  return spots;

  /** Labels one region; its pixels are left in `stack`. */
  function flood(start: number, name: number): number {
    let filled = 1;
    stack[0] = start;
    label[start] = name;
    for (let read = 0; read < filled; read++) {
      const at = stack[read];
      const x = at % width;
      if (x > 0) visit(at - 1);
      if (x + 1 < width) visit(at + 1);
      if (at >= width) visit(at - width);
      if (at + width < dark.length) visit(at + width);
    }
    return filled;

    function visit(to: number): void {
      if (!dark[to] || label[to]) return;
      label[to] = name;
      stack[filled++] = to;
    }
  }
}

function measured(
  pixels: Int32Array,
  count: number,
  width: number,
  height: number,
): DarkSpot | undefined {
  let x = 0;
  let y = 0;
  for (let n = 0; n < count; n++) {
    const px = pixels[n] % width;
    const py = (pixels[n] - px) / width;
    if (px === 0 || py === 0 || px === width - 1 || py === height - 1) return undefined;
    x += px;
    y += py;
  }
  x /= count;
  y /= count;
  // Each pixel is a square with a variance of its own.
  let xx = count / 12;
  let xy = 0;
  let yy = count / 12;
  for (let n = 0; n < count; n++) {
    const dx = (pixels[n] % width) - x;
    const dy = Math.floor(pixels[n] / width) - y;
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
  }
  xx /= count;
  xy /= count;
  yy /= count;
  const determinant = xx * yy - xy * xy;
  let least = Infinity;
  let most = 0;
  for (let n = 0; n < count; n++) {
    const dx = (pixels[n] % width) - x;
    const dy = Math.floor(pixels[n] / width) - y;
    const squared = (yy * dx * dx - 2 * xy * dx * dy + xx * dy * dy) / determinant;
    least = Math.min(least, squared);
    most = Math.max(most, squared);
  }
  return {
    area: count,
    x: x + 0.5,
    y: y + 0.5,
    xx,
    xy,
    yy,
    least: Math.sqrt(least),
    most: Math.sqrt(most),
  };
}

function darkPixels({ width, height, data }: LinearRaster): Uint8Array {
  const light = new Float64Array(width * height);
  for (let p = 0; p < light.length; p++) {
    const [r, g, b] = [data[4 * p], data[4 * p + 1], data[4 * p + 2]];
    light[p] = 0.2126 * r + 0.7152 * g + 0.0722 * b + 1 - data[4 * p + 3];
  }
  const sums = new Float64Array((width + 1) * (height + 1));
  for (let y = 0; y < height; y++) {
    let row = 0;
    for (let x = 0; x < width; x++) {
      row += light[y * width + x];
      sums[(y + 1) * (width + 1) + x + 1] = sums[y * (width + 1) + x + 1] + row;
    }
  }
  const half = Math.max(4, Math.round(Math.max(width, height) / 14));
  const dark = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    const top = Math.max(0, y - half);
    const bottom = Math.min(height, y + half + 1);
    for (let x = 0; x < width; x++) {
      const left = Math.max(0, x - half);
      const right = Math.min(width, x + half + 1);
      const sum =
        sums[bottom * (width + 1) + right] -
        sums[top * (width + 1) + right] -
        sums[bottom * (width + 1) + left] +
        sums[top * (width + 1) + left];
      const mean = sum / ((bottom - top) * (right - left));
      if (light[y * width + x] < darkShare * mean) dark[y * width + x] = 1;
    }
  }
  return dark;
}
