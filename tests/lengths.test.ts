import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPattern } from '../src/core/pattern/read/check.js';
import { beadsInWorkingOrder } from '../src/core/pattern/stitches.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { stitchesBefore } from '../src/core/panel/shape.js';
import { beadLengths, panelJoins, panelLengths } from '../src/core/thread/lengths.js';
import { expandStringing, stringingCsv, stringingText } from '../src/core/pages/lists/stringing.js';
import { en } from '../src/words/index.js';
import { anyPattern, patternOf } from './support/patterns.js';

const reversed = (text: string) => Array.from(text).reverse().join('');
const withThread = (pattern: Pattern, thread: Pattern['thread']): Pattern => ({
  ...pattern,
  ...(thread && { thread }),
});
const plain = (wedges: number, rounds: number, mark = 'A') =>
  patternOf(
    Array.from({ length: rounds }, (_, n) => mark.repeat(wedges * (n + 1))),
    { wedges },
  );

describe('lengths of thread', () => {
  it('strung metres follow the length along the hole of each size (common practice, no source)', () => {
    const sizes = ['15/0', '11/0', '11/0 cylinder', '10/0', '8/0', '6/0'];
    const beads = sizes.map((size, n) => ({
      letter: 'ABCDEF'[n],
      id: size,
      name: size,
      hex: '#000000',
      size,
    }));
    const metres = [...beadLengths(beads).values()].map((mm) => Math.round(mm * 1000) / 1000);
    expect(metres).toEqual([1.1, 1.5, 1.3, 1.65, 2.1, 2.9]);
  });

  it('7 wedges and 20 rounds of 11/0 need two lengths: 1.5 m of strung beads are 1,000 beads', () => {
    const lengths = panelLengths(plain(7, 20), 0);
    expect(lengths).toHaveLength(2);
    // The end of round 14 is the middle of the panel: 7·14·15/2 = 735 of 1,470.
    expect(lengths.map(({ beads }) => beads.length)).toEqual([735, 735]);
    expect(lengths[0].strungMm).toBeCloseTo(735 * 1.5, 6);
    expect(panelLengths(plain(7, 13), 0)).toHaveLength(1);
  });

  it('whatever the limit: within it, nothing lost, each list reversed inside itself', () => {
    fc.assert(
      fc.property(
        anyPattern,
        fc.integer({ min: 1, max: 400 }),
        fc.boolean(),
        (given, most, byMm) => {
          const takes = 1.5;
          const thread = byMm ? { lengthMm: most * takes } : { lengthBeads: most };
          const pattern = withThread(given, thread);
          const lengths = panelLengths(pattern, 0);
          const beads = beadsInWorkingOrder(pattern.panels[0]);
          expect(lengths.map((one) => one.beads).join('')).toBe(beads);
          expect(lengths.map(({ number }) => number)).toEqual(lengths.map((_, n) => n + 1));
          let at = 0;
          for (const one of lengths) {
            expect(one.beads.length).toBeLessThanOrEqual(most);
            expect(one.fromStitch).toBe(at);
            at = one.toStitch;
          }
          expect(at).toBe(pattern.panels[0].rounds.join('').length);
          const csv = stringingCsv(pattern, 0);
          const byNumber = new Map<string, string>();
          for (const row of csv.trimEnd().split('\n').slice(1)) {
            const [length, , , letter, count] = row.split(',');
            byNumber.set(length, (byNumber.get(length) ?? '') + letter.repeat(Number(count)));
          }
          const strung = lengths.filter((one) => one.beads !== '');
          expect([...byNumber.values()]).toEqual(strung.map((one) => reversed(one.beads)));
          expect(reversed(expandStringing(csv))).toBe(beads);
          expect(checkPattern(pattern)).toEqual([]);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('ends at the ends of rounds where no round is longer than a length', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 12 }),
        fc.integer({ min: 2, max: 16 }),
        fc.integer({ min: 0, max: 300 }),
        (wedges, rounds, more) => {
          const pattern = withThread(plain(wedges, rounds), {
            lengthBeads: wedges * rounds + more,
          });
          const lengths = panelLengths(pattern, 0);
          const ends = new Set(
            Array.from({ length: rounds + 1 }, (_, n) => stitchesBefore({ wedges }, n + 1)),
          );
          const joins = panelJoins(pattern, 0, lengths);
          for (const join of joins) {
            const top = Math.min(join.clock, 12 - join.clock) <= 1.5;
            const begins = lengths[join.length - 1].fromStitch;
            // Only the outermost rounds leave the round's end, to keep the top free of joins.
            if (!ends.has(begins)) expect(join.round).toBeGreaterThan(rounds - 4);
            if (!ends.has(begins)) expect(top).toBe(false);
          }
        },
      ),
      { numRuns: 150 },
    );
  });

  it('no join at the top of the outermost rounds while another place will do', () => {
    // 7 wedges of 30: every round ends near 12 o'clock. Only 300 beads fit on a length.
    const pattern = withThread({ ...plain(7, 30) }, { lengthBeads: 300 });
    const joins = panelJoins(pattern, 0, panelLengths(pattern, 0));
    const outer = joins.filter(({ round, atRoundEnd }) => (atRoundEnd ? round - 1 : round) > 26);
    expect(outer.length).toBeGreaterThan(0);
    for (const { clock } of outer) expect(Math.min(clock, 12 - clock)).toBeGreaterThan(1.5);
  });

  it('splits inside a run only where a run is longer than a length', () => {
    const pattern = withThread(plain(3, 10), { lengthBeads: 4 });
    expect(Math.max(...panelLengths(pattern, 0).map(({ beads }) => beads.length))).toBe(4);
    const short = withThread(patternOf(['AAB', 'AABBAB', 'AAABBBAAA']), { lengthBeads: 3 });
    for (const { beads } of panelLengths(short, 0)) expect(beads.length).toBeLessThanOrEqual(3);
  });

  it('stringing.txt numbers the lengths and says where each is joined on', () => {
    const text = stringingText(plain(7, 20), 0, en).replace(/\s+/g, ' ');
    expect(text).toContain('they come in 2 lengths');
    expect(text).toContain(
      'LENGTH 1 of 2: rounds 1 to 14, 735 beads, about 1.10 m of strung beads.',
    );
    expect(text).toMatch(
      /LENGTH 2 of 2: .* Join this length on at the start of round 15, at about \d+ o’clock/,
    );
    expect(text).toContain('R14 (98 beads, total 98)');
    expect(text).toContain('R1 (7 beads, total 735)');
    expect(text).toContain('R20 (140 beads, total 140)');
  });
});
