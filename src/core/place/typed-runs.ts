import { RondureError } from '../errors.js';

const mostBeads = 100_000;

/**
 * The beads that somebody typed: `3A 2B 1A`, `3a,2b a`, `AAABBA`. Spaces, commas, semicolons and
 * capitals do not matter; a letter without a number is one bead.
 *
 * @param known letters of the pattern
 * @returns letters, a character a bead
 * @throws RondureError `beads-unreadable`, `letter-not-in-pattern`, `beads-too-many`
 */
export function typedRuns(text: string, known: readonly string[]): string {
  const parts: string[] = [];
  let beads = 0;
  let rest = text.replace(/^[\s,;]+/, '');
  while (rest !== '') {
    const run = /^(\d{1,6})?\s*([a-z])[\s,;]*/i.exec(rest);
    if (!run || Number(run[1] ?? 1) === 0) {
      throw new RondureError('beads-unreadable', { got: rest.slice(0, 20) });
    }
    const letter = run[2].toUpperCase();
    if (!known.includes(letter)) {
      throw new RondureError('letter-not-in-pattern', { letter, letters: known });
    }
    beads += Number(run[1] ?? 1);
    if (beads > mostBeads) throw new RondureError('beads-too-many', { most: mostBeads });
    parts.push(letter.repeat(Number(run[1] ?? 1)));
    rest = rest.slice(run[0].length);
  }
  if (parts.length === 0) throw new RondureError('beads-unreadable', { got: '' });
  return parts.join('');
}
