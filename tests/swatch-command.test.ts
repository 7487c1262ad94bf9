import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { parseSwatch } from '../src/core/swatch/swatch-file.js';
import { readPdf } from './support/read-pdf.js';
import { inProcess } from './support/run.js';

const fixtures = fileURLToPath(new URL('../fixtures/', import.meta.url));
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-swatch-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => join(folder, name);

const measured = [
  ...['--rounds', '10', '--across', '49mm', '--rim-stitches', '23'],
  ...['--turn', '14deg against', '--thread-mm', '1000', '--thread-stitches', '42'],
  ...['--fifty-beads', '75mm'],
];

describe('rondure swatch', () => {
  it('writes what it worked out, once, and again only with --force', async () => {
    const argv = ['swatch', ...measured, '-o', at('swatch.json')];
    const { code, out, err } = await inProcess(...argv);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('round height  2.14 (2.11 to 2.18) mm');
    const text = readFileSync(at('swatch.json'), 'utf8');
    const swatch = parseSwatch(text, 'swatch.json');
    expect(swatch.perStitchMm!.value).toBeCloseTo(1000 / 42, 5);
    expect(swatch.beadLengthMm!.value).toBe(1.5);
    expect((await inProcess(...argv)).code).toBe(5);
    expect((await inProcess(...argv, '--force')).code).toBe(0);
    expect(readFileSync(at('swatch.json'), 'utf8')).toBe(text);
    writeFileSync(at('letter.txt'), 'mine');
    const other = await inProcess('swatch', ...measured, '-o', at('letter.txt'), '--force');
    expect(other.code).toBe(5);
    expect(readFileSync(at('letter.txt'), 'utf8')).toBe('mine');
  });

  it('is taken by chart: stitch, lean, thread and bead length, but for what is typed', async () => {
    await inProcess('swatch', ...measured, '-o', at('taken.json'));
    const argv = ['chart', join(fixtures, 'barley-moon.svg'), '--rounds', '5', '--swatch'];
    const first = await inProcess(...argv, at('taken.json'), '-o', at('moon'));
    expect({ code: first.code, err: first.err }).toEqual({ code: 0, err: '' });
    const pattern = parsePattern(readFileSync(at('moon/pattern.json'), 'utf8'), 'moon');
    const swatch = parseSwatch(readFileSync(at('taken.json'), 'utf8'), 'taken');
    expect(pattern.swatch).toEqual(swatch);
    // Rounded to micrometres and hundredths of a stitch.
    expect(pattern.shape.stitchWidthMm).toBeCloseTo(swatch.stitchWidthMm!.value, 3);
    expect(pattern.shape.roundHeightMm).toBeCloseTo(swatch.roundHeightMm!.value, 3);
    expect(Math.abs(pattern.shape.lean - swatch.lean!.value)).toBeLessThanOrEqual(0.005);
    expect(pattern.thread).toEqual({ perStitchMm: 23.809524, beadLengthMm: 1.5 });
    const typed = ['--lean', '0', '--stitch-width', '2.3', '--hand', 'left', '--dry-run', '--json'];
    const second = await inProcess(...argv, at('taken.json'), ...typed);
    expect(second.code).toBe(0);
    const codes = JSON.parse(second.out).warnings.map((one: { code: string }) => one.code);
    expect(codes).toContain('swatch-other-hand');
    expect((await inProcess('redraw', at('moon/pattern.json'), '--force')).code).toBe(0);
    const again = parsePattern(readFileSync(at('moon/pattern.json'), 'utf8'), 'moon');
    expect(again).toEqual(pattern);
  });

  it('keeps how the stitch was worked, whatever its lean, and chart tells it so', async () => {
    const ways = { 'both-loops': 'under both loops', slip: 'slip stitch, with a bead' };
    for (const [way, said] of Object.entries(ways)) {
      const file = at(`${way}.json`);
      expect((await inProcess('swatch', ...measured, '--stitch', way, '-o', file)).code).toBe(0);
      expect(parseSwatch(readFileSync(file, 'utf8'), way).worked.stitch).toBe(way);
      const picture = join(fixtures, 'barley-moon.svg');
      const argv = ['chart', picture, '--rounds', '4', '--swatch', file];
      expect((await inProcess(...argv, '-o', at(way))).code).toBe(0);
      // By its lean of 0.36 alone it would be the loop on the side of the beads.
      const list = readFileSync(at(`${way}/rounds.txt`), 'utf8').replace(/\s+/g, ' ');
      expect(list).toContain(said);
      const other = await inProcess(...argv, '--stitch', 'bead-side-loop', '--dry-run', '--json');
      const { warnings } = JSON.parse(other.out);
      expect(warnings.map(({ code }: { code: string }) => code)).toContain('swatch-other-stitch');
    }
  });

  it('is taken by redraw, recolour and shopping for the thread; its stitch comes too late there', async () => {
    const file = at('late.json');
    expect((await inProcess('swatch', ...measured, '-o', file)).code).toBe(0);
    const picture = join(fixtures, 'lighthouse.svg');
    const chart = ['chart', picture, '--rounds', '6', '--quiet', '-o', at('late')];
    expect((await inProcess(...chart)).code).toBe(0);
    const swatch = parseSwatch(readFileSync(file, 'utf8'), 'late');
    for (const command of ['redraw', 'recolour']) {
      const out = at(`late-${command}`);
      const more = command === 'recolour' ? ['--limit', '4'] : [];
      const argv = [command, at('late/pattern.json'), ...more, '--swatch', file, '-o', out];
      const told = await inProcess(...argv);
      expect(told.err).toBe('');
      expect(told.out).toContain('laid out for another stitch');
      const made = parsePattern(readFileSync(join(out, 'pattern.json'), 'utf8'), command);
      expect(made.thread!.perStitchMm).toBe(swatch.perStitchMm!.value);
      expect(made.shape.lean).toBe(0.5);
    }
    const list = await inProcess('shopping', at('late/pattern.json'), '--swatch', file, '--json');
    expect(JSON.stringify(JSON.parse(list.out).warnings)).toContain('swatch-too-late');
  });

  it('is taken by blank and by rounds', async () => {
    await inProcess('swatch', ...measured, '-o', at('also.json'));
    const blank = ['blank', '--rounds', '6', '--swatch', at('also.json'), '-o', at('empty')];
    expect((await inProcess(...blank)).code).toBe(0);
    const empty = parsePattern(readFileSync(at('empty/blank.json'), 'utf8'), 'empty');
    expect(Math.abs(empty.shape.lean - empty.swatch!.lean!.value)).toBeLessThanOrEqual(0.005);
    writeFileSync(at('typed.txt'), 'R1: 7A\nR2: ([A B]) x 7\n');
    const typed = ['rounds', at('typed.txt'), '--swatch', at('also.json'), '-o', at('star')];
    expect((await inProcess(...typed)).code).toBe(0);
    const star = parsePattern(readFileSync(at('star/pattern.json'), 'utf8'), 'star');
    expect(star.shape.roundHeightMm).toBeCloseTo(star.swatch!.roundHeightMm!.value, 3);
  });

  it('measures on a photograph', async () => {
    const photo = join(fixtures, 'pictures/cat-chelsea.png');
    const argv = [
      'swatch',
      '--rounds',
      '10',
      '--across',
      '49mm',
      '--photo',
      photo,
      '--pixels',
      '1',
    ];
    const points = 'centre=225,150; rim1=199,9; 2/1=242,128';
    const { code, out, err } = await inProcess(...argv, '--points', points, '--dry-run');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/lean +0\.\d\d \(/);
    const outside = await inProcess(...argv, '--points', `${points}; 5/1=900,20`, '--dry-run');
    expect(outside.code).toBe(2);
    expect(outside.err).toContain('inside the photograph');
  });

  it.each([
    [['--dry-run'], 2],
    [['--across', '49mm', '--dry-run'], 2],
    [['--across', '0', '--dry-run'], 2],
    [['--rounds', '10', '--across', '49mm'], 2],
    [['--rounds', '10', '--across', '12mm', '--dry-run'], 4],
    [['--rounds', '10', '--rim-stitches', '69.5', '--rim-mm', '50', '--dry-run'], 4],
    [['--rounds', '10', '--turn', 'far', '--dry-run'], 2],
    [['--rounds', '10', '--turn', '-14deg against', '--dry-run'], 2],
    [['--rounds', '10', '--turn', '300deg with', '--dry-run'], 4],
    [['--rounds', '10', '--turn', '14deg', '--dry-run'], 2],
    [['--rounds', '10', '--rim-stitches', '23', '--rim-mm', '1000', '--dry-run'], 4],
    [['--rounds', '10', '--across', '49', '--ruler', '30mm', '--dry-run'], 2],
    [['--rounds', '10', '--turn', '14deg with', '--from-round', '10', '--dry-run'], 2],
    [['--rounds', '10', '--turn', '14deg with', '--to-round', '11', '--dry-run'], 2],
    [['--rounds', '10', '--turn', '14deg with', '--marked-wedge', '8', '--dry-run'], 2],
    [['--thread-mm', '1000', '--dry-run'], 2],
    [['--rim-mm', '60', '--rounds', '10', '--across', '49', '--dry-run'], 2],
    [['--guide', '--across', '49mm', '--rounds', '10', '-o', 'guide.svg'], 2],
    [['--guide', '-o', 'guide.doc'], 2],
    [['--guide', '--language', 'xx', '-o', 'guide.pdf'], 2],
    [['--language', 'de', '--across', '49mm', '--rounds', '10', '--dry-run'], 2],
    [['--rounds', '10', '--photo', 'none.jpg', '--points', 'centre=1,1; rim1=2,2', '--dry-run'], 3],
    [['--rounds', '10', '--photo', 'none.jpg', '--points', 'rim1=2,2', '--dry-run'], 2],
    [['--rounds', '10', '--photo', 'none.jpg', '--points', 'centre=1,1; rim9=2,2', '--dry-run'], 2],
    [['--rounds', '10', '--photo', 'none.jpg', '--dry-run'], 2],
    [['--increase', 'middle', '--outline', 'polygon', '--rounds', '9', '--dry-run'], 2],
  ])('refuses %j in one sentence', async (argv, wanted) => {
    const { code, out, err } = await inProcess('swatch', ...argv);
    expect({ code, out }, err).toEqual({ code: wanted, out: '' });
    expect(err).toMatch(/^Error: .+[.)]\n$/);
    expect(err.trim().split('\n')).toHaveLength(1);
  });

  it('does not read the standard input twice', async () => {
    const argv = ['chart', '-', '--swatch', '-', '--dry-run'];
    const { code, err } = await inProcess(...argv);
    expect(code).toBe(2);
    expect(err).toContain('--swatch - and - contradict each other');
  });

  it('refuses a file that is no swatch', async () => {
    writeFileSync(at('no.json'), '{}');
    const { code, err } = await inProcess('blank', '--swatch', at('no.json'), '-o', at('never'));
    expect(code).toBe(3);
    expect(err).toContain('is not a measured swatch');
  });
});

