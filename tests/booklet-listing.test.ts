import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, expect, test } from 'vitest';
import { patternText } from '../src/core/pattern/serialise.js';
import { languages } from '../src/words/index.js';
import { panelSheet } from './support/panel-sheet.js';
import { inProcess } from './support/run.js';

const folder = mkdtempSync(join(tmpdir(), 'rondure-listing-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const from = join(folder, 'pattern.json');
writeFileSync(from, patternText(panelSheet({ wedges: 6, rounds: 5 }, 3).pattern));

test('a listing has three square pictures of 2000 pixels and a text in every language', async () => {
  const dir = join(folder, 'shop');
  const argv = ['-o', join(folder, 'a.pdf'), '--time', '3 hours', '--listing', dir];
  expect(await inProcess('booklet', from, ...argv)).toMatchObject({ code: 0, err: '' });
  const texts = languages.map((language) => `listing-${language}.txt`);
  expect(readdirSync(dir).sort()).toEqual(
    ['cover.png', 'purse.png', 'palette.png', ...texts].sort(),
  );
  for (const name of ['cover', 'purse', 'palette']) {
    const { width, height } = await sharp(join(dir, `${name}.png`)).metadata();
    expect([width, height]).toEqual([2000, 2000]);
  }
  for (const name of texts) {
    const text = readFileSync(join(dir, name), 'utf8');
    expect(text).toContain('3 hours');
    expect(text).toContain('A4');
    expect(text).not.toMatch(/undefined|NaN|--|[\ufdd0-\ufdd2]/);
  }
  const again = ['-o', join(folder, 'b.pdf'), '--force', '--listing'];
  expect((await inProcess('booklet', from, ...again, dir)).code).toBe(0);
  const kept = mkdtempSync(join(folder, 'kept-'));
  writeFileSync(join(kept, 'mine.txt'), 'mine');
  expect((await inProcess('booklet', from, ...again, kept)).code).toBe(5);
  expect(readdirSync(kept)).toEqual(['mine.txt']);
});

test('a photograph stands on the cover as the one picture of the file; a bad one is refused', async () => {
  const photo = join(folder, 'photo.png');
  await sharp({ create: { width: 60, height: 40, channels: 3, background: '#884422' } })
    .png()
    .toFile(photo);
  const out = join(folder, 'photo.pdf');
  expect(await inProcess('booklet', from, '-o', out, '--photo', photo)).toMatchObject({ code: 0 });
  const images = readFileSync(out, 'latin1').match(/\/Subtype \/Image/g) ?? [];
  expect(images).toHaveLength(1);
  const refused = await inProcess('booklet', from, '-o', join(folder, 'c.pdf'), '--photo', from);
  expect(refused.code).toBe(3);
  expect(readdirSync(folder)).not.toContain('c.pdf');
});
