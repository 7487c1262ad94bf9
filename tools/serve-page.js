// The built page on an address of its own, and Chromium before it: for the benchmark and the pictures of the page.
import { createServer } from 'node:http';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import sirv from 'sirv';
import { chromiumPath } from './test-tools.js';

export const pageFolder = fileURLToPath(new URL('../dist/page/', import.meta.url));

/**
 * Serves dist/page and starts Chromium, does the work, and ends both.
 *
 * @template T
 * @param {(browser: import('playwright-core').Browser, address: string) => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function withPage(work) {
  const executablePath = chromiumPath();
  if (!executablePath) throw new Error('Chromium is missing: run node tools/test-tools.js');
  const files = sirv(pageFolder);
  const server = createServer((request, answer) => files(request, answer));
  await new Promise((done) => server.listen(0, '127.0.0.1', done));
  const args = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'];
  const browser = await chromium.launch({ executablePath, args });
  try {
    return await work(browser, `http://127.0.0.1:${server.address().port}/`);
  } finally {
    await browser.close();
    server.closeAllConnections();
    await new Promise((done) => server.close(done));
  }
}

/** Waits until beads lie on the mat and the choice has settled. */
export const settled = (page) =>
  page.locator('main[data-state="settled"]').waitFor({ timeout: 180_000 });
