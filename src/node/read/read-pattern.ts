import { patternInSvg } from '../../core/pages/chart/chart.js';
import { RondureError } from '../../core/errors.js';
import { parsePattern } from '../../core/pattern/read/parse.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { patternKeyword } from '../../core/pages/surface/png-text.js';
import { readPngText } from '../../core/pages/surface/png-text.js';
import { readBytes } from './read-bytes.js';
import { nameIn, textOf } from './read-text.js';

/**
 * The text of the pattern that a file is or carries: pattern.json itself, or a chart.svg or
 * chart.png of ours; which of them it is, its first bytes say, not its name.
 *
 * Throws 'pattern-not-inside', 'png-text-damaged', 'text-not-unicode'.
 */
export function patternTextIn(bytes: Uint8Array, name: string): string {
  if (bytes[0] === 0x89 && bytes[1] === 0x50) {
    return readPngText(bytes, patternKeyword) ?? refuse(name, 'png');
  }
  const text = textOf(bytes, name);
  if (!/^\s*</.test(text)) return text;
  return patternInSvg(text) ?? refuse(name, 'svg');
}

/**
 * Reads a pattern from a file, or from standard input for `-`.
 *
 * Throws what `readBytes`, `patternTextIn` and `parsePattern` throw.
 */
export async function readPattern(pathOrDash: string): Promise<Pattern> {
  const text = patternTextIn(await readBytes(pathOrDash), pathOrDash);
  return parsePattern(text, nameIn(pathOrDash));
}

function refuse(name: string, format: 'png' | 'svg'): never {
  throw new RondureError('pattern-not-inside', { name, format });
}
