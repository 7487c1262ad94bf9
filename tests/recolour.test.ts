import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { differenceCiede2000 } from 'culori';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hexToLab65 } from '../src/core/colour/lab.js';
import { checkPattern } from '../src/core/pattern/read/check.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { beadCounts } from '../src/core/pattern/stitches.js';
import { pastStockWarnings, recolour } from '../src/core/beads/recolour.js';
import { inProcess } from './support/run.js';

const top = fileURLToPath(new URL('../', import.meta.url));
const pebbles = join(top, 'palettes/pebbles.csv');
// culori is the independent measure of every difference here.
const difference = differenceCiede2000();

let folder: string;
let file: string;
let pattern: Pattern;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-recolour-'));
  const picture = join(top, 'fixtures/kingfisher.svg');
  const dir = join(folder, 'bird');
  const argv = ['chart', picture, '--rounds', '12', '--colours', '7', '--quiet', '-o', dir];
  expect(await inProcess(...argv)).toEqual({ code: 0, out: '', err: '' });
  file = join(dir, 'pattern.json');
  pattern = parsePattern(readFileSync(file, 'utf8'), 'pattern.json');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const hexOf = (of: Pattern) => new Map(of.beads.map((bead) => [bead.letter, bead.hex]));
const marks = (of: Pattern) => of.panels[0].rounds.join('');

/** Mean difference of the stitches of two patterns, measured by culori. */
function meanChange(before: Pattern, after: Pattern): number {
  const [old, fresh] = [marks(before), marks(after)];
  expect(fresh).toHaveLength(old.length);
  let sum = 0;
  for (let s = 0; s < old.length; s++) {
    sum += difference(hexOf(before).get(old[s])!, hexOf(after).get(fresh[s])!);
  }
  return sum / old.length;
}

function* subsets<T>(of: readonly T[], size: number, from = 0): Generator<T[]> {
  if (size === 0) yield [];
  for (let n = from; size > 0 && n < of.length; n++) {
    for (const rest of subsets(of, size - 1, n + 1)) yield [of[n], ...rest];
  }
}

describe('a swap of the rest only', () => {
  const bead = { id: 'x-1', name: 'smoke', hex: '#aaaaaa', lab: [70, 0, 0] as const, filled: [] };

  it('leaves what is worked, panel by panel, and gives the rest a letter of its own', () => {
    const two = { ...pattern, panels: [pattern.panels[0], { ...pattern.panels[0], name: 'back' }] };
    const swap = [{ letter: 'A', bead }];
    const made = recolour(two, { swap, swapOnly: { panel: 1, fromRound: 7 } });
    const fresh = made.pattern.beads.find(({ id }) => id === 'x-1')!.letter;
    expect(two.beads.map(({ letter }) => letter)).not.toContain(fresh);
    expect(made.pattern.panels[0]).toEqual(two.panels[0]);
    made.pattern.panels[1].rounds.forEach((round, r) => {
      const before = two.panels[1].rounds[r];
      expect(round).toBe(r < 6 ? before : before.replaceAll('A', fresh));
    });
    const moved = two.panels[1].rounds.slice(6).join('').split('A').length - 1;
    expect(made.report.stitches).toBe(moved);
    expect(checkPattern(made.pattern)).toEqual([]);
  });

  it('takes the letter that the bead has already, and lets a bead go of which nothing is left', () => {
    const [a, b] = pattern.beads;
    const swap = [{ letter: a.letter, bead: { ...b, lab: hexToLab65(b.hex), filled: [] } }];
    const part = recolour(pattern, { swap, swapOnly: { fromRound: 5 } }).pattern;
    expect(part.beads).toEqual(pattern.beads);
    const all = recolour(pattern, { swap, swapOnly: { fromRound: 1 } }).pattern;
    expect(all.beads.map(({ letter }) => letter)).not.toContain(a.letter);
    expect(marks(all)).toBe(marks(pattern).replaceAll(a.letter, b.letter));
  });

  it('warns where the jar does not hold what the swap needs, and only of what became more', () => {
    const needed = beadCounts(pattern).get('B')!;
    const jar = (count: number) =>
      recolour(pattern, { swap: [{ letter: 'B', bead: { ...bead, count } }] });
    const told = (count: number) => pastStockWarnings(pattern, jar(count).pattern);
    expect(told(needed)).toEqual([]);
    expect(told(needed - 1)).toEqual([
      { code: 'jar-runs-out', facts: { letter: 'B', name: 'smoke', needed, inStock: needed - 1 } },
    ]);
    expect(pastStockWarnings(jar(1).pattern, jar(1).pattern)).toEqual([]);
  });

  it('on the command line: --panel and --from-round go with --swap', async () => {
    const argv = ['recolour', file, '--dry-run', '--json', '-o', join(folder, 'rest')];
    const made = await inProcess(
      ...argv,
      '--swap',
      'A=op-07',
      '--from-round',
      '9',
      '--panel',
      'front',
    );
    expect({ code: made.code, err: made.err }).toEqual({ code: 0, err: '' });
    const moved = pattern.panels[0].rounds.slice(8).join('').split('A').length - 1;
    expect(JSON.parse(made.out).recoloured.stitches).toBe(moved);
    const wrong = await inProcess(...argv, '--limit', '3', '--from-round', '9');
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain('--from-round');
  });
});

