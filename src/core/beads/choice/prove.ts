import type { Steps } from '../../steps.js';
import { nearLists } from './lists.js';
import { costOf, costOfAll } from './matrix.js';
import type { Problem } from './matrix.js';
import { startPrices } from './prices.js';
import { ascend, leastBetter } from './relax.js';
import type { Inquiry, Part } from './relax.js';
import { closed, opened, undecided } from './settle.js';

/** What a proof may spend: steps and parts, never time. A clock must not decide a result. */
export interface ProofBudget {
  /** Looks at a place, or at a bead near to it. */
  readonly steps: number;
  /** Parts of the question that are looked at one by one. */
  readonly parts: number;
}

/** `normal` stays below a second or so, `long` below a minute or two. */
export const proofBudgets: Record<'normal' | 'long', ProofBudget> = {
  normal: { steps: 100_000_000, parts: 1000 },
  long: { steps: 4_000_000_000, parts: 50_000 },
};

export interface ProofTools {
  /** Looks for a better choice than this one by other means; asked once, when the proof is hard. */
  improve(open: readonly number[]): Steps<number[]>;
  /** Asked before every round of prices; true ends the proof early, with a valid bound. */
  stop?: (() => boolean) | undefined;
}

export interface Proof {
  /** The best choice found, as candidates, ascending. */
  readonly open: number[];
  /** No choice costs less. */
  readonly bound: number;
  /** What was spent. */
  readonly steps: number;
  readonly parts: number;
}

/** A part that waits for its turn. */
type Waiting = Omit<Part, 'lists'>;

/** Prices of waiting parts are kept while they are fewer numbers than this in all. */
const mostPrices = 8_000_000;
/** Lists longer than this in all stay capped: memory, and what few prices would gain by them. */
const mostEntries = 4_000_000;

/**
 * Branch and bound from a good choice. The bound of the whole is raised and beads are settled
 * (`ascend`); what stays undecided is split by opening and closing the most doubtful bead, and the
 * part of least bound goes first, so that an end at any time leaves the best bound there is.
 */
export function* prove(
  problem: Problem,
  start: readonly number[],
  budget: ProofBudget,
  tools: ProofTools,
): Steps<Proof> {
  const inquiry = makeInquiry(problem, start, budget.steps, tools.stop);
  const floor = costOfAll(problem);
  let parts = 0;
  const answer = (least: number): Proof => ({
    open: inquiry.best.slice().sort((p, q) => p - q),
    bound: Math.min(inquiry.cost, Math.max(floor, least)),
    steps: budget.steps - inquiry.steps,
    parts,
  });
  if (floor >= inquiry.cost * (1 - leastBetter) || inquiry.ended()) return answer(floor);

  parts = 1;
  const state = new Int8Array(problem.beads).fill(undecided).fill(opened, 0, problem.kept);
  const { price, cap } = startPrices(problem, inquiry.best);
  yield { stage: 'proof', bound: floor };
  const lists = yield* nearLists(problem, state, cap);
  const root: Part = { state, price, lists, bound: floor };
  let ascent = yield* ascend(inquiry, root, 60, 1);
  if (!ascent.done && !inquiry.ended()) {
    inquiry.offer(yield* tools.improve(inquiry.best));
    // Few beads are left as a rule: with whole lists the prices may rise without a cap.
    const left = state.reduce((sum, one) => sum + (one === closed ? 0 : 1), 0);
    if (left * problem.places <= mostEntries) root.lists = yield* nearLists(problem, state);
    ascent = yield* ascend(inquiry, root, 150, 0.5);
  }
  if (ascent.done) return answer(inquiry.ruledOut);

  const waiting = split(root, ascent.share);
  while (waiting.length > 0) {
    const part = takeLeast(waiting);
    if (part.bound >= inquiry.cost * (1 - leastBetter)) {
      inquiry.ruledOut = Math.min(inquiry.ruledOut, part.bound);
      continue;
    }
    if (parts >= budget.parts || inquiry.ended()) {
      return answer(Math.min(part.bound, inquiry.ruledOut));
    }
    parts++;
    const whole: Part = { ...part, lists: root.lists };
    const { done, share } = yield* ascend(inquiry, whole, 40, 0.5);
    if (done) continue;
    if ((waiting.length + 2) * problem.places > mostPrices) whole.price = root.price;
    waiting.push(...split(whole, share));
  }
  return answer(inquiry.ruledOut);
}

function makeInquiry(
  problem: Problem,
  start: readonly number[],
  steps: number,
  stop: (() => boolean) | undefined,
): Inquiry {
  let stopped = false;
  return {
    problem,
    best: start.slice(),
    cost: costOf(problem, start),
    ruledOut: Infinity,
    steps,
    ended() {
      stopped ||= this.steps <= 0 || (stop?.() ?? false);
      return stopped;
    },
    offer(open) {
      this.steps -= problem.places * open.length;
      const cost = open.length > 0 ? costOf(problem, open) : Infinity;
      if (cost >= this.cost) return;
      this.best = open.slice();
      this.cost = cost;
    },
  };
}

/** Two parts: with the most doubtful bead open, and closed. One, when nothing is in doubt. */
function split({ state, price, bound }: Waiting, share: Float64Array): Waiting[] {
  let doubtful = -1;
  let doubt = Infinity;
  for (let j = 0; j < share.length; j++) {
    const off = Math.abs(share[j] - 0.5);
    if (state[j] !== undecided || off >= doubt) continue;
    doubtful = j;
    doubt = off;
  }
  if (doubtful < 0) return [{ state, price, bound }];
  return [opened, closed].map((to) => {
    const settled = state.slice();
    settled[doubtful] = to;
    return { state: settled, price, bound };
  });
}

/** Takes the part of least bound out, the latest of equal ones. */
function takeLeast(waiting: Waiting[]): Waiting {
  let least = waiting.length - 1;
  for (let k = least - 1; k >= 0; k--) if (waiting[k].bound < waiting[least].bound) least = k;
  return waiting.splice(least, 1)[0];
}
