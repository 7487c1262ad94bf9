import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { panelGeometry } from '../../src/core/panel/geometry.js';
import { completeShape, stitchesBefore } from '../../src/core/panel/shape.js';
import { parsePattern } from '../../src/core/pattern/read/parse.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { drop, saved } from '../support/page-acts.js';

// What a maker points at with the finger: what must not be lost of a picture, and where the wedges of a swatch lie.

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

async function patternOf(page: Page) {
  await page.locator('[data-action="shelf"]').click();
  const { bytes } = await saved(page, 'save-piece');
  await page.locator('.shelf .head button').click();
  return parsePattern(Buffer.from(unzipSync(bytes)['pattern.json']).toString(), 'pattern.json');
}

test('a small thing that is brushed over is kept, and what is wiped off is as it was', async () => {
  const { page, strays, said } = await built.open();
  await settled(page);
  // A red berry on a leaf of many greens: by area alone three beads go to the greens.
  const bands = ['#0b3d20', '#1f6b35', '#3f9448', '#79b95f', '#b5d98a', '#e5f2c9'];
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="600" height="600">${bands
    .map((fill, n) => `<rect y="${100 * n}" width="600" height="100" fill="${fill}"/>`)
    .join('')}<circle cx="300" cy="210" r="17" fill="#d01020"/></svg>`;
  const png = await sharp(Buffer.from(svg)).png().toBuffer();
  await drop(page, 'berry.png', png, 'image/png');
  await expect.poll(() => page.locator('.title').inputValue()).toBe('berry');
  await page.locator('[data-step="beads"]').click();
  await page.getByLabel('Bead colours').first().fill('3');
  await settled(page);
  await page.locator('[data-step="picture"]').click();
  await page.locator('[data-action="place-fill"]').click();
  await settled(page);
  const first = await patternOf(page);
  expect(first.beads.some(({ hex }) => isRed(hex))).toBe(false);

  const box = (await page.locator('.panel canvas').boundingBox())!;
  // The panel spans 0.86 of the shorter side, and the picture fills it; the berry lies 90 of 600 above the middle.
  const across = 0.86 * Math.min(box.width, box.height);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2 - (90 / 600) * across];
  const brushOver = async () => {
    await page.mouse.move(x - 8, y);
    await page.mouse.down();
    await page.mouse.move(x + 8, y, { steps: 6 });
    await page.mouse.up();
    await settled(page);
  };
  const forget = page.locator('[data-action="mind-none"]');
  expect(await forget.isDisabled()).toBe(true);
  await page.locator('[data-action="mind"]').click();
  await brushOver();
  expect(await forget.isDisabled()).toBe(false);
  const minded = await patternOf(page);
  expect(minded.beads.some(({ hex }) => isRed(hex))).toBe(true);
  // The brush has moved nothing.
  expect(minded.panels[0].picture!.place).toEqual(first.panels[0].picture!.place);

  // It is kept with the piece.
  await page.locator('main[data-kept="kept"]').waitFor();
  await page.reload();
  await settled(page);
  expect((await patternOf(page)).panels).toEqual(minded.panels);

  // Wiped off, it is as it was; one undo brings the brush's work back, and another takes it all.
  await page.locator('[data-action="unmind"]').click();
  await brushOver();
  expect((await patternOf(page)).panels).toEqual(first.panels);
  await page.keyboard.press('Control+z');
  await settled(page);
  expect((await patternOf(page)).panels).toEqual(minded.panels);
  await page.keyboard.press('Control+z');
  await settled(page);
  expect((await patternOf(page)).panels).toEqual(first.panels);
  expect(await forget.isDisabled()).toBe(true);
  expect(strays).toEqual([]);
  expect(said).toEqual([]);
});

/** Redder than any green and brown. */
function isRed(hex: string): boolean {
  const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  return r > 120 && r > 1.8 * g && r > 1.5 * b;
}

test('wedge lines that are pulled over a photo of a swatch give its lean and round height', async () => {
  const { page, strays, said } = await built.open();
  await settled(page);
  // A swatch of ten rounds with known measures, photographed from straight above, 10 pixels a millimetre.
  const wish = { wedges: 7, rounds: 10, increase: 'last', beadDiameterMm: 2.1 } as const;
  const shape = completeShape({ ...wish, roundHeightMm: 2.5, lean: 0.2 });
  const { centres } = panelGeometry(shape);
  const [width, height, k] = [800, 700, 10];
  const on = (s: number) => [400 + k * centres[2 * s], 350 + k * centres[2 * s + 1]] as const;
  const firstOf = (round: number, wedge: number) =>
    on(stitchesBefore(shape, round) + (wedge - 1) * round);
  const beads = Array.from({ length: centres.length / 2 }, (_, s) => {
    const [x, y] = on(s);
    return `<circle cx="${x}" cy="${y}" r="10" fill="#5a7fa0" stroke="#24384a"/>`;
  });
  const ruler = `<rect x="150" y="660" width="500" height="20" fill="#e0c060"/>`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><rect width="800" height="700" fill="#f4f0e6"/>${beads.join('')}${ruler}</svg>`;
  const photo = await sharp(Buffer.from(svg)).png().toBuffer();

  await page.locator('[data-step="panel"]').click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.locator('[data-form="photo"]').click(),
  ]);
  await chooser.setFiles({ name: 'swatch.png', mimeType: 'image/png', buffer: photo });
  const sheet = page.locator('.lines');
  await sheet.waitFor();
  await sheet.locator('.tick input').check();
  const canvas = sheet.locator('canvas');
  /** Pulls a point to a place of the photo. */
  const pull = async (point: ReturnType<typeof sheet.locator>, x: number, y: number) => {
    await point.scrollIntoViewIfNeeded();
    const from = (await point.boundingBox())!;
    const box = (await canvas.boundingBox())!;
    await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
    await page.mouse.down();
    const to = [box.x + (x / width) * box.width, box.y + (y / height) * box.height] as const;
    await page.mouse.move(...to, { steps: 4 });
    await page.mouse.up();
  };
  const named = (wedge: number, round: number) =>
    sheet.getByRole('button', { name: new RegExp(`\\b${wedge}\\b.*\\b${round}\\b`) });
  await pull(sheet.locator('.corner.middle'), 400, 350);
  for (const wedge of [1, 2, 3, 4, 5, 6, 7]) await pull(named(wedge, 10), ...firstOf(10, wedge));
  for (const wedge of [1, 4]) await pull(named(wedge, 5), ...firstOf(5, wedge));
  await pull(sheet.locator('.corner.ruler').first(), 150, 670);
  await pull(sheet.locator('.corner.ruler').last(), 650, 670);
  if (process.env.KEEP_SCREENS)
    await page.screenshot({ path: `${process.env.KEEP_SCREENS}/swatch-lines.png` });
  await sheet.locator('[data-form="take-photo"]').click();
  await sheet.waitFor({ state: 'detached' });
  await page.getByText('Your stitch was worked out').waitFor();
  await settled(page);
  const { swatch } = await patternOf(page);
  // A pixel of the screen is 0.1 mm on this photo and more: height to 2 %, lean to 0.1 of a stitch.
  expect(swatch!.roundHeightMm!.value).toBeCloseTo(2.5, 1);
  expect(Math.abs(swatch!.lean!.value - 0.2)).toBeLessThan(0.1);
  expect(strays).toEqual([]);
  expect(said).toEqual([]);
});
