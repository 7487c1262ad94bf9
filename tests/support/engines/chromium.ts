import { chromium } from 'playwright-core';
import { chromiumPath } from '../../../tools/test-tools.js';
import type { Engine, EnginePage } from './engine.js';

/** Blink, by Debian's Chromium. */
export async function startChromium(): Promise<Engine> {
  const executablePath = chromiumPath();
  if (!executablePath) throw new Error('Chromium is missing: run node tools/test-tools.js');
  const browser = await chromium.launch({
    executablePath,
    args: [
      ...['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
      ...['--disable-background-networking', '--disable-component-update', '--disable-sync'],
    ],
  });
  return {
    name: 'chromium',
    async newPage(width, height): Promise<EnginePage> {
      const context = await browser.newContext({ viewport: { width, height } });
      const page = await context.newPage();
      return {
        open: async (url) => void (await page.goto(url)),
        evaluate: (expression) => page.evaluate(expression),
        pressAt: (x, y) => page.mouse.click(x, y),
        async drag([[x, y], ...rest]) {
          await page.mouse.move(x, y);
          await page.mouse.down();
          for (const [toX, toY] of rest) await page.mouse.move(toX, toY);
          await page.mouse.up();
        },
        type: (text) => page.keyboard.type(text),
        key: (name, held) => page.keyboard.press(held ? `${held}+${name}` : name),
        screenshot: () => page.screenshot(),
        size: (w, h) => page.setViewportSize({ width: w, height: h }),
        close: () => context.close(),
      };
    },
    close: () => browser.close(),
  };
}