describe('recolour in the core', () => {
  it('swap: the letter stays, its bead is another one, no stitch moves', () => {
    const lab = hexToLab65('#aaaaaa');
    const bead = { id: 'x-1', name: 'smoke', hex: '#aaaaaa', lab, filled: [] };
    const made = recolour(pattern, { swap: [{ letter: 'B', bead }] });
    expect(marks(made.pattern)).toBe(marks(pattern));
    expect(made.pattern.beads[1]).toEqual({
      letter: 'B',
      id: 'x-1',
      name: 'smoke',
      hex: '#aaaaaa',
    });
    expect(made.report.stitches).toBe(beadCounts(pattern).get('B'));
    expect(made.report.meanChange).toBeCloseTo(meanChange(pattern, made.pattern), 6);
    expect(pattern.beads[1].id).not.toBe('x-1');
  });

  it('merge: B becomes C, and the other letters stay where they are', () => {
    const made = recolour(pattern, { merge: [{ from: 'B', into: 'C' }] });
    expect(marks(made.pattern)).toBe(marks(pattern).replaceAll('B', 'C'));
    expect(made.pattern.beads).toEqual(pattern.beads.filter(({ letter }) => letter !== 'B'));
    expect(made.pattern.choice).toBeUndefined();
  });

  it('leave-out: every stitch of the bead goes to the nearest of the others (culori)', () => {
    const made = recolour(pattern, { leaveOut: ['A', 'C'] });
    const left = made.pattern.beads;
    expect(left.map(({ letter }) => letter).join('')).toBe('BDEFG');
    for (const gone of pattern.beads.filter(({ letter }) => 'AC'.includes(letter))) {
      const [best] = left
        .slice()
        .sort((p, q) => difference(gone.hex, p.hex) - difference(gone.hex, q.hex));
      expect(marks(made.pattern)[marks(pattern).indexOf(gone.letter)]).toBe(best.letter);
    }
  });

  it.each([1, 2, 3, 4, 5, 6])('limit %i: no other subset of its own beads is nearer', (most) => {
    const made = recolour(pattern, { limit: most });
    expect(made.pattern.beads.length).toBe(most);
    for (const bead of made.pattern.beads) expect(pattern.beads).toContainEqual(bead);
    const counts = beadCounts(pattern);
    let best = Infinity;
    for (const some of subsets(pattern.beads, most)) {
      let sum = 0;
      for (const old of pattern.beads) {
        const nearest = Math.min(...some.map(({ hex }) => difference(old.hex, hex)));
        sum += counts.get(old.letter)! * nearest;
      }
      best = Math.min(best, sum / marks(pattern).length);
    }
    expect(made.report.meanChange).toBeCloseTo(best, 5);
    expect(meanChange(pattern, made.pattern)).toBeCloseTo(best, 5);
  });

  it('other beads: those that stay keep their letters, new ones take the letters they replace', () => {
    const kept = pattern.beads[4];
    const asBead = (one: Pattern['beads'][number], id: string) => {
      const { letter: _letter, ...rest } = one;
      return { ...rest, id, lab: [0, 0, 0] as [number, number, number], filled: [] };
    };
    const beads = pattern.beads
      .map((one, n) => asBead(one, one === kept ? one.id : `new-${n}`))
      .reverse()
      .map((one) => ({ ...one, lab: hexToLab65(one.hex) }));
    const made = recolour(pattern, { beads });
    expect(marks(made.pattern)).toBe(marks(pattern));
    expect(made.pattern.beads.map(({ letter }) => letter)).toEqual(
      pattern.beads.map(({ letter }) => letter),
    );
    expect(made.pattern.beads[4].id).toBe(kept.id);
    expect(made.report.meanChange).toBe(0);
  });

  it('refuses what makes no sense', () => {
    const merge = (from: string, into: string) => () =>
      recolour(pattern, { merge: [{ from, into }] });
    expect(merge('B', 'B')).toThrow(/same bead already/);
    expect(merge('B', 'Z')).toThrow(/no bead Z/);
    const all = pattern.beads.map(({ letter }) => letter);
    expect(() => recolour(pattern, { leaveOut: all })).toThrow(/keep at least one/);
  });
});

