import { beadsOnly, lettersInWorkingOrder } from '../pattern/stitches.js';
import type { Pattern } from '../pattern/pattern.js';
import { perGramOf } from '../beads/amounts.js';
import { panelThread } from '../thread/need.js';

/** What one purse costs, in the money of the prices; parts that cannot be told are undefined. */
export interface PieceCost {
  /** The beads that are worked, at what a packet costs; undefined where some bead has no price. */
  readonly beads: number | undefined;
  readonly thread: number | undefined;
  /** The time that was counted. */
  readonly time: number | undefined;
  /** Of the parts that are known. */
  readonly sum: number;
}

/**
 * The cost of all panels of a pattern made once.
 *
 * @param seconds that went into them
 * @param hourly what an hour is worth; undefined: time is not reckoned
 */
export function pieceCost(pattern: Pattern, seconds: number, hourly?: number): PieceCost {
  const beads = pattern.beads.map((bead) => {
    const { letter, price, packGrams } = bead;
    const perGram = perGramOf(bead);
    const count = pattern.panels.reduce(
      (sum, panel) => sum + beadsOnly(lettersInWorkingOrder(panel)).split(letter).length - 1,
      0,
    );
    if (count === 0) return 0;
    if (price === undefined || packGrams === undefined || perGram === undefined) return NaN;
    return (count / (packGrams * perGram)) * price;
  });
  const all = beads.reduce((sum, one) => sum + one, 0);
  const { spoolMm, spoolPrice } = pattern.thread ?? {};
  const threadMm = pattern.panels.reduce((sum, _, n) => sum + panelThread(pattern, n).totalMm, 0);
  const cost = {
    beads: Number.isNaN(all) ? undefined : all,
    thread:
      spoolMm === undefined || spoolPrice === undefined
        ? undefined
        : (threadMm / spoolMm) * spoolPrice,
    time: hourly === undefined ? undefined : (seconds / 3600) * hourly,
  };
  return { ...cost, sum: (cost.beads ?? 0) + (cost.thread ?? 0) + (cost.time ?? 0) };
}
