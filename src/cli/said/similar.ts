/** Names further away than this many slips are no likely meaning. */
const mostSlips = 3;

/**
 * The candidate that was probably meant by a mistyped word: the fewest slips, the first of equals.
 * A slip is a letter too many, missing, wrong, or swapped with its neighbour (F. J. Damerau,
 * Communications of the ACM 7(3), 1964); at most three, and at most two letters in five.
 *
 * @returns undefined when nothing is near
 */
export function similarTo(word: string, candidates: Iterable<string>): string | undefined {
  const wanted = word.toLowerCase();
  let best: string | undefined;
  let fewest = mostSlips + 1;
  for (const candidate of candidates) {
    const long = Math.max(wanted.length, candidate.length);
    if (Math.abs(wanted.length - candidate.length) >= fewest) continue;
    const slips = slipsBetween(wanted, candidate.toLowerCase());
    if (slips < fewest && slips <= 0.4 * long) [best, fewest] = [candidate, slips];
  }
  return best;
}

function slipsBetween(from: string, to: string): number {
  let before: number[] = [];
  let row = Array.from({ length: to.length + 1 }, (_, j) => j);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const wrong = from[i - 1] === to[j - 1] ? 0 : 1;
      next[j] = Math.min(row[j] + 1, next[j - 1] + 1, row[j - 1] + wrong);
      const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      if (swapped) next[j] = Math.min(next[j], before[j - 2] + 1);
    }
    [before, row] = [row, next];
  }
  return row[to.length];
}
