import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { makePattern } from '../src/core/make.js';
import type { PanelWish } from '../src/core/make.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { patternText } from '../src/core/pattern/serialise.js';
import { outcomes } from './support/charting-series.js';
import { chromiumPath } from '../tools/test-tools.js';

// The core has to run in a browser as it stands: bundled for one, given the same pixels, it must
// make the same bytes. Chromium is asked for by tools/test-tools.js before the tests start.

const palette = `id,name,hex
r,rust,#b5482a
s,sea,#1f6f8b
b,barley,#d9b36a
f,foam,#f4f1e6
d,dusk,#2b2740
m,moss,#5f7a3a
p,plum,#6d3b5e
g,gull,#a9adb0
`;

/** A smooth, asymmetric picture made the same way on both sides. */
function pixels(width: number, height: number): number[] {
  const data: number[] = [];
  let seed = 7;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      data.push((x * 255) / width, (y * 200) / height, (seed >> 16) & 255, x > y ? 255 : 180);
    }
  }
  return data.map(Math.floor);
}

let folder: string;
let browser: Browser;

beforeAll(async () => {
  const executablePath = chromiumPath();
  if (!executablePath) throw new Error('Chromium is missing: run node tools/test-tools.js');
  folder = mkdtempSync(join(tmpdir(), 'rondure-browser-'));
  browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
});

afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

test.each(['photo', 'drawing'] as const)(
  'the bundled core makes the same pattern bytes in Chromium as in Node: %s',
  async (art) => {
    const bundle = join(folder, 'core.js');
    await build({
      entryPoints: [fileURLToPath(new URL('../src/core/index.ts', import.meta.url))],
      bundle: true,
      platform: 'browser',
      format: 'iife',
      globalName: 'rondure',
      outfile: bundle,
      logLevel: 'error',
    });
    writeFileSync(join(folder, 'page.html'), '<script src="core.js"></script>');
    const wish: Omit<PanelWish, 'picture' | 'beads'> = {
      pictureName: 'made.png',
      title: 'Made here',
      colours: 5,
      shape: { wedges: 7, rounds: 20, beadDiameterMm: 2.1 },
      place: { place: 'fill', rotateDegrees: 10 },
      art,
      background: '#ffffff',
    };
    const size = { width: 160, height: 120, data: pixels(160, 120) };
    const page = await browser.newPage();
    await page.goto(`file://${join(folder, 'page.html')}`);
    const inBrowser = await page.evaluate(
      ({ wish, size, palette }) => {
        // @ts-expect-error the bundle's global
        const core = globalThis.rondure;
        const { beads } = core.readPalette(palette, 'palette', {});
        const picture = { ...size, data: Uint8Array.from(size.data) };
        return core.patternText(core.makePattern({ ...wish, picture, beads }).pattern) as string;
      },
      { wish, size, palette },
    );
    const { beads } = readPalette(palette, 'palette', {});
    const picture = { ...size, data: Uint8Array.from(size.data) };
    const inNode = patternText(makePattern({ ...wish, picture, beads }).pattern);
    expect(inBrowser.length).toBeGreaterThan(2000);
    expect(inBrowser).toBe(inNode);
  },
);

test('long series of changes of one Charting end in the same bytes in Chromium as in Node', async () => {
  const [many, seed] = [3, 40];
  await build({
    entryPoints: [fileURLToPath(new URL('support/charting-series.ts', import.meta.url))],
    bundle: true,
    platform: 'browser',
    format: 'iife',
    globalName: 'series',
    outfile: join(folder, 'series.js'),
    logLevel: 'error',
  });
  writeFileSync(join(folder, 'series.html'), '<script src="series.js"></script>');
  const page = await browser.newPage();
  await page.goto(`file://${join(folder, 'series.html')}`);
  const inBrowser = await page.evaluate(
    // @ts-expect-error the bundle's global
    ([many, seed]) => globalThis.series.outcomes(many, seed) as string[],
    [many, seed],
  );
  const inNode = outcomes(many, seed);
  expect(inNode.filter((one) => one.startsWith('{')).length).toBeGreaterThan(25);
  expect(inBrowser).toEqual(inNode);
});
