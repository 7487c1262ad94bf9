import { RondureError } from '../core/errors.js';
import type { Picture } from '../core/picture.js';
import { pixelLimit, sharp } from './sharp.js';
import { guardSvg } from './svg-guard.js';
import { findSvgRoot, withRootSize } from './svg-root.js';
import type { SvgRoot } from './svg-root.js';
import { declaredSize, fitted } from './svg-size.js';
import type { SvgExtent, SvgSize } from './svg-size.js';

/** The longer side of a drawn SVG, whatever size it declares. */
export const svgLongerSidePx = 1600;
/** An SVG that takes longer than this to draw is given up. */
export const svgSecondsLimit = 20;

/** libvips draws at density/72, librsvg counts millimetres by the same density: 96 is CSS's own. */
const density = 96;
const densityScale = density / 72;

/** An SVG without width, height and viewBox is looked for between these coordinates, both ways. */
const lookUnits = 4096;
/** The size of a picture that declares none, when its ink fills every bound: CSS 2.2, 10.3.2. */
const fallback: SvgSize = { aspect: 2, viewBox: '0 0 300 150' };

/**
 * Draws an SVG on a transparent ground. Width, height and viewBox of the root give shape and
 * extent; where there are none, the picture is what the ink covers. Nothing outside the text is
 * read. Throws 'svg-entities', 'svg-too-slow', 'picture-damaged', 'picture-too-large'.
 */
export async function drawSvg(text: string, name: string): Promise<Picture> {
  await guardSvg(text, name);
  const root = findSvgRoot(text);
  if (root === undefined || root === 'unfinished') throw damaged(name, 'no svg element');
  const size = declaredSize(root) ?? (await inkSize(text, root, name));
  return pixelsOf(text, root, size, svgLongerSidePx, name);
}

/** PNG or pixels of an SVG at an exact size: a sharp pipeline to go on with. */
export function svgPipeline(
  text: string,
  root: SvgRoot,
  size: { width: number; height: number; viewBox: string },
) {
  const sized = withRootSize(text, root, {
    width: size.width / densityScale,
    height: size.height / densityScale,
    viewBox: size.viewBox,
  });
  const options = { density, limitInputPixels: pixelLimit, unlimited: true } as const;
  return sharp(Buffer.from(sized), { ...options, failOn: 'error' });
}

async function pixelsOf(
  text: string,
  root: SvgRoot,
  size: SvgSize,
  longerSidePx: number,
  name: string,
): Promise<Picture> {
  try {
    const wanted = fitted(size.aspect, longerSidePx);
    const drawing = svgPipeline(text, root, { ...wanted, viewBox: size.viewBox })
      .toColourspace('srgb')
      .ensureAlpha()
      .raw({ depth: 'uchar' })
      .timeout({ seconds: svgSecondsLimit })
      .toBuffer({ resolveWithObject: true });
    const { data, info } = await within(svgSecondsLimit, drawing);
    const { width, height } = info;
    if (width !== wanted.width || height !== wanted.height || data.length !== 4 * width * height)
      throw new Error(`drawn as ${width} × ${height} pixels`);
    return { width, height, data };
  } catch (error) {
    const detail = (error as Error).message.split('\n')[0];
    if (/timeout/i.test(detail))
      throw new RondureError('svg-too-slow', { name, seconds: svgSecondsLimit }, { cause: error });
    throw damaged(name, detail, error);
  }
}

/** sharp looks at its own time limit only between strips of the picture, which can take minutes. */
async function within<T>(seconds: number, work: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error('timeout')), seconds * 1000);
  });
  try {
    return await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}

/** Looks for the ink twice: coarsely over the whole plane, then closely around what was found. */
async function inkSize(text: string, root: SvgRoot, name: string): Promise<SvgSize> {
  let extent: SvgExtent = {
    x: -lookUnits,
    y: -lookUnits,
    width: 2 * lookUnits,
    height: 2 * lookUnits,
  };
  for (const longerSidePx of [1024, 1024]) {
    const viewBox = `${extent.x} ${extent.y} ${extent.width} ${extent.height}`;
    const aspect = extent.width / extent.height;
    const picture = await pixelsOf(text, root, { aspect, viewBox }, longerSidePx, name);
    const ink = inkBounds(picture);
    if (ink === undefined || touchesEdge(ink, picture)) return fallback;
    const unit = extent.width / picture.width;
    // One pixel more on each side: what the edge pixels hold in part.
    extent = {
      x: extent.x + (ink.x - 1) * unit,
      y: extent.y + (ink.y - 1) * unit,
      width: (ink.width + 2) * unit,
      height: (ink.height + 2) * unit,
    };
  }
  const { x, y, width, height } = extent;
  return { aspect: width / height, viewBox: `${x} ${y} ${width} ${height}` };
}

function touchesEdge(ink: SvgExtent, { width, height }: Picture): boolean {
  return ink.x === 0 || ink.y === 0 || ink.x + ink.width === width || ink.y + ink.height === height;
}

function inkBounds({ width, height, data }: Picture): SvgExtent | undefined {
  let [left, top, right, bottom] = [width, height, -1, -1];
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      if (data[4 * (y * width + x) + 3] === 0) continue;
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = y;
    }
  if (right < 0) return undefined;
  return { x: left, y: top, width: right - left + 1, height: bottom - top + 1 };
}

function damaged(name: string, detail: string, cause?: unknown): RondureError {
  return new RondureError('picture-damaged', { name, format: 'svg', detail }, { cause });
}
