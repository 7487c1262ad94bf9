import type { Picture } from '../../src/core/picture/picture.js';

export type Rgba = readonly [number, number, number, number?];

/** A picture whose every pixel is `colour(x, y)`, x and y the pixel's middle. */
export function paint(
  width: number,
  height: number,
  colour: (x: number, y: number) => Rgba,
): Picture {
  const data = new Uint8Array(4 * width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [r, g, b, a = 255] = colour(x + 0.5, y + 0.5);
      data.set([r, g, b, a], 4 * (y * width + x));
    }
  }
  return { width, height, data };
}

/** Whole numbers that look random and are the same every time (Numerical Recipes' generator). */
export function sequence(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}
