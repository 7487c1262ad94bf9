import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { hexToLab65 } from '../src/core/colour/lab.js';
import { makePattern } from '../src/core/make.js';
import { sampledWithoutTurn } from '../src/core/picture/leaned.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { patternText } from '../src/core/pattern/serialise.js';
import { parseWish, wishText } from '../src/core/pattern/read/wish-file.js';
import { readPicture } from '../src/node/read/read-picture.js';
import { inProcess } from './support/run.js';

const rooster = 'fixtures/pictures/rooster.svg';
const folder = mkdtempSync(join(tmpdir(), 'rondure-from-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const odd = [
  ...['--rounds', '9', '--wedges', '6', '--lean', '0.3', '--construction', 'joined', '--hand', 'left'],
  ...['--place', 'fit', '--zoom', '1.3', '--shift', '2,-1', '--rotate', '20', '--mirror'],
  ...['--art', 'drawing', '--ink', '15', '--detail', '0.6', '--colours', '5', '--tidy', '7'],
  ...['--keep', 'cobalt', '--leave-out', 'black', '--background', 'd9b36a', '--proof', 'off'],
  ...['--start', '11', '--title', 'A rooster'],
]; // prettier-ignore

test('a chart from its own pattern is the same chart, and a typed option goes before it', async () => {
  const one = join(folder, 'one');
  const palette = join(folder, 'few.csv');
  writeFileSync(
    palette,
    'id,name,hex\nk,black,#101010\nc,cobalt,#1f3fa8\nr,red,#b02020\nw,white,#f4f4f0\no,ochre,#c89030\ng,green,#2f7d4f\n',
  );
  const usual = ['chart', rooster, '--beads', palette];
  expect((await inProcess(...usual, ...odd, '-o', one)).err).toBe('');
  const text = readFileSync(join(one, 'pattern.json'), 'utf8');
  const two = join(folder, 'two');
  const from = ['--from', join(one, 'pattern.json')];
  expect((await inProcess(...usual, ...from, '-o', two)).err).toBe('');
  expect(readFileSync(join(two, 'pattern.json'), 'utf8')).toBe(text);
  const kept = parseWish(text, 'pattern.json');
  expect(kept.wish).toMatchObject({
    colours: 5,
    inkPercent: 15,
    keep: ['c'],
    leaveOut: ['k'],
    background: '#d9b36a',
    place: { place: 'fit', zoom: 1.3, shiftXmm: 2, shiftYmm: -1, rotateDegrees: 20, mirror: true },
  });
  const wish = join(folder, 'wish.json');
  writeFileSync(wish, wishText(kept));
  const dry = ['--dry-run', '--json'];
  const said = JSON.parse((await inProcess(...usual, '--from', wish, '--rounds', '7', ...dry)).out);
  expect(said).toMatchObject({ rounds: 7, wedges: 6 });
});

test('what cannot be gone on from is said in a sentence', async () => {
  const typed = join(folder, 'typed.json');
  const { wish: _wish, ...pattern } = parsePattern(await roosterAt(0.4), 'x');
  writeFileSync(typed, patternText(pattern));
  const refusal = async (text: string) => {
    const file = join(folder, 'bad.json');
    writeFileSync(file, text);
    return inProcess('chart', rooster, '--from', file, '--dry-run');
  };
  const none = await inProcess('chart', rooster, '--from', typed, '--dry-run');
  expect(none).toMatchObject({
    code: 3,
    err: expect.stringMatching(/does not say how it was asked/),
  });
  const kept = parseWish(await roosterAt(0.4), 'x');
  const file = JSON.parse(wishText(kept));
  const wrong = await refusal(JSON.stringify({ ...file, colours: 99 }));
  expect(wrong).toMatchObject({ code: 3, err: expect.stringMatching(/colours/) });
  const newer = await refusal(JSON.stringify({ ...file, version: 2 }));
  expect(newer).toMatchObject({ code: 3, err: expect.stringMatching(/newer Rondure/) });
  const other = await refusal('{"format":"song"}');
  expect(other).toMatchObject({ code: 3, err: expect.stringMatching(/neither a Rondure pattern/) });
  const back = await refusal(JSON.stringify({ ...file, back: { file: 'moon.svg' } }));
  expect(back).toMatchObject({ code: 2, err: expect.stringMatching(/moon\.svg.*--back/) });
});

test('a mask is kept small, and goes on to weigh the stitches', async () => {
  const picture = await readPicture(readFileSync(rooster), rooster);
  const { width, height } = picture;
  const data = new Uint8Array(4 * width * height).fill(255);
  for (let p = 0; p < data.length / 2; p++) if (p % 4 < 3) data[p] = 0;
  const mask = { picture: { width, height, data }, name: 'half.png' };
  const text = await roosterAt(0.4, { mask });
  const file = join(folder, 'masked.json');
  writeFileSync(file, text);
  const { wish } = parseWish(text, file);
  expect(wish.mask?.file).toBe('half.png');
  const gone = join(folder, 'gone-on');
  expect((await inProcess('chart', rooster, '--from', file, '-o', gone)).code).toBe(0);
  const [again, before] = [readFileSync(join(gone, 'pattern.json'), 'utf8'), text].map(
    (one) => parsePattern(one, 'x').panels[0].rounds,
  );
  expect(again).toEqual(before);
});

async function roosterAt(darkCover: number, more: object = {}): Promise<string> {
  const picture = await readPicture(readFileSync(rooster), rooster);
  const { beads } = readPalette(readFileSync('palettes/drawers.csv', 'utf8'), 'drawers', {});
  const { pattern } = makePattern({
    picture,
    pictureName: 'rooster.svg',
    title: 'Rooster',
    beads,
    colours: 8,
    shape: { wedges: 7, rounds: 20, beadDiameterMm: 2.1 },
    place: { place: 'fill' },
    art: 'drawing',
    darkCover,
    background: '#ffffff',
    tidy: 3,
    ...more,
  });
  return patternText(pattern);
}

test('the comparison takes as much ink as the chart', async () => {
  const dark = async (cover: number) => {
    const pattern = parsePattern(await roosterAt(cover), 'x');
    const isDark = (hex: string) => hexToLab65(hex)[0] < 25;
    const beadOf = sampledWithoutTurn(pattern, 0)!.beadOf;
    return beadOf.filter((bead) => bead && isDark(bead.hex)).length;
  };
  const [bold, thin] = [await dark(0.05), await dark(0.95)];
  // It had as many dark beads both times, since it knew nothing of --ink.
  expect(bold).toBeGreaterThan(1.2 * thin);
});

test('the comparison is lifted and tidied as the chart is: it shows as many stitches of each bead', () => {
  // A soft field of greys from 118 to 152, which is lifted to nearly twice that range.
  const [width, height] = [240, 240];
  const data = new Uint8Array(4 * width * height).fill(255);
  for (let p = 0; p < width * height; p++) {
    const [x, y] = [p % width, Math.floor(p / width)];
    data.fill(Math.round(135 + 17 * Math.sin(x / 23) * Math.sin(y / 31)), 4 * p, 4 * p + 3);
  }
  const { pattern } = makePattern({
    picture: { width, height, data },
    pictureName: 'x',
    title: 'x',
    beads: readPalette(readFileSync('palettes/drawers.csv', 'utf8'), 'drawers', {}).beads,
    colours: 6,
    shape: { wedges: 7, rounds: 16, beadDiameterMm: 2.1 },
    place: { place: 'fill' },
    art: 'photo',
    background: '#ffffff',
    edges: 0.3,
    lift: 1,
    tidy: 2,
  });
  const share = (letters: readonly (string | undefined)[]) =>
    pattern.beads.map(
      ({ letter }) => letters.filter((one) => one === letter).length / letters.length,
    );
  const charted = share([...pattern.panels[0].rounds.join('')]);
  const { beadOf } = sampledWithoutTurn(pattern, 0)!;
  const leaned = share(beadOf.map((bead) => bead?.letter));
  const apart = charted.reduce((sum, one, n) => sum + Math.abs(one - leaned[n]), 0) / 2;
  // Measured 0.017; 0.137 where the comparison knows nothing of lift.
  expect(apart).toBeLessThan(0.05);
});
