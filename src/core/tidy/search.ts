import { fewestChanges } from './chain.js';
import { fewestChangesRepeated } from './ring.js';
import { makeStrayRemover } from './strays.js';
import { costOfBeads, follows } from './thread.js';
import type { Lists, Thread } from './thread.js';

/** How many colour changes the removal of one stray is worth (tried on five photographs). */
const strayWorth = 6;
/** Steps of the search for the penalty; each halves what is not known of it. */
const steps = 22;

/** What a price for changes and strays led to. */
interface Trial {
  readonly beadOf: Uint8Array;
  readonly cost: number;
}

/**
 * The tidiest beads that cost at most `most`: a colour change has a price, a stray a multiple of
 * it, and the highest price is searched whose beads the budget can pay. The same every time.
 *
 * @param start beads of the units, returned as they are when nothing better can be paid
 * @param most most Σ cost, not less than that of `start`
 */
export function tidiest(
  thread: Thread,
  neighbours: Lists,
  start: Uint8Array,
  most: number,
): Uint8Array {
  const solve = thread.wedges === 1 ? fewestChanges : fewestChangesRepeated;
  const removeStrays = makeStrayRemover({ thread, neighbours, pairs: follows(thread) });
  const at = (price: number): Trial => {
    const beadOf = solve(thread, price);
    removeStrays(beadOf, price, strayWorth * price);
    return { beadOf, cost: costOfBeads(thread, beadOf) };
  };
  let best: Uint8Array = start;
  let paid = 0;
  let tooHigh = 1;
  for (let n = 0; n < 16; n++) {
    const trial = at(tooHigh);
    if (trial.cost > most) break;
    best = trial.beadOf;
    paid = tooHigh;
    tooHigh *= 2;
  }
  for (let n = 0; n < steps; n++) {
    const price = (paid + tooHigh) / 2;
    const trial = at(price);
    if (trial.cost <= most) {
      best = trial.beadOf;
      paid = price;
    } else {
      tooHigh = price;
    }
  }
  return best;
}
