import { chromium } from 'playwright-core';
import type { BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { chromiumPath } from '../../tools/test-tools.js';
import { serveBuiltPage } from './serve-page.js';
import type { ServeHow } from './serve-page.js';

/** The built page on an address of its own, and Chromium before it. */
export interface OpenPage {
  readonly address: string;
  /**
   * A fresh page in a browser that has kept nothing yet, and what it asked for outside its own address or wrote to
   * the console. `before` may prepare the browser, `more` says what kind of device it is.
   */
  open(
    width?: number,
    height?: number,
    before?: (context: BrowserContext) => Promise<unknown>,
    more?: BrowserContextOptions,
  ): Promise<{ page: Page; strays: string[]; said: string[] }>;
  /** Another window of the browser that a page is in, with what it has kept. */
  openBeside(page: Page): Promise<{ page: Page }>;
  /** The server goes away, and the page's open connections with it. */
  goOffline(): Promise<void>;
  close(): Promise<void>;
}

/** @param settings of the browser, as it takes them on its command line */
export async function openBuiltPage(
  how: ServeHow = {},
  settings: readonly string[] = [],
): Promise<OpenPage> {
  const executablePath = chromiumPath();
  if (!executablePath) throw new Error('Chromium is missing: run node tools/test-tools.js');
  const { address, goOffline } = await serveBuiltPage(how);
  const browser = await chromium.launch({
    executablePath,
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', ...settings],
  });
  return {
    address,
    goOffline,
    async open(width = 1280, height = 800, before, more = {}) {
      const context = await browser.newContext({
        viewport: { width, height },
        locale: 'en-GB',
        ...more,
      });
      await before?.(context);
      const page = await context.newPage();
      const strays: string[] = [];
      const said: string[] = [];
      context.on('request', (request) => {
        const url = request.url();
        if (!url.startsWith(address) && !/^(data|blob):/.test(url)) strays.push(url);
      });
      page.on('console', (message) => {
        if (['error', 'warning'].includes(message.type())) said.push(message.text());
      });
      page.on('pageerror', (error) => said.push(error.message));
      await page.goto(address);
      return { page, strays, said };
    },
    async openBeside(first) {
      const page = await first.context().newPage();
      await page.goto(address);
      return { page };
    },
    async close() {
      await browser.close();
      await goOffline();
    },
  };
}

/** Waits until beads lie on the mat and the choice has settled. */
export async function settled(page: Page): Promise<void> {
  await page.locator('main[data-state="settled"]').waitFor({ timeout: 60_000 });
}
