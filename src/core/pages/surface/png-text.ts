import { zlibSync } from 'fflate';
import { joined } from '../../bytes.js';
import { RondureError } from '../../errors.js';
import { crc32, pngChunk, pngChunks, pngSignature } from '../../picture/header/png-chunks.js';
import type { Chunk } from '../../picture/header/png-chunks.js';
import { unpackZlib } from '../../picture/header/unpack.js';

/** Keyword of the text chunk in which chart.png carries its pattern. */
export const patternKeyword = 'rondure-pattern';
/** No text of ours is longer; a swollen one is refused while it is unpacked. */
const textLimitBytes = 32e6;

/**
 * The same PNG with a text inside: one compressed iTXt chunk (PNG specification, third edition,
 * 11.3.3.4) before the pixels. A text under the same keyword is replaced. The same input gives the
 * same bytes everywhere, since the packing is done by fflate and not by the machine's zlib.
 *
 * `keyword`: 1 to 79 printable Latin-1 letters without leading, trailing or double spaces.
 * Throws TypeError when `png` is no PNG or the keyword is not allowed.
 */
export function withPngText(png: Uint8Array, keyword: string, text: string): Uint8Array {
  return pngText(keyword, text).into(png);
}

/** The text of `withPngText`, packed before there is a PNG that it goes into. */
export function pngText(keyword: string, text: string): { into(png: Uint8Array): Uint8Array } {
  if (!isKeyword(keyword)) throw new TypeError(`no PNG keyword: ${keyword}`);
  const chunk = textChunk(keyword, text);
  return { into: (png) => withChunk(png, chunk, (older) => textKeyword(older) === keyword) };
}

/**
 * The same PNG with its true size inside, so that it prints at 100 % (pHYs chunk, PNG
 * specification, third edition, 11.3.4.3).
 *
 * @param pxPerMm pixels a millimetre, the same both ways
 */
export function withPngScale(png: Uint8Array, pxPerMm: number): Uint8Array {
  const data = new Uint8Array(9);
  const view = new DataView(data.buffer);
  view.setUint32(0, Math.round(pxPerMm * 1000));
  view.setUint32(4, Math.round(pxPerMm * 1000));
  view.setUint8(8, 1); // the unit is the metre
  return withChunk(png, pngChunk('pHYs', [data]), (chunk) => chunk.type === 'pHYs');
}

/** Puts a chunk before the pixels and drops those it replaces. */
function withChunk(
  png: Uint8Array,
  added: Uint8Array,
  replaces: (chunk: Chunk) => boolean,
): Uint8Array {
  const chunks = [...pngChunks(png)];
  const pixels = chunks.find((chunk) => chunk.type === 'IDAT');
  if (pixels === undefined) throw new TypeError('a PNG with pixels was expected');
  const kept = chunks.filter((chunk) => !replaces(chunk));
  return joined([
    png.subarray(0, pngSignature.length),
    ...kept.filter((chunk) => chunk.start < pixels.start).map((chunk) => whole(png, chunk)),
    added,
    ...kept.filter((chunk) => chunk.start >= pixels.start).map((chunk) => whole(png, chunk)),
  ]);
}

/**
 * The text under a keyword in an iTXt chunk, packed or not; undefined when these bytes are no PNG
 * or hold no such text. Throws 'png-text-damaged' when it is there but broken.
 */
export function readPngText(png: Uint8Array, keyword: string): string | undefined {
  for (const chunk of pngChunks(png)) {
    if (textKeyword(chunk) !== keyword) continue;
    const damaged = () => new RondureError('png-text-damaged', { keyword });
    const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
    if (crc32(png.subarray(chunk.start + 4, chunk.end - 4)) !== view.getUint32(chunk.end - 4))
      throw damaged();
    const packedAt = keyword.length + 1;
    const languageEnd = chunk.data.indexOf(0, packedAt + 2);
    const translatedEnd = languageEnd < 0 ? -1 : chunk.data.indexOf(0, languageEnd + 1);
    const [packed, method] = chunk.data.subarray(packedAt);
    if (translatedEnd < 0 || packed > 1 || method !== 0) throw damaged();
    const body = chunk.data.subarray(translatedEnd + 1);
    try {
      const bytes = packed === 1 ? unpackZlib(body, textLimitBytes) : body;
      return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    } catch {
      throw damaged();
    }
  }
  return undefined;
}

const whole = (png: Uint8Array, chunk: Chunk) => png.subarray(chunk.start, chunk.end);

function textKeyword(chunk: Chunk): string | undefined {
  const end = chunk.type === 'iTXt' ? chunk.data.indexOf(0) : -1;
  return end < 1 || end > 79 ? undefined : String.fromCharCode(...chunk.data.subarray(0, end));
}

const isKeyword = (keyword: string) =>
  /^[\x20-\x7e\xa1-\xff]{1,79}$/.test(keyword) && !/^ | $| {2}/.test(keyword);

function textChunk(keyword: string, text: string): Uint8Array {
  const name = Uint8Array.from(keyword, (letter) => letter.charCodeAt(0));
  const packed = zlibSync(new TextEncoder().encode(text), { level: 1 });
  // keyword, 0, packed, method 0, no language, no translated keyword, text
  return pngChunk('iTXt', [name, Uint8Array.of(0, 1, 0, 0, 0), packed]);
}
