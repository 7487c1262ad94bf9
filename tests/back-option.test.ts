import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { lettersInWorkingOrder } from '../src/core/pattern/stitches.js';
import { expandStringing } from '../src/core/pages/lists/stringing.js';
import { namesOf } from './support/output-names.js';
import { inProcess } from './support/run.js';

const top = fileURLToPath(new URL('../', import.meta.url));
const front = join(top, 'fixtures/barley-moon.svg');
const back = join(top, 'fixtures/lighthouse.svg');

let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-back-'));
  const made = await charted('purse', '--back', back);
  expect(made.err).toBe('');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const charted = (name: string, ...more: string[]) =>
  inProcess('chart', front, '--rounds', '5', '-o', join(folder, name), ...more);
const at = (...parts: string[]) => join(folder, ...parts);
const text = (...parts: string[]) => readFileSync(at(...parts), 'utf8');
function filesIn(name: string): Record<string, string> {
  const names = readdirSync(at(name)).sort();
  return Object.fromEntries(names.map((one) => [one, readFileSync(at(name, one), 'base64')]));
}

const ownFiles = namesOf('panel');
const shared = namesOf('pattern', 'two panels');
const backFiles = ownFiles.map((name) => `back-${name}`);

describe('chart --back', () => {
  it('writes every file for both panels, and those that they share once', () => {
    expect(readdirSync(at('purse')).sort()).toEqual([...ownFiles, ...backFiles, ...shared].sort());
    const pattern = parsePattern(text('purse', 'pattern.json'), 'x');
    pattern.panels.forEach((panel, index) => {
      const csv = text('purse', index === 0 ? 'stringing.csv' : 'back-stringing.csv');
      const worked = [...expandStringing(csv)].reverse().join('');
      expect(worked).toBe(lettersInWorkingOrder(panel));
    });
    expect(text('purse', 'rounds.txt')).toMatch(/the list of the back panel is back-rounds\.txt/);
    expect(text('purse', 'back-rounds.txt')).toMatch(/^Rounds of barley-moon, back panel/);
    expect(text('purse', 'back-stringing.txt')).toMatch(/^Stringing list of .*, back panel/);
    expect(text('purse', 'back-chart.svg')).toMatch(/<title[^>]*>barley-moon: back<\/title>/);
    expect(text('purse', 'back-wedges.svg')).toMatch(/barley-moon: back, wedge by wedge/);
    const counts = text('purse', 'materials.csv').split('\n').slice(1, -1);
    const all = counts.map((row) => Number(row.split(',')[4])).reduce((a, b) => a + b, 0);
    // 2 · 7·5·6/2
    expect(all).toBe(210);
  });

  it('tells both panels in the summary', async () => {
    const told = await charted('x', '--back', 'plain:op-01', '--dry-run');
    expect(told.out).toMatch(/beads +front 105, back 105/);
    expect(told.out).toMatch(/two, each of 7 wedges, 5 rounds, 105 stitches/);
    const { out } = await charted('x', '--back', 'plain:op-01', '--dry-run', '--json');
    const [one, two] = JSON.parse(out).panels;
    expect(one).toMatchObject({ name: 'front', stitches: 105, beads: 105 });
    expect(one.difference).toEqual(JSON.parse(out).difference);
    expect(two).toMatchObject({ name: 'back', beads: 105, difference: null, colourChanges: 0 });
  });

  it.each(['back-chart.png', 'back-chart.svg'])(
    'is made again from %s, byte by byte',
    async (source) => {
      const again = `again from ${source}`;
      const made = await inProcess('redraw', at('purse', source), '--quiet', '-o', at(again));
      expect(made).toEqual({ code: 0, out: '', err: '' });
      expect(filesIn(again)).toEqual(filesIn('purse'));
    },
  );

  it('takes the back’s files away when the pattern has one panel again', async () => {
    await charted('was two', '--back', 'same');
    writeFileSync(at('was two', 'back-notes.txt'), 'mine');
    const made = await charted('was two', '--force', '--quiet');
    expect(made).toEqual({ code: 0, out: '', err: '' });
    const left = readdirSync(at('was two')).sort();
    expect(left).toEqual(
      [...ownFiles, 'back-notes.txt', ...shared].filter((one) => one !== 'sewing.txt').sort(),
    );
    expect(text('was two', 'rounds.txt')).toMatch(/a purse takes two/);
  });

  it.each([
    ['a picture that is not there', ['--back', 'nowhere.png'], 3, /nowhere\.png is not there/],
    ['a bead that is not there', ['--back', 'plain:nobody'], 2, /--back names “nobody”/],
    ['a slip in a bead', ['--back', 'plain:op-O7'], 2, /Did you mean “op-07”/],
    ['no bead', ['--back', 'plain:'], 2, /--back cannot be “plain:”: give a picture, plain:/],
    ['nothing', ['--back', ''], 2, /--back cannot be “”/],
    ['no picture', ['--back', join(top, 'README.md')], 3, /README\.md/],
    ['a folder', ['--back', top], 3, /is a folder/],
    [
      'a bead left out',
      ['--back', 'plain:op-07', '--leave-out', 'op-07'],
      2,
      /both kept and left out/,
    ],
    [
      'more kept beads than colours',
      ['--back', 'plain:op-07', '--keep', 'op-08', '--colours', '1'],
      2,
      /2 beads must be used/,
    ],
    ['standard input twice', ['--back', '-', '--beads', '-'], 2, /--back - and --beads -/],
    ['the mask’s standard input', ['--back', '-', '--mask', '-'], 2, /--mask - and --back -/],
    [
      'a back without a bead',
      ['--back', back, '--shift=900,900', '--background', 'bare'],
      4,
      /No stitch/,
    ],
  ])('refuses %s and writes nothing', async (_, argv, code, told) => {
    const made = await charted('bad', ...argv);
    expect(made.err).toMatch(told);
    expect(made.err.trimEnd()).not.toMatch(/\n/);
    expect(made.code).toBe(code);
    expect(readdirSync(folder)).not.toContain('bad');
  });

  it('refuses standard input for both pictures, and takes it for one', () => {
    const run = (...argv: string[]) =>
      spawnSync(process.execPath, [join(top, 'bin/rondure.js'), 'chart', ...argv], {
        cwd: folder,
        input: readFileSync(back),
      });
    const twice = run('-', '--back', '-', '--dry-run');
    expect(twice.status).toBe(2);
    expect(twice.stderr.toString()).toMatch(/PICTURE - and --back - contradict/);
    const once = run(front, '--back', '-', '--rounds', '5', '--dry-run', '--json');
    expect(JSON.parse(once.stdout.toString()).panels).toHaveLength(2);
  });
});

