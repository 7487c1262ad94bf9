import { ciede2000Fast } from '../colour/ciede2000.js';
import { undecided } from '../beads/bead.js';
import { looksLikePaper } from './cell-samples.js';
import type { CellSamples } from './cell-samples.js';
import { nearestOf } from './groups.js';
import type { ColourGroup, Lab } from './groups.js';

/** Why a cell is doubtful: between two beads, in two colours, unlike its group, half coloured, cut off. */
export type DoubtReason = 'between' | 'uneven' | 'unlike' | 'partly' | 'outside';

/** What a cell was read as; beads are palette indices. */
export interface Judgement {
  readonly bead: number;
  readonly doubt?: DoubtReason;
  /** The other bead in question, where there is one. */
  readonly other?: number;
}

/** More bare paper than this inside a cell: it was not coloured (chosen by trial, as all here). */
export const mostlyPaper = 0.7;
const surelyPaper = 0.93;
const patchy = 0.4;
/** The nearest group is not clearly nearer than the second. */
const notClearlyNearer = 0.6;
/** A cell less even than this share of what is usual on its page. */
const muchLessEven = 0.6;
/** Share of a cell's points that look like another bead. */
const mixed = 0.22;

/**
 * Decides one cell, and whether the maker should look at it again.
 *
 * @param unpainted what an uncoloured cell becomes
 * @param usualEven the middle `even` of the page's coloured cells
 */
export function judge(
  cell: CellSamples | undefined,
  groups: readonly ColourGroup[],
  unpainted: number,
  usualEven: number,
): Judgement {
  if (!cell) return { bead: undecided, doubt: 'outside' };
  if (cell.paper > mostlyPaper) {
    return cell.paper >= surelyPaper ? { bead: unpainted } : { bead: unpainted, doubt: 'partly' };
  }
  const middles = groups.map(({ colour }) => colour);
  const [best, least] = nearestOf(cell.colour, middles);
  const { bead, spread } = groups[best];
  const others = groups.filter((group) => group.bead !== bead);
  if (others.length > 0) {
    const [second, more] = nearestOf(
      cell.colour,
      others.map(({ colour }) => colour),
    );
    const other = others[second].bead;
    if (least > notClearlyNearer * more) return { bead, doubt: 'between', other };
    const votes = votesOf(cell, groups);
    const rival = [...votes].filter(([b]) => b !== bead).sort((p, q) => q[1] - p[1])[0];
    if (rival && rival[1] > mixed) return { bead, doubt: 'uneven', other: rival[0] };
  }
  if (cell.paper > patchy || cell.even < muchLessEven * usualEven) return { bead, doubt: 'partly' };
  if (least > Math.max(9, 4 * spread)) return { bead, doubt: 'unlike' };
  return { bead };
}

/** For each bead the share of a cell's coloured points that are clearly nearest to it. */
function votesOf(cell: CellSamples, groups: readonly ColourGroup[]): Map<number, number> {
  const votes = new Map<number, number>();
  let all = 0;
  for (let p = 0; p < cell.lab.length; p += 3) {
    const [L, a, b] = cell.lab.subarray(p, p + 3);
    if (looksLikePaper(L, a, b)) continue;
    all++;
    let best = -1;
    let [least, second] = [Infinity, Infinity];
    for (const { colour, bead } of groups) {
      const d = differenceFrom(colour, L, a, b);
      if (d < least) {
        if (bead !== best) second = least;
        [best, least] = [bead, d];
      } else if (bead !== best && d < second) second = d;
    }
    if (least < 0.7 * second) votes.set(best, (votes.get(best) ?? 0) + 1);
  }
  for (const [bead, count] of votes) votes.set(bead, count / all);
  return votes;
}

function differenceFrom(colour: Lab, L: number, a: number, b: number): number {
  return ciede2000Fast(colour[0], colour[1], colour[2], L, a, b);
}

/** Whether a cell is plainly of one colour, fit to find the groups by. */
export function isClear(cell: CellSamples | undefined): cell is CellSamples {
  return cell !== undefined && cell.paper < 0.5;
}
