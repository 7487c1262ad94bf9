import { RondureError } from '../../errors.js';
import { refuseLongText } from '../../input-limits.js';
import { bareMark, letters, undecidedMark } from '../../pattern/marks.js';
import { shapeLimits } from '../../panel/shape.js';
import { readHead } from './read-head.js';
import type { ListHead } from './read-head.js';

/** No round can hold more: 12 wedges, 80 rounds. */
const mostInRound = shapeLimits.wedges.most * shapeLimits.rounds.most;

/** Longer than any list of so many stitches. */
const mostMegabytes = 4;

/** `R7 (49 stitches, …):` or `Round 7:`. */
const roundStart = /^\s*r(?:ound|nd|d)?\.?\s*(\d{1,3})\s*(?:\(([^)]*)\)\s*)?:/i;

/** One round of a list. */
export interface ListedRound {
  /** Line of the text on which the round begins, from 1. */
  readonly line: number;
  /** A mark for each stitch: a letter, `.` for bare, `_` for open. */
  readonly marks: string;
  /** Stitches, from 0, with which a pair in square brackets begins. */
  readonly pairs: readonly number[];
  /** The counts in front, as far as they are there. */
  readonly said: { readonly stitches?: number; readonly beads?: number; readonly total?: number };
}

/** A list of rounds as it stands, not yet compared with how a panel grows. */
export interface RoundList {
  /** What stands above the first round. */
  readonly head: ListHead;
  /** The rounds, from round 1. */
  readonly rounds: readonly ListedRound[];
}

/**
 * Reads a list of rounds back: what `roundsText` writes, or one typed by hand. A line without a
 * round number carries on the round above it, unless it begins with `--`: that is a note. Spaces and
 * capitals do not matter; x, × and * all repeat.
 *
 * @param where how to name the list in an error
 * @throws RondureError `rounds-unreadable`, `rounds-none`, `file-too-big`
 */
export function readRoundList(text: string, where: string): RoundList {
  refuseLongText(text, where, mostMegabytes);
  const bodies: { line: number; said: string; parts: Part[] }[] = [];
  const head: string[] = [];
  text
    .replace(/^\uFEFF/, '')
    .split(/\r\n?|\n/)
    .forEach((content, index) => {
      if (/^\s*--/.test(content)) return;
      const line = index + 1;
      const start = roundStart.exec(content);
      if (start) {
        const expected = bodies.length + 1;
        if (Number(start[1]) !== expected) {
          const facts = { where, line, got: `R${start[1]}`, expected: `R${expected}` };
          throw new RondureError('rounds-unreadable', facts);
        }
        const parts = [{ line, body: content.slice(start[0].length) }];
        bodies.push({ line, said: start[2] ?? '', parts });
      } else if (bodies.length === 0) {
        head.push(content);
      } else if (content.trim() !== '') {
        bodies[bodies.length - 1].parts.push({ line, body: content });
      }
    });
  if (bodies.length === 0) throw new RondureError('rounds-none', { where });
  const rounds = bodies.map(({ line, said, parts }) => {
    return { line, ...marksOf(parts, where), said: countsIn(said) };
  });
  return { head: readHead(head), rounds };
}

/** The marks of each round of a list, from round 1; see `readRoundList`. */
export function parseRoundsText(text: string, where: string): string[] {
  return readRoundList(text, where).rounds.map(({ marks }) => marks);
}

interface Part {
  readonly line: number;
  readonly body: string;
}

function countsIn(said: string): ListedRound['said'] {
  const number = (pattern: RegExp) => {
    const found = pattern.exec(said);
    return found ? Number(found[1]) : undefined;
  };
  const [stitches, beads] = [number(/(\d{1,6}) *st/i), number(/(\d{1,6}) *bead/i)];
  const total = number(/total *(\d{1,6})/i);
  return {
    ...(stitches !== undefined && { stitches }),
    ...(beads !== undefined && { beads }),
    ...(total !== undefined && { total }),
  };
}

/** x stands for a letter and for "times": it repeats only right behind a closing bracket. */
const token = /\s*(?:(\d+)\s*([a-z]+|[._])|([a-z]+|[._])|([()[\]])|([×*])|,)/iy;
const repeat = /\s*[x×*]\s*(\d+)/iy;

/** The marks between two brackets, and where pairs begin among them. */
interface Stretch {
  marks: string;
  pairs: number[];
  /** Where an open square bracket stands. */
  open?: number | undefined;
}

function marksOf(parts: readonly Part[], where: string): { marks: string; pairs: number[] } {
  const stack: Stretch[] = [{ marks: '', pairs: [] }];
  for (const { line, body } of parts) {
    const refuse = (at: number, expected: string): never => {
      const got = body.slice(at).trim().slice(0, 20);
      throw new RondureError('rounds-unreadable', { where, line, got, expected });
    };
    const end = body.trimEnd().length;
    let at = 0;
    while (at < end) {
      token.lastIndex = at;
      const found = token.exec(body) ?? refuse(at, '3A');
      const [, count, counted, single, bracket, stray] = found;
      if (stray) refuse(at, '3A');
      const top = stack[stack.length - 1];
      const word = counted ?? single;
      if (word !== undefined) {
        const mark = markOf(word) ?? refuse(at, '3A');
        const times = Number(count ?? 1);
        if (times < 1 || times > mostInRound) refuse(at, `1–${mostInRound}`);
        top.marks += mark.repeat(times);
      }
      at = token.lastIndex;
      if (bracket === '[') {
        if (top.open !== undefined) refuse(at - 1, ']');
        top.open = top.marks.length;
      }
      if (bracket === ']') {
        if (top.open === undefined || top.marks.length !== top.open + 2) refuse(at - 1, '[A B]');
        top.pairs.push(top.open!);
        top.open = undefined;
      }
      if (bracket === '(') stack.push({ marks: '', pairs: [] });
      if (bracket === ')') {
        if (stack.length === 1) refuse(at - 1, '3A');
        if (top.open !== undefined) refuse(at - 1, ']');
        stack.pop();
        repeat.lastIndex = at;
        const times = repeat.exec(body);
        if (times) at = repeat.lastIndex;
        const n = times ? Number(times[1]) : 1;
        const { marks } = top;
        if (n < 1 || n > mostInRound || marks.length * n > mostInRound) {
          refuse(at - 1, `1–${mostInRound}`);
        }
        append(stack[stack.length - 1], top, n);
      }
      if (stack.length > 9 || stack[stack.length - 1].marks.length > mostInRound) {
        refuse(at - 1, `1–${mostInRound}`);
      }
    }
  }
  const { line } = parts[parts.length - 1];
  const unclosed = (got: string, expected: string) =>
    new RondureError('rounds-unreadable', { where, line, got, expected });
  if (stack.some(({ open }) => open !== undefined)) throw unclosed('[', ']');
  if (stack.length > 1) throw unclosed('(', ')');
  return { marks: stack[0].marks, pairs: stack[0].pairs };
}

function append(to: Stretch, part: Stretch, times: number): void {
  for (let n = 0; n < times; n++) {
    const from = to.marks.length + n * part.marks.length;
    for (const pair of part.pairs) to.pairs.push(from + pair);
  }
  to.marks += part.marks.repeat(times);
}

/** A letter, `bare` or `.`, `open` or `_`; undefined for anything else. */
function markOf(word: string): string | undefined {
  const small = word.toLowerCase();
  if (small === 'bare' || small === bareMark) return bareMark;
  if (small === 'open' || small === undecidedMark) return undecidedMark;
  const letter = word.toUpperCase();
  return letter.length === 1 && letters.includes(letter) ? letter : undefined;
}
