import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { beadsInWorkingOrder } from '../src/core/pattern/stitches.js';
import { colourChanges } from '../src/core/pattern/stitches.js';
import { expandStringing, stringingCsv, stringingText } from '../src/core/pages/lists/stringing.js';
import { parseRoundsText } from '../src/core/pages/lists/read-rounds.js';
import { en } from '../src/words/index.js';
import { anyPattern, patternOf } from './support/patterns.js';

const reversed = (text: string) => Array.from(text).reverse().join('');

describe('stringing.csv', () => {
  it('strings the last bead first, by hand', () => {
    // Working order AAB, ABAACB: strung BCAABA, then BAA.
    const csv = stringingCsv(patternOf(['AAB', 'ABAACB']), 0);
    expect(csv).toBe(
      [
        'length,order,round,letter,count,total',
        '1,1,2,B,1,1',
        '1,2,2,C,1,2',
        '1,3,2,A,2,4',
        '1,4,2,B,1,5',
        '1,5,2,A,1,6',
        '1,6,1,B,1,7',
        '1,7,1,A,2,9',
        '',
      ].join('\n'),
    );
  });

  it('reads back to the chart, order and totals in step, whatever the pattern', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        const csv = stringingCsv(pattern, 0);
        const beads = beadsInWorkingOrder(pattern.panels[0]);
        expect(expandStringing(csv)).toBe(reversed(beads));
        // Read by a CSV reader of its own, row by row.
        const { data } = Papa.parse<Record<string, string>>(csv.trimEnd(), { header: true });
        let total = 0;
        data.forEach((row, index) => {
          total += Number(row.count);
          expect(row).toMatchObject({ length: '1', order: `${index + 1}`, total: `${total}` });
          const before = data[index - 1];
          if (before?.round === row.round) expect(before.letter).not.toBe(row.letter);
          if (before) expect(Number(before.round)).toBeGreaterThanOrEqual(Number(row.round));
        });
        expect(total).toBe(beads.length);
      }),
      { numRuns: 120 },
    );
  });

  it('leaves out bare and undecided stitches, and rounds made of them', () => {
    const pattern = patternOf(['AAB', '......', 'AA.AB_AAC']);
    expect(expandStringing(stringingCsv(pattern, 0))).toBe('CAABAAA' + 'BAA');
    expect(stringingCsv(patternOf(['...', '......']), 0)).toBe(
      'length,order,round,letter,count,total\n',
    );
  });
});

describe('stringing.txt', () => {
  it('tells rounds from the last to the first and reads back to the thread', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        const text = stringingText(pattern, 0, en).replaceAll('\n    ', ' ');
        const lines = text.split('\n').filter((line) => /^R\d+ \(/.test(line));
        const numbers = lines.map((line) => Number(/^R(\d+)/.exec(line)?.[1]));
        expect(numbers).toEqual([...numbers].sort((a, b) => b - a));
        const renumbered = lines.map((line, index) => line.replace(/^R\d+/, `R${index + 1}`));
        const beads = beadsInWorkingOrder(pattern.panels[0]);
        const read = beads ? parseRoundsText(renumbered.join('\n'), 'x').join('') : '';
        expect(read).toBe(reversed(beads));
        const last = lines.at(-1) ?? 'total 0';
        expect(last).toMatch(new RegExp(`total ${beads.length}\\b`));
      }),
      { numRuns: 120 },
    );
  });

  it('folds equal wedges only where that is shorter', () => {
    const rounds = ['AAA', 'ABABAB', 'ABCABCABC', 'AAAAAAAAAAAA'];
    const lines = stringingText(patternOf(rounds), 0, en).trimEnd().split('\n').slice(-4);
    expect(lines).toEqual([
      'R4 (12 beads, total 12): 12A',
      'R3 (9 beads, total 21): (1C 1B 1A) x 3',
      'R2 (6 beads, total 27): (1B 1A) x 3',
      'R1 (3 beads, total 30): 3A',
    ]);
  });

  it('says how to use it, wrapped', () => {
    const text = stringingText(patternOf(['AAB', 'ABAACB']), 0, en);
    const head = text.slice(0, text.indexOf('\nR2 ('));
    for (const line of head.split('\n')) expect(line.length).toBeLessThanOrEqual(76);
    expect(head.replace(/\s+/g, ' ')).toMatch(
      /the outermost round goes on first\. The last bead on the thread is the first one worked/,
    );
  });
});

describe('colourChanges', () => {
  it('counts along the thread, over rounds and bare stitches', () => {
    expect(colourChanges(patternOf(['AAA', 'AAAAAA']))).toBe(0);
    expect(colourChanges(patternOf(['AAB', 'B..BAA']))).toBe(2);
    expect(colourChanges(patternOf(['...', '......']))).toBe(0);
  });

  it('is the same from either end, and one less than the runs of one long list', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        const beads = beadsInWorkingOrder(pattern.panels[0]);
        const runs = beads.match(/(.)\1*/g) ?? [''];
        expect(colourChanges(pattern)).toBe(runs.length - 1);
      }),
      { numRuns: 60 },
    );
  });
});
