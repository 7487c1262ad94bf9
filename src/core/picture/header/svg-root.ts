/** The start tag of an SVG file's outermost element. */
export interface SvgRoot {
  /** Offset of `<` and the offset after `>` of the start tag. */
  readonly start: number;
  /** Offset after `>` of the start tag. */
  readonly end: number;
  /** Attribute text as written, without quotes; entities are not resolved. */
  readonly attributes: ReadonlyMap<string, string>;
}

/**
 * Where the first element of an XML text begins, behind declaration, comments and document type.
 * Undefined when something else stands there; 'unfinished' when the text ends too early.
 */
function afterProlog(text: string): number | 'unfinished' | undefined {
  const blank = /[\ufeff\s]*/y;
  for (let place = 0; ;) {
    blank.lastIndex = place;
    blank.test(text);
    place = blank.lastIndex;
    if (text[place] !== '<') return place >= text.length && place > 0 ? 'unfinished' : undefined;
    if (text.startsWith('<!--', place)) place = after(text, '-->', place + 4);
    else if (text.startsWith('<?', place)) place = after(text, '?>', place + 2);
    else if (text.startsWith('<!DOCTYPE', place)) place = afterDoctype(text, place);
    else return place;
    if (place < 0) return 'unfinished';
  }
}

/**
 * Finds the root's start tag. Undefined when the root is something else than svg or this is no
 * XML; 'unfinished' when the text ends too early.
 */
export function findSvgRoot(text: string): SvgRoot | 'unfinished' | undefined {
  const place = afterProlog(text);
  if (typeof place !== 'number') return place;
  const name = /^<((?:[\w.-]+:)?svg)(?=[\s/>])/.exec(text.slice(place, place + 80));
  if (name === null) return undefined;
  const end = tagEnd(text, place);
  if (end < 0) return 'unfinished';
  const attributes = new Map<string, string>();
  const inner = text.slice(place + name[0].length, end - 1);
  for (const found of inner.matchAll(
    /(?<![^\s=/"'<>])([^\s=/"'<>]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g,
  ))
    attributes.set(found[1], found[2] ?? found[3]);
  return { start: place, end, attributes };
}

/**
 * The same SVG with the root's width and height in plain pixels, whatever style sheets say, and
 * with this viewBox; nothing else changes. The XML declaration goes, since the text will be written
 * as UTF-8; a comment comes first, by which the drawing library knows an SVG with a long preamble.
 */
export function withRootSize(
  text: string,
  root: SvgRoot,
  size: { width: number; height: number; viewBox: string },
): string {
  const { width, height, viewBox } = size;
  const written = text.slice(root.start, root.end);
  const name = /^<[\w.:-]+/.exec(written)![0];
  const tag = written.replace(/(\s)(width|height|viewBox|style)\s*=\s*("[^"]*"|'[^']*')/g, '$1');
  const style = (root.attributes.get('style') ?? '').replaceAll('"', "'");
  const sized =
    `${name} width="${width}" height="${height}" viewBox="${viewBox}"` +
    ` style="${style};width:${width}px !important;height:${height}px !important"`;
  const before = text.slice(0, root.start).replace(/^[\ufeff\s]*<\?xml[\s\S]*?\?>/, '');
  return `<!-- <svg -->${before}${sized}${tag.slice(name.length)}${text.slice(root.end)}`;
}

function after(text: string, mark: string, from: number): number {
  const found = text.indexOf(mark, from);
  return found < 0 ? -1 : found + mark.length;
}

/** Offset after the `>` that is not inside quotes, or -1. */
function tagEnd(text: string, from: number): number {
  let quote = '';
  for (let place = from; place < text.length; place++) {
    const letter = text[place];
    if (quote !== '') quote = letter === quote ? '' : quote;
    else if (letter === '"' || letter === "'") quote = letter;
    else if (letter === '>') return place + 1;
  }
  return -1;
}

function afterDoctype(text: string, from: number): number {
  let quote = '';
  let inside = false;
  for (let place = from; place < text.length; place++) {
    const letter = text[place];
    if (quote !== '') quote = letter === quote ? '' : quote;
    else if (text.startsWith('<!--', place)) {
      place = after(text, '-->', place + 4) - 1;
      if (place < 0) return -1;
    } else if (text.startsWith('<?', place)) {
      place = after(text, '?>', place + 2) - 1;
      if (place < 0) return -1;
    } else if (letter === '"' || letter === "'") quote = letter;
    else if (letter === '[') inside = true;
    else if (letter === ']') inside = false;
    else if (letter === '>' && !inside) return place + 1;
  }
  return -1;
}
