import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { materials } from '../src/core/pages/lists/materials.js';
import { shoppingList } from '../src/core/pages/lists/shopping.js';
import {
  shoppingColumns,
  shoppingCsv,
  shoppingText,
} from '../src/core/pages/lists/shopping-text.js';
import { beadCounts } from '../src/core/pattern/stitches.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import type { PatternBead } from '../src/core/beads/bead.js';
import { en } from '../src/words/index.js';
import { anyPattern, patternOf, someBeads } from './support/patterns.js';

/** A panel of A alone, 11/0. */
const plain = (wedges: number, rounds: number, beads = someBeads(1)) =>
  patternOf(
    Array.from({ length: rounds }, (_, n) => 'A'.repeat(wedges * (n + 1))),
    { wedges },
    beads,
  );
const flat = (text: string) => text.replace(/\s+/g, ' ');

/** Any pattern whose beads have, here and there, stock, packets and prices. */
const stocked: fc.Arbitrary<Pattern> = fc
  .tuple(
    anyPattern,
    fc.array(
      fc.record(
        {
          grams: fc.double({ min: 0, max: 40, noNaN: true }),
          count: fc.integer({ min: 0, max: 3000 }),
          price: fc.integer({ min: 0, max: 900 }).map((cents) => cents / 100),
          packGrams: fc.constantFrom(5, 7.2, 10, 25),
          beadsPerGram: fc.double({ min: 10, max: 350, noNaN: true }),
        },
        { requiredKeys: [] },
      ),
      { minLength: 24, maxLength: 24 },
    ),
    fc.boolean(),
  )
  .map(([pattern, extra, second]) => {
    const beads = pattern.beads.map((bead, n): PatternBead => ({ ...bead, ...extra[n] }));
    const [front] = pattern.panels;
    const panels = second ? [front, { ...front, name: 'back' }] : [front];
    return { ...pattern, beads, panels };
  });
const anyPieces = fc.integer({ min: 1, max: 50 });

