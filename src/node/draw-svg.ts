import { RondureError } from '../core/errors.js';
import type { Picture } from '../core/picture.js';
import { DrawingFailure, drawSvgApart } from './draw-svg-apart.js';
import { isPlain } from './svg-plain.js';
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
 * read. What may take long is drawn in another process, which ends when the time is up.
 * Throws 'svg-entities', 'svg-too-slow', 'picture-damaged', 'picture-too-large'.
 *
 * @param seconds how long the drawing may take in all
 */
export async function drawSvg(
  text: string,
  name: string,
  seconds = svgSecondsLimit,
): Promise<Picture> {
  await guardSvg(text, name);
  const root = findSvgRoot(text);
  if (root === undefined || root === 'unfinished') throw damaged(name, 'no svg element');
  const until = performance.now() + 1000 * seconds;
  const draw = (size: SvgSize, longerSidePx: number) =>
    pixelsOf(text, root, size, longerSidePx, { name, seconds, until });
  return draw(declaredSize(root) ?? (await inkSize(draw)), svgLongerSidePx);
}

/** A sharp pipeline for one of our own drawings at an exact size, to go on with. */
export function svgPipeline(
  text: string,
  root: SvgRoot,
  size: { width: number; height: number; viewBox: string },
) {
  return sharp(Buffer.from(sizedSvg(text, root, size)), { ...svgOptions, failOn: 'error' });
}

const svgOptions = { density, limitInputPixels: pixelLimit, unlimited: true } as const;

function sizedSvg(
  text: string,
  root: SvgRoot,
  size: { width: number; height: number; viewBox: string },
): string {
  return withRootSize(text, root, {
    width: size.width / densityScale,
    height: size.height / densityScale,
    viewBox: size.viewBox,
  });
}

async function pixelsOf(
  text: string,
  root: SvgRoot,
  size: SvgSize,
  longerSidePx: number,
  { name, seconds, until }: { name: string; seconds: number; until: number },
): Promise<Picture> {
  try {
    const wanted = fitted(size.aspect, longerSidePx);
    const sized = sizedSvg(text, root, { ...wanted, viewBox: size.viewBox });
    const picture = isPlain(text)
      ? await drawHere(sized)
      : await drawSvgApart(sized, density, (until - performance.now()) / 1000);
    const { width, height } = picture;
    if (width !== wanted.width || height !== wanted.height)
      throw new Error(`drawn as ${width} × ${height} pixels`);
    return picture;
  } catch (error) {
    if (error instanceof DrawingFailure && error.why === 'late')
      throw new RondureError('svg-too-slow', { name, seconds }, { cause: error });
    throw damaged(name, (error as Error).message.split('\n')[0], error);
  }
}

/** A process of its own takes a fifth of a second to start: plain drawings do without. */
async function drawHere(svg: string): Promise<Picture> {
  const { data, info } = await sharp(Buffer.from(svg), { ...svgOptions, failOn: 'error' })
    .toColourspace('srgb')
    .ensureAlpha()
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data };
}

/** Looks for the ink twice: coarsely over the whole plane, then closely around what was found. */
async function inkSize(
  draw: (size: SvgSize, longerSidePx: number) => Promise<Picture>,
): Promise<SvgSize> {
  let extent: SvgExtent = {
    x: -lookUnits,
    y: -lookUnits,
    width: 2 * lookUnits,
    height: 2 * lookUnits,
  };
  for (const longerSidePx of [1024, 1024]) {
    const viewBox = `${extent.x} ${extent.y} ${extent.width} ${extent.height}`;
    const aspect = extent.width / extent.height;
    const picture = await draw({ aspect, viewBox }, longerSidePx);
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
