import { stitchesInRound } from '../../panel/shape.js';
import { expandStringing, stringingCsv } from '../../pages/lists/stringing.js';
import type { Words } from '../../../words/index.js';
import { bareMark, letters, undecidedMark } from '../marks.js';
import type { Panel, Pattern } from '../pattern.js';
import { beadsInWorkingOrder } from '../stitches.js';

/** Every code a problem can carry; the catalogue in src/words is the list. */
export type ProblemCode = keyof Words['problems'];

/** One thing that is wrong inside a pattern, as data; rounds, stitches and beads count from 1. */
export type Problem = {
  [C in ProblemCode]: { readonly code: C; readonly facts: Parameters<Words['problems'][C]>[0] };
}[ProblemCode];

/** The sentence for a problem. */
export function problemSentence(words: Words, problem: Problem): string {
  const say = words.problems[problem.code] as (facts: Problem['facts']) => string;
  return say(problem.facts);
}

/**
 * Everything that must hold in a pattern and that its schema cannot say: round r has N·r stitches,
 * every letter has a bead, letters go in order without gaps, and the stringing list reads back to
 * the chart.
 *
 * @returns the problems found; empty for a sound pattern
 */
export function checkPattern(pattern: Pattern): Problem[] {
  const found: Problem[] = [...letterProblems(pattern)];
  const { shape, panels } = pattern;
  if (shape.outline === 'polygon' && shape.increase === 'middle') {
    found.push({ code: 'polygon-middle-increase', facts: undefined });
  }
  if (panels.length === 2 && panels[0].name === panels[1].name) {
    found.push({ code: 'panel-name-twice', facts: { panel: panels[0].name } });
  }
  panels.forEach((panel, index) => {
    const before = found.length;
    found.push(...roundProblems(pattern, panel));
    if (found.length === before) found.push(...stringingProblems(pattern, index));
  });
  return found;
}

function letterProblems({ beads }: Pattern): Problem[] {
  const found: Problem[] = [];
  const seen = new Map<string, number>();
  beads.forEach(({ letter }, index) => {
    const first = seen.get(letter);
    if (first !== undefined) {
      found.push({ code: 'letter-twice', facts: { letter, first, second: index + 1 } });
      return;
    }
    seen.set(letter, index + 1);
    const expected = letters[index];
    if (letter !== expected) {
      found.push({ code: 'letter-out-of-order', facts: { letter, bead: index + 1, expected } });
    }
  });
  return found;
}

function roundProblems({ shape, beads }: Pattern, panel: Panel): Problem[] {
  const found: Problem[] = [];
  if (panel.rounds.length !== shape.rounds) {
    const facts = { panel: panel.name, got: panel.rounds.length, expected: shape.rounds };
    found.push({ code: 'round-count', facts });
  }
  const known = new Set([bareMark, undecidedMark, ...beads.map((bead) => bead.letter)]);
  panel.rounds.forEach((marks, index) => {
    const round = index + 1;
    const expected = stitchesInRound(shape, round);
    if (marks.length !== expected) {
      const facts = { panel: panel.name, round, got: marks.length, expected };
      found.push({ code: 'round-length', facts });
    }
    const strangers = new Map<string, number[]>();
    Array.from(marks).forEach((mark, i) => {
      if (known.has(mark)) return;
      const stitches = strangers.get(mark) ?? [];
      stitches.push(i + 1);
      strangers.set(mark, stitches);
    });
    for (const [letter, stitches] of strangers) {
      const facts = { panel: panel.name, round, stitches, letter };
      found.push({ code: 'letter-unknown', facts });
    }
  });
  return found;
}

function stringingProblems(pattern: Pattern, panelIndex: number): Problem[] {
  const panel = pattern.panels[panelIndex];
  const strung = expandStringing(stringingCsv(pattern, panelIndex));
  const wanted = Array.from(beadsInWorkingOrder(panel)).reverse();
  for (let b = 0; b < Math.max(strung.length, wanted.length); b++) {
    if (strung[b] === wanted[b]) continue;
    const facts = {
      panel: panel.name,
      bead: b + 1,
      got: strung[b] ?? '-',
      expected: wanted[b] ?? '-',
    };
    return [{ code: 'stringing-differs', facts }];
  }
  return [];
}