describe('rondure recolour', () => {
  const run = (...argv: string[]) => inProcess('recolour', ...argv);
  const made = (name: string) =>
    parsePattern(readFileSync(join(folder, name, 'pattern.json'), 'utf8'), name);

  it('writes every file of a sound pattern, and tells what it cost', async () => {
    const out = join(folder, 'grey');
    const told = await run(file, '--beads', pebbles, '--limit', '5', '-o', out, '--json');
    expect(told.err).toBe('');
    const summary = JSON.parse(told.out);
    expect(summary.colours).toBeLessThanOrEqual(5);
    expect(summary.recoloured.stitches).toBe(pattern.panels[0].rounds.join('').length);
    expect(summary.recoloured.meanChange).toBeCloseTo(meanChange(pattern, made('grey')), 3);
    expect(checkPattern(made('grey')).filter(({ code }) => code !== 'letter-out-of-order')).toEqual(
      [],
    );
    expect(summary.files).toContain('stringing.txt');
  });

  it('swaps by id or name, several at once, small letters too', async () => {
    const out = join(folder, 'swapped');
    const argv = ['--swap', 'a=gr-02,b = sea salt', '--beads', pebbles, '-o', out];
    expect((await run(file, ...argv)).err).toBe('');
    expect(
      made('swapped')
        .beads.slice(0, 2)
        .map(({ id }) => id),
    ).toEqual(['gr-02', 'gr-01']);
  });

  it('takes a chart, and both spellings of its own name', async () => {
    const chart = join(folder, 'bird', 'chart.png');
    const out = join(folder, 'merged');
    const told = await inProcess('recolor', chart, '--merge', 'G=A', '--quiet', '-o', out);
    expect(told).toEqual({ code: 0, out: '', err: '' });
    expect(made('merged').beads.map(({ letter }) => letter)).not.toContain('G');
  });

  it.each([
    [[], 2, 'Say what should change'],
    [['--swap', 'A'], 2, 'an equals sign'],
    [['--swap', 'I=op-07'], 2, 'an equals sign'],
    [['--swap', 'A=nothing-like-it'], 2, 'not a bead of this palette'],
    [['--merge', 'B=CC'], 2, 'two letters'],
    [['--merge', 'B=Z'], 2, 'no bead Z'],
    [['--merge', 'B=B'], 2, 'same bead'],
    [['--limit', '0'], 2, 'whole number'],
    [['--leave-out', 'nobody'], 2, 'nobody'],
    [['--leave-out', 'A,B,C,D,E,F,G'], 2, 'at least one'],
    [['--beads', 'not-there.csv'], 3, 'not-there.csv'],
  ] as const)('bad wish %j: exit %i, one sentence, nothing written', async (argv, code, text) => {
    const told = await run(file, ...argv, '-o', join(folder, 'never'));
    expect(told.code).toBe(code);
    expect(told.err).toContain(text);
    expect(told.err.trim().split('\n')).toHaveLength(1);
    expect(() => readFileSync(join(folder, 'never', 'pattern.json'))).toThrow();
  });
});
