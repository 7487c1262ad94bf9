import { RondureError } from '../../core/errors.js';
import type { SvgVerdict } from '../../core/picture/svg/judge.js';
import type { Picture } from '../../core/picture/picture.js';
import { svgLongerSidePx } from '../../core/picture/limits.js';
import { inkSize } from '../../core/picture/svg/ink-size.js';
import { withRootSize } from '../../core/picture/header/svg-root.js';
import { fitted } from '../../core/picture/svg/size.js';
import type { SvgSize } from '../../core/picture/svg/size.js';

const secondsLimit = 20;

/**
 * Draws an SVG that the guard of the command line found sound, on a transparent ground; as an
 * image it reads nothing beside itself and runs no script.
 *
 * @throws RondureError `picture-damaged`, `svg-too-slow`
 */
export async function drawSvg(
  text: string,
  { root, size }: SvgVerdict,
  name: string,
): Promise<Picture> {
  const late = new Promise<'late'>((done) => setTimeout(() => done('late'), secondsLimit * 1000));
  const draw = async ({ aspect, viewBox }: SvgSize, longerSidePx: number): Promise<Picture> => {
    const { width, height } = fitted(aspect, longerSidePx);
    const sized = withRootSize(text, root, { width, height, viewBox });
    const image = new Image();
    image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(sized)}`;
    try {
      if ((await Promise.race([image.decode(), late])) === 'late') {
        throw new RondureError('svg-too-slow', { name, seconds: secondsLimit });
      }
    } catch (cause) {
      if (cause instanceof RondureError) throw cause;
      const detail = (cause as Error).message;
      throw new RondureError('picture-damaged', { name, format: 'svg', detail });
    }
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    const context = canvas.getContext('2d', { willReadFrequently: true })!;
    context.drawImage(image, 0, 0, width, height);
    return { width, height, data: context.getImageData(0, 0, width, height).data };
  };
  return draw(size ?? (await inkSize(draw)), svgLongerSidePx);
}
