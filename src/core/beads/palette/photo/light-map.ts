import { srgbToLinear } from '../../../colour/srgb.js';
import type { Picture } from '../../../picture/picture.js';

/** A picture as linear light, 3 values a pixel (0..1), rows from the top; length 3·width·height. */
export interface LightMap {
  readonly width: number;
  readonly height: number;
  readonly light: Float64Array;
}

/** Averages whole blocks of pixels so that neither side exceeds `mostPx`; alpha lies over white. */
export function lightMap(picture: Picture, mostPx: number): LightMap {
  const factor = Math.max(1, Math.ceil(Math.max(picture.width, picture.height) / mostPx));
  const width = Math.max(1, Math.floor(picture.width / factor));
  const height = Math.max(1, Math.floor(picture.height / factor));
  const across = Math.min(factor, picture.width);
  const down = Math.min(factor, picture.height);
  const light = new Float64Array(3 * width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const to = 3 * (y * width + x);
      for (let dy = 0; dy < down; dy++) {
        let from = 4 * ((y * factor + dy) * picture.width + x * factor);
        for (let dx = 0; dx < across; dx++, from += 4) {
          const alpha = picture.data[from + 3] / 255;
          for (let c = 0; c < 3; c++) {
            light[to + c] += alpha * srgbToLinear[picture.data[from + c]] + 1 - alpha;
          }
        }
      }
      for (let c = 0; c < 3; c++) light[to + c] /= across * down;
    }
  }
  return { width, height, light };
}
