import type { Picture } from '../../core/picture/picture.js';
import { findSvgRoot } from '../../core/picture/header/svg-root.js';
import { declaredSize } from '../../core/picture/svg/size.js';
import { svgPipeline } from '../svg/svg-pipeline.js';
import { sharp } from '../sharp.js';

/**
 * PNG settings for drawn output: level 3 without adaptive filters, since flat colours and letters
 * pack best unfiltered; level 6 saves a twentieth and takes three times as long.
 */
const pngOptions = { compressionLevel: 3, adaptiveFiltering: false, palette: false } as const;

/**
 * PNG bytes of one of our own drawings, `widthPx` wide, on white, without transparency and without
 * a resolution mark. The drawing needs a viewBox or width and height in whatever unit.
 */
export async function rasteriseSvg(svg: string, widthPx: number): Promise<Uint8Array> {
  const root = findSvgRoot(svg);
  const size = root === undefined || root === 'unfinished' ? undefined : declaredSize(root);
  if (size === undefined) throw new TypeError('an SVG with a viewBox or a width and height');
  const height = Math.max(1, Math.round(widthPx / size.aspect));
  return svgPipeline(svg, root as Exclude<typeof root, 'unfinished' | undefined>, {
    width: widthPx,
    height,
    viewBox: size.viewBox,
  })
    .flatten({ background: '#ffffff' })
    .removeAlpha()
    .png(pngOptions)
    .toBuffer();
}

/** PNG bytes of pixels, colour for colour; without an alpha channel when all pixels are opaque. */
export async function encodePng(picture: Picture): Promise<Uint8Array> {
  const { width, height, data } = picture;
  let opaque = true;
  for (let place = 3; opaque && place < data.length; place += 4) opaque = data[place] === 255;
  const pipeline = sharp(data, { raw: { width, height, channels: 4 } });
  return (opaque ? pipeline.removeAlpha() : pipeline)
    .png({ ...pngOptions, adaptiveFiltering: true })
    .toBuffer();
}
