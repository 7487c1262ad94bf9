import { RondureError } from '../../errors.js';
import { pixelSize } from '../header/pixel-size.js';
import { isRaster, sniff } from '../header/sniff.js';
import { unpackGzip } from '../header/unpack.js';
import { pixelLimit, svgLimitMegabytes } from '../limits.js';
import { decodeXml } from '../header/decode-xml.js';
import { embedded, PackedTooDeep } from './embedded.js';

const entityLimit = 64;
const entityLengthLimit = 1000;
/** Drawings in drawings in drawings. */
const nestingLimit = 3;

/**
 * Refuses an SVG that would eat the machine, before it is drawn: entities that name entities,
 * entities from outside, and embedded pictures of more pixels in all than we read. Plain short
 * entities, as drawing programs write them for name spaces, pass. References to files and
 * addresses need no guard: the drawing library reads none when it is given bytes, and a browser
 * none in a picture.
 *
 * Throws 'file-too-big', 'svg-entities', 'svg-nested' or 'svg-pictures-too-large', with `name` for
 * the file.
 */
export function guardSvg(text: string, name: string): void {
  guardText(text, { name, pixels: 0 }, 0);
}

/** What is counted over all pictures inside. */
interface Count {
  readonly name: string;
  pixels: number;
}

function guardText(text: string, count: Count, depth: number): void {
  const { name } = count;
  if (text.length > svgLimitMegabytes * 1e6)
    throw new RondureError('file-too-big', {
      name,
      megabytes: Math.ceil(text.length / 1e6),
      limitMegabytes: svgLimitMegabytes,
    });
  const entities = entitiesOf(text, name);
  try {
    for (const bytes of embedded(text, entities)) guardEmbedded(bytes, count, depth);
  } catch (error) {
    if (error instanceof PackedTooDeep) throw new RondureError('svg-nested', { name });
    throw error;
  }
}

/** A picture inside, a drawing inside, or a style sheet that may hold some. */
function guardEmbedded(bytes: Uint8Array, count: Count, depth: number): void {
  const content = sniff(bytes) === 'gzip' ? unpacked(bytes) : bytes;
  const format = sniff(content);
  if (isRaster(format)) {
    const { width, height } = pixelSize(content, format) ?? { width: 0, height: 0 };
    count.pixels += width * height;
    if (count.pixels > pixelLimit)
      throw new RondureError('svg-pictures-too-large', {
        name: count.name,
        megapixels: Math.round(count.pixels / 1e6),
        limitMegapixels: pixelLimit / 1e6,
      });
  } else if (texts.has(format)) {
    if (depth >= nestingLimit) throw new PackedTooDeep();
    guardText(decodeXml(content), count, depth + 1);
  }
}

const texts: ReadonlySet<string> = new Set(['svg', 'xml', 'html', 'text']);

/** Of what is damaged, nothing: the drawing library draws nothing for it. */
function unpacked(bytes: Uint8Array): Uint8Array {
  let content: Uint8Array | undefined;
  try {
    content = unpackGzip(bytes, svgLimitMegabytes * 1e6);
  } catch {
    return new Uint8Array(0);
  }
  if (content === undefined) throw new PackedTooDeep();
  return content;
}

/** Everywhere in the text: what only looks like an entity costs nothing to be refused for. */
function entitiesOf(text: string, name: string): Map<string, string> {
  const refuse = () => new RondureError('svg-entities', { name });
  let all = 0;
  for (let at = text.indexOf('<!ENTITY'); at >= 0; at = text.indexOf('<!ENTITY', at + 1))
    if (++all > entityLimit) throw refuse();
  const entities = new Map<string, string>();
  if (all === 0) return entities;
  let plain = 0;
  for (const found of text.matchAll(/<!ENTITY\s+([\w.:-]+)\s+(?:"([^"]*)"|'([^']*)')\s*>/g)) {
    const value = found[2] ?? found[3];
    if (value.length > entityLengthLimit || /[&%<]/.test(value)) throw refuse();
    // The first of a name is the one that counts (XML 1.0, 4.2).
    if (!entities.has(found[1])) entities.set(found[1], value);
    plain++;
  }
  if (plain !== all) throw refuse();
  return entities;
}
