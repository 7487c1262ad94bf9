import { unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type { Page } from 'playwright-core';
import { lighthousePng } from '../support/pictures.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { drop, keptPieces, pullPanel, saved } from '../support/page-acts.js';

// Nothing is lost: reloads, two windows, no network, a piece as a file, a browser that keeps nothing.

// Each opens the page two or three times, which a busy machine takes minutes for.
vi.setConfig({ testTimeout: 300_000 });

let built: OpenPage;
let tower: Buffer;

beforeAll(async () => {
  built = await openBuiltPage();
  tower = await lighthousePng(300);
});
afterAll(() => built?.close());

const title = (page: Page) => page.locator('.title').inputValue();
const act = (page: Page, action: string) => page.locator(`[data-action="${action}"]`).first();

/** A window with the picture of the tower on the table, and kept. */
async function withTower(): Promise<{ page: Page; said: string[] }> {
  const { page, said } = await built.open();
  await settled(page);
  await drop(page, 'tower.png', tower, 'image/png');
  await expect.poll(() => title(page)).toBe('tower');
  await settled(page);
  await expect.poll(async () => (await keptPieces(page))[0]?.at).toBe(1);
  return { page, said };
}

/** Another window of the same browser. */
async function second(page: Page): Promise<Page> {
  const other = await page.context().newPage();
  await other.goto(built.address);
  await settled(other);
  return other;
}

test('a dropped picture lies on the table and the shelf after a reload, with its undo', async () => {
  const { page, said } = await withTower();
  await page.reload();
  await settled(page);
  expect(await title(page)).toBe('tower');
  await act(page, 'shelf').click();
  await page.locator('.shelf .piece .name').waitFor();
  expect(await page.locator('.shelf .piece .name').allInnerTexts()).toEqual(['tower']);
  await page.locator('.shelf .head button').click();
  await act(page, 'undo').click();
  await expect.poll(() => title(page)).toBe('Kingfisher');
  await act(page, 'redo').click();
  await expect.poll(() => title(page)).toBe('tower');
  expect(said).toEqual([]);
});

test('the sample names the piece that it takes off the table, and the shelf has it', async () => {
  const { page, said } = await withTower();
  await page.locator('[data-action="sample"]').click();
  await expect.poll(() => title(page)).toBe('Kingfisher');
  await expect.poll(() => page.locator('.told').innerText()).toContain('tower is on the shelf.');
  await page.locator('[data-action="shelf"]').click();
  await page.locator('.shelf .piece .name', { hasText: 'tower' }).waitFor();
  expect(said).toEqual([]);
});

test('a reload in the middle of a drag keeps the move', async () => {
  const { page } = await withTower();
  await pullPanel(page, 60, -16);
  await expect.poll(async () => (await keptPieces(page))[0].at).toBe(2);
  const moved = (await keptPieces(page))[0].shiftXmm;
  expect(Math.abs(moved)).toBeGreaterThan(1);
  await page.reload();
  await settled(page);
  expect((await keptPieces(page)).map(({ shiftXmm }) => shiftXmm)).toEqual([moved]);
  await act(page, 'undo').click();
  await expect.poll(async () => (await keptPieces(page))[0].shiftXmm).toBe(0);
  expect(await title(page)).toBe('tower');
});

test('of two windows neither overwrites the other', async () => {
  const { page } = await withTower();
  const other = await second(page);
  const alert = other.locator('.keep-trouble[role="alert"]');
  expect(await alert.innerText()).toContain('open in another window');
  await other.locator('.title').fill('second tower');
  await other.locator('.title').press('Tab');
  await expect.poll(async () => (await keptPieces(page)).length).toBe(2);
  await page.locator('.title').fill('first tower');
  await page.locator('.title').press('Tab');
  await expect
    .poll(async () => (await keptPieces(page)).map((one) => one.title).sort())
    .toEqual(['first tower', 'second tower']);
  await other.reload();
  await settled(other);
  expect(await title(other)).toBe('second tower');
});

test('going on with it here takes the piece over, and the other window leaves it alone', async () => {
  const { page } = await withTower();
  const other = await second(page);
  await act(other, 'work-here').click();
  await other.locator('.keep-trouble').waitFor({ state: 'detached' });
  await page.locator('.keep-trouble[role="alert"]').waitFor();
  await other.locator('.title').fill('taken over');
  await other.locator('.title').press('Tab');
  await expect.poll(async () => (await keptPieces(other))[0].title).toBe('taken over');
  // What a browser tells a window that goes to the back.
  await page.evaluate(() => {
    Object.defineProperty(document, 'hidden', { value: true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await page.waitForTimeout(700);
  expect((await keptPieces(other)).map((one) => one.title)).toEqual(['taken over']);
});

test('a piece saved as a file opens elsewhere with the same pattern, byte for byte', async () => {
  const { page } = await withTower();
  await pullPanel(page, 20, 10);
  await page.mouse.up();
  await settled(page);
  await act(page, 'shelf').click();
  const first = await saved(page, 'save-piece');
  expect(first.name).toBe('tower.rondure.zip');
  const { page: fresh } = await built.open();
  await settled(fresh);
  await drop(fresh, first.name, first.bytes, 'application/zip');
  await expect.poll(() => title(fresh)).toBe('tower');
  await settled(fresh);
  await act(fresh, 'shelf').click();
  const again = await saved(fresh, 'save-piece');
  const pattern = (file: Buffer) => Buffer.from(unzipSync(file)['pattern.json']).toString();
  expect(pattern(first.bytes)).toContain('"title": "tower"');
  expect(pattern(again.bytes) === pattern(first.bytes)).toBe(true);
});

test('where the browser keeps nothing, that is said, with the way to keep the piece', async () => {
  const { page } = await built.open(1280, 800, (context) =>
    context.addInitScript(() => {
      Object.defineProperty(window, 'indexedDB', {
        get() {
          throw new DOMException('The operation is insecure.', 'SecurityError');
        },
      });
    }),
  );
  await settled(page);
  await drop(page, 'tower.png', tower, 'image/png');
  await expect.poll(() => title(page)).toBe('tower');
  await settled(page);
  const trouble = page.locator('.keep-trouble[role="alert"]');
  expect(await trouble.innerText()).toContain('keeps nothing');
  const { name, bytes } = await saved(page, 'save-piece');
  expect(name).toBe('tower.rondure.zip');
  expect(Object.keys(unzipSync(bytes)).sort()).toEqual([
    ...['pattern.json', 'picture/tower.png', 'piece.json'],
  ]);
});

test('after the first visit the table opens without a network, and the piece is there', async () => {
  const { page } = await withTower();
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await built.goOffline();
  await page.reload();
  await settled(page);
  expect(await title(page)).toBe('tower');
  expect(await page.locator('.mat li').count()).toBeGreaterThan(2);
  const other = await second(page);
  expect(await other.locator('.keep-trouble[role="alert"]').count()).toBe(1);
});
