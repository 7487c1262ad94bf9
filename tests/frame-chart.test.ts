import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { planFrame } from '../src/core/purse/frame/plan.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { patternText } from '../src/core/pattern/serialise.js';
import { expandStringing } from '../src/core/pages/lists/stringing.js';
import { inProcess } from './support/run.js';

const moon = fileURLToPath(new URL('../fixtures/barley-moon.svg', import.meta.url));
let dir: string;
beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'rondure-frame-'));
});
afterAll(() => rmSync(dir, { recursive: true, force: true }));

const small = ['--width', '3cm', '--height', '1.5cm'];
const read = (...names: string[]) => readFileSync(join(dir, ...names), 'utf8');

test('a panel for a frame: sized, bare where the frame lies, in every file', async () => {
  const file = join(dir, 'frame.json');
  const planned = await inProcess('frame', ...small, '-o', file, '--json');
  expect(planned).toMatchObject({ code: 0, err: '' });
  const { plan } = JSON.parse(planned.out);
  const out = join(dir, 'moon');
  const made = await inProcess(
    'chart',
    moon,
    '--frame',
    file,
    '--proof',
    'off',
    '-o',
    out,
    '--json',
  );
  expect(made).toMatchObject({ code: 0, err: '' });
  const summary = JSON.parse(made.out);
  expect(summary.rounds).toBe(plan.rounds);

  const pattern = parsePattern(read('moon', 'pattern.json'), 'pattern.json');
  expect(pattern.frame).toMatchObject({ kind: 'half-round', widthMm: 30, bareRounds: 2 });
  const { shape, panels } = pattern;
  // Exactly the stitches of the plan are bare, and no others.
  panels[0].rounds.forEach((marks, index) => {
    const framed = plan.framed.find((one: { round: number }) => one.round === index + 1);
    const held = (i: number) =>
      framed?.bare === true &&
      framed.runs.some(({ from, to }: { from: number; to: number }) => i >= from && i <= to);
    Array.from(marks).forEach((mark, i) => expect(mark === '.').toBe(held(i + 1)));
  });
  const bare = panels[0].rounds.join('').split('.').length - 1;
  expect(summary.stitches - summary.beads).toBe(bare);
  expect(expandStringing(read('moon', 'stringing.csv'))).toHaveLength(summary.beads);
  const counts = read('moon', 'materials.csv').trim().split('\n').slice(1);
  const column = read('moon', 'materials.csv').split('\n')[0].split(',').indexOf('count');
  expect(counts.reduce((sum, row) => sum + Number(row.split(',')[column]), 0)).toBe(summary.beads);

  // Text and chart tell of it.
  const rounds = read('moon', 'rounds.txt').replace(/\s+/g, ' ');
  const [first, second] = plan.framed[0].runs;
  expect(rounds).toContain(
    `stitches ${first.from} to ${first.to} and ${second.from} to ${second.to} of round ${shape.rounds} lie in it`,
  );
  expect(rounds).toMatch(/\d+ bare/);
  expect(read('moon', 'chart.svg')).toContain('id="frame"');

  // Checked, read back from the list, and made again from pattern.json alone.
  expect((await inProcess('check', join(out, 'pattern.json'))).code).toBe(0);
  const again = join(dir, 'again');
  await inProcess('redraw', join(out, 'pattern.json'), '-o', again);
  for (const name of ['pattern.json', 'chart.svg', 'rounds.txt', 'stringing.csv']) {
    expect(read('again', name), name).toBe(read('moon', name));
  }
  const listed = await inProcess('rounds', join(out, 'rounds.txt'), '-o', join(dir, 'listed'));
  expect(listed).toMatchObject({ code: 0 });
  expect(parsePattern(read('listed', 'pattern.json'), '').panels[0].rounds).toEqual(
    panels[0].rounds,
  );
});

