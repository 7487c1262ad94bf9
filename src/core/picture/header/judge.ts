import { RondureError } from '../../errors.js';
import {
  longSidePx,
  pixelLimit,
  pixelLimitAvif,
  pixelLimitInPasses,
  pixelLimitLong,
} from '../limits.js';
import { jpegFrame } from './jpeg-frame.js';
import { pixelSize } from './pixel-size.js';
import { isRaster, sniff } from './sniff.js';
import type { PictureFormat, RasterFormat } from './sniff.js';

/** What the first bytes of a picture file tell. */
export interface PictureHeader {
  /** What the content is, whatever the file is called. `gzip` may be a packed SVG. */
  readonly format: PictureFormat | 'gzip';
  /**
   * Pixels as they are stored, before the picture is put upright; undefined for an SVG, whose size
   * is `judgeSvg`'s to tell, and where the bytes end before the size.
   */
  readonly size: { readonly width: number; readonly height: number } | undefined;
}

const others: ReadonlySet<string> = new Set<PictureFormat | 'gzip'>(['svg', 'gzip']);

/**
 * Tells before anything is decoded whether a picture file is one that is read here. Nothing but
 * the bytes is looked at; the whole file or its beginning will do.
 *
 * @param name of the file, for the sentences
 * @throws RondureError 'file-empty', 'picture-format-not-read', 'picture-too-large'
 */
export function judgePictureHeader(bytes: Uint8Array, name: string): PictureHeader {
  if (bytes.length === 0) throw new RondureError('file-empty', { name });
  const format = sniff(bytes);
  if (others.has(format)) return { format: format as 'svg' | 'gzip', size: undefined };
  if (!isRaster(format)) throw new RondureError('picture-format-not-read', { name, format });
  const size = pixelSize(bytes, format);
  if (size !== undefined) refuseTooLarge(size, name, mostPixels(bytes, format));
  return { format, size };
}

/** Throws 'picture-too-large' for more pixels than are read. */
export function refuseTooLarge(
  { width, height }: { width: number; height: number },
  name: string,
  most = pixelLimit,
): void {
  const long = Math.max(width, height) > longSidePx;
  const limit = long ? Math.min(most, pixelLimitLong) : most;
  if (width * height <= limit) return;
  const limitMegapixels = limit / 1e6;
  throw new RondureError('picture-too-large', { name, width, height, limitMegapixels });
}

/** The most pixels that are read of a picture stored like this one. */
function mostPixels(bytes: Uint8Array, format: RasterFormat): number {
  if (format === 'avif') return pixelLimitAvif;
  return isInPasses(bytes, format) ? pixelLimitInPasses : pixelLimit;
}

/** Whether the whole picture comes several times, finer each time. */
function isInPasses(bytes: Uint8Array, format: RasterFormat): boolean {
  // PNG specification, third edition, 11.2.1: the last byte of IHDR is the interlace method.
  if (format === 'png') return bytes[28] === 1;
  if (format !== 'jpeg') return false;
  const frame = jpegFrame(new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength));
  // ITU-T T.81, table B.1: SOF2, 6, 10 and 14 are progressive.
  return frame !== undefined && (frame.marker & 3) === 2;
}
