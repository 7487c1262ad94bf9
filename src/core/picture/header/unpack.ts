import { Gunzip, Unzlib } from 'fflate';
import { joined } from '../../bytes.js';

/** Packed bytes go in by pieces, since each can come out a thousand times as long. */
const pieceBytes = 4096;

/**
 * The content of a gzip file (RFC 1952), or undefined when it holds more than `mostBytes`.
 * Throws an Error when it is damaged, cut short or empty.
 */
export function unpackGzip(packed: Uint8Array, mostBytes: number): Uint8Array | undefined {
  const parts: Uint8Array[] = [];
  let total = 0;
  const gunzip = new Gunzip((part) => {
    total += part.length;
    // The piece is a view of memory that the next one takes again.
    if (total <= mostBytes) parts.push(part.slice());
  });
  for (let place = 0; place < packed.length && total <= mostBytes; place += pieceBytes) {
    const end = Math.min(packed.length, place + pieceBytes);
    gunzip.push(packed.subarray(place, end), end === packed.length);
  }
  if (total > mostBytes) return undefined;
  if (total === 0) throw new Error('nothing inside');
  return joined(parts);
}

/**
 * The content of a zlib stream (RFC 1950). Throws an Error when it holds more than `mostBytes`, is
 * damaged or cut short.
 */
export function unpackZlib(packed: Uint8Array, mostBytes: number): Uint8Array {
  const parts: Uint8Array[] = [];
  let total = 0;
  let finished = false;
  const stream = new Unzlib((part, last) => {
    total += part.length;
    finished ||= last;
    if (total > mostBytes) throw new RangeError('too long');
    parts.push(part);
  });
  for (let place = 0; place < packed.length; place += pieceBytes) {
    const end = Math.min(packed.length, place + pieceBytes);
    stream.push(packed.subarray(place, end), end === packed.length);
  }
  if (!finished) throw new RangeError('cut short');
  return joined(parts);
}