test('the beads are chosen without what the frame hides', async () => {
  // Red in the middle of the rim's top alone: under the frame it is worth no bead.
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="400">
    <rect width="400" height="400" fill="#203060"/><circle cx="200" cy="240" r="80" fill="#f0e0b0"/>
    <rect x="185" y="0" width="30" height="22" fill="#d02020"/></svg>`;
  const picture = join(dir, 'spot.svg');
  writeFileSync(picture, svg);
  const file = join(dir, 'frame2.json');
  await inProcess('frame', ...small, '-o', file);
  const beads = async (...more: string[]) => {
    const { out, code, err } = await inProcess(
      ...['chart', picture, '--across', '36mm', '--place', 'fit', '--proof', 'off', '--tidy', '0'],
      ...['--colours', '2', '--json', '--dry-run'],
      ...more,
    );
    expect({ code, err }).toEqual({ code: 0, err: '' });
    return JSON.parse(out) as { colours: number; difference: { worst: number } };
  };
  const open = await beads();
  const framed = await beads('--frame', file, '--bare-rounds', '3');
  const none = await beads('--frame', file, '--bare-rounds', '0');
  expect(none).toMatchObject({ colours: open.colours, difference: open.difference });
  expect(framed.difference.worst).toBeLessThan(open.difference.worst);
});

test.each([
  [
    ['--fixing', 'glued', '--channel-depth', '3mm'],
    ['--hand', 'left', '--wedges', '6'],
  ],
  [
    ['--kind', 'squared', '--corner-radius', '8mm'],
    ['--construction', 'joined', '--start', '77'],
  ],
  [
    ['--kind', 'oval'],
    ['--outline', 'circle', '--increase', 'middle', '--beads-face', 'toward'],
  ],
])('frame %j and chart %j agree', async (measures, worked) => {
  const file = join(dir, `${measures[1]}.json`);
  await inProcess('frame', ...small, ...measures, '-o', file);
  const name = `panel-${measures[1]}`;
  const args = ['--frame', file, ...worked, '--proof', 'off', '--quiet', '-o', join(dir, name)];
  expect(await inProcess('chart', moon, ...args)).toMatchObject({ code: 0, err: '' });
  const text = read(name, 'pattern.json');
  const pattern = parsePattern(text, name);
  expect(patternText(pattern)).toBe(text);
  const { startDegrees, rounds } = pattern.panels[0];
  const plan = planFrame(pattern.frame!, panelGeometry(pattern.shape, { startDegrees }));
  const bare = plan.framed.reduce((sum, one) => sum + (one.bare ? one.stitches : 0), 0);
  expect(rounds.join('').split('.').length - 1).toBe(bare);
  expect(bare).toBeGreaterThan(20);
});

test.each([
  [['frame', '--width', '85'], 2, '--height'],
  [['frame', ...small, '--corner-radius', '5mm'], 2, '--corner-radius'],
  [['frame', ...small, '--hinge-width', '5mm'], 2, '--hinge-width'],
  [['frame', ...small, '--channel-depth', '5mm'], 2, '--channel-depth'],
  [['frame', ...small, '--fixing', 'glued', '--hole-spacing', '5mm'], 2, '--hole-spacing'],
  [['frame', ...small, '--ratio', '3'], 2, '--ratio'],
  [['frame', ...small, '--gather', '99'], 2, '--gather'],
  [['frame', ...small, '--force'], 2, '--force'],
  [['frame', '--width', '-85', '--height', '45'], 2, '--width'],
  [['frame', '--width', '4mm', '--height', '45'], 4, '20 and 400'],
  [['frame', '--width', '85', '--height', '2mm'], 4, '5 and 300'],
  [['frame', ...small, '--kind', 'squared', '--corner-radius', '16mm'], 4, '0 and 15'],
  [['frame', ...small, '--kind', 'oval', '--hinge-width', '31mm'], 4, '9 and 30'],
  [['frame', ...small, '--hole-spacing', '30mm'], 4, '1 and 20'],
  [['frame', ...small, '--rounds', '5'], 4, 'take 6 to 8'],
  [['frame', '--width', '5cm', '--height', '12cm'], 4, '--rounds'],
  [['frame', '--width', '39cm', '--height', '12cm'], 4, 'between'],
  [['chart', moon, '--dry-run', '--bare-rounds', '2'], 2, '--frame'],
  [['chart', moon, '--dry-run', '--frame', moon], 3, 'rondure frame'],
  [['chart', moon, '--dry-run', '--frame', 'nowhere.json'], 3, 'nowhere.json'],
  [['chart', '-', '--dry-run', '--frame', '-'], 2, '--frame -'],
])('%j is refused with exit code %d and names %s', async (argv, code, named) => {
  const result = await inProcess(...argv);
  expect(result.out).toBe('');
  expect(result.err).toContain(named);
  expect(result.err.trim().split('\n')).toHaveLength(1);
  expect(result.code).toBe(code);
});

test('a panel too small for its frame is refused, one out of the usual range warned of', async () => {
  const file = join(dir, 'frame3.json');
  await inProcess('frame', ...small, '-o', file);
  const chart = (...more: string[]) =>
    inProcess('chart', moon, '--frame', file, '--proof', 'off', '--dry-run', '--json', ...more);
  const tooSmall = await chart('--across', '25mm');
  expect(tooSmall.code).toBe(4);
  expect(JSON.parse(tooSmall.err).error.code).toBe('frame-too-wide');
  const { warnings } = JSON.parse((await chart('--rounds', '10')).out);
  expect(warnings.map(({ code }: { code: string }) => code)).toContain('frame-ratio');
});

test('frame.json is not overwritten without --force, nor anything that is not ours with it', async () => {
  const file = join(dir, 'twice.json');
  expect((await inProcess('frame', ...small, '-o', file)).code).toBe(0);
  expect((await inProcess('frame', ...small, '-o', file)).code).toBe(5);
  expect((await inProcess('frame', ...small, '-o', file, '--force')).code).toBe(0);
  writeFileSync(file, '{"format":"mine"}');
  expect((await inProcess('frame', ...small, '-o', file, '--force')).code).toBe(5);
  expect(readFileSync(file, 'utf8')).toBe('{"format":"mine"}');
});

test('a pattern whose frame was made too wide is refused by check as by redraw', async () => {
  const json = JSON.parse(read('moon', 'pattern.json'));
  json.frame.widthMm = 300;
  const file = join(dir, 'wide.json');
  writeFileSync(file, JSON.stringify(json));
  const drawn = await inProcess('redraw', file, '--dry-run');
  const checked = await inProcess('check', file);
  expect(drawn.code).toBe(4);
  expect([checked.code, checked.out, checked.err]).toEqual([4, '', drawn.err]);
});
