import { RondureError } from '../../core/errors.js';
import type { Picture } from '../../core/picture/picture.js';
import { DrawingFailure, drawSvgApart, svgMegabytesLimit } from './draw-svg-apart.js';
import { svgLongerSidePx } from '../../core/picture/limits.js';
import { judgeSvg } from '../../core/picture/svg/judge.js';
import type { SvgVerdict } from '../../core/picture/svg/judge.js';
import { inkSize } from '../../core/picture/svg/ink-size.js';
import { fitted } from '../../core/picture/svg/size.js';
import type { SvgSize } from '../../core/picture/svg/size.js';
import { sharp } from '../sharp.js';
import { density, sizedSvg, svgOptions } from './svg-pipeline.js';

/** An SVG that takes longer than this to draw is given up. */
export const svgSecondsLimit = 15;

/**
 * Draws an SVG on a transparent ground. Width, height and viewBox of the root give shape and
 * extent; where there are none, the picture is what the ink covers. Nothing outside the text is
 * read. What may take long is drawn in another process, which ends when the time is up.
 * Throws what `judgeSvg` throws, 'svg-too-slow', 'svg-too-heavy'.
 *
 * @param seconds how long the drawing may take in all
 */
export async function drawSvg(
  text: string,
  name: string,
  seconds = svgSecondsLimit,
): Promise<Picture> {
  const verdict = judgeSvg(text, name);
  const until = performance.now() + 1000 * seconds;
  const draw = (size: SvgSize, longerSidePx: number) =>
    pixelsOf(text, verdict, size, longerSidePx, { name, seconds, until });
  return draw(verdict.size ?? (await inkSize(draw)), svgLongerSidePx);
}

async function pixelsOf(
  text: string,
  { root, plain }: SvgVerdict,
  size: SvgSize,
  longerSidePx: number,
  { name, seconds, until }: { name: string; seconds: number; until: number },
): Promise<Picture> {
  try {
    const wanted = fitted(size.aspect, longerSidePx);
    const sized = sizedSvg(text, root, { ...wanted, viewBox: size.viewBox });
    const picture = plain
      ? await drawHere(sized)
      : await drawSvgApart(sized, density, (until - performance.now()) / 1000);
    const { width, height } = picture;
    if (width !== wanted.width || height !== wanted.height)
      throw new Error(`drawn as ${width} × ${height} pixels`);
    return picture;
  } catch (error) {
    if (error instanceof DrawingFailure && error.why === 'late')
      throw new RondureError('svg-too-slow', { name, seconds }, { cause: error });
    if (error instanceof DrawingFailure && error.why === 'heavy')
      throw new RondureError(
        'svg-too-heavy',
        { name, megabytes: svgMegabytesLimit },
        { cause: error },
      );
    throw damaged(name, (error as Error).message.split('\n')[0], error);
  }
}

/** A process of its own takes a fifth of a second to start: plain drawings do without. */
async function drawHere(svg: string): Promise<Picture> {
  const { data, info } = await sharp(Buffer.from(svg), svgOptions)
    .toColourspace('srgb')
    .ensureAlpha()
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data };
}

function damaged(name: string, detail: string, cause?: unknown): RondureError {
  return new RondureError('picture-damaged', { name, format: 'svg', detail }, { cause });
}
