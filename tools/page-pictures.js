// Pictures of the page for docs/worktable: every step at three widths, light and dark. Needs a build.
//   node tools/page-pictures.js [FOLDER]
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { settled, withPage } from './serve-page.js';

const folder = process.argv[2] ?? fileURLToPath(new URL('../docs/worktable/', import.meta.url));
const sizes = [
  { width: 390, height: 844 },
  { width: 820, height: 1180 },
  { width: 1280, height: 800 },
];
/** What one picture may weigh. */
const mostBytes = 45_000;

/** WebP, as fine as the weight allows. */
async function small(png) {
  for (let quality = 80; ; quality -= 8) {
    const webp = await sharp(png).webp({ quality, effort: 5 }).toBuffer();
    if (webp.length <= mostBytes || quality < 30) return webp;
  }
}

mkdirSync(folder, { recursive: true });
await withPage(async (browser, address) => {
  for (const colorScheme of ['light', 'dark']) {
    const context = await browser.newContext({ colorScheme, locale: 'en-GB', viewport: sizes[0] });
    const page = await context.newPage();
    await page.goto(address);
    await settled(page);
    const steps = await page
      .locator('[data-step]')
      .evaluateAll((all) => all.map((one) => one.dataset.step));
    for (const size of sizes) {
      await page.setViewportSize(size);
      for (const step of steps) {
        await page.locator(`[data-step="${step}"]`).click();
        // The light of a new size is worked out by a thread of its own.
        await page.waitForTimeout(step === steps[0] ? 6000 : 800);
        const webp = await small(await page.screenshot());
        writeFileSync(join(folder, `${step}-${size.width}-${colorScheme}.webp`), webp);
      }
    }
    await context.close();
  }
});
