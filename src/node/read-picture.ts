import { gunzipSync } from 'node:zlib';
import { RondureError } from '../core/errors.js';
import type { Picture } from '../core/picture.js';
import { drawSvg } from './draw-svg.js';
import { byteLimit } from './read-bytes.js';
import { pixelLimit, sharp } from './sharp.js';
import { sniff } from './sniff.js';
import type { PictureFormat } from './sniff.js';
import { decodeXml } from './svg-root.js';

/**
 * Decodes a picture: upright (EXIF orientation honoured), sRGB (embedded profiles honoured),
 * 8-bit RGBA; of an animation or a document of several pages the first. The content decides what
 * it is, `name` only appears in errors. An SVG is drawn with its longer side at 1600 pixels.
 *
 * Throws 'file-empty', 'picture-format-not-read', 'picture-damaged', 'picture-too-large',
 * 'picture-invisible', 'svg-entities', 'svg-too-slow'.
 */
export async function readPicture(bytes: Uint8Array, name: string): Promise<Picture> {
  if (bytes.length === 0) throw new RondureError('file-empty', { name });
  let content = bytes;
  let format = sniff(content);
  if (format === 'gzip') {
    content = unzipped(content, name);
    if (sniff(content) !== 'svg')
      throw new RondureError('picture-format-not-read', { name, format });
    format = 'svg';
  }
  const read = format === 'svg' ? drawSvg(decodeXml(content), name) : decode(content, format, name);
  const picture = await read;
  if (!isVisible(picture.data)) throw new RondureError('picture-invisible', { name });
  return picture;
}

const readable: ReadonlySet<string> = new Set<PictureFormat>([
  'jpeg',
  'png',
  'webp',
  'gif',
  'tiff',
  'avif',
]);

async function decode(
  bytes: Uint8Array,
  format: ReturnType<typeof sniff>,
  name: string,
): Promise<Picture> {
  if (!readable.has(format)) throw new RondureError('picture-format-not-read', { name, format });
  try {
    // The header alone tells the size; nothing is allocated for the pixels yet.
    const { width, height } = await sharp(bytes, { limitInputPixels: false }).metadata();
    if (width * height > pixelLimit)
      throw new RondureError('picture-too-large', {
        name,
        width,
        height,
        limitMegapixels: pixelLimit / 1e6,
      });
    const { data, info } = await sharp(bytes, { failOn: 'error', limitInputPixels: pixelLimit })
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

function unzipped(bytes: Uint8Array, name: string): Uint8Array {
  try {
    return gunzipSync(bytes, { maxOutputLength: byteLimit });
  } catch (error) {
    const detail = (error as Error).message;
    throw new RondureError('picture-damaged', { name, format: 'gzip', detail }, { cause: error });
  }
}

function isVisible(data: Picture['data']): boolean {
  for (let place = 3; place < data.length; place += 4) if (data[place] !== 0) return true;
  return false;
}
