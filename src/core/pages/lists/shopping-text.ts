import type { Words } from '../../../words/index.js';
import type { Pattern } from '../../pattern/pattern.js';
import { csvText } from '../../csv.js';
import { oneLine, wrapped } from './lines.js';
import { shoppingList } from './shopping.js';
import type { ShoppingList, ShoppingWish } from './shopping.js';
import { beadItems, threadItems, toolItems } from './shopping-items.js';
import type { ShoppingItem } from './shopping-items.js';

/** Lines of the list are no longer than these characters. */
const lineWidth = 76;

/** Columns of a shopping list as CSV: what it is, how much, and for beads how that came about. */
export const shoppingColumns = [
  'kind',
  'item',
  'amount',
  'unit',
  'letter',
  'id',
  'name',
  'size',
  'count',
  'with_reserve',
  'grams',
  'in_stock',
  'to_buy',
  'pack_grams',
  'packets',
  'cost',
  'finish',
  'colour',
] as const;

/** shopping.txt: what to buy, with boxes to tick, for one purse or for a batch. */
export function shoppingText(pattern: Pattern, words: Words, wish: ShoppingWish = {}): string {
  const list = shoppingList(pattern, wish);
  const say = words.shopping;
  const title = say.title({ ...list, title: oneLine(list.title) });
  const parts = [
    wrapped(title),
    wrapped(say.forWhat(list)),
    wrapped(say.estimates(list)),
    say.heads.beads,
    ...(list.beads.length > 0 ? [itemsText(beadItems(list, words))] : []),
    totalText(list, words),
    say.heads.thread,
    itemsText(threadItems(list, words)),
    say.heads.tools,
    itemsText(toolItems(list, words)),
    say.heads.care,
    say.care.map((line) => indented(line, '  - ', '    ')).join('\n'),
  ];
  return `${parts.join('\n\n')}\n`;
}

/** The shopping list as CSV: one row a thing, sums left to the spreadsheet. */
export function shoppingCsv(pattern: Pattern, words: Words, wish: ShoppingWish = {}): string {
  const list = shoppingList(pattern, wish);
  const items = [...beadItems(list, words), ...threadItems(list, words), ...toolItems(list, words)];
  const rows = items.map(({ kind, text, amount, unit, bead }) => [
    kind,
    text,
    amount,
    unit,
    bead?.letter,
    bead?.id,
    bead?.name,
    bead?.size,
    bead?.count,
    bead?.withReserve,
    bead?.grams,
    bead?.inStock,
    bead?.toBuy,
    bead?.packGrams,
    bead?.packets,
    bead?.cost,
    bead?.finish,
    bead && words.beadLooks.colour(bead.look),
  ]);
  return csvText(shoppingColumns, rows);
}

function totalText(list: ShoppingList, words: Words): string {
  const { totals, beadReservePercent: percent, pieces, undecided } = list;
  const say = words.shopping;
  const sums = [
    say.beadTotal(totals),
    say.money(totals),
    say.beadReserveSaid({ percent, batch: pieces > 1 }),
    list.beads.some(({ sample }) => sample) ? say.samples : '',
  ];
  return [
    ...(totals.count > 0 ? sums : [say.noBeads]),
    undecided > 0 ? say.undecided(undecided) : '',
  ]
    .filter((line) => line !== '')
    .map((line) => together(line))
    .join('\n');
}

/** A paragraph broken into lines, but never between a number and its unit. */
function together(paragraph: string, width = lineWidth): string {
  const joined = paragraph.replace(/(\d) (?=(?:mm|cm|m|g|tex|%)(?![a-z]))/g, '$1\u00a0');
  return wrapped(joined, width).replaceAll('\u00a0', ' ');
}

/** A box to tick, or a dash where nothing is to be bought; what follows is set in. */
function itemsText(items: readonly ShoppingItem[]): string {
  return items
    .map(({ text, details, had }) => {
      const head = indented(text, had ? ' -  ' : '[ ] ', '       ');
      return [head, ...details.map((line) => indented(line, '       '))].join('\n');
    })
    .join('\n');
}

/** A paragraph whose first line begins with `first` and whose others with `other`. */
function indented(paragraph: string, first: string, other = ' '.repeat(first.length)): string {
  const room = lineWidth - Math.max(first.length, other.length);
  return together(paragraph, room)
    .split('\n')
    .map((line, n) => `${n === 0 ? first : other}${line}`)
    .join('\n');
}

/** Whether a file is a shopping list of ours, text or CSV. */
export function isShoppingList(bytes: Uint8Array, words: Words): boolean {
  const start = new TextDecoder().decode(bytes.subarray(0, 200));
  return (
    start.startsWith(words.shopping.begins) || start.startsWith(`${shoppingColumns.join(',')}\n`)
  );
}
