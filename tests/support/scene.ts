import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

/** Takes pictures of a scene, one after the other, where a folder is named for them. */
export function picturesOf(scene: string): (page: Page, name: string) => Promise<void> {
  const folder = process.env.KEEP_SCREENS;
  if (folder) mkdirSync(folder, { recursive: true });
  let n = 0;
  return async (page, name) => {
    n++;
    if (!folder) return;
    const path = join(folder, `${scene}-${String(n).padStart(2, '0')}-${name}.png`);
    await page.screenshot({ path });
  };
}
