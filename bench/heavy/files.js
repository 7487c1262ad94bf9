// Files other than drawings that would eat the machine. tests/heavy-input.test.ts and
// bench/heavy-inputs.js read them.
import { constants, crc32, deflateRawSync, deflateSync } from 'node:zlib';

/** One pixel a page, each page naming the next (TIFF 6.0, section 2). */
export function tiffOfPages(pages) {
  const entries = 8;
  const each = 2 + 12 * entries + 4;
  const file = Buffer.alloc(12 + pages * each);
  file.write('II*\0', 'latin1');
  file.writeUInt32LE(12, 4);
  const tags = [[256, 1], [257, 1], [258, 8], [259, 1], [262, 1], [273, 8], [278, 1], [279, 1]]; // prettier-ignore
  for (let page = 0; page < pages; page++) {
    let at = 12 + page * each;
    at = file.writeUInt16LE(entries, at);
    for (const [tag, value] of tags) {
      at = file.writeUInt16LE(tag, at);
      at = file.writeUInt16LE(4, at);
      at = file.writeUInt32LE(1, at);
      at = file.writeUInt32LE(value, at);
    }
    file.writeUInt32LE(page + 1 < pages ? at + 4 : 0, at);
  }
  return file;
}

const signature = Buffer.from('\x89PNG\r\n\x1a\n', 'latin1');

function chunk(type, data) {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const [head, tail] = [Buffer.alloc(4), Buffer.alloc(4)];
  head.writeUInt32BE(data.length);
  tail.writeUInt32BE(crc32(body));
  return Buffer.concat([head, body, tail]);
}

function header(width, height, colourType = 2) {
  const data = Buffer.alloc(13);
  data.writeUInt32BE(width, 0);
  data.writeUInt32BE(height, 4);
  data.set([8, colourType], 8);
  return chunk('IHDR', data);
}

const end = chunk('IEND', Buffer.alloc(0));
const pngOf = (...chunks) => Buffer.concat([signature, ...chunks, end]);

/** As many zeros, packed a thousand to one. */
const packedZeros = (bytes) => deflateSync(Buffer.alloc(bytes), { level: 9 });
/** The same 64 MB again and again, each behind a block that ends at a whole byte (RFC 1951, 3.2.4). */
function packedZerosOften(times) {
  const once = deflateRawSync(Buffer.alloc(64e6), { finishFlush: constants.Z_FULL_FLUSH });
  const last = deflateRawSync(Buffer.alloc(0));
  return Buffer.concat([Buffer.from([0x78, 0x9c]), ...Array(times).fill(once), last]);
}

const zeros = (bytes) => Buffer.alloc(bytes);
const pixels = chunk('IDAT', packedZeros(100 * 301));

/** Pictures of 100 pixels a side that unpack to gigabytes, each [what it is, PNG]. */
export const swollenThumbnails = () => [
  ['pixels for 2 GB', pngOf(header(100, 100), chunk('IDAT', packedZerosOften(32)))],
  ['a second header of 3,600 megapixels', pngOf(header(100, 100), header(60_000, 60_000), pixels)],
  [
    'a colour profile of 1 GB',
    pngOf(header(100, 100), chunk('iCCP', Buffer.concat([Buffer.from('a\0\0'), packedZerosOften(16)])), pixels),
  ],
  ['a palette of 500,000 colours', pngOf(header(100, 100), chunk('PLTE', zeros(1.5e6)), pixels)],
  ['a header cut off', pngOf(header(100, 100)).subarray(0, 20)],
  ['no pixels', pngOf(header(100, 100))],
]; // prettier-ignore

/** A text in a PNG, packed (PNG specification, third edition, 11.3.3.4). */
export const pngWithText = (keyword, packed) =>
  pngOf(
    header(100, 100),
    chunk('iTXt', Buffer.concat([Buffer.from(`${keyword}\0\x01\0\0\0`, 'latin1'), packed])),
    pixels,
  );

const brackets = (count) => `[${'[],'.repeat(count)}[]]`;
const nested = (levels) => '['.repeat(levels) + ']'.repeat(levels);

/** Palettes, each [what it is, ending, text]. */
export const palettes = () => [
  ['a million rows', 'csv', 'hex,name\n' + '#d9b36a,sand in a name that is long\n'.repeat(1e6)],
  ['a million short rows', 'csv', '#d9b36a\n'.repeat(1e6)],
  ['1.6 million shorter rows', 'csv', '#fff\n'.repeat(1.6e6)],
  ['2.6 million rows of two cells', 'csv', 'hex\n' + 'a,\n'.repeat(2.6e6)],
  ['8 million line ends', 'csv', `hex\n#fff${'\n'.repeat(7.9e6)}`],
  ['8 million cells in one row', 'csv', `hex\n#fff${','.repeat(7.9e6)}`],
  ['8 million cells in a head', 'csv', `hex${',a'.repeat(3.9e6)}\n#fff\n`],
  ['4 million quotation marks', 'csv', `hex\n#fff\n${'"'.repeat(7.9e6)}`],
  ['a million rows of GIMP', 'gpl', 'GIMP Palette\n' + '1 2 3 a\n'.repeat(0.99e6)],
  ['a million brackets inside each other', 'json', nested(1e6)],
  ['20,000 brackets in a colour', 'json', `[{"hex":${nested(20_000)}}]`],
  ['900 brackets inside each other, often', 'json', `[${Array(4000).fill(nested(900)).join(',')}]`],
  ['2.6 million empty lists', 'json', brackets(2.6e6)],
  ['a million numbered colours', 'json', `{"beads":[${'"#fff",'.repeat(1.1e6)}"#fff"]}`],
  ['600,000 keys', 'json', `{${Array.from({ length: 6e5 }, (_, n) => `"a${n}":1`).join(',')}}`],
];

/** JSON that is no pattern, swatch, frame or blank chart, each [what it is, text]. */
export const jsonTexts = () => [
  ['a million brackets inside each other', nested(1e6)],
  ['20 million empty lists', brackets(20e6)],
  ['250 MB of spaces', `{}${' '.repeat(250e6)}`],
];
