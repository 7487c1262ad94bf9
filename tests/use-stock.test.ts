import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Bead } from '../src/core/beads/bead.js';
import { RondureError } from '../src/core/errors.js';
import { makePattern } from '../src/core/make.js';
import type { PanelWish } from '../src/core/make.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { stockLimits } from '../src/core/beads/stock/limits.js';
import { reserveOf, workableFrom } from '../src/core/beads/amounts.js';
import { materials } from '../src/core/pages/lists/materials.js';
import { inProcess } from './support/run.js';
import { paint, sequence } from './support/paint.js';

const leftovers = 'fixtures/leftovers.csv';
const palette = readPalette(readFileSync(leftovers, 'utf8'), leftovers).beads;

/** Blots in twelve colours, so that no jar is the only right one. */
function blots(seed: number) {
  const next = sequence(seed);
  const spots = Array.from({ length: 60 }, () => [next(120), next(120), next(12)]);
  const colours = Array.from({ length: 12 }, () => [next(256), next(256), next(256)] as const);
  return paint(120, 120, (x, y) => {
    const near = spots.reduce((a, b) =>
      Math.hypot(x - a[0], y - a[1]) < Math.hypot(x - b[0], y - b[1]) ? a : b,
    );
    return colours[near[2]];
  });
}

function wish(seed: number, more: Partial<PanelWish> & { repeat?: boolean } = {}): PanelWish {
  const { repeat = false, ...rest } = more;
  return {
    picture: blots(seed),
    pictureName: 'blots',
    title: 'blots',
    beads: palette,
    colours: 6,
    shape: { wedges: 7, rounds: 16, beadDiameterMm: 2.1 },
    place: {
      place: 'fill',
      zoom: 1,
      shiftXmm: 0,
      shiftYmm: 0,
      rotateDegrees: 0,
      mirror: false,
      repeat,
    },
    art: 'photo',
    background: '#ffffff',
    useStock: true,
    ...rest,
  };
}

function refusal(what: PanelWish): RondureError<'stock-too-small'> {
  try {
    makePattern(what);
  } catch (error) {
    if (error instanceof RondureError && error.code === 'stock-too-small') {
      return error as RondureError<'stock-too-small'>;
    }
    throw error;
  }
  throw new Error('nothing was refused');
}

/** The palette after buying so many of one bead. */
function bought(beads: readonly Bead[], id: string, more: number): Bead[] {
  return beads.map((bead) => {
    if (bead.id !== id) return bead;
    const had = bead.count ?? Math.floor((bead.grams ?? 0) * (bead.beadsPerGram ?? 0) + 1e-9);
    return { ...bead, count: had + more };
  });
}

describe('the reserve', () => {
  it('is left over from every stock, and no bead more is kept back', () => {
    for (let stock = 0; stock <= 3000; stock++) {
      const most = workableFrom(stock);
      expect(most + reserveOf(most)).toBeLessThanOrEqual(Math.max(stock, 0));
      expect(most + 1 + reserveOf(most + 1)).toBeGreaterThan(stock);
    }
  });

  it('counts beads before it weighs grams', () => {
    const { beads } = readPalette(
      'id,hex,size,grams,count\na,#112233,11/0,10,100\nb,#223344,11/0,1,\nc,#334455,11/0,,\nd,#445566,11/0,,0\n',
      'test.csv',
    );
    // 100 counted; 110 beads in a gram; nothing told; an empty jar.
    expect([...stockLimits(beads)]).toEqual([70, 80, Infinity, 0]);
  });
});

