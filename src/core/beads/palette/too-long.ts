import { RondureError } from '../../errors.js';

export const mostBeads = 10_000;
/** Each may stand among empty lines, titles and notes. */
const mostLines = 20 * mostBeads;

export const tooManyBeads = (where: string) =>
  new RondureError('palette-too-long', { where, most: mostBeads, of: 'beads' });

/**
 * Refuses a text of far more lines than beads, before it is cut into rows.
 *
 * @throws RondureError 'palette-too-long'
 */
export function refuseManyLines(text: string, where: string): void {
  let lines = 1;
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) lines++;
  if (lines <= mostLines) return;
  throw new RondureError('palette-too-long', { where, most: mostLines, of: 'lines' });
}
