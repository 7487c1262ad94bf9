import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import type * as Scale from '../src/core/pages/surface/scale.js';
import { escapeXml, unescapeXml } from '../src/core/pages/surface/svg-surface.js';
import type * as Worked from '../src/core/pages/worked/worked.js';
import { patternKeyword } from '../src/node/output/pattern-files.js';
import type * as Rasterise from '../src/node/output/rasterise.js';
import { Dice, mutateBytes, mutateJson, mutatePng, mutateText } from './support/mutate.js';
import { inProcess } from './support/run.js';

/*
 * Every file that is read, changed at random with a seed: no program error, no hang, no control
 * character on the terminal, and `check` passes what `redraw` draws and nothing else.
 * `node tools/mutations.js 2000` runs more of it and counts.
 */
const count = Number(process.env.RONDURE_MUTATIONS ?? 20);
const from = Number(process.env.RONDURE_MUTATIONS_FROM ?? 1);
const only = process.env.RONDURE_MUTATIONS_OF;
const secondsEach = 20;

// Letters and packing are tested elsewhere: small pictures of the drawings will do.
vi.mock('../src/node/output/rasterise.js', async (original) => {
  const { rasteriseSvg, ...rest } = await original<typeof Rasterise>();
  return {
    ...rest,
    rasteriseSvg: (svg: string, widthPx: number) => rasteriseSvg(svg, Math.min(widthPx, 200)),
  };
});

vi.mock('../src/core/pages/worked/worked.js', async (original) => {
  const { renderWorked, ...rest } = await original<typeof Worked>();
  return {
    ...rest,
    renderWorked: (input: Parameters<typeof renderWorked>[0]) => {
      const drawn = renderWorked({ ...input, widthPx: 40 });
      const { widthPx } = input;
      const data = new Uint8Array(4 * widthPx * Math.round((widthPx * drawn.height) / drawn.width));
      return { width: widthPx, height: data.length / 4 / widthPx, data };
    },
  };
});

vi.mock('../src/core/pages/surface/scale.js', async (original) => {
  const real = await original<typeof Scale>();
  const scaledOnWhite: typeof real.scaledOnWhite = (picture, width, height) => {
    real.scaledOnWhite(picture, Math.ceil(width / 20), Math.ceil(height / 20));
    return { width, height, data: new Uint8ClampedArray(4 * width * height).fill(255) };
  };
  return { ...real, scaledOnWhite };
});

const top = fileURLToPath(new URL('../', import.meta.url));
const fixture = (name: string) => join(top, 'fixtures', name);

let folder: string;
let out: string;
const at = (name: string) => join(folder, name);
const text = (name: string) => readFileSync(at(name), 'utf8');

