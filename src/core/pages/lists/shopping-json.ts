import type { Words } from '../../../words/index.js';
import { warningSentence } from '../../errors.js';
import type { Warning } from '../../errors.js';
import type { ShoppingList } from './shopping.js';
import { beadItems, threadItems, toolItems } from './shopping-items.js';

/** A shopping list as one JSON object; what is not known is null. */
export function shoppingJson(
  list: ShoppingList,
  warnings: readonly Warning[],
  words: Words,
  file?: string,
): string {
  const { thread, sewing, totals } = list;
  const items = [...threadItems(list, words), ...toolItems(list, words)];
  const object = {
    schema: 'rondure-shopping',
    version: 1,
    title: list.title,
    file: file ?? null,
    pieces: list.pieces,
    panels: list.panels,
    patternPanels: list.patternPanels,
    beadReservePercent: list.beadReservePercent,
    beads: beadItems(list, words).map(({ bead }) => orNull({ ...bead })),
    totals: orNull({ ...totals }),
    undecided: list.undecided,
    thread: orNull({
      stitches: thread.stitches,
      lengths: thread.lengths,
      perStitchMm: rounded(thread.perStitch.mm),
      perStitchFrom: thread.perStitch.from,
      netMm: rounded(thread.netMm),
      reservePercent: thread.reservePercent,
      reserveMm: rounded(thread.reserveMm),
      tailMm: thread.tailMm,
      tailsMm: rounded(thread.tailsMm),
      totalMm: rounded(thread.totalMm),
      strungMm: rounded(thread.strungMm),
      grams: thread.grams === undefined ? undefined : rounded(thread.grams),
      diameterMm: thread.fit?.diameterMm === undefined ? undefined : rounded(thread.fit.diameterMm),
      fitsSingly: thread.fit?.single,
      fitsDoubled: thread.fit?.doubled,
    }),
    sewing: sewing
      ? {
          estimate: sewing.estimate,
          rimMm: rounded(sewing.rimMm),
          arcMm: rounded(sewing.arcMm),
          seamMm: rounded(sewing.seamMm),
          seamThreadMm: rounded(sewing.seamThreadMm),
          frameThreadMm: rounded(sewing.frameThreadMm),
          braidMm: rounded(sewing.braidMm),
          frameWidthMm: rounded(sewing.frameWidthMm),
        }
      : null,
    items: items.map(({ kind, text, amount, unit }) => ({ kind, text, amount, unit })),
    warnings: warnings.map((one) => ({ ...one, message: warningSentence(words, one) })),
  };
  return `${JSON.stringify(object, null, 2)}\n`;
}

function orNull(fields: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(fields).map(([key, value]) => [key, value ?? null]));
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}
