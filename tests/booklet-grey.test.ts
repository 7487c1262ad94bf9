import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { patternText } from '../src/core/pattern/serialise.js';
import { panelSheet } from './support/panel-sheet.js';
import { tool } from './support/poppler.js';
import { inProcess } from './support/run.js';

const folder = mkdtempSync(join(tmpdir(), 'rondure-grey-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Every colour that the pages set (ISO 32000-1, 8.6.8), by qpdf, with nothing compressed. */
async function colours(...argv: string[]): Promise<string[][]> {
  const { pattern } = panelSheet({ wedges: 6, rounds: 8 }, 24);
  const from = join(folder, 'pattern.json');
  const out = join(folder, 'out.pdf');
  writeFileSync(from, patternText(pattern));
  expect(await inProcess('booklet', from, '-o', out, '--force', ...argv)).toMatchObject({
    code: 0,
  });
  const plain = tool('qpdf', ['--qdf', '--object-streams=disable', out, '-']).toString('latin1');
  const number = '(-?[\\d.]+)';
  const set = new RegExp(`${number} ${number} ${number} (?:scn|SCN|rg|RG)\\b`, 'g');
  return [...plain.matchAll(set)].map(([, ...parts]) => parts);
}

test('an edition for a black-and-white printer sets no colour at all', async () => {
  const grey = await colours('--print', 'grey');
  expect(grey.length).toBeGreaterThan(200);
  for (const [r, g, b] of grey) expect([g, b]).toEqual([r, r]);
  const usual = await colours();
  expect(usual.some(([r, g, b]) => r !== g || g !== b)).toBe(true);
});