describe('the shopping list', () => {
  it('counts two panels for a purse, from one panel or from two', () => {
    const one = plain(7, 22);
    const two = { ...one, panels: [...one.panels, { ...one.panels[0], name: 'back' }] };
    for (const pattern of [one, two]) {
      const list = shoppingList(pattern);
      expect(list.panels).toBe(2);
      expect(list.totals.count).toBe(2 * ((7 * 22 * 23) / 2));
      expect(list.thread.stitches).toBe(list.totals.count);
    }
    expect(shoppingList(one, { panels: 1 }).totals.count).toBe((7 * 22 * 23) / 2);
    expect(flat(shoppingText(one, en))).toContain('it counts twice, for the front and');
    expect(flat(shoppingText(two, en))).toContain('this pattern has both');
  });

  it('a purse of two panels of 95 mm in 11/0 takes about 3,000 beads, 27 to 28 g (common practice, no source)', () => {
    // 6 wedges of 22 rounds: 1,518 stitches a panel in the usual table of sizes.
    const { totals, beads } = shoppingList(plain(6, 22));
    expect(totals.count).toBe(3036);
    expect(totals.count / 110).toBeGreaterThan(27);
    expect(totals.count / 110).toBeLessThan(28);
    // With a tenth over it: 3,340 beads / 110 = 30.4 g; "30 g to buy".
    expect(beads[0].grams).toBe(30.4);
  });

  it('a batch: reserve and packets once on the whole', () => {
    const bead = { ...someBeads(1)[0], packGrams: 10, price: 1.9 };
    const pattern = plain(7, 20, [bead]);
    const one = shoppingList(pattern);
    // 2,940 and 294 in reserve: 29.4 g, 3 packets.
    expect(one.beads[0]).toMatchObject({ count: 2940, withReserve: 3234, packets: 3, cost: 5.7 });
    // Twelve: 35,280 and 3,528 in reserve: 352.8 g, 36 packets, 68.40.
    const twelve = shoppingList(pattern, { pieces: 12 });
    expect(twelve.beads[0]).toMatchObject({ count: 35280, withReserve: 38808, grams: 352.8 });
    expect(twelve.beads[0]).toMatchObject({ packets: 36, cost: 68.4 });
    expect(twelve.totals).toMatchObject({ packets: 36, cost: 68.4, bought: 1, priced: 1 });
  });

  it('a rare bead: 30 in reserve for one purse, and for a batch of ten', () => {
    const rounds = ['AAA', 'AAAAAB', 'AAAAAAAAA'];
    expect(shoppingList(patternOf(rounds)).beads[1]).toMatchObject({ count: 2, withReserve: 32 });
    const ten = shoppingList(patternOf(rounds), { pieces: 10 });
    expect(ten.beads[1]).toMatchObject({ count: 20, withReserve: 50 });
    const none = shoppingList(patternOf(rounds), { beadReservePercent: 0 });
    expect(none.beads[1]).toMatchObject({ count: 2, withReserve: 2 });
  });

  it('what is had, what is bought and what it costs fit together, whatever the palette says', () => {
    fc.assert(
      fc.property(stocked, anyPieces, (pattern, pieces) => {
        const list = shoppingList(pattern, { pieces });
        const counts = beadCounts(pattern);
        const times = (2 * pieces) / pattern.panels.length;
        let cost = 0;
        for (const [n, row] of list.beads.entries()) {
          const { beadsPerGram, grams, count } = pattern.beads[n];
          expect(row.count).toBe(counts.get(row.letter)! * times);
          expect(row.withReserve).toBeGreaterThanOrEqual(row.count);
          const had = Math.floor(count ?? (grams ?? 0) * beadsPerGram! + 1e-9);
          expect(row.inStock ?? 0).toBeLessThanOrEqual(had);
          expect(row.toBuy + Math.min(row.inStock ?? 0, row.withReserve)).toBe(row.withReserve);
          expect(row.toBuyGrams! * beadsPerGram!).toBeGreaterThanOrEqual(row.toBuy - 1e-6);
          if (row.packets !== undefined) {
            const inPackets = row.packets * row.packGrams! * beadsPerGram!;
            expect(inPackets).toBeGreaterThanOrEqual(row.toBuy - 1e-6);
            expect(inPackets - row.packGrams! * beadsPerGram!).toBeLessThan(
              Math.max(row.toBuy, 1e-6),
            );
          }
          cost += row.cost ?? 0;
        }
        expect(list.totals.cost).toBeCloseTo(cost, 2);
        expect(list.totals.count).toBe(list.beads.reduce((sum, row) => sum + row.count, 0));
      }),
      { numRuns: 100 },
    );
  });

  it('a batch never needs less than its pieces, nor more than they would apart', () => {
    fc.assert(
      fc.property(stocked, anyPieces, (given, pieces) => {
        // Without stock, since a stock is there once and not for each purse.
        const beads = given.beads.map(({ grams: _g, count: _c, ...bead }) => bead);
        const pattern = { ...given, beads };
        const one = shoppingList(pattern);
        const batch = shoppingList(pattern, { pieces });
        for (const [n, row] of batch.beads.entries()) {
          expect(row.count).toBe(pieces * one.beads[n].count);
          expect(row.withReserve).toBeGreaterThanOrEqual(row.count);
          expect(row.withReserve).toBeLessThanOrEqual(pieces * one.beads[n].withReserve);
          if (row.packets !== undefined)
            expect(row.packets).toBeLessThanOrEqual(pieces * one.beads[n].packets!);
        }
        expect(batch.thread.totalMm).toBeCloseTo(pieces * one.thread.totalMm, 3);
      }),
      { numRuns: 100 },
    );
  });

  it('lays the lining out on cloth as it is sold: no piece is left over, none lies outside', () => {
    fc.assert(
      fc.property(anyPattern, anyPieces, (pattern, pieces) => {
        const { lining } = shoppingList(pattern, { pieces });
        // 2 cm more than the cuts each way.
        const across = (lining.widthCm - 2) / lining.pieceWidthCm;
        const down = (lining.heightCm - 2) / lining.pieceHeightCm;
        expect(Number.isInteger(across) && Number.isInteger(down)).toBe(true);
        expect(across * down).toBeGreaterThanOrEqual(2 * pieces);
        expect(across * (down - 1)).toBeLessThan(2 * pieces);
        if (across > 1) expect(lining.widthCm).toBeLessThanOrEqual(110);
      }),
      { numRuns: 60 },
    );
  });

  it('wide cloth takes more pieces in a row, narrow cloth fewer', () => {
    const cloth = (clothWidthCm: number) =>
      shoppingList(plain(7, 20), { pieces: 6, clothWidthCm }).lining;
    // Twelve pieces of 12 x 11 cm: nine in a row of 110 cm, four of 50 cm.
    expect(cloth(110)).toMatchObject({ widthCm: 110, heightCm: 24, clothWidthCm: 110 });
    expect(cloth(50)).toMatchObject({ widthCm: 50, heightCm: 35 });
  });

  it('a crocheted lining takes the thread of the same panels, and no cloth', () => {
    const list = shoppingList(plain(7, 20), { lining: 'crocheted' });
    // 2 panels of 1,470 stitches at 24 mm (usual for 11/0), 15 % over, and four tails of 20 cm.
    expect(list.panelLining.mm).toBeCloseTo(2 * 1470 * 24 * 1.15 + 4 * 200, 6);
    const text = shoppingText(plain(7, 20), en, { lining: 'crocheted' });
    expect(text).toMatch(/crocheted lining, 2 panels without beads: 82 m of thread/);
    expect(text).not.toMatch(/Lining cloth|chalk/);
    expect(shoppingText(plain(7, 20), en)).toMatch(/Lining cloth, .*\n? *110 cm wide/);
  });

  it('says how many balls and what they cost, and the maker’s own hook', () => {
    const pattern = plain(7, 20);
    pattern.thread = { spoolMm: 40_000, spoolPrice: 4.9, hookMm: 0.75 };
    const list = shoppingList(pattern);
    const balls = Math.ceil(list.thread.totalMm / 40_000);
    expect(list.thread.spools).toEqual({
      spools: balls,
      metres: 40,
      cost: Number((4.9 * balls).toFixed(2)),
    });
    const text = shoppingText(pattern, en).replace(/\s+/g, ' ');
    expect(text).toContain(`${balls} balls or spools of 40 m, ${(4.9 * balls).toFixed(2)} in all`);
    expect(text).toContain('Crochet hook, 0.75 mm: the hook of this pattern');
    const both = shoppingList(pattern, { lining: 'crocheted' });
    expect(both.thread.spools!.spools).toBe(
      Math.ceil((list.thread.totalMm + list.panelLining.mm) / 40_000),
    );
  });

  it('names what lies beside the work, and no shop for our sample colours', () => {
    const pattern = plain(7, 20);
    const text = shoppingText(pattern, en).replace(/\s+/g, ' ');
    // Common practice, no source.
    for (const thing of [
      'another colour',
      'Clear nylon thread',
      'thread in the colour of the lining',
      'Bead mat',
      'scissors',
      'needle and pins',
      'pencil',
      'Lighter',
      'glue',
    ])
      expect(text).toContain(thing);
    expect(text).not.toContain('sample colours');
    pattern.beads[0].sample = true;
    expect(shoppingText(pattern, en)).toContain('our own sample colours');
  });

  it('a lining for 95 mm with 5 mm allowance is cut from 11 cm: 105 mm at the widest', () => {
    const circle = plain(6, 20);
    circle.shape = { ...circle.shape, outline: 'circle', construction: 'joined' };
    circle.shape.roundHeightMm = 95 / 41;
    const { lining } = shoppingList(circle);
    expect(lining).toMatchObject({
      pieceWidthCm: 11,
      pieceHeightCm: 11,
      widthCm: 24,
      heightCm: 13,
    });
  });
});

