/// <reference types="vite/client" />
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { makePattern } from '../../src/core/make.js';
import { lettersInWorkingOrder } from '../../src/core/pattern/stitches.js';
import { readPicture } from '../../src/node/read/read-picture.js';
import { panelWish } from '../../src/worktable/engine/panel-wish.js';
import type { KeptSample } from '../../src/worktable/sample/kept-chart.js';
import { samplePiece } from '../../src/worktable/sample/sample.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';

const inside = (path: string) =>
  fileURLToPath(new URL(`../../src/worktable/sample/${path}`, import.meta.url));

// `RONDURE_KEEP_SAMPLE=1 npx vitest run tests/worktable/sample.test.ts` keeps it anew, after a change of what is chosen.
test('the chart that the page shows of its sample is the one that is chosen for it', async () => {
  const picture = await readPicture(readFileSync(inside('kingfisher.png')), 'kingfisher.png');
  const wish = panelWish({ ...samplePiece(), picture: { name: 'kingfisher.png', picture } })!;
  const { pattern } = makePattern(wish);
  const [panel] = pattern.panels;
  const chosen: KeptSample = {
    shape: pattern.shape,
    startDegrees: panel.startDegrees,
    place: panel.picture!.place,
    beads: pattern.beads.map(({ id }) => id),
    stitches: [...lettersInWorkingOrder(panel)].join(''),
  };
  const file = inside('kept-chart.json');
  if (process.env.RONDURE_KEEP_SAMPLE) {
    writeFileSync(file, `${JSON.stringify(chosen, null, 2)}\n`);
  }
  expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(JSON.parse(JSON.stringify(chosen)));
});

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

test('the sample lies there before anything is chosen, and is what settles', async () => {
  let free = () => {};
  const held = new Promise<void>((done) => (free = done));
  const { page } = await built.open(1280, 800, (context) =>
    context.route('**/chart-worker*', async (route) => {
      await held;
      await route.continue();
    }),
  );
  await page.locator('.mat li').first().waitFor();
  const notes = () => page.locator('.mat li .note b, .mat li .note .count').allInnerTexts();
  const before = await notes();
  expect(before.length).toBeGreaterThan(10);
  free();
  await settled(page);
  expect(await notes()).toEqual(before);
});
