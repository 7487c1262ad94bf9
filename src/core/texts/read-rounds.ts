import { RondureError } from '../errors.js';
import { bareMark, letters, undecidedMark } from '../pattern/schema.js';
import { shapeLimits } from '../shape.js';

/** No round can hold more: 12 wedges, 80 rounds. */
const mostInRound = shapeLimits.wedges.most * shapeLimits.rounds.most;

/** `R7 (49 stitches, …):` or `Round 7:`; the part in brackets is for the reader and not checked. */
const roundStart = /^\s*r(?:ound|nd|d)?\.?\s*(\d{1,3})\s*(?:\([^)]*\)\s*)?:/i;

/**
 * Reads a list of rounds back: what `roundsText` writes, or one typed by hand. Lines before the
 * first round are skipped, a line without a round number carries on the round above it; spaces and
 * capitals do not matter; x, × and * all repeat.
 *
 * @param where how to name the list in an error
 * @returns the marks of each round, from round 1
 * @throws RondureError `rounds-unreadable`, `rounds-none`
 */
export function parseRoundsText(text: string, where: string): string[] {
  const bodies: { line: number; body: string }[][] = [];
  text.split(/\r\n?|\n/).forEach((content, index) => {
    const line = index + 1;
    const start = roundStart.exec(content);
    if (start) {
      const expected = bodies.length + 1;
      if (Number(start[1]) !== expected) {
        const facts = { where, line, got: `R${start[1]}`, expected: `R${expected}` };
        throw new RondureError('rounds-unreadable', facts);
      }
      bodies.push([{ line, body: content.slice(start[0].length) }]);
    } else if (bodies.length > 0 && content.trim() !== '') {
      bodies[bodies.length - 1].push({ line, body: content });
    }
  });
  if (bodies.length === 0) throw new RondureError('rounds-none', { where });
  return bodies.map((parts) => marksOf(parts, where));
}

/** x stands for a letter and for "times": it repeats only right behind a closing bracket. */
const token = /\s*(?:(\d+)\s*([a-z]+|[._])|([a-z]+|[._])|([()[\]])|([×*])|,)/iy;
const repeat = /\s*[x×*]\s*(\d+)/iy;

function marksOf(parts: readonly { line: number; body: string }[], where: string): string {
  const stack: string[] = [''];
  const put = (marks: string) => (stack[stack.length - 1] += marks);
  for (const { line, body } of parts) {
    const refuse = (at: number, expected: string): never => {
      const got = body.slice(at).trim().slice(0, 20);
      throw new RondureError('rounds-unreadable', { where, line, got, expected });
    };
    let at = 0;
    while (body.slice(at).trim() !== '') {
      token.lastIndex = at;
      const found = token.exec(body) ?? refuse(at, '3A');
      const [, count, counted, single, bracket, stray] = found;
      if (stray) refuse(at, '3A');
      const word = counted ?? single;
      if (word !== undefined) {
        const mark = markOf(word) ?? refuse(at, '3A');
        const times = Number(count ?? 1);
        if (times < 1 || times > mostInRound) refuse(at, `1–${mostInRound}`);
        put(mark.repeat(times));
      }
      at = token.lastIndex;
      if (bracket === '(') stack.push('');
      if (bracket === ')') {
        if (stack.length === 1) refuse(at - 1, '3A');
        const inside = stack.pop() as string;
        repeat.lastIndex = at;
        const times = repeat.exec(body);
        if (times) at = repeat.lastIndex;
        const n = times ? Number(times[1]) : 1;
        if (n < 1 || inside.length * n > mostInRound) refuse(at - 1, `1–${mostInRound}`);
        put(inside.repeat(n));
      }
      if (stack.length > 9 || stack[stack.length - 1].length > mostInRound) {
        refuse(at - 1, `1–${mostInRound}`);
      }
    }
  }
  if (stack.length > 1) {
    throw new RondureError('rounds-unreadable', {
      where,
      line: parts[parts.length - 1].line,
      got: '(',
      expected: ')',
    });
  }
  return stack[0];
}

/** A letter, `bare` or `.`, `open` or `_`; undefined for anything else. */
function markOf(word: string): string | undefined {
  const small = word.toLowerCase();
  if (small === 'bare' || small === bareMark) return bareMark;
  if (small === 'open' || small === undecidedMark) return undecidedMark;
  const letter = word.toUpperCase();
  return letter.length === 1 && letters.includes(letter) ? letter : undefined;
}
