import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/**
 * Brings axe-core (Deque) into a page, and gives what it finds there against WCAG 2.2 A and AA, each
 * time it is asked: the rule, and the first place.
 */
export async function axeIn(page: Page): Promise<() => Promise<string[]>> {
  // The page's own policy forbids scripts that are put in; the tool comes in by the debugger.
  const debugging = await page.context().newCDPSession(page);
  await debugging.send('Runtime.evaluate', { expression: axe });
  return () =>
    page.evaluate(async () => {
      // @ts-expect-error axe is the tool's own global
      const { violations } = await globalThis.axe.run(document, {
        runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
      });
      return violations.map(
        (one: { id: string; nodes: { html: string }[] }) => `${one.id}: ${one.nodes[0].html}`,
      ) as string[];
    });
}
