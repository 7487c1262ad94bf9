import type { RasterFormat } from './sniff.js';
import { avifSize } from './avif-size.js';
import { jpegFrame } from './jpeg-frame.js';
import { tiffSize } from './tiff-size.js';
import type { PixelSize } from '../picture.js';

/** Where a format keeps its size. Undefined where the bytes end before it. */
const readers: Record<RasterFormat, (bytes: DataView) => PixelSize | undefined> = {
  png: pngSize,
  jpeg: jpegSize,
  gif: gifSize,
  webp: webpSize,
  tiff: tiffSize,
  avif: avifSize,
};

/**
 * The size that a picture's header tells, of an animation or a document of several pages the
 * first's; undefined where the bytes end before it. Takes no longer for a header that is made to
 * mislead: every step goes forward.
 */
export function pixelSize(bytes: Uint8Array, format: RasterFormat): PixelSize | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    const size = readers[format](view);
    return size !== undefined && size.width > 0 && size.height > 0 ? size : undefined;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** PNG specification 11.2.2: IHDR comes first. */
function pngSize(view: DataView): PixelSize {
  return { width: view.getUint32(16), height: view.getUint32(20) };
}

/** ITU-T T.81, B.2.2: length, precision, height, width. */
function jpegSize(view: DataView): PixelSize | undefined {
  const frame = jpegFrame(view);
  if (!frame) return undefined;
  return { width: view.getUint16(frame.place + 5), height: view.getUint16(frame.place + 3) };
}

/** GIF89a, section 18: the logical screen. */
function gifSize(view: DataView): PixelSize {
  return { width: view.getUint16(6, true), height: view.getUint16(8, true) };
}

/** RFC 9649, 2.5 to 2.7: by the first chunk; RFC 6386, 9.1 for a lossy one's frame header. */
function webpSize(view: DataView): PixelSize | undefined {
  const at = (place: number) => view.getUint32(place);
  const [lossy, lossless, extended] = [0x56503820, 0x5650384c, 0x56503858];
  if (at(12) === lossy) {
    const side = (place: number) => view.getUint16(place, true) & 0x3fff;
    return { width: side(26), height: side(28) };
  }
  if (at(12) === lossless) {
    const bits = view.getUint32(21, true);
    return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
  }
  if (at(12) !== extended) return undefined;
  const side = (place: number) => (view.getUint32(place - 1, true) >>> 8) + 1;
  return { width: side(24), height: side(27) };
}
