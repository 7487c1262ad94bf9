import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from '../../src/cli/program.js';
import { parsePattern } from '../../src/core/pattern/read/parse.js';
import type { Pattern } from '../../src/core/pattern/pattern.js';
import { en } from '../../src/words/index.js';
import { beads, colouredPhoto, idsOf } from '../support/coloured-photo.js';
import type { ColouredPhoto } from '../support/coloured-photo.js';
import { openedIn } from '../support/engines/opened.js';
import type { Maker } from '../support/engines/maker.js';

// A blank is coloured by hand and its photograph read back in Gecko and WebKit; Blink does the same and more in
// coloured.test.ts. It comes out as what it was coloured with, and what is doubted is what the command line doubts.

const rounds = 9;
const of = (selector: string) => `document.querySelector(${JSON.stringify(selector)})`;

let folder: string;
let blankSvg: Buffer;
let painted: ColouredPhoto;
/** Doubtful cells as the command line lists them. */
let doubted: number;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-coloured-engines-'));
  const empty = join(folder, 'empty');
  await cli('blank', '--rounds', String(rounds), '--title', 'Kingfisher', '-o', empty);
  blankSvg = readFileSync(join(empty, 'blank.svg'));
  const json = join(empty, 'blank.json');
  painted = await colouredPhoto(parsePattern(readFileSync(json, 'utf8'), 'blank.json'));
  const file = join(folder, 'photo.png');
  writeFileSync(file, painted.photo);
  const dir = join(folder, 'read');
  await cli('read', file, '--blank', json, '-o', dir, '--quiet');
  const doubts = readFileSync(join(dir, 'doubtful.csv'), 'utf8').trim().split(/\r?\n/);
  doubted = doubts.length - 1;
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function cli(...argv: string[]): Promise<void> {
  let err = '';
  const { signal } = new AbortController();
  const code = await run(argv, en, {
    out() {},
    err: (text) => void (err += text),
    progress: undefined,
    signal,
  });
  expect([code, err]).toEqual([0, '']);
}

describe.each(['firefox', 'webkit'] as const)('%s', (name) => {
  const opened = openedIn(name);
  let maker: Maker;
  beforeAll(() => void ({ maker } = opened()));

  const state = (wished: string) =>
    maker.until(of(`main.coloured[data-state="${wished}"]`), `the coloured chart is ${wished}`);

  /** Says what the cell that is asked about was coloured with. */
  async function answer(byKey: boolean): Promise<number> {
    const s = await maker.page.evaluate<number>(`Number(${of('.settle')}.dataset.stitch)`);
    await maker.until(of(`.patch[data-shown="${s}"]`), `the photo shows stitch ${s}`);
    // The piece of the photo is drawn: paper and colour are there.
    const drawn = await maker.page.evaluate<number>(`(() => {
      const canvas = ${of('.patch')}.matches('canvas') ? ${of('.patch')} : ${of('.patch canvas')};
      const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
      return new Set(new Uint32Array(data.buffer)).size;
    })()`);
    expect(drawn).toBeGreaterThan(20);
    const id = painted.wanted[s] < 0 ? 'white' : beads[painted.wanted[s]].id;
    const choice = `[data-choice="${id}"]`;
    const digit = await maker.page.evaluate<string | null>(
      `${of(choice)}.getAttribute('aria-keyshortcuts')`,
    );
    if (digit === null) await maker.tap('.others summary');
    if (byKey && digit !== null) await maker.page.key(digit);
    else await maker.tap(choice);
    return s;
  }

  async function pieceOf(): Promise<Pattern> {
    await maker.tap('[data-action="shelf"]');
    const zip = await maker.saved('.shelf .row [data-action="save-piece"]');
    await maker.tap('.shelf .head button');
    return parsePattern(new TextDecoder().decode(unzipSync(zip)['pattern.json']), 'pattern.json');
  }

  test('a photo of a coloured blank is read back, its doubtful cells settled one by one', async () => {
    await maker.tap('[data-step="panel"]');
    await maker.tap('.card .numbers input[type="number"]');
    await maker.page.key('a', 'Control');
    await maker.page.type(String(rounds));
    await maker.page.key('Tab');
    await maker.until(`${of('.panel .size')}.innerText.startsWith('9 rounds')`, 'it has 9 rounds');
    await maker.settled();
    await maker.tap('[data-step="picture"]');
    await maker.tap('.by-hand summary');
    const svg = await maker.saved('[data-action="blank-svg"]');
    expect(Buffer.compare(svg, blankSvg)).toBe(0);
    await maker.tap('[data-action="coloured-chart"]');
    await state('photo');
    await maker.drop('photo.png', painted.photo, 'image/png');
    await state('settling');
    const count = `${of('.coloured .count')}?.innerText ?? ''`;
    const [, all] = /1 of (\d+)/.exec(await maker.page.evaluate<string>(count))!;
    expect(Number(all)).toBe(doubted);
    const asked: number[] = [];
    for (let n = 1; n <= doubted; n++) {
      asked.push(await answer(n % 2 === 0));
      if (n < doubted)
        await maker.until(`(${count}).startsWith('${n + 1} of')`, `cell ${n + 1} is asked about`);
    }
    await state('read');
    for (const s of painted.sloppy) expect(asked).toContain(s);
    await maker.tap('[data-form="lay"]');
    await maker.settled();
    const want = painted.wanted.map((bead) => (bead >= 0 ? beads[bead].id : '_'));
    expect(idsOf(await pieceOf())).toEqual(want);
    // One undo brings back what lay there.
    await maker.page.evaluate('document.activeElement?.blur()');
    await maker.page.key('z', 'Control');
    const heaps = `document.querySelectorAll('.mat [data-bead]').length`;
    await maker.until(`${heaps} > 5`, 'the kingfisher’s beads lie on the mat again', 20);
    await maker.settled();
    expect(await maker.complaints()).toEqual([]);
  }, 300_000);

  test('a photo without the page is told in one sentence', async () => {
    if (!(await maker.page.evaluate(`${of('.by-hand')}.open`))) await maker.tap('.by-hand summary');
    await maker.tap('[data-action="coloured-chart"]');
    await state('photo');
    await maker.drop('notes.png', Buffer.from('no picture at all'), 'image/png');
    await maker.until(of('.coloured .said.trouble'), 'it is said that this is no picture', 20);
    expect(await maker.page.evaluate(`${of('.coloured .said.trouble')}.innerText`)).toContain(
      'notes.png',
    );
    expect(await maker.complaints()).toEqual([]);
  });
});
