import { svgLimitMegabytes } from '../limits.js';
import { decodeXml } from './decode-xml.js';
import { findSvgRoot } from './svg-root.js';

/** Formats that are read. */
export type PictureFormat = 'jpeg' | 'png' | 'webp' | 'gif' | 'tiff' | 'avif' | 'svg';
/** Formats that are recognised only to be named in the error. */
export type OtherFormat =
  | 'text'
  | 'html'
  | 'xml'
  | 'pdf'
  | 'postscript'
  | 'heic'
  | 'bmp'
  | 'ico'
  | 'photoshop'
  | 'raw'
  | 'jpegxl'
  | 'jpeg2000'
  | 'zip'
  | 'gzip'
  | 'video'
  | 'unknown';

/**
 * What the bytes are, judged by their content; a file name says nothing. Signatures as registered:
 * PNG specification 5.2, ITU-T T.81 (SOI marker), GIF89a, TIFF 6.0 section 2, RFC 9649 (WebP),
 * ISO/IEC 14496-12 `ftyp` with the brands of AVIF and ISO/IEC 23008-12.
 */
export function sniff(bytes: Uint8Array): PictureFormat | OtherFormat {
  const at = (offset: number, ...values: (number | string)[]) => startsAt(bytes, offset, values);
  if (at(0, 0x89, 'PNG', 13, 10, 26, 10)) return 'png';
  if (at(0, 0xff, 0xd8, 0xff)) return 'jpeg';
  if (at(0, 'GIF87a') || at(0, 'GIF89a')) return 'gif';
  if (at(0, 'RIFF')) return at(8, 'WEBP') ? 'webp' : at(8, 'AVI ') ? 'video' : 'unknown';
  if (at(0, 'II*', 0) || at(0, 'MM', 0, '*') || at(0, 'II+', 0) || at(0, 'MM', 0, '+'))
    return at(8, 'CR') ? 'raw' : 'tiff';
  if (at(4, 'ftyp')) return isoMedia(bytes);
  if (at(0, '%PDF')) return 'pdf';
  if (at(0, '%!PS') || at(0, 0xc5, 0xd0, 0xd3, 0xc6)) return 'postscript';
  if (at(0, '8BPS')) return 'photoshop';
  if (at(0, 'BM') && at(6, 0, 0, 0, 0)) return 'bmp';
  if (at(0, 0, 0, 1, 0) || at(0, 0, 0, 2, 0)) return 'ico';
  if (at(0, 0xff, 0x0a) || at(4, 'JXL ')) return 'jpegxl';
  if (at(4, 'jP  ') || at(0, 0xff, 0x4f, 0xff, 0x51)) return 'jpeg2000';
  if (at(0, 'FUJIFILMCCD-RAW') || at(0, 'IIU', 0) || at(0, 'IIRO') || at(0, 'IIRS')) return 'raw';
  if (at(0, 'PK', 3, 4)) return 'zip';
  if (at(0, 0x1f, 0x8b)) return 'gzip';
  if (at(0, 0x1a, 0x45, 0xdf, 0xa3) || at(4, 'moov') || at(4, 'mdat')) return 'video';
  return textual(bytes);
}

function startsAt(bytes: Uint8Array, offset: number, values: (number | string)[]): boolean {
  let place = offset;
  for (const value of values) {
    const wanted =
      typeof value === 'number' ? [value] : Array.from(value, (letter) => letter.charCodeAt(0));
    for (const byte of wanted) if (bytes[place++] !== byte) return false;
  }
  return true;
}

function isoMedia(bytes: Uint8Array): PictureFormat | OtherFormat {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = Math.min(bytes.length, view.getUint32(0), 256);
  const brands: string[] = [];
  for (let place = 8; place + 4 <= end; place += 4)
    if (place !== 12) brands.push(String.fromCharCode(...bytes.subarray(place, place + 4)));
  if (brands.some((brand) => brand === 'avif' || brand === 'avis')) return 'avif';
  if (brands.some((brand) => /^(hei[cxms]|hev[cxms]|mif1|msf1)$/.test(brand))) return 'heic';
  return brands[0] === 'crx ' ? 'raw' : 'video';
}

const headBytes = 65536;

/** Text of some kind, or nothing known; of a drawing behind a very long preamble all is looked at. */
function textual(bytes: Uint8Array): PictureFormat | OtherFormat {
  const text = decodeXml(bytes.subarray(0, headBytes));
  // eslint-disable-next-line no-control-regex
  if (/[\x00-\x08\x0e-\x1a\x1c-\x1f]/.test(text)) return 'unknown';
  const broken = text.split('\ufffd').length - 1;
  if (broken > 2 + text.length / 50 && !text.includes('<svg')) return 'unknown';
  if (isHtml(text)) return 'html';
  const root = findSvgRoot(text);
  if (root === 'unfinished') {
    if (/<(\w+:)?svg\b/.test(text)) return 'svg';
    const cut = bytes.length > headBytes && bytes.length < 4e6 * svgLimitMegabytes;
    return cut && typeof findSvgRoot(decodeXml(bytes)) === 'object' ? 'svg' : 'xml';
  }
  if (root !== undefined) return 'svg';
  return /^\s*<(\?xml|!DOCTYPE|\w+[\s>])/.test(text) ? 'xml' : 'text';
}

/** By what stands behind its comments: document type or element. */
function isHtml(text: string): boolean {
  const before = /\s*(<!--)?/y;
  for (;;) {
    if (before.exec(text)![1] === undefined) break;
    const end = text.indexOf('-->', before.lastIndex);
    if (end < 0) return false;
    before.lastIndex = end + 3;
  }
  return /^<(!doctype\s+html|html|head|body)\b/i.test(
    text.slice(before.lastIndex, before.lastIndex + 100),
  );
}

/** Formats of pixels, whose header tells their number. */
export type RasterFormat = Exclude<PictureFormat, 'svg'>;
const rasters: ReadonlySet<string> = new Set<RasterFormat>([
  'jpeg',
  'png',
  'webp',
  'gif',
  'tiff',
  'avif',
]);

/** Whether a format is one of pixels that is read here. */
export function isRaster(format: PictureFormat | OtherFormat): format is RasterFormat {
  return rasters.has(format);
}
