import puppeteer from 'puppeteer-core';
import type { KeyInput } from 'puppeteer-core';
import { firefoxPath } from '../../../tools/test-tools.js';
import type { Engine, EnginePage } from './engine.js';

/** Gecko, by Debian's Firefox over WebDriver BiDi. */
export async function startFirefox(): Promise<Engine> {
  const executablePath = firefoxPath();
  if (!executablePath) throw new Error('Firefox is missing: run node tools/test-tools.js');
  const browser = await puppeteer.launch({ browser: 'firefox', executablePath, headless: true });
  return {
    name: 'firefox',
    async newPage(width, height): Promise<EnginePage> {
      const context = await browser.createBrowserContext();
      const page = await context.newPage();
      await page.setViewport({ width, height });
      return {
        open: async (url) => void (await page.goto(url)),
        evaluate: async <T>(expression: string) => (await page.evaluate(expression)) as T,
        pressAt: (x, y) => page.mouse.click(x, y),
        async drag([[x, y], ...rest]) {
          await page.mouse.move(x, y);
          await page.mouse.down();
          for (const [toX, toY] of rest) await page.mouse.move(toX, toY);
          await page.mouse.up();
        },
        type: (text) => page.keyboard.type(text),
        async key(name, held) {
          if (held) await page.keyboard.down(held);
          // BiDi knows the space bar by what it writes.
          await page.keyboard.press((name === 'Space' ? ' ' : name) as KeyInput);
          if (held) await page.keyboard.up(held);
        },
        screenshot: () => page.screenshot(),
        size: (w, h) => page.setViewport({ width: w, height: h }),
        close: () => context.close(),
      };
    },
    close: () => browser.close(),
  };
}
