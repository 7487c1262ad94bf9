import { joined } from '../../bytes.js';

/** The first bytes of every PNG. */
export const pngSignature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** A piece of a PNG (PNG specification, third edition, 5.3). */
export interface Chunk {
  readonly type: string;
  /** Offsets in the file: of the length field, of the data, and after the CRC. */
  readonly start: number;
  readonly data: Uint8Array;
  readonly end: number;
}

/** The pieces of a PNG, in order, as far as they are whole; none where these bytes are no PNG. */
export function* pngChunks(png: Uint8Array): Generator<Chunk> {
  if (pngSignature.some((byte, place) => png[place] !== byte)) return;
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  for (let start = pngSignature.length; start + 12 <= png.length;) {
    const end = start + 12 + view.getUint32(start);
    if (end > png.length) return;
    const type = String.fromCharCode(...png.subarray(start + 4, start + 8));
    yield { type, start, data: png.subarray(start + 8, end - 4), end };
    start = end;
  }
}

/** The bytes of a new piece. */
export function pngChunk(type: string, data: readonly Uint8Array[]): Uint8Array {
  const letters = Uint8Array.from(type, (letter) => letter.charCodeAt(0));
  const body = joined([letters, ...data]);
  const chunk = new Uint8Array(body.length + 8);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, body.length - 4);
  chunk.set(body, 4);
  view.setUint32(4 + body.length, crc32(body));
  return chunk;
}

const crcTable = Uint32Array.from({ length: 256 }, (_, start) => {
  let value = start;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value;
});

/** The CRC of PNG (specification, annex D; ISO 3309): unsigned 32 bits. */
export function crc32(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (let place = 0; place < bytes.length; place++)
    value = crcTable[(value ^ bytes[place]) & 255] ^ (value >>> 8);
  return (value ^ 0xffffffff) >>> 0;
}
