import { RondureError } from '../../core/errors.js';
import { withoutFurtherFrames } from '../../core/picture/header/gif-frames.js';
import { judgePictureHeader } from '../../core/picture/header/judge.js';
import { sniff } from '../../core/picture/header/sniff.js';
import type { RasterFormat } from '../../core/picture/header/sniff.js';
import { withoutFurtherPages } from '../../core/picture/header/tiff-size.js';
import { unpackGzip } from '../../core/picture/header/unpack.js';
import { pixelLimit, svgLimitMegabytes } from '../../core/picture/limits.js';
import type { Picture } from '../../core/picture/picture.js';
import { decodeXml } from '../../core/picture/header/decode-xml.js';
import { drawSvg } from '../svg/draw-svg.js';
import { sharp } from '../sharp.js';

/**
 * Decodes a picture: upright (EXIF orientation honoured), sRGB (embedded profiles honoured),
 * 8-bit RGBA; of an animation or a document of several pages the first. The content decides what
 * it is, `name` only appears in errors. An SVG is drawn with its longer side at 1600 pixels.
 *
 * Throws 'file-empty', 'picture-format-not-read', 'picture-damaged', 'picture-too-large',
 * 'picture-invisible', 'file-too-big', 'svg-entities', 'svg-nested', 'svg-pictures-too-large',
 * 'svg-too-heavy', 'svg-too-slow'.
 */
export async function readPicture(bytes: Uint8Array, name: string): Promise<Picture> {
  const { format } = judgePictureHeader(bytes, name);
  const read =
    format === 'svg' || format === 'gzip'
      ? drawSvg(decodeXml(format === 'gzip' ? unpackedSvg(bytes, name) : bytes), name)
      : decode(bytes, format, name);
  const picture = await read;
  if (!isVisible(picture.data)) throw new RondureError('picture-invisible', { name });
  return picture;
}

async function decode(bytes: Uint8Array, format: RasterFormat, name: string): Promise<Picture> {
  try {
    const one = firstOf(bytes, format);
    const { data, info } = await sharp(one, { failOn: 'error', limitInputPixels: pixelLimit })
      .autoOrient()
      .toColourspace('srgb')
      .ensureAlpha()
      .raw({ depth: 'uchar' })
      .toBuffer({ resolveWithObject: true });
    if (data.length !== 4 * info.width * info.height)
      throw new Error(`${info.channels} channels where 4 were expected`);
    return { width: info.width, height: info.height, data };
  } catch (error) {
    if (error instanceof RondureError) throw error;
    const detail = (error as Error).message.split('\n')[0];
    throw new RondureError('picture-damaged', { name, format, detail }, { cause: error });
  }
}

/** Of several pages or frames the first, so that nobody counts the others. */
function firstOf(bytes: Uint8Array, format: RasterFormat): Uint8Array {
  if (format === 'tiff') return withoutFurtherPages(bytes);
  return format === 'gif' ? withoutFurtherFrames(bytes) : bytes;
}

function unpackedSvg(bytes: Uint8Array, name: string): Uint8Array {
  const damaged = (detail: string, cause?: unknown) =>
    new RondureError('picture-damaged', { name, format: 'gzip', detail }, { cause });
  let content: Uint8Array | undefined;
  try {
    content = unpackGzip(bytes, 1e6 * svgLimitMegabytes);
  } catch (error) {
    throw damaged((error as Error).message, error);
  }
  if (content === undefined)
    throw new RondureError('file-too-big', {
      name,
      megabytes: svgLimitMegabytes + 1,
      limitMegabytes: svgLimitMegabytes,
    });
  if (sniff(content) === 'svg') return content;
  throw new RondureError('picture-format-not-read', { name, format: 'gzip' });
}

function isVisible(data: Picture['data']): boolean {
  for (let place = 3; place < data.length; place += 4) if (data[place] !== 0) return true;
  return false;
}
