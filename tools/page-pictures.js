// Pictures of the page for docs/worktable: every step, and the screens behind them, at three widths, light and dark.
// Without a folder the README's picture is made, too. Needs a build.
//   node tools/page-pictures.js [FOLDER]
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { blankPage } from '../dist/core/pages/chart/blank-page.js';
import { panelGeometry } from '../dist/core/panel/geometry.js';
import { completeShape } from '../dist/core/panel/shape.js';
import { settled, withPage } from './serve-page.js';

const folder = process.argv[2] ?? fileURLToPath(new URL('../docs/worktable/', import.meta.url));
const sizes = [
  { width: 390, height: 844 },
  { width: 820, height: 1180 },
  { width: 1280, height: 800 },
];
/** What one picture may weigh. */
const mostBytes = 45_000;
const colouredRounds = 9;

/** WebP, as fine as the weight allows. */
async function small(png) {
  for (let quality = 80; ; quality -= 8) {
    const webp = await sharp(png).webp({ quality, effort: 5 }).toBuffer();
    if (webp.length <= mostBytes || quality < 30) return webp;
  }
}

/** An empty chart as it comes off a scanner, coloured in rings; a few cells are but half coloured. */
async function colouredScan(blank) {
  const shape = completeShape({ wedges: 7, rounds: colouredRounds, beadDiameterMm: 2.1 });
  const geometry = panelGeometry(shape);
  const { view, widthMm } = blankPage(geometry);
  const width = 1600;
  const page = sharp(blank, { density: 250 }).resize(width).flatten({ background: '#fff' });
  const { data, info } = await page.png().toBuffer({ resolveWithObject: true });
  const k = width / widthMm;
  const tones = ['#1d4f8c', '#c8452e', '#e8b53a', '#2f7d5b'];
  const r = 0.8 * view.scale * k;
  const cells = Array.from({ length: geometry.count }, (_, s) => {
    const [xMm, yMm] = geometry.centres.subarray(2 * s, 2 * s + 2);
    const x = (view.centreX + view.scale * xMm) * k;
    const y = (view.centreY + view.scale * yMm) * k;
    const fill = tones[Math.floor(Math.hypot(xMm, yMm) / 5) % tones.length];
    const other = s % 67 === 40 ? '#ffffff' : fill;
    const half = (side, tone) =>
      `<path d="M${x} ${y - r} A${r} ${r} 0 0 ${side} ${x} ${y + r} Z" fill="${tone}"/>`;
    return half(0, fill) + half(1, other);
  });
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${info.width}" height="${info.height}">${cells.join('')}</svg>`;
  return sharp(data)
    .composite([{ input: Buffer.from(svg) }])
    .png()
    .toBuffer();
}

mkdirSync(folder, { recursive: true });
await withPage(async (browser, address) => {
  for (const colorScheme of ['light', 'dark']) {
    const context = await browser.newContext({ colorScheme, locale: 'en-GB', viewport: sizes[0] });
    const page = await context.newPage();
    const act = (id) => page.locator(`[data-action="${id}"]`).first();
    const step = (id) => page.locator(`[data-step="${id}"]`).click();
    const write = async (name, width) => {
      const webp = await small(await page.screenshot());
      writeFileSync(join(folder, `${name}-${width}-${colorScheme}.webp`), webp);
    };
    const everySize = async (name) => {
      for (const size of sizes) {
        await page.setViewportSize(size);
        await page.waitForTimeout(600);
        await write(name, size.width);
      }
    };

    await page.goto(address);
    await settled(page);
    const steps = await page
      .locator('[data-step]')
      .evaluateAll((all) => all.map((one) => one.dataset.step));
    for (const size of sizes) {
      await page.setViewportSize(size);
      for (const id of steps.filter((one) => one !== 'purse')) {
        await step(id);
        // The light of a new size is worked out by a thread of its own.
        await page.waitForTimeout(id === steps[0] ? 6000 : 800);
        await write(id, size.width);
        const first = colorScheme === 'light' && size.width === 1280 && id === steps[0];
        if (first && !process.argv[2]) {
          const png = await page.screenshot();
          const file = fileURLToPath(new URL('../docs/worktable.png', import.meta.url));
          writeFileSync(file, await sharp(png).png({ palette: true, effort: 10 }).toBuffer());
        }
      }
    }

    await step('purse');
    await act('back-same').click();
    await act('frame-half-round').click();
    await settled(page);
    await page.evaluate('scrollTo(0, 0)');
    await everySize('purse');
    await act('frame-none').click();
    await act('back-none').click();
    await settled(page);

    for (const hands of ['string', 'crochet']) {
      await step('work');
      await page.locator(`.card [data-action="${hands}"]`).click();
      await page.locator(`.at-work.${hands}`).waitFor();
      // Whoever crochets has strung the rest by the printed list.
      if (hands === 'crochet') await page.locator('[data-strung-by-list]').click();
      for (let n = 0; n < 24; n++) await page.locator('.at-work button.tap').click();
      await everySize(hands);
      await act('to-table').click();
      await settled(page);
    }

    await act('shelf').click();
    await page.locator('.for-class summary').click();
    const names = page.locator('.for-class textarea');
    await names.fill('Ada\nBram\nIlse');
    await names.evaluate((one) => one.blur());
    await page.locator('.for-class').evaluate((one) => one.scrollIntoView());
    await everySize('class');
    await page.locator('.shelf .head button').click();

    await step('panel');
    const rounds = page.locator('.card input[type="number"]').first();
    await rounds.fill(String(colouredRounds));
    await rounds.press('Tab');
    await settled(page);
    await step('picture');
    await page.locator('.by-hand summary').click();
    const [blank] = await Promise.all([page.waitForEvent('download'), act('blank-svg').click()]);
    const scan = await colouredScan(readFileSync(await blank.path()));
    await act('coloured-chart').click();
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.locator('[data-form="choose-photo"]').click(),
    ]);
    await chooser.setFiles({ name: 'coloured.png', mimeType: 'image/png', buffer: scan });
    await page.locator('main.coloured[data-state="settling"]').waitFor({ timeout: 120_000 });
    await page.locator('.patch[data-shown]').waitFor();
    await everySize('coloured');
    await context.close();
  }
});
