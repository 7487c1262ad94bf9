import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { expandStringing } from '../src/core/pages/lists/stringing.js';
import { namesOf } from './support/output-names.js';
import { inProcess } from './support/run.js';

const top = fileURLToPath(new URL('../', import.meta.url));
const drawing = join(top, 'fixtures/lighthouse.svg');

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-redraw-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Every file of a folder, by name. */
function filesIn(dir: string): Record<string, string> {
  const names = readdirSync(dir).sort();
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(dir, name), 'base64')]));
}

/** A chart made by `chart`, in a folder of its own. */
async function charted(name: string, ...more: string[]): Promise<string> {
  const dir = join(folder, name);
  const made = await inProcess('chart', drawing, '--rounds', '6', '--quiet', '-o', dir, ...more);
  expect(made).toEqual({ code: 0, out: '', err: '' });
  return dir;
}

/** Edits pattern.json the way a maker would, as text. */
function edit(dir: string, change: (json: ReturnType<typeof JSON.parse>) => void): void {
  const file = join(dir, 'pattern.json');
  const json = JSON.parse(readFileSync(file, 'utf8'));
  change(json);
  writeFileSync(file, JSON.stringify(json, null, '\t'));
}

/** A copy of the first chart, to be edited. */
function copied(name: string): string {
  const dir = join(folder, name);
  cpSync(join(folder, 'plain'), dir, { recursive: true });
  return dir;
}

describe('rondure redraw, nothing edited', () => {
  it.each([
    ['plain', 'pattern.json', []],
    ['left', 'chart.svg', ['--hand', 'left', '--increase', 'first', '--title', 'Møn & “Ø” <1>']],
    ['middle', 'chart.png', ['--increase', 'middle', '--background', 'bare']],
    ['repeat', 'pattern.json', ['--repeat', '--beads-face', 'toward', '--start', '17.5']],
  ])('gives the bytes that chart wrote: %s, from %s', async (name, source, more) => {
    const dir = await charted(name, ...more);
    const was = filesIn(dir);
    expect(Object.keys(was).sort()).toEqual(namesOf('panel', 'pattern'));
    const again = join(folder, `${name} again`);
    const made = await inProcess('redraw', join(dir, source), '--quiet', '-o', again);
    expect(made).toEqual({ code: 0, out: '', err: '' });
    expect(filesIn(again)).toEqual(was);
  });

  it('reads the standard input', () => {
    const input = readFileSync(join(folder, 'plain/chart.png'));
    const argv = [join(top, 'bin/rondure.js'), 'redraw', '-', '-o', 'from-pipe'];
    const made = spawnSync(process.execPath, argv, { cwd: folder, input });
    expect(made.stderr.toString()).toBe('');
    expect(filesIn(join(folder, 'from-pipe'))).toEqual(filesIn(join(folder, 'plain')));
  });
});

