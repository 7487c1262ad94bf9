import { RondureError } from '../../errors.js';

const mostBeads = 100_000;

/**
 * The beads that somebody typed, or copied from a list of ours: `3A 2B 1A`, `3a,2b a`, `AAABBA`,
 * `(2A 1B) x 3`, lines that begin with `R14 (98 beads, total 98):`. Spaces, commas, semicolons and
 * capitals do not matter; a letter without a number is one bead; bare stitches are no beads.
 *
 * @param known letters of the pattern
 * @returns letters, a character a bead
 * @throws RondureError `beads-unreadable`, `letter-not-in-pattern`, `beads-too-many`
 */
export function typedRuns(text: string, known: readonly string[]): string {
  let rest = withoutHeads(text).replace(between, '');
  const refuse = (): never => {
    throw new RondureError('beads-unreadable', { got: rest.slice(0, 20) });
  };
  const open: string[] = [''];
  const add = (beads: string): void => {
    open[open.length - 1] += beads;
    const all = open.reduce((sum, part) => sum + part.length, 0);
    if (all > mostBeads) throw new RondureError('beads-too-many', { most: mostBeads });
  };
  const take = (found: RegExpExecArray): void => {
    rest = rest.slice(found[0].length).replace(between, '');
  };
  while (rest !== '') {
    const bracket = /^[([]/.exec(rest);
    const closed = /^\](?:)|^\)(?:\s*[x×*]\s*(\d{1,3})(?!\d))?/i.exec(rest);
    const bare = /^(?:\d{1,6}\s*)?(?:bare\b|\.)/i.exec(rest);
    const run = /^(\d{1,6})?\s*([a-z])/i.exec(rest);
    if (bracket) {
      if (open.length > 9) refuse();
      open.push('');
      take(bracket);
    } else if (closed) {
      const times = Number(closed[1] ?? 1);
      if (open.length === 1 || times === 0) refuse();
      const part = open.pop()!;
      if (part.length * times > mostBeads) {
        throw new RondureError('beads-too-many', { most: mostBeads });
      }
      add(part.repeat(times));
      take(closed);
    } else if (bare) take(bare);
    else if (run && Number(run[1] ?? 1) > 0) {
      const [, count, typed] = run;
      const letter = typed.toUpperCase();
      if (!known.includes(letter)) {
        throw new RondureError('letter-not-in-pattern', { letter, letters: known });
      }
      if (Number(count ?? 1) > mostBeads) {
        throw new RondureError('beads-too-many', { most: mostBeads });
      }
      add(letter.repeat(Number(count ?? 1)));
      take(run);
    } else refuse();
  }
  if (open.length > 1) refuse();
  if (open[0] === '') throw new RondureError('beads-unreadable', { got: '' });
  return open[0];
}

/** What may stand between runs; a booklet's lines may have been ticked. */
const between = /^[\s,;☐☑✓]+/;

/** `R14 (98 beads, total 98):`, `Rd 14: 98 Perlen`, `14段：98個` in front of a line. */
const lineHead = /^\s*(?:\p{L}{1,4}\.?\s*\d{1,2}|\d{1,2}\s*[^\p{sc=Latin}\d\s])[^\n:：]*[:：]/u;

/** Copied lines without what a list says in front of a round; a line that is all head goes. */
function withoutHeads(text: string): string {
  const lines = text.split(/\r\n?|\n/).map((line) => {
    const head = lineHead.exec(line);
    if (!head) return line;
    const body = line.slice(head[0].length);
    return /\p{L}{2,}|[^\p{sc=Latin}\P{L}]/u.test(body.replace(/bare/gi, '')) ? '' : body;
  });
  return lines.join('\n');
}
