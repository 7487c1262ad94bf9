import type { Picture } from '../../core/picture/picture.js';
import { screenSize } from '../picture-in/screen-size.js';

const kept = new WeakMap<Picture, HTMLCanvasElement>();
const smaller = new WeakMap<Picture, Picture>();

/** Says how a large picture looks on the screen. */
export const keepScreenCopy = (picture: Picture, screen: Picture): void =>
  void smaller.set(picture, screen);

/** A picture for the screen. */
export function pictureCanvas(picture: Picture): HTMLCanvasElement {
  let canvas = kept.get(picture);
  if (!canvas) {
    const screen = smaller.get(picture);
    canvas = canvasOf(screen ?? picture);
    const size = screenSize(canvas.width, canvas.height);
    if (size) canvas = drawnSmaller(canvas, size);
    smaller.delete(picture);
    kept.set(picture, canvas);
  }
  return canvas;
}

function canvasOf({ width, height, data }: Picture): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const pixels = new Uint8ClampedArray(data.buffer as ArrayBuffer, data.byteOffset, data.length);
  canvas.getContext('2d')!.putImageData(new ImageData(pixels, width), 0, 0);
  return canvas;
}

function drawnSmaller(
  from: HTMLCanvasElement,
  { width, height }: { width: number; height: number },
): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d')!;
  context.imageSmoothingQuality = 'high';
  context.drawImage(from, 0, 0, width, height);
  return canvas;
}

let veil: { of: Picture; canvas: HTMLCanvasElement } | undefined;

/** What was brushed over, as a white veil with dark dots: seen on light beads and on dark ones. */
export function mindedCanvas(mask: Picture): HTMLCanvasElement {
  if (veil?.of === mask) return veil.canvas;
  const { width, height, data } = mask;
  const shown = new Uint8Array(4 * width * height);
  for (let p = 0; p < width * height; p++) {
    if (data[4 * p] === 0) continue;
    const x = p % width;
    const dot = x % 12 < 4 && ((p - x) / width) % 12 < 4;
    shown.set(dot ? [20, 20, 20, 230] : [255, 255, 255, 130], 4 * p);
  }
  veil = { of: mask, canvas: canvasOf({ width, height, data: shown }) };
  return veil.canvas;
}
