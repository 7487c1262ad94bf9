import { pixelLimit, pixelLimitAvif, pixelLimitInPasses } from '../limits.js';
import { jpegFrame } from './jpeg-frame.js';
import type { RasterFormat } from './sniff.js';

/** The most pixels that are read of a picture stored like this one. */
export function mostPixels(bytes: Uint8Array, format: RasterFormat): number {
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