describe('the other commands, with two panels', () => {
  it('check counts both', async () => {
    const { out } = await inProcess('check', at('purse', 'back-chart.png'));
    expect(out).toMatch(/front panel 105 stitches, 105 beads; back panel 105 stitches, 105 beads/);
    const json = JSON.parse((await inProcess('check', at('purse', 'pattern.json'), '--json')).out);
    expect(json.panels.map(({ name }: { name: string }) => name)).toEqual(['front', 'back']);
  });

  it('--back-zoom and its like lay the back’s picture alone, and the summary says what is cut off', async () => {
    const moon = join(top, 'fixtures/barley-moon.svg');
    const argv = ['chart', moon, '--back', 'same', '--rounds', '6', '--json', '--place', 'fill'];
    const both = [...argv, '--zoom', '1', '--back-zoom', '1.7', '--back-mirror', 'yes'];
    const made = await inProcess(...both, '-o', at('zoomed'));
    expect({ code: made.code, err: made.err }).toEqual({ code: 0, err: '' });
    const { panels } = parsePattern(text('zoomed', 'pattern.json'), 'x');
    const [front, back] = panels.map(({ picture }) => picture!.place);
    expect(back.mmPerPixel / front.mmPerPixel).toBeCloseTo(1.7, 6);
    expect([front.mirror, back.mirror]).toEqual([false, true]);
    const [cutFront, cutBack] = JSON.parse(made.out).panels.map(
      (one: { cutOff: { beyondRim: number } }) => one.cutOff.beyondRim,
    );
    expect(cutBack).toBeGreaterThan(cutFront);
    const said = await inProcess(...both.filter((one) => one !== '--json'), '--dry-run');
    expect(said.out).toMatch(/back \d+ % of the picture lies beyond the rim/);
    const plain = await inProcess(
      'chart',
      moon,
      '--back',
      'plain:op-07',
      '--back-zoom',
      '2',
      '--dry-run',
    );
    expect(plain.code).toBe(2);
    expect(plain.err).toContain('--back-zoom');
  });

  it('rounds makes one panel of the back’s list', async () => {
    const list = at('purse', 'back-rounds.txt');
    const made = await inProcess('rounds', list, '--quiet', '-o', at('one'));
    expect(made).toEqual({ code: 0, out: '', err: '' });
    const { panels } = parsePattern(text('one', 'pattern.json'), 'x');
    const pattern = parsePattern(text('purse', 'pattern.json'), 'x');
    expect(panels).toHaveLength(1);
    expect(panels[0].rounds).toEqual(pattern.panels[1].rounds);
  });

  it('recolour changes both', async () => {
    const made = await inProcess(
      ...[
        'recolour',
        at('purse', 'pattern.json'),
        '--merge',
        'B=A',
        '-o',
        at('plainer'),
        '--quiet',
      ],
    );
    expect(made).toEqual({ code: 0, out: '', err: '' });
    const { panels } = parsePattern(text('plainer', 'pattern.json'), 'x');
    expect(panels).toHaveLength(2);
    for (const panel of panels) expect(lettersInWorkingOrder(panel)).not.toContain('B');
    expect(readdirSync(at('plainer'))).toContain('back-chart.svg');
  });

  it('find names the panel, and looks for a length in both', async () => {
    const pattern = parsePattern(text('purse', 'pattern.json'), 'x');
    const [one, two] = pattern.panels.map(lettersInWorkingOrder);
    const find = (...argv: string[]) => inProcess('find', at('purse', 'pattern.json'), ...argv);
    const anywhere = JSON.parse((await find(two.slice(42, 62), '--json')).out);
    expect(anywhere.places).toMatchObject([{ panel: 'back', round: 4, stitch: 1 }]);
    const wrong = JSON.parse((await find(two.slice(42, 62), '--json', '--panel', '1')).out);
    expect(wrong.places).toEqual([]);
    expect((await find(one.slice(21, 62))).out).toMatch(/Front panel: next is stitch 1 of round 3/);
  });

  it('mend compares with the list of the panel that is named', async () => {
    const strung = expandStringing(text('purse', 'back-stringing.csv'));
    const mend = (...argv: string[]) =>
      inProcess('mend', at('purse', 'pattern.json'), strung, ...argv);
    expect((await mend('--panel', 'back')).out).toMatch(
      /All 105 beads are as in the list of length 1 of the back panel/,
    );
    expect((await mend()).out).toMatch(/of the front panel/);
    const none = await mend('--panel', 'side');
    expect(none.code).toBe(2);
    expect(none.err).toMatch(/1 \(front\) and 2 \(back\)/);
  });
});
