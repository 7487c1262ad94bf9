import { RondureError } from './errors.js';

/** Deeper than a parser should have to build before anybody can refuse what it built. */
const mostBrackets = 1000;
/** Twice as many as two of the largest panels have with every stitch laid by hand. */
const mostValues = 1e6;

/**
 * Refuses a text that is far too long to be what it should be, before it is taken apart.
 *
 * @param where how to name it
 * @throws RondureError 'file-too-big'
 */
export function refuseLongText(text: string, where: string, limitMegabytes: number): void {
  if (text.length <= 1e6 * limitMegabytes) return;
  const megabytes = Math.ceil(text.length / 1e6);
  throw new RondureError('file-too-big', { name: where, megabytes, limitMegabytes });
}

/** Deeper than any pattern of ours; swatch, frame and thread hold plain records. */
const mostLevels = 32;

/** Walks level by level, so that no nesting can exhaust the stack. */
export function isTooDeep(value: unknown): boolean {
  let level: unknown[] = [value];
  for (let depth = 0; depth < mostLevels; depth++) {
    level = level.flatMap((item) =>
      typeof item === 'object' && item !== null ? (Object.values(item) as unknown[]) : [],
    );
    if (level.length === 0) return false;
  }
  return true;
}

/**
 * JSON.parse, but for texts whose value alone would fill the memory: they nest too deeply, or hold
 * millions of values.
 *
 * @throws SyntaxError
 */
export function parseJsonText(text: string): unknown {
  let depth = 0;
  let values = 1;
  let quoted = false;
  for (let at = 0; at < text.length; at++) {
    const mark = text[at];
    if (quoted) {
      if (mark === '\\') at++;
      else if (mark === '"') quoted = false;
    } else if (mark === '"') quoted = true;
    else if (mark === ',') values++;
    else if (mark === ']' || mark === '}') depth--;
    else if (mark === '[' || mark === '{') {
      depth++;
      values++;
    }
    if (depth > mostBrackets) throw new SyntaxError('it is nested too deeply');
    if (values > mostValues) throw new SyntaxError('it holds too many values');
  }
  return JSON.parse(text);
}