async function made(...argv: string[]): Promise<void> {
  const { code, err } = await inProcess(...argv);
  if (code !== 0) throw new Error(`${argv.join(' ')}: ${err}`);
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-mutations-'));
  out = at('out');
  await made('frame', '--width', '30mm', '--height', '20mm', '-o', at('frame.json'));
  const small = ['--rounds', '7', '--colours', '4', '--quiet'];
  const picture = await sharp(fixture('lighthouse.svg')).resize(60).png().toBuffer();
  writeFileSync(at('picture.png'), picture);
  const two = ['--back', at('picture.png'), '--frame', at('frame.json'), '--title', 'Lighthouse'];
  await made('chart', at('picture.png'), ...two, ...small, '-o', at('chart'));
  await made('blank', '--rounds', '4', '-o', at('blank'));
  const crayon = { create: { width: 90, height: 90, channels: 3, background: '#1f7fa8' } } as const;
  const page = sharp(at('blank/blank.svg'), { density: 60 })
    .flatten({ background: '#fff' })
    .composite([{ input: await sharp(crayon).png().toBuffer(), blend: 'multiply' }]);
  writeFileSync(at('photo.png'), await page.png().toBuffer());
  writeFileSync(at('photo.jpg'), await page.jpeg().toBuffer());
  const palette = 'id;name;hex;finish;size;grams;price\na;sand;#d9b36a;matt;11/0;10;1,90\n';
  writeFileSync(at('beads.csv'), `${palette}b;sea;#1f7fa8;;11/0;4;2\nc;night;#1d2a4d;;;;\n`);
  writeFileSync(
    at('beads.json'),
    JSON.stringify({
      beads: [{ id: 'a', name: 'sand', hex: '#d9b36a', lab: [75, 6, 42], grams: 3 }, '#1f7fa8'],
    }),
  );
  writeFileSync(
    at('beads.gpl'),
    'GIMP Palette\nName: Quay\nColumns: 2\n# ours\n217 179 106\tsand\n31 127 168\tsea\n',
  );
  const measured = ['--rounds', '10', '--across', '49mm', '--rim-stitches', '23'];
  await made('swatch', ...measured, '-o', at('swatch.json'));
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

type Way = (file: string, run: (...argv: string[]) => Promise<Ran>) => Promise<void>;

const force = ['--force', '-o'];

/** `check` and `redraw` must agree; `recolour` and `shopping` must not fall over. */
const patternWay: Way = async (file, run) => {
  const checked = await run('check', file);
  const redrawn = await run('redraw', file, '--quiet', ...force, out);
  expect(redrawn.code === 0, `check ${checked.code}, redraw ${redrawn.code}: ${redrawn.err}`).toBe(
    checked.code === 0,
  );
  if (checked.code !== 0) return;
  await run('recolour', file, '--merge', 'B=A', '--quiet', ...force, out);
  await run('shopping', file);
};
const useOf =
  (...argv: string[]): Way =>
  async (file, run) =>
    void (await run(...argv.map((word) => (word === 'FILE' ? file : word))));

/** An iTXt chunk that is not packed, with a changed pattern in it (PNG specification, 11.3.3.4). */
const patternChunk = (dice: Dice) =>
  Buffer.concat([
    Buffer.from(`${patternKeyword}\0\0\0\0\0`, 'latin1'),
    Buffer.from(mutateJson(text('chart/pattern.json'), dice)),
  ]);

const kinds: [kind: string, original: string, change: (dice: Dice) => string | Uint8Array, Way][] = [
  ['a pattern', 'chart/pattern.json', (dice) => mutateJson(text('chart/pattern.json'), dice), patternWay],
  [
    'chart.svg', 'chart/chart.svg',
    (dice) => {
      const svg = text('chart/chart.svg');
      if (dice.roll(3) === 0) return mutateText(svg, dice);
      return svg.replace(/(<metadata id="rondure-pattern">)([^<]*)/, (_, tag: string, inner: string) => {
        const changed = mutateJson(unescapeXml(inner), dice);
        return tag + (dice.roll(4) === 0 ? changed : escapeXml(changed));
      });
    },
    patternWay,
  ],
  [
    'chart.png', 'chart/chart.png',
    (dice) => mutatePng(readFileSync(at('chart/chart.png')), dice, () => patternChunk(dice)),
    patternWay,
  ],
  [
    'swatch.json', 'swatch.json',
    (dice) => mutateJson(text('swatch.json'), dice),
    async (file, run) => {
      await run('chart', at('picture.png'), '--rounds', '3', '--swatch', file, '--dry-run');
      await run('redraw', at('chart/pattern.json'), '--swatch', file, '--quiet', ...force, out);
    },
  ],
  [
    'frame.json', 'frame.json',
    (dice) => mutateJson(text('frame.json'), dice),
    useOf('chart', at0('picture.png'), '--frame', 'FILE', '--quiet', '--force', '-o', at0('out')),
  ],
  [
    'blank.json', 'blank/blank.json',
    (dice) => mutateJson(text('blank/blank.json'), dice),
    useOf('read', at0('photo.png'), '--blank', 'FILE', '--quiet', '--force', '-o', at0('out')),
  ],
  [
    'the photograph of a blank chart', 'photo.jpg',
    (dice) =>
      dice.roll(2) === 0
        ? mutateBytes(readFileSync(at('photo.jpg')), dice)
        : mutatePng(readFileSync(at('photo.png')), dice),
    useOf('read', 'FILE', '--blank', at0('blank/blank.json'), '--quiet', '--force', '-o', at0('out')),
  ],
  [
    'rounds.txt', 'chart/rounds.txt',
    (dice) => mutateText(text('chart/rounds.txt'), dice),
    useOf('rounds', 'FILE', '--quiet', '--force', '-o', at0('out')),
  ],
  ...(['csv', 'gpl', 'json'] as const).map((ending): (typeof kinds)[number] => [
    `beads.${ending}`,
    `beads.${ending}`,
    (dice) => (ending === 'json' ? mutateJson : mutateText)(text(`beads.${ending}`), dice),
    async (file, run) => {
      await run('beads', file);
      await run('rounds', at('chart/rounds.txt'), '--beads', file, '--quiet', ...force, out);
    },
  ]),
]; // prettier-ignore

/** A name in the folder that is made only later. */
function at0(name: string): string {
  return `@/${name}`;
}

/** What may be printed: lines of letters. */
// eslint-disable-next-line no-control-regex
const unprintable = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

const chosen = kinds.filter(([kind]) => only === undefined || kind.includes(only));
it.each(chosen)(
  '%s, changed at random, is used or refused in a sentence',
  async (kind, original, change, way) => {
    const codes: Record<string, number> = {};
    const faults: string[] = [];
    // Seed 0 is the file as it was.
    for (const seed of [0, ...Array.from({ length: count }, (_, n) => from + n)]) {
      const file = at(`changed${extname(original)}`);
      writeFileSync(file, seed === 0 ? readFileSync(at(original)) : change(new Dice(seed * 7919)));
      const told = (what: string) => faults.push(`${kind}, seed ${seed}: ${what}`);
      const run = async (...argv: string[]) => {
        const words = argv.map((word) => word.replace(/^@/, folder));
        const start = process.cpuUsage();
        const ran = await inProcess(...words);
        const about = `${words[0]} exit ${ran.code}`;
        codes[about] = (codes[about] ?? 0) + 1;
        if (process.cpuUsage(start).user > 1e6 * secondsEach) told(`${words[0]} took too long`);
        if (seed === 0 && ran.code !== 0) told(`${about}: ${ran.err}`);
        if (![0, 2, 3, 4, 5].includes(ran.code)) told(`${about}: ${ran.err.slice(0, 300)}`);
        else if (unprintable.test(ran.out + ran.err)) told(`${about} prints ${JSON.stringify(ran.out + ran.err).slice(0, 200)}`);
        return ran;
      };
      await way(file, run).catch((error: Error) => told(error.message.split('\n')[0]));
    }
    if (process.env.RONDURE_MUTATIONS) console.log(kind, JSON.stringify(codes), faults.length, 'faults');
    expect(faults.slice(0, 20), `${faults.length} of ${count}`).toEqual([]);
    expect(existsSync(at('chart/pattern.json'))).toBe(true);
  },
  (100 + count * 20) * 1000,
); // prettier-ignore