describe('the list as text and as CSV', () => {
  it('an independent reader adds the CSV up to what the list says', () => {
    fc.assert(
      fc.property(stocked, anyPieces, (pattern, pieces) => {
        const { data, meta, errors } = Papa.parse<Record<string, string>>(
          shoppingCsv(pattern, en, { pieces }),
          { header: true, skipEmptyLines: true },
        );
        expect(errors).toEqual([]);
        expect(meta.fields).toEqual([...shoppingColumns]);
        const list = shoppingList(pattern, { pieces });
        const beads = data.filter(({ kind }) => kind === 'bead');
        const sum = (column: string) =>
          beads.reduce((total, row) => total + Number(row[column]), 0);
        expect(beads).toHaveLength(pattern.beads.length);
        expect(sum('count')).toBe(list.totals.count);
        expect(sum('with_reserve')).toBe(list.totals.withReserve);
        expect(sum('to_buy')).toBe(list.totals.toBuy);
        expect(sum('cost')).toBeCloseTo(list.totals.cost, 2);
        for (const row of data) expect(Number(row.amount)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 60 },
    );
  });

  it('counts the stitches of the chart, which materials.csv counts once', () => {
    const pattern = patternOf(['AAB', 'AAAAB.', 'BBBAAA_AA']);
    const once = materials(pattern).map(({ count }) => count);
    expect(once.slice(0, 2)).toEqual([11, 5]);
    const list = shoppingList(pattern);
    expect(list.beads.map(({ count }) => count)).toEqual(once.map((count) => 2 * count));
    // Bare and undecided stitches are worked too.
    expect(list.thread.stitches).toBe(2 * 18);
    expect(list.undecided).toBe(2);
    expect(flat(shoppingText(pattern, en))).toContain('2 stitches are not decided yet');
  });

  it('says what costs how much, and of how many beads that is known', () => {
    const [a, b] = someBeads(2);
    const pattern = patternOf(['AAB', 'AAAAAB'], {}, [
      { ...a, packGrams: 5, price: 1.5 },
      { ...b, packGrams: 5 },
    ]);
    expect(flat(shoppingText(pattern, en))).toContain('Beads cost 1.50 for 1 of the 2 colours');
    pattern.beads[1] = { ...b, packGrams: 5, price: 2 };
    expect(flat(shoppingText(pattern, en))).toContain('Beads cost 3.50 in all.');
    delete pattern.beads[0].price;
    delete pattern.beads[1].price;
    expect(shoppingText(pattern, en)).not.toContain('cost');
  });

  it('a blank chart has thread and no beads yet', () => {
    const text = shoppingText(patternOf(['___', '______'], {}, []), en);
    expect(text).toContain('BEADS\n\nNo beads are decided yet.\n18 stitches are not decided yet');
    expect(text).toContain('18 stitches of');
    expect(text).not.toContain('when strung');
  });

  it('no line is longer than 80 columns, and no number is parted from its unit', () => {
    fc.assert(
      fc.property(stocked, fc.integer({ min: 1, max: 10_000 }), (pattern, pieces) => {
        for (const line of shoppingText(pattern, en, { pieces }).split('\n')) {
          expect(line.length, line).toBeLessThanOrEqual(80);
          expect(line).not.toMatch(/^ +(mm|cm|m|g|tex|%)\b/);
          expect(line).not.toMatch(/NaN|undefined|Infinity/);
        }
      }),
      { numRuns: 60 },
    );
  });
});
