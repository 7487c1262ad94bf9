import '../jitless.js';
import { patternInSvg } from '../../core/pages/chart/chart.js';
import { patternKeyword, readPngText } from '../../core/pages/surface/png-text.js';
import { parsePattern } from '../../core/pattern/read/parse.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { sniff } from '../../core/picture/header/sniff.js';

/**
 * The pattern that a file is or carries; undefined where it is a picture like any other.
 *
 * @throws RondureError `png-text-damaged` and those of `parsePattern`
 */
export function patternIn(bytes: Uint8Array, name: string): Pattern | undefined {
  const text = textIn(bytes, name);
  return text === undefined ? undefined : parsePattern(text, name);
}

function textIn(bytes: Uint8Array, name: string): string | undefined {
  const format = sniff(bytes);
  if (format === 'png') return readPngText(bytes, patternKeyword);
  if (format === 'svg') return patternInSvg(new TextDecoder().decode(bytes));
  if (format !== 'text') return undefined;
  const text = new TextDecoder().decode(bytes);
  return /\.json$/i.test(name) || /^\s*\{/.test(text) ? text : undefined;
}
