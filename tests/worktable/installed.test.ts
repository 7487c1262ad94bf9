import sharp from 'sharp';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { lighthousePng } from '../support/pictures.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';

// Installed as an app: what the W3C's Web Application Manifest wants, and files that other apps hand over.

vi.setConfig({ testTimeout: 300_000 });

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

test('the manifest names icons that are there, in the sizes that it says', async () => {
  const { page } = await built.open();
  const href = await page.locator('link[rel="manifest"]').getAttribute('href');
  const address = new URL(href!, built.address);
  const manifest = (await (await fetch(address)).json()) as {
    name: string;
    start_url: string;
    display: string;
    icons: { src: string; sizes: string; type: string }[];
    share_target: { action: string };
    file_handlers: { action: string }[];
  };
  expect(manifest.name).toBe('Rondure');
  expect(manifest.display).toBe('standalone');
  for (const { src, sizes, type } of manifest.icons) {
    const answer = await fetch(new URL(src, address));
    expect(answer.ok, src).toBe(true);
    const { width, height, format } = await sharp(
      Buffer.from(await answer.arrayBuffer()),
    ).metadata();
    expect(format).toBe(type === 'image/png' ? 'png' : 'svg');
    if (sizes !== 'any') expect(`${width}x${height}`).toBe(sizes);
  }
  // Every address stays below the page's own.
  for (const own of [
    manifest.start_url,
    manifest.share_target.action,
    manifest.file_handlers[0].action,
  ])
    expect(new URL(own, address).href.startsWith(built.address)).toBe(true);
  // Chromium finds nothing that keeps it from being installed but that it has no window of its own here.
  const session = await page.context().newCDPSession(page);
  const { errors } = (await session.send('Page.getAppManifest')) as { errors: unknown[] };
  expect(errors).toEqual([]);
});

test('a picture that another app shares lies on the table', async () => {
  const { page, strays } = await built.open();
  await settled(page);
  await page.evaluate(async () => {
    const { serviceWorker } = navigator;
    await serviceWorker.ready;
    if (serviceWorker.controller) return;
    await new Promise((done) => serviceWorker.addEventListener('controllerchange', done));
  });
  const png = await lighthousePng(200);
  await page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const form = new FormData();
    form.append('file', new File([bytes], 'harbour tower.png', { type: 'image/png' }));
    await fetch('./shared', { method: 'POST', body: form });
  }, png.toString('base64'));
  // A browser that shares goes where the answer sends it.
  await page.goto(`${built.address}?shared`);
  await expect
    .poll(() => page.locator('.title').inputValue(), { timeout: 90_000 })
    .toBe('harbour tower');
  expect(new URL(page.url()).search).toBe('');
  // It is taken once.
  const left = () =>
    page.evaluate(
      async () => !!(await (await caches.open('shared with rondure')).match('./shared-file')),
    );
  expect(await left()).toBe(false);
  expect(strays).toEqual([]);
});
