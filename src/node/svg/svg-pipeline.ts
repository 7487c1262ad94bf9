import { withRootSize } from '../../core/picture/header/svg-root.js';
import type { SvgRoot } from '../../core/picture/header/svg-root.js';
import { pixelLimit } from '../../core/picture/limits.js';
import { sharp } from '../sharp.js';

/** What an SVG's root is told to be: how large in pixels, and which part of the drawing. */
interface DrawnSize {
  readonly width: number;
  readonly height: number;
  readonly viewBox: string;
}

/** libvips draws at density/72, librsvg counts millimetres by the same density: 96 is CSS's own. */
export const density = 96;
const densityScale = density / 72;

export const svgOptions = {
  density,
  limitInputPixels: pixelLimit,
  unlimited: true,
  failOn: 'error',
} as const;

/** A sharp pipeline for one of our own drawings at an exact size, to go on with. */
export function svgPipeline(text: string, root: SvgRoot, size: DrawnSize) {
  return sharp(Buffer.from(sizedSvg(text, root, size)), svgOptions);
}

/** The same SVG with a root that libvips draws at this size. */
export function sizedSvg(text: string, root: SvgRoot, size: DrawnSize): string {
  return withRootSize(text, root, {
    width: size.width / densityScale,
    height: size.height / densityScale,
    viewBox: size.viewBox,
  });
}
