import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../../src/cli/program.js';
import { en } from '../../src/words/index.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { saved } from '../support/page-acts.js';
import { tool } from '../support/poppler.js';
import { readPdf } from '../support/read-pdf.js';

// The guide to a swatch from the page is the command line's, byte for byte, once what is packed is unpacked: Node
// and browsers pack alike but not to the same bytes. Unpacked by qpdf, which otherwise gives a file the second of the
// clock in its identifier.

let built: OpenPage;
let folder: string;
beforeAll(async () => {
  built = await openBuiltPage();
  folder = mkdtempSync(join(tmpdir(), 'rondure-guide-'));
});
afterAll(async () => {
  await built?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function unpacked(bytes: Uint8Array, name: string): Promise<Buffer> {
  const file = join(folder, name);
  writeFileSync(file, bytes);
  return tool('qpdf', [
    '--static-id',
    '--stream-data=uncompress',
    '--object-streams=disable',
    file,
    '-',
  ]);
}

async function byCommand(...options: string[]): Promise<Buffer> {
  const file = join(folder, 'guide.pdf');
  let err = '';
  const signal = new AbortController().signal;
  const argv = ['swatch', '--guide', '-o', file, '--force', ...options];
  const code = await run(argv, en, {
    out() {},
    err: (text) => void (err += text),
    progress: undefined,
    signal,
  });
  expect(err).toBe('');
  expect(code).toBe(0);
  return readFileSync(file);
}

const type = async (page: Page, name: string, value: string) => {
  const field = page.getByRole('spinbutton', { name, exact: true });
  await field.fill(value);
  await field.press('Tab');
};

test('beside the questions of the swatch, as the panel is worked, in the language of the page', async () => {
  const { page, strays, said } = await built.open();
  await settled(page);
  await page.locator('[data-step="panel"]').click();
  await type(page, 'Wedges', '6');
  await page.locator('.card [data-action="hand-left"]').click();
  await page.locator('.card [data-action="face-toward"]').click();
  await page.locator('.card [data-form="stitch"]').click();
  const rounds = page.locator('.stitch-form form input[type="number"]').first();
  await rounds.fill('8');
  await settled(page);
  const { name, bytes } = await saved(page, 'swatch-guide');
  expect(name).toBe('swatch-guide.pdf');
  const shape = ['--wedges', '6', '--rounds', '8', '--hand', 'left', '--beads-face', 'toward'];
  const command = await byCommand(...shape);
  expect((await unpacked(bytes, 'page.pdf')).equals(await unpacked(command, 'cli.pdf'))).toBe(true);
  // Rendered by a reader that shares no code: three sheets of A4 (ISO 216).
  const pdf = await readPdf(bytes);
  expect(
    pdf.pages.map(({ widthMm, heightMm }) => [Math.round(widthMm), Math.round(heightMm)]),
  ).toEqual(Array(3).fill([210, 297]));
  await expect.poll(() => page.locator('.told .note').innerText()).toContain('swatch-guide.pdf');
  expect(strays).toEqual([]);
  expect(said).toEqual([]);
});

test.each([
  ['ja', 'a4'],
  ['uk', 'letter'],
] as const)('in Pages, in their language and on their paper: %s, %s', async (language, paper) => {
  const { page } = await built.open();
  await settled(page);
  await page.locator('[data-step="pages"]').click();
  const selects = page.locator('.card select');
  await selects.nth(0).selectOption(language);
  await selects.nth(2).selectOption(paper);
  const { bytes } = await saved(page, 'swatch-guide');
  const command = await byCommand('--language', language, '--paper', paper);
  expect((await unpacked(bytes, 'page.pdf')).equals(await unpacked(command, 'cli.pdf'))).toBe(true);
});
