import { gunzipSync } from 'node:zlib';
import { RondureError } from '../core/errors.js';
import { pixelLimit, sharp } from './sharp.js';
import { sniff } from './sniff.js';
import { decodeXml } from './svg-root.js';

/** SVG text longer than this is refused; characters. */
export const svgLimitMegabytes = 50;
const entityLimit = 64;
const entityLengthLimit = 1000;
const nestingLimit = 3;
const rasters: ReadonlySet<string> = new Set(['png', 'jpeg', 'webp', 'gif', 'tiff', 'avif']);

/**
 * Refuses an SVG that would eat the machine, before it is drawn: entities that name entities,
 * entities from outside, and embedded pictures of more pixels than we read. Plain short entities,
 * as drawing programs write them for name spaces, pass. References to files and addresses need no
 * guard: the drawing library reads none when it is given bytes.
 *
 * Throws 'svg-entities', 'picture-too-large' or 'file-too-big', with `name` for the file.
 */
export async function guardSvg(text: string, name: string, depth = 0): Promise<void> {
  if (text.length > svgLimitMegabytes * 1e6)
    throw new RondureError('file-too-big', {
      name,
      megabytes: Math.ceil(text.length / 1e6),
      limitMegabytes: svgLimitMegabytes,
    });
  guardEntities(text, name);
  let pixels = 0;
  for (const bytes of embedded(text, name)) {
    const nested = svgIn(bytes, name);
    if (nested !== undefined) {
      if (depth >= nestingLimit) throw new RondureError('svg-entities', { name });
      await guardSvg(nested, name, depth + 1);
      continue;
    }
    const size = await sizeOf(bytes);
    pixels += size.width * size.height;
    if (pixels > pixelLimit)
      throw new RondureError('picture-too-large', {
        name,
        width: size.width,
        height: size.height,
        limitMegapixels: pixelLimit / 1e6,
      });
  }
}

/** Everywhere in the text: what only looks like an entity costs nothing to be refused for. */
function guardEntities(text: string, name: string): void {
  const all = text.match(/<!ENTITY/g)?.length ?? 0;
  if (all === 0) return;
  const plain = [...text.matchAll(/<!ENTITY\s+[\w.:-]+\s+(?:"([^"]*)"|'([^']*)')\s*>/g)];
  const harmless = plain.every((found) => {
    const value = found[1] ?? found[2];
    return value.length <= entityLengthLimit && !/[&%<]/.test(value);
  });
  if (plain.length !== all || all > entityLimit || !harmless)
    throw new RondureError('svg-entities', { name });
}

/**
 * The bytes of every `data:` picture (RFC 2397) in the text, whatever attribute it stands in. One
 * may begin inside another; thousands that do are refused, before they are all unpacked.
 */
function* embedded(text: string, name: string): Generator<Uint8Array> {
  const plain = text.replace(/&#(x[0-9a-f]{1,6}|[0-9]{1,7});/gi, (whole, code: string) => {
    const point = /^x/i.test(code) ? parseInt(code.slice(1), 16) : Number(code);
    return point < 0x80 ? String.fromCharCode(point) : whole;
  });
  const ending = /["'<>)]/g;
  let budget = nestingLimit * plain.length;
  for (const found of plain.matchAll(/data:([^,"'<>]{0,200}),/gi)) {
    const start = found.index + found[0].length;
    ending.lastIndex = start;
    const stop = ending.exec(plain)?.index ?? plain.length;
    budget -= stop - start;
    if (budget < 0) throw new RondureError('svg-entities', { name });
    const body = plain.slice(start, stop).replace(/%([0-9a-f]{2})/gi, fromPercent);
    yield Buffer.from(body, /;\s*base64\s*$/i.test(found[1]) ? 'base64' : 'latin1');
  }
}

/** The text of an SVG inside another, be it packed. */
function svgIn(bytes: Uint8Array, name: string): string | undefined {
  const format = sniff(bytes);
  if (format === 'svg') return decodeXml(bytes);
  if (format !== 'gzip') return undefined;
  try {
    const unpacked = gunzipSync(bytes, { maxOutputLength: svgLimitMegabytes * 1e6 });
    return sniff(unpacked) === 'svg' ? decodeXml(unpacked) : undefined;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ERR_BUFFER_TOO_LARGE') return undefined;
    throw new RondureError('svg-entities', { name }, { cause: error });
  }
}

/** Of what is no picture, nothing; the drawing library draws nothing for it. */
async function sizeOf(bytes: Uint8Array): Promise<{ width: number; height: number }> {
  if (!rasters.has(sniff(bytes))) return { width: 0, height: 0 };
  return sharp(bytes, { limitInputPixels: false })
    .metadata()
    .catch(() => ({ width: 0, height: 0 }));
}

const fromPercent = (_: string, hex: string) => String.fromCharCode(parseInt(hex, 16));
