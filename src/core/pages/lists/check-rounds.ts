import { pairStart } from '../../panel/links.js';
import { bareMark, undecidedMark } from '../../pattern/marks.js';
import { beadsOnly } from '../../pattern/stitches.js';
import { shapeLimits } from '../../panel/shape.js';
import type { Shape } from '../../panel/shape.js';
import type { ListProblem } from '../../../words/en/list-problems.js';
import type { ListedRound, RoundList } from './read-rounds.js';

/** How many wedges most rounds of a list speak for; the least where two numbers tie. */
export function wedgesOfList({ rounds }: RoundList): number | undefined {
  const { least, most } = shapeLimits.wedges;
  let best: { wedges: number; votes: number } | undefined;
  for (let wedges = least; wedges <= most; wedges++) {
    const votes = rounds.filter(({ marks }, n) => marks.length === wedges * (n + 1)).length;
    if (votes > (best?.votes ?? 0)) best = { wedges, votes };
  }
  return best?.wedges;
}

/**
 * Which increase most pairs in square brackets speak for; undefined where none does. Fewer than
 * four rounds can leave it open: then the commoner one is taken.
 */
export function increaseOfList({ rounds }: RoundList): Shape['increase'] | undefined {
  let best: { increase: Shape['increase']; votes: number } | undefined;
  for (const increase of ['last', 'first', 'middle'] as const) {
    let votes = 0;
    rounds.forEach(({ pairs }, n) => {
      const start = pairStart({ increase }, n + 1);
      votes += pairs.filter((at) => at % (n + 1) === start).length;
    });
    if (votes > (best?.votes ?? 0)) best = { increase, votes };
  }
  return best?.increase;
}

/**
 * Everything in a list that goes against the growth of a panel: round r holds N·r stitches, its
 * pairs stand where the increase is, its letters are beads, and the counts in front add up.
 *
 * @param known letters that are beads; undefined where any letter is
 */
export function checkRoundList(
  list: RoundList,
  shape: Pick<Shape, 'wedges' | 'increase'>,
  known: ReadonlySet<string> | undefined,
): ListProblem[] {
  let total = 0;
  return list.rounds.flatMap((one, index) => {
    const round = index + 1;
    const before = total;
    total = one.said.total ?? total + beadsOnly(one.marks).length;
    const letters = letterProblems(one, round, known);
    const [got, expected] = [one.marks.length, shape.wedges * round];
    if (got !== expected) {
      const facts = { line: one.line, round, got, expected, wedges: shape.wedges };
      return [{ code: 'stitches' as const, facts }, ...letters];
    }
    return [...letters, ...pairProblems(one, round, shape), ...saidProblems(one, round, before)];
  });
}

function letterProblems(
  { line, marks }: ListedRound,
  round: number,
  known: ReadonlySet<string> | undefined,
): ListProblem[] {
  const strange = [...new Set(marks)].filter(
    (mark) => known && !known.has(mark) && mark !== bareMark && mark !== undecidedMark,
  );
  return strange.map((letter) => {
    const facts = { line, round, stitch: marks.indexOf(letter) + 1, letter };
    return { code: 'letter', facts };
  });
}

/** A round typed without any square brackets is fine. */
function pairProblems(
  { line, pairs }: ListedRound,
  round: number,
  { wedges, increase }: Pick<Shape, 'wedges' | 'increase'>,
): ListProblem[] {
  if (pairs.length === 0) return [];
  const start = pairStart({ increase }, round);
  const expected = start === undefined ? 0 : wedges;
  if (pairs.length !== expected) {
    return [{ code: 'pairs', facts: { line, round, got: pairs.length, expected } }];
  }
  const wrong = pairs.findIndex((at, wedge) => at !== wedge * round + start!);
  if (wrong < 0) return [];
  const facts = { line, round, got: pairs[wrong] + 1, expected: wrong * round + start! + 1 };
  return [{ code: 'pair-place', facts: { ...facts, increase } }];
}

/** The counts in front; only the first that is wrong, since the others follow from it. */
function saidProblems(
  { line, marks, said }: ListedRound,
  round: number,
  totalBefore: number,
): ListProblem[] {
  const beads = beadsOnly(marks).length;
  const counts = { stitches: marks.length, beads, total: totalBefore + beads };
  for (const what of ['stitches', 'beads', 'total'] as const) {
    const got = said[what];
    if (got === undefined || got === counts[what]) continue;
    return [{ code: 'said', facts: { line, round, what, got, expected: counts[what] } }];
  }
  return [];
}
