import { srgbToLinear } from '../colour/srgb.js';
import type { Picture } from '../picture/picture.js';
import { seenAt } from '../homography.js';
import type { Homography } from '../homography.js';
import type { PageLight } from './paper-white.js';

/** Looks up a photograph at points of the page: linear light between the four nearest pixels. */
export function pageLight(picture: Picture, view: Homography): PageLight {
  const { width, height, data } = picture;
  return (xMm, yMm) => {
    const [u, v] = seenAt(view, xMm, yMm);
    const x = u - 0.5;
    const y = v - 0.5;
    if (!(x >= 0 && y >= 0 && x <= width - 1 && y <= height - 1)) return undefined;
    const left = Math.min(width - 2, Math.floor(x));
    const top = Math.min(height - 2, Math.floor(y));
    if (left < 0 || top < 0) return undefined;
    const seen: [number, number, number] = [0, 0, 0];
    for (let corner = 0; corner < 4; corner++) {
      const px = left + (corner & 1);
      const py = top + (corner >> 1);
      const share = (1 - Math.abs(px - x)) * (1 - Math.abs(py - y));
      const at = 4 * (py * width + px);
      const alpha = data[at + 3] / 255;
      for (let c = 0; c < 3; c++) {
        seen[c] += share * (alpha * srgbToLinear[data[at + c]] + 1 - alpha);
      }
    }
    return seen;
  };
}
