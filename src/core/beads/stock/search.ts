import { assign, costScale } from './assign.js';
import type { Assignment } from './assign.js';
import type { StockProblem } from './groups.js';
import { promisingMoves } from './moves.js';

const mostKicks = 10;
/** Moves whose bound is worked out closely before one is tried. */
const atATime = 32;

/** Work that may still be done. */
interface Purse {
  left: number;
}

/** Open beads, the kept ones first, and who serves whom. */
export interface Served {
  readonly open: readonly number[];
  readonly assignment: Assignment;
}

/**
 * Looks for the open beads whose exact assignment under limits costs least: from each start, single
 * swaps and openings until none helps, then kicks as in the choice without limits. Every set that
 * is compared is assigned exactly; bounds only save looking at sets that cannot be better.
 * `starts` must be able to serve all stitches. Work is counted in looked-up pairs, never in time: a
 * clock must not decide a result.
 */
export function searchStock(
  problem: StockProblem,
  starts: readonly (readonly number[])[],
  workAllowed: number,
): Served {
  const scale = costScale(problem);
  const purse: Purse = { left: workAllowed };
  let best: Served | undefined;
  const seen = new Set<string>();
  for (const start of starts) {
    const key = start.join(' ');
    if (seen.has(key)) continue;
    seen.add(key);
    const found = descend(problem, start, scale, purse);
    if (found && cheaper(found, best)) best = found;
  }
  if (!best) throw new Error('no start can serve all stitches');
  const next = sequence(1);
  for (let kick = 0; kick < mostKicks && purse.left > 0; kick++) {
    const kicked = changed(problem, best.open, next);
    const found = kicked && descend(problem, kicked, scale, purse);
    if (found && cheaper(found, best)) best = found;
  }
  return best;
}

function cheaper(one: Served, other: Served | undefined): boolean {
  return !other || one.assignment.cost < other.assignment.cost * (1 - 1e-9);
}

/** Takes the most promising move that really helps, until none does or the work is spent. */
function descend(
  problem: StockProblem,
  start: readonly number[],
  scale: number,
  purse: Purse,
): Served | undefined {
  const assignment = assign(problem, start, scale);
  let now = assignment && { open: start, assignment };
  for (let next = now; next;) {
    now = next;
    next = betterBy(problem, now, scale, purse);
  }
  return now;
}

/** One move that makes the assignment cheaper, if any does. */
function betterBy(
  problem: StockProblem,
  { open, assignment: now }: Served,
  scale: number,
  purse: Purse,
): Served | undefined {
  purse.left -= now.work + problem.groups * problem.beads;
  const { rough, refine } = promisingMoves(problem, open, now);
  for (let from = 0; from < rough.length && purse.left > 0; from += atATime) {
    purse.left -= problem.groups * atATime;
    for (const { slot, bead } of refine(rough.slice(from, from + atATime))) {
      const tried = open.slice();
      tried[slot] = bead;
      const assignment = assign(problem, tried, scale);
      if (!assignment) continue;
      purse.left -= assignment.work;
      if (assignment.cost < now.cost * (1 - 1e-9)) return { open: tried, assignment };
      if (purse.left <= 0) break;
    }
  }
  return undefined;
}

/** Some loose beads changed for closed ones by a fixed sequence; undefined if limits fall short. */
function changed(
  problem: StockProblem,
  open: readonly number[],
  next: () => number,
): number[] | undefined {
  const { beads, kept, limit, stitches } = problem;
  const loose = open.length - kept;
  for (let attempt = 0; attempt < 20; attempt++) {
    const kicked = open.slice();
    const turns = Math.min(loose, beads - open.length, 2 + Math.floor(loose / 8));
    if (turns < 1) return undefined;
    for (let turn = 0; turn < turns; turn++) {
      const closed: number[] = [];
      for (let j = 0; j < beads; j++) if (!kicked.includes(j) && limit[j] > 0) closed.push(j);
      if (closed.length === 0) return undefined;
      kicked[kept + (next() % loose)] = closed[next() % closed.length];
    }
    if (kicked.reduce((sum, j) => sum + limit[j], 0) >= stitches) return kicked;
  }
  return undefined;
}

/** A fixed sequence of whole numbers 0..32767 (linear congruential, modulus 2^31; high bits). */
function sequence(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
    return state >>> 16;
  };
}