describe('the guide', () => {
  it.each([
    ['a4', 210, 297],
    ['letter', 8.5 * 25.4, 11 * 25.4],
  ])('prints at its true size on %s', async (paper, widthMm, heightMm) => {
    const file = at(`guide-${paper}.pdf`);
    const { code, out, err } = await inProcess('swatch', '--guide', '--paper', paper, '-o', file);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('rondure swatch --wedges 7 --rounds 10 --across …');
    expect(out).toContain('stitch 2 of the last sheet: --stitch bead-side-loop');
    const bytes = new Uint8Array(readFileSync(file));
    const { pages } = await readPdf(bytes);
    expect(pages).toHaveLength(3);
    for (const page of pages) {
      expect(page.widthMm).toBeCloseTo(widthMm, 3);
      expect(page.heightMm).toBeCloseTo(heightMm, 3);
      for (const { box } of page.paths) {
        expect(Math.min(...box)).toBeGreaterThan(4);
        expect(box[2]).toBeLessThan(widthMm - 4);
        expect(box[3]).toBeLessThan(heightMm - 4);
      }
      for (const { text, x, widthMm: wide } of page.texts) {
        expect(x, text).toBeGreaterThan(4);
        expect(x + wide, text).toBeLessThan(widthMm - 4);
      }
    }
    // One bead a stitch: 7·10·11/2.
    const steps = pages[0].texts.map(({ text }) => text).join(' ').replace(/\s+/g, ' '); // prettier-ignore
    expect(steps).toContain('String 385 beads (11/0)');
    // The stitch, each way, for beads away from the worker: where the hook goes in.
    const told = pages[2].texts.map(({ text }) => text).join(' ').replace(/\s+/g, ' '); // prettier-ignore
    expect(told).toContain('both loops of the next stitch');
    expect(told).toContain('the far loop alone of the next stitch');
    expect(told).toContain('under the loop that holds the bead');
    expect(told).toContain('beads come to lie on the far side');
    const sides = pages[1].paths.map(({ box }) => box[2] - box[0]);
    expect(sides.some((side) => Math.abs(side - 50) < 0.01)).toBe(true);
    expect(sides.some((side) => Math.abs(side - 50.8) < 0.01)).toBe(true);
    expect((await inProcess('swatch', '--guide', '--paper', paper, '-o', file)).code).toBe(5);
    const again = ['swatch', '--guide', '--paper', paper, '--force', '-o', file];
    expect((await inProcess(...again)).code).toBe(0);
    expect(new Uint8Array(readFileSync(file))).toEqual(bytes);
  });

  it('can be an SVG in millimetres, for any way of working', async () => {
    const file = at('guide.svg');
    const way = ['--wedges', '12', '--rounds', '80', '--hand', 'left', '--increase', 'first'];
    expect((await inProcess('swatch', '--guide', ...way, '-o', file)).code).toBe(0);
    const svg = readFileSync(file, 'utf8');
    expect(svg).toContain('width="210mm" height="891mm"');
    expect(svg).toContain('Measure your stitch');
    expect(svg).toContain('id="turn-gauge"');
    expect(svg).toContain('id="square-50-mm"');
  });
});