describe('rondure redraw, after edits', () => {
  it('remakes the files in place, and keeps what is not ours', async () => {
    const dir = copied('in place');
    writeFileSync(join(dir, 'my notes.txt'), 'mine');
    const before = filesIn(dir);
    edit(dir, (json) => {
      json.title = 'Harbour light';
      const { rounds } = json.panels[0];
      const other = rounds[4][9] === 'A' ? 'B' : 'A';
      rounds[4] = `${rounds[4].slice(0, 9)}${other}${rounds[4].slice(10)}`;
    });
    const made = await inProcess('redraw', join(dir, 'pattern.json'), '--force', '--json');
    expect(made.err).toBe('');
    expect(JSON.parse(made.out)).toMatchObject({
      schema: 'rondure-summary',
      title: 'Harbour light',
      rounds: 6,
      // 7·6·7/2
      stitches: 147,
      difference: null,
      art: null,
    });
    const after = filesIn(dir);
    expect(after['my notes.txt']).toBe(before['my notes.txt']);
    expect(Object.keys(after)).toEqual(Object.keys(before));
    const pattern = parsePattern(readFileSync(join(dir, 'pattern.json'), 'utf8'), 'x');
    const strung = expandStringing(readFileSync(join(dir, 'stringing.csv'), 'utf8'));
    expect([...strung].reverse().join('')).toBe(pattern.panels[0].rounds.join(''));
    for (const name of ['chart.svg', 'worked.png', 'rounds.txt', 'wedges.svg', 'pattern.json']) {
      expect(after[name], name).not.toBe(before[name]);
    }
  });

  it('takes beads in any order, beads that no stitch carries and letters with gaps', async () => {
    const dir = copied('loose');
    edit(dir, (json) => {
      json.beads.reverse();
      json.beads.splice(1, 0, { letter: 'Z', id: 'z', name: 'spare sand', hex: '#d9b36a' });
    });
    const made = await inProcess('redraw', join(dir, 'pattern.json'), '--force');
    expect(made.code).toBe(0);
    expect(made.out).toMatch(/No stitch carries bead Z \(spare sand\)/);
    expect(readFileSync(join(dir, 'materials.csv'), 'utf8')).toMatch(/^Z,.*spare sand/m);
    const pattern = parsePattern(readFileSync(join(dir, 'pattern.json'), 'utf8'), 'x');
    expect(pattern.beads[1].letter).toBe('Z');
  });

  it('takes a panel whose every bead was taken out again', async () => {
    const dir = copied('emptied');
    edit(dir, (json) => {
      json.beads = [];
      json.panels[0].rounds = json.panels[0].rounds.map((marks: string) =>
        marks.replace(/./g, (_, at: number) => (at % 2 ? '.' : '_')),
      );
    });
    const made = await inProcess('redraw', join(dir, 'pattern.json'), '--force');
    expect(made.err).toBe('');
    expect(made.code).toBe(0);
  });

  it('refuses a broken pattern and leaves every file as it was', async () => {
    const dir = copied('broken');
    edit(dir, (json) => (json.panels[0].rounds[3] += 'A'));
    const before = filesIn(dir);
    const made = await inProcess('redraw', join(dir, 'pattern.json'), '--force');
    expect(made.code).toBe(3);
    expect(made.err).toMatch(/Round 4 of the front panel has 29 stitches; it needs 28/);
    expect(made.err).toMatch(/rondure check/);
    expect(filesIn(dir)).toEqual(before);
    const file = join(dir, 'pattern.json');
    writeFileSync(file, readFileSync(file, 'utf8').replace(',', ';'));
    const slip = await inProcess('redraw', file, '--force');
    expect(slip.err).toMatch(/pattern\.json is not readable as JSON/);
    expect(slip.code).toBe(3);
  });
});

describe('rondure redraw refuses', () => {
  let dir: string;
  beforeAll(() => {
    dir = copied('refused');
    mkdirSync(join(folder, 'taken'));
  });

  it.each([
    ['no folder', ['pattern.json'], 2, /add -o/],
    ['a chart to be written over', ['chart.svg', '--force'], 2, /add -o/],
    ['a folder that is there', ['pattern.json', '-o', 'taken'], 5, /is there already/],
    ['a picture', ['worked.png', '-o', 'x'], 3, /without a Rondure pattern inside/],
    ['another drawing', ['wedges.svg', '-o', 'x'], 3, /without a Rondure pattern inside/],
    ['a text', ['rounds.txt', '-o', 'x'], 3, /is not readable as JSON/],
    ['a slip', ['pattern.json', '--ouput', 'x'], 2, /Did you mean --output\?/],
  ])('%s, in one sentence', async (_why, [source, ...more], code, sentence) => {
    const argv = more.map((word) => (word === 'x' || word === 'taken' ? join(folder, word) : word));
    const before = readdirSync(folder);
    for (const json of [[], ['--json']]) {
      const made = await inProcess('redraw', join(dir, source), ...argv, ...json);
      expect({ code: made.code, out: made.out }).toEqual({ code, out: '' });
      const said = json.length > 0 ? JSON.parse(made.err).error.message : made.err;
      expect(said).toMatch(sentence);
      expect(made.err.trim().split('\n')).toHaveLength(1);
    }
    expect(readdirSync(folder)).toEqual(before);
  });
});
