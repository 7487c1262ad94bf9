import { readBytes } from './read-bytes.js';
import { readPicture } from './read-picture.js';
import { sharp } from '../sharp.js';

/** As long as a photograph on paper needs to be, pixels: 170 mm at 300 dots an inch. */
const longestPx = 2000;

/** A photograph as a PDF takes it. */
export interface PhotoJpeg {
  readonly jpeg: Uint8Array;
  readonly widthPx: number;
  readonly heightPx: number;
}

/**
 * Reads a photograph, upright and in sRGB, without its other facts such as the place.
 *
 * @throws RondureError those of `readBytes` and `readPicture`
 */
export async function readPhoto(path: string, grey: boolean): Promise<PhotoJpeg> {
  const { width, height, data } = await readPicture(await readBytes(path), path);
  const pipeline = sharp(data, { raw: { width, height, channels: 4 } })
    .flatten({ background: '#ffffff' })
    .resize({ width: longestPx, height: longestPx, fit: 'inside', withoutEnlargement: true });
  const { data: jpeg, info } = await (grey ? pipeline.grayscale() : pipeline)
    .toColourspace('srgb')
    .jpeg({ quality: 88 })
    .toBuffer({ resolveWithObject: true });
  return { jpeg, widthPx: info.width, heightPx: info.height };
}
