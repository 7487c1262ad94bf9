import { RondureError } from '../core/errors.js';
import { pixelLimit, sharp } from './sharp.js';
import { sniff } from './sniff.js';
import { decodeXml, doctypeOf } from './svg-root.js';

/** SVG text longer than this is refused; characters. */
export const svgLimitMegabytes = 50;
const entityLimit = 64;
const entityLengthLimit = 1000;
const nestingLimit = 3;

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
  for (const bytes of embedded(text)) {
    const format = sniff(bytes);
    if (format === 'svg') {
      if (depth >= nestingLimit) throw new RondureError('svg-entities', { name });
      await guardSvg(decodeXml(bytes), name, depth + 1);
      continue;
    }
    const size = await sharp(bytes, { limitInputPixels: false })
      .metadata()
      .catch(() => ({ width: 0, height: 0 }));
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

function guardEntities(text: string, name: string): void {
  const doctype = doctypeOf(text).replace(/<!--[\s\S]*?-->/g, '');
  const all = doctype.match(/<!ENTITY\b/g)?.length ?? 0;
  if (all === 0) return;
  const plain = [...doctype.matchAll(/<!ENTITY\s+[\w.:-]+\s+(?:"([^"]*)"|'([^']*)')\s*>/g)];
  const harmless = plain.every((found) => {
    const value = found[1] ?? found[2];
    return value.length <= entityLengthLimit && !/[&%<]/.test(value);
  });
  if (plain.length !== all || all > entityLimit || !harmless)
    throw new RondureError('svg-entities', { name });
}

/** The bytes of every `data:` picture (RFC 2397) in the text, whatever attribute it stands in. */
function* embedded(text: string): Generator<Uint8Array> {
  const plain = text.replace(/&#(x[0-9a-f]{1,6}|[0-9]{1,7});/gi, (whole, code: string) => {
    const point = /^x/i.test(code) ? parseInt(code.slice(1), 16) : Number(code);
    return point < 0x80 ? String.fromCharCode(point) : whole;
  });
  for (const found of plain.matchAll(/data:([^,"'<>]{0,200}),/gi)) {
    const start = found.index + found[0].length;
    const stop = plain.slice(start).search(/["'<>)]/);
    const body = plain.slice(start, stop < 0 ? undefined : start + stop);
    yield /;\s*base64\s*$/i.test(found[1])
      ? Buffer.from(body.replace(/%([0-9a-f]{2})/gi, fromPercent), 'base64')
      : Buffer.from(body.replace(/%([0-9a-f]{2})/gi, fromPercent), 'latin1');
  }
}

const fromPercent = (_: string, hex: string) => String.fromCharCode(parseInt(hex, 16));
