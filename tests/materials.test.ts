import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csvText } from '../src/core/csv.js';
import { materials } from '../src/core/pages/lists/materials.js';
import { materialsCsv } from '../src/core/pages/lists/materials-csv.js';
import { patternOf, someBeads } from './support/patterns.js';

/** A panel with the given count of each letter, rest A; 7 wedges, 20 rounds, 1,470 stitches. */
function panelWith(counts: Record<string, number>) {
  let marks = Object.entries(counts)
    .map(([letter, count]) => letter.repeat(count))
    .join('');
  marks = marks.padEnd(1470, 'A');
  const rounds: string[] = [];
  for (let r = 1; r <= 20; r++) {
    rounds.push(marks.slice(0, 7 * r));
    marks = marks.slice(7 * r);
  }
  return patternOf(rounds);
}

describe('materials', () => {
  it('counts over all panels and adds 10 %, at least 30 beads', () => {
    const pattern = panelWith({ B: 301, C: 300, D: 1 });
    // Worked by hand: A 1470-602 = 868, 86.8 up to 87; 955/110 = 8.68 g.
    expect(
      materials(pattern).map(({ count, withReserve, grams }) => [count, withReserve, grams]),
    ).toEqual([
      [868, 955, 8.7],
      [301, 332, 3.1],
      [300, 330, 3],
      [1, 31, 0.3],
    ]);
    pattern.panels.push({ ...pattern.panels[0], name: 'back' });
    expect(materials(pattern).map(({ count }) => count)).toEqual([1736, 602, 600, 2]);
  });

  it('buys about 30 g for two panels of 95 mm in 11/0', () => {
    // Common practice, no source: about 3,000 beads for two panels, 27-28 g net, 30 g to buy.
    const pattern = panelWith({});
    pattern.panels.push({ ...pattern.panels[0], name: 'back' });
    const [{ count, grams }] = materials(pattern);
    expect(count).toBe(2940);
    expect(grams).toBeGreaterThan(28);
    expect(grams).toBeLessThan(31);
  });

  it('takes beads per gram from the table where the bead says none, or leaves grams open', () => {
    const pattern = panelWith({ B: 100, C: 100, D: 0 });
    const [a, b, c, d] = someBeads(4);
    delete a.beadsPerGram;
    pattern.beads = [a, { ...b, beadsPerGram: 36 }, { ...c, size: '9/0' }, d];
    delete pattern.beads[2].beadsPerGram;
    const rows = materials(pattern);
    expect(rows[0].grams).toBe(Math.ceil((1397 / 110) * 10) / 10);
    expect(rows[1].grams).toBe(3.7);
    expect(rows[2].grams).toBeUndefined();
    expect(rows[3]).toMatchObject({ count: 0, withReserve: 0, grams: 0 });
  });
});

describe('materials.csv', () => {
  it('has one row a bead', () => {
    const pattern = panelWith({ B: 301, C: 300, D: 1 });
    delete pattern.beads[3].beadsPerGram;
    delete pattern.beads[3].size;
    expect(materialsCsv(pattern)).toBe(
      [
        'letter,id,name,size,count,with_reserve,grams,in_stock,to_buy,packets,cost,panels,finish,colour',
        'A,op-1,colour 1,11/0,868,955,8.7,,955,,,1,,black',
        'B,op-2,colour 2,11/0,301,332,3.1,,332,,,1,,light blue-green',
        'C,op-3,colour 3,11/0,300,330,3,,330,,,1,,light blue-green',
        'D,op-4,colour 4,,1,31,,,31,,,1,,light green',
        '',
      ].join('\n'),
    );
  });

  it('tells what the stock covers and what to buy, in whole packets', () => {
    const pattern = panelWith({ B: 301, C: 300, D: 1 });
    const [a, b, c, d] = pattern.beads;
    // 955 wanted, 550 in 5 g, 405 to buy = 3.7 g = one packet of 5; 332 wanted, 100 counted,
    // 232 = 2.1 g = three of 1 g.
    Object.assign(a, { grams: 5, price: 1.9, packGrams: 5 });
    Object.assign(b, { count: 100, grams: 50, price: 0.7, packGrams: 1 });
    Object.assign(c, { count: 330 });
    Object.assign(d, { grams: 0, packGrams: 5 });
    const rows = materialsCsv(pattern).trimEnd().split('\n').slice(1);
    expect(rows.map((row) => row.split(',').slice(5).join(','))).toEqual([
      '955,8.7,550,405,1,1.9,1,,black',
      '332,3.1,100,232,3,2.1,1,,light blue-green',
      '330,3,330,0,,,1,,light blue-green',
      '31,0.3,0,31,1,,1,,light green',
    ]);
  });

  it('quotes what needs quotes and defuses formulas', () => {
    const pattern = panelWith({});
    pattern.beads = [{ ...pattern.beads[0], id: '=1+1', name: 'sand, "wet"' }];
    const csv = materialsCsv(pattern);
    expect(csv.split('\n')[1]).toBe(
      `A,"'=1+1","sand, ""wet""",11/0,1470,1617,14.7,,1617,,,1,,black`,
    );
    const { data } = Papa.parse<string[]>(csv);
    expect(data[1][2]).toBe('sand, "wet"');
  });

  it('ends with LF, also without rows', () => {
    expect(csvText(['a', 'b'], [])).toBe('a,b\n');
    expect(csvText(['a'], [[undefined], ['x\ny']])).toBe('a\n\n"x\ny"\n');
  });
});