describe('makePattern with useStock', () => {
  it.each([1, 2, 3, 4])('never needs more than the jars hold, picture %i', (seed) => {
    const free = makePattern(wish(seed, { useStock: false }));
    const { pattern, report } = makePattern(wish(seed));
    for (const { toBuy, count, inStock } of materials(pattern)) {
      expect(toBuy).toBe(0);
      expect(count).toBeLessThan(inStock!);
    }
    const stock = report.stock!;
    expect(free.report.stock).toBeUndefined();
    expect(stock.unlimitedMeanDifference).toBeCloseTo(free.report.meanDifference, 5);
    expect(stock.meanDifference).toBeGreaterThanOrEqual(free.pattern.choice!.lowerBound!);
    expect(stock.beads.reduce((sum, { used }) => sum + used, 0)).toBe(report.beads);
    expect(pattern.choice!.lowerBound).toBeLessThanOrEqual(pattern.choice!.objective);
    const isShort = materials(free.pattern).some(({ toBuy }) => toBuy > 0);
    expect(stock.tooFew.length > 0).toBe(isShort);
  });

  it('keeps every wedge of a repeat like the others', () => {
    const { pattern, report } = makePattern(wish(5, { repeat: true }));
    const [panel] = pattern.panels;
    panel.rounds.forEach((marks, r) => {
      expect(marks).toBe(marks.slice(0, r + 1).repeat(7));
    });
    expect(report.stock!.beads.some(({ runsOut }) => runsOut)).toBe(true);
    expect(materials(pattern).every(({ toBuy }) => toBuy === 0)).toBe(true);
  });

  it('names a purchase that just suffices', () => {
    for (const more of [
      { colours: 2 },
      { colours: 1, keep: [3] },
      { colours: 3, keep: [7], leaveOut: [13, 14, 15] },
      { colours: 2, repeat: true },
    ]) {
      const big = { ...more, shape: { wedges: 7, rounds: 22, beadDiameterMm: 2.1 } };
      const { facts, message } = refusal(wish(6, big));
      const { id, beads, packets, cost } = facts.purchase!;
      expect(message).toContain(String(facts.missing));
      expect(message).toContain(id);
      expect(packets).toBe(Math.ceil(beads / 110 / 5));
      expect(cost).toBeCloseTo(packets! * palette.find((bead) => bead.id === id)!.price!, 9);
      const enough = makePattern(wish(6, { ...big, beads: bought(palette, id, beads) }));
      expect(materials(enough.pattern).every(({ toBuy }) => toBuy === 0)).toBe(true);
      const again = refusal(wish(6, { ...big, beads: bought(palette, id, beads - 1) }));
      expect(again.facts.missing).toBeLessThanOrEqual(more.repeat ? 7 : 1);
    }
  });

  it('finds no cheaper purchase by trying every bead beside every other', () => {
    const { facts } = refusal(
      wish(6, { colours: 2, shape: { wedges: 7, rounds: 22, beadDiameterMm: 2.1 } }),
    );
    const limits = stockLimits(palette);
    const costs = palette.map(({ price, count, grams }, j) => {
      const others = Math.max(...limits.filter((_, other) => other !== j));
      const limit = facts.needed - others;
      const have = count ?? Math.floor(grams! * 110 + 1e-9);
      return Math.ceil((limit + Math.max(30, Math.ceil(limit / 10)) - have) / 550) * price!;
    });
    expect(facts.purchase!.cost).toBeCloseTo(Math.min(...costs), 9);
  });

  it('without prices takes the fewest beads, of these the one that looks best', () => {
    const jars = readPalette(
      'id,hex,count\nwhite,#ffffff,400\nred,#d02020,400\ngreen,#20a040,400\nblue,#2040c0,400\n',
      'test.csv',
    ).beads;
    const red = paint(60, 60, (x) => (x < 8 ? [32, 64, 192] : [208, 32, 32]));
    const { facts } = refusal(wish(1, { beads: jars, colours: 2, picture: red }));
    // 952 stitches; two jars of 400 give 727 (a tenth of 363 and 364 is 37): 588 more of one jar.
    expect(facts).toMatchObject({ needed: 952, missing: 226, most: 2 });
    expect(facts.purchase).toMatchObject({ id: 'red', packets: undefined });
  });

  it('tells what the palette leaves open', () => {
    const codes = (beads: Bead[]) =>
      makePattern(wish(2, { beads })).report.warnings.map(({ code }) => code);
    const told = palette.map((bead) => ({ ...bead, count: 5000 }));
    expect(codes(told)).not.toContain('stock-not-told');
    expect(codes(told)).not.toContain('stock-estimated');
    expect(codes(palette)).toContain('stock-estimated');
    const { count: _, ...open } = told[0];
    const { grams: _grams, ...bare } = open;
    expect(codes([bare, ...told.slice(1)])).toContain('stock-not-told');
  });
});

describe('rondure chart --use-stock', () => {
  const chart = ['chart', 'fixtures/kingfisher.svg', '--beads', leftovers, '--dry-run'];

  it('says what runs out and what that costs, for a person and for a program', async () => {
    const person = await inProcess(...chart, '--use-stock');
    expect(person.code).toBe(0);
    expect(person.out).toMatch(/stock +used up but for the reserve: gull white;/);
    const { code, out } = await inProcess(...chart, '--use-stock', '--json');
    expect(code).toBe(0);
    const { stock, difference } = JSON.parse(out);
    expect(stock.meanDifference).toBe(difference.mean);
    expect(stock.unlimitedMeanDifference).toBeLessThan(stock.meanDifference);
    const [white] = stock.beads;
    // 2.9 g at 110 a gram: 319, of which 289 and a reserve of 30.
    expect(white).toEqual({
      id: 'op-01',
      name: 'gull white',
      used: 289,
      inStock: 319,
      limit: 289,
      runsOut: true,
    });
    const without = JSON.parse((await inProcess(...chart, '--json')).out);
    expect(without.stock).toBeUndefined();
    expect(without.difference.mean).toBe(stock.unlimitedMeanDifference);
  });

  it('ends with 4 and one sentence where the jars cannot make it', async () => {
    const { code, out, err } = await inProcess(
      ...chart,
      '--use-stock',
      '--colours',
      '2',
      '--rounds',
      '24',
    );
    expect(code).toBe(4);
    expect(out).toBe('');
    expect(err).toMatch(
      /^Error: The beads in stock are \d+ too few: this panel needs 2100, .* buy \d+ of [a-z ]+ \(op-\d\d\), [\d.]+ g, \d+ packets?, for \d+\.\d\d\. Or allow/,
    );
  });

  it('says so when the palette knows of no stock', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'rondure-'));
    const bare = join(folder, 'bare.csv');
    writeFileSync(bare, 'hex\n#ffffff\n#1040a0\n#a01020\n');
    const { code, out } = await inProcess(
      ...['chart', 'fixtures/kingfisher.svg', '--beads', bare, '--use-stock', '--dry-run'],
    );
    expect(code).toBe(0);
    expect(out).toContain('--use-stock limits nothing');
  });
});
