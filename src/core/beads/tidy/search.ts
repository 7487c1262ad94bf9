import type { Steps } from '../../steps.js';
import { fewestChanges } from './chain.js';
import { companyOf } from './company.js';
import { fewestChangesRepeated } from './ring.js';
import { makeStrayRemover } from './strays.js';
import { costOfBeads, follows } from './thread.js';
import type { Lists, Thread } from './thread.js';

/** How many colour changes the removal of one stray is worth (tried on five photographs). */
const strayWorth = 2;
/**
 * How many colour changes one neighbour of the same bead in the next rounds is worth. Without it
 * beads gather in streaks one round thick; with a quarter there are fewer streaks than before, for
 * a few more changes (tried on the same photographs).
 */
const companyWorth = 0.25;
/** Most prices that are tried. */
const steps = 24;
/** Share of the budget that need not be spent. */
const unspent = 0.002;

/**
 * The tidiest beads that cost at most `most`. A colour change along the thread has a price, strays
 * and neighbours in other rounds a share of it; for a price the best beads are found, then strays
 * are removed, and the search is for the highest price that the budget can pay. Nothing is random,
 * so it ends the same every time.
 *
 * @param start beads of the units, returned as they are when nothing better can be paid
 * @param most most Σ cost, not less than that of `start`
 * @param dearest most that a colour change may be worth, in the measure of cost
 * @param fits what else must hold of the beads, as it does of `start`
 */
export function* tidiest(
  thread: Thread,
  neighbours: Lists,
  start: Uint8Array,
  most: number,
  dearest: number,
  fits: (beadOf: Uint8Array) => boolean = () => true,
): Steps<Uint8Array> {
  const solve = thread.wedges === 1 ? fewestChanges : fewestChangesRepeated;
  const pairs = follows(thread);
  yield { stage: 'finish' };
  const removeStrays = makeStrayRemover({ thread, neighbours, pairs });
  yield { stage: 'finish' };
  const company = companyOf(thread, neighbours, pairs, start);
  yield { stage: 'finish' };
  const priced = new Float64Array(thread.cost.length);
  const at = function* (price: number): Steps<Uint8Array> {
    const share = companyWorth * price;
    for (let p = 0; p < priced.length; p++) priced[p] = thread.cost[p] - share * company[p];
    const beadOf = solve({ ...thread, cost: priced }, price);
    yield { stage: 'finish' };
    removeStrays(beadOf, price, strayWorth * price);
    return beadOf;
  };
  const atStart = costOfBeads(thread, start);
  const enough = most - unspent * (most - atStart);
  const aim = (most + enough) / 2;
  let best = start;
  let [paid, paidCost] = [0, atStart];
  let [tooHigh, tooHighCost] = [0, 0];
  let price = Math.min(1, dearest);
  for (let n = 0; n < steps; n++) {
    yield { stage: 'finish' };
    const beadOf = yield* at(price);
    const cost = costOfBeads(thread, beadOf);
    if (cost <= most && fits(beadOf)) {
      best = beadOf;
      [paid, paidCost] = [price, cost];
      if (cost >= enough || price >= dearest) break;
    } else {
      [tooHigh, tooHighCost] = [price, cost];
    }
    // Until a price is too high it doubles; then a straight line tells where to look, and every
    // third time the middle.
    const line = n % 3 === 0 ? 0.5 : (aim - paidCost) / (tooHighCost - paidCost);
    price =
      tooHigh === 0
        ? Math.min(2 * paid, dearest)
        : paid + (tooHigh - paid) * Math.min(0.95, Math.max(0.05, line));
  }
  return best;
}
