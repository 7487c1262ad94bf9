import '../jitless.js';
import { parsePattern } from '../../core/pattern/read/parse.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { patternText } from '../../core/pattern/serialise.js';
import { database } from '../keep/database.js';

// A page may be coloured for weeks: the browser remembers which blanks were printed.

const note = 'printed blanks';
const most = 12;

/** Whether two blanks are read alike. */
export const sameBlank = (one: Pattern, other: Pattern): boolean =>
  JSON.stringify([one.shape, one.panels[0].startDegrees]) ===
  JSON.stringify([other.shape, other.panels[0].startDegrees]);

/** The blanks that were printed here, the newest first; none where the browser keeps nothing. */
export async function printedBlanks(): Promise<Pattern[]> {
  try {
    const text = await (await database()).get('notes', note);
    return (JSON.parse(text ?? '[]') as string[]).map((one) => parsePattern(one, note));
  } catch {
    return [];
  }
}

/** Remembers one more. */
export async function rememberBlank(blank: Pattern): Promise<void> {
  const others = (await printedBlanks()).filter(
    (one) => one.title !== blank.title || !sameBlank(one, blank),
  );
  const kept = [blank, ...others].slice(0, most).map((one) => patternText(one));
  try {
    await (await database()).put('notes', JSON.stringify(kept), note);
  } catch {
    // a browser that keeps nothing: the blank of the piece on the table is offered all the same
  }
}
