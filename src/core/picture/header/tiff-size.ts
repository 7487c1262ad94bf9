import type { PixelSize } from '../picture.js';

const [widthTag, heightTag] = [256, 257];
const [short, long, long8] = [3, 4, 16];

/** Where a TIFF's first directory lies, and how its numbers are written. */
export interface TiffDirectory {
  readonly littleEndian: boolean;
  /** Offset of the first entry, how many there are, and bytes of an entry and of an offset. */
  readonly first: number;
  readonly count: number;
  readonly entryBytes: 12 | 20;
  readonly offsetBytes: 4 | 8;
}

/** TIFF 6.0 section 2, and its 64-bit kind (43 in place of 42). Throws RangeError past the end. */
export function tiffDirectory(view: DataView): TiffDirectory {
  const littleEndian = view.getUint8(0) === 0x49;
  if (view.getUint16(2, littleEndian) === 42) {
    const start = view.getUint32(4, littleEndian);
    const count = view.getUint16(start, littleEndian);
    return { littleEndian, first: start + 2, count, entryBytes: 12, offsetBytes: 4 };
  }
  const start = Number(view.getBigUint64(8, littleEndian));
  const count = Number(view.getBigUint64(start, littleEndian));
  return { littleEndian, first: start + 8, count, entryBytes: 20, offsetBytes: 8 };
}

/**
 * The same file with its first page alone: libraries count all pages, one by one, before they read
 * any. A copy where there are more.
 */
export function withoutFurtherPages(bytes: Uint8Array): Uint8Array {
  try {
    const { first, count, entryBytes, offsetBytes } = tiffDirectory(
      new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength),
    );
    const next = first + count * entryBytes;
    if (bytes.subarray(next, next + offsetBytes).every((byte) => byte === 0)) return bytes;
    const copy = bytes.slice();
    copy.fill(0, next, next + offsetBytes);
    return copy;
  } catch (error) {
    // The directory lies past the end: whoever decodes it will say so.
    if (error instanceof RangeError) return bytes;
    throw error;
  }
}

/** The size of the first page. */
export function tiffSize(view: DataView): PixelSize | undefined {
  const { littleEndian, first, count, entryBytes } = tiffDirectory(view);
  let [width, height] = [0, 0];
  for (let entry = 0; entry < count; entry++) {
    const place = first + entry * entryBytes;
    const tag = view.getUint16(place, littleEndian);
    if (tag !== widthTag && tag !== heightTag) continue;
    const value = place + entryBytes - (entryBytes === 12 ? 4 : 8);
    const side = number(view, view.getUint16(place + 2, littleEndian), value, littleEndian);
    if (tag === widthTag) width = side;
    else height = side;
    if (width > 0 && height > 0) return { width, height };
  }
  return undefined;
}

function number(view: DataView, type: number, place: number, littleEndian: boolean): number {
  if (type === short) return view.getUint16(place, littleEndian);
  if (type === long) return view.getUint32(place, littleEndian);
  return type === long8 ? Number(view.getBigUint64(place, littleEndian)) : 0;
}
