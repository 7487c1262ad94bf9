import { createHash } from 'node:crypto';
import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { placeOfStitch, stitchesOfRound, stitchesOfWedge } from '../../src/core/brush/places.js';
import { parsePattern } from '../../src/core/pattern/read/parse.js';
import type { Pattern } from '../../src/core/pattern/pattern.js';
import { unzipSync } from 'fflate';
import { keptLaid } from '../support/kept-piece.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { saved } from '../support/page-acts.js';

// Every way in which the brush lays beads, by mouse and by pen, read back from what the browser keeps.

let built: OpenPage;
let page: Page;
let screen: CDPSession;
let said: string[];
/** The panel as it was opened. */
let first: Pattern;
let middle: readonly [number, number];
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

const act = (id: string) => page.locator(`[data-action="${id}"]`).first();
/** The pattern that lies on the table. */
async function onTable(): Promise<Pattern> {
  await settled(page);
  await act('shelf').click();
  const { bytes } = await saved(page, 'save-piece');
  await page.locator('.shelf .head button').click();
  return parsePattern(Buffer.from(unzipSync(bytes)['pattern.json']).toString(), 'pattern.json');
}

beforeEach(async () => {
  ({ page, said } = await built.open(1280, 900, undefined, { hasTouch: true }));
  screen = await page.context().newCDPSession(page);
  await settled(page);
  first = await onTable();
  await page.locator('[data-step="brush"]').click();
  const box = (await page.locator('.panel canvas').boundingBox())!;
  middle = [box.x + box.width / 2, box.y + box.height / 2];
});

/** A bead that is on the panel but rare, taken up. */
async function takeRare(): Promise<string> {
  const bead = first.beads.at(-1)!;
  await page.locator(`.card [data-take="${bead.id}"]`).click();
  return bead.id;
}

/** What lies by hand, once the browser keeps so much. */
async function laid(least = 1): Promise<Map<number, string>> {
  await expect
    .poll(async () => Object.keys(await keptLaid(page)).length)
    .toBeGreaterThanOrEqual(least);
  await page.locator('main[data-kept="kept"]').waitFor();
  const all = Object.entries(await keptLaid(page));
  return new Map(all.map(([key, id]) => [Number(key.replace('0:', '')), id]));
}
const stitches = (of: Map<number, string>) => [...of.keys()].sort((a, b) => a - b);
const ids = (of: Map<number, string>) => [...new Set(of.values())];
const idAt = ({ beads, panels }: Pattern, s: number) =>
  beads.find(({ letter }) => letter === panels[0].rounds.join('')[s])?.id;

type Way = readonly (readonly [number, number])[];
/** From the middle of the panel, pixels. */
const at = ([x, y]: readonly [number, number]) => ({ x: middle[0] + x, y: middle[1] + y });

async function byMouse(way: Way): Promise<void> {
  const [from, ...rest] = way.map(at);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (const { x, y } of rest) await page.mouse.move(x, y, { steps: 6 });
  await page.mouse.up();
}

test('a tap is a bead, a pull a line: straight, however crooked the way to its end', async () => {
  const bead = await takeRare();
  await act('brush-bead').click();
  await byMouse([[40, -60]]);
  const one = await laid();
  expect(ids(one)).toEqual([bead]);
  expect(one.size).toBe(1);
  await page.keyboard.press('Control+z');
  await act('brush-line').click();
  await byMouse([
    [-120, -40],
    [0, 90],
    [120, -40],
  ]);
  const line = stitches(await laid(8));
  // The same from end to end at once.
  await page.keyboard.press('Control+z');
  await byMouse([
    [-120, -40],
    [120, -40],
  ]);
  await expect.poll(async () => stitches(await laid(8))).toEqual(line);
  expect(said).toEqual([]);
});

test('a ring is its whole round and a wedge all of its stitches, no other', async () => {
  await takeRare();
  await act('brush-ring').click();
  await byMouse([[55, -75]]);
  const ring = stitches(await laid(14));
  const { shape } = first;
  expect(ring).toEqual(stitchesOfRound(shape, placeOfStitch(shape, ring[0]).round));
  await page.keyboard.press('Control+z');
  await act('brush-wedge').click();
  await byMouse([[55, -75]]);
  const wedge = stitches(await laid(100));
  expect(wedge).toEqual(
    stitchesOfWedge(shape, placeOfStitch(shape, wedge.at(-1)!).wedge).sort((a, b) => a - b),
  );
  expect(said).toEqual([]);
});

test('a patch takes what is of one bead and hangs together; once more in every wedge', async () => {
  const bead = await takeRare();
  await act('brush-patch').click();
  await byMouse([[0, -20]]);
  const patch = await laid(2);
  expect(ids(patch)).toEqual([bead]);
  const before = new Set(stitches(patch).map((s) => idAt(first, s)));
  expect(before.size).toBe(1);
  // All that is around it was of other beads, or is of it by hand.
  const now = await onTable();
  for (const s of stitches(patch)) expect(idAt(now, s)).toBe(bead);
  await page.keyboard.press('Control+z');
  await page.locator('[data-step="brush"]').click();
  await act('brush-bead').click();
  await act('every-wedge').click();
  await byMouse([[55, -75]]);
  const every = stitches(await laid(first.shape.wedges));
  expect(every).toHaveLength(first.shape.wedges);
  const places = every.map((s) => placeOfStitch(first.shape, s));
  expect(places.map(({ wedge }) => wedge)).toEqual(every.map((_, n) => n + 1));
  expect(new Set(places.map(({ round, inWedge }) => `${round}:${inWedge}`)).size).toBe(1);
  expect(said).toEqual([]);
});

test('one bead is laid for another everywhere, a part is moved, and a bead is picked up from the panel', async () => {
  const [most] = first.beads;
  const bead = await takeRare();
  const count = (of: Pattern, id: string) => {
    const { letter } = of.beads.find((one) => one.id === id) ?? { letter: '?' };
    return of.panels[0].rounds.join('').split(letter).length - 1;
  };
  await act('brush-pick').click();
  await byMouse([[150, 0]]);
  // The tool before comes back by itself, with the bead in hand.
  await expect.poll(() => act('brush-bead').getAttribute('aria-pressed')).toBe('true');
  const held = (await page
    .locator('.card [data-take][aria-pressed="true"]')
    .getAttribute('data-take'))!;
  expect(first.beads.map(({ id }) => id)).toContain(held);
  await page.locator(`.card [data-take="${bead}"]`).click();

  await act('brush-move').click();
  const around: Way = [
    [-70, -90],
    [10, -90],
    [10, -20],
    [-70, -20],
    [-70, -88],
  ];
  await byMouse(around);
  await byMouse([
    [-30, -55],
    [50, 40],
  ]);
  const moved = await laid(4);
  const after = await onTable();
  for (const [s, id] of moved) expect(idAt(after, s)).toBe(id);
  // One step, however long the way.
  await page.keyboard.press('Control+z');
  expect((await onTable()).panels).toEqual(first.panels);

  await page.locator('[data-step="brush"]').click();
  await page.locator(`.card [data-take="${bead}"]`).click();
  await act('brush-pick').click();
  await byMouse([[0, -20]]);
  const under = (await page
    .locator('.card [data-take][aria-pressed="true"]')
    .getAttribute('data-take'))!;
  await page.locator(`.card [data-take="${bead === under ? most.id : bead}"]`).click();
  const to = bead === under ? most.id : bead;
  await act('brush-replace').click();
  await byMouse([[0, -20]]);
  const replaced = await onTable();
  expect(count(replaced, under)).toBe(0);
  expect(count(replaced, to)).toBe(count(first, to) + count(first, under));
  expect(said).toEqual([]);
});

test('what lies by hand is marked when asked for, and stays through other places and colours', async () => {
  const bead = await takeRare();
  await act('brush-ring').click();
  await byMouse([[55, -75]]);
  const ring = stitches(await laid(14));
  const drawn = async () => {
    const canvas = page.locator('.panel canvas');
    const url = await canvas.evaluate((one: HTMLCanvasElement) => one.toDataURL());
    return createHash('sha256').update(url).digest('hex');
  };
  const stroked = await drawn();
  await act('show-laid').click();
  await expect.poll(drawn).not.toBe(stroked);
  const marked = await drawn();
  await act('show-laid').click();
  await expect.poll(drawn).not.toBe(marked);
  const plain = await drawn();
  await act('show-laid').click();
  await expect.poll(drawn).toBe(marked);
  await act('show-laid').click();
  await expect.poll(drawn).toBe(plain);
  await page.locator('[data-step="picture"]').click();
  for (let n = 0; n < 5; n++) await page.keyboard.press('ArrowRight');
  await settled(page);
  await page.locator('[data-step="beads"]').click();
  await page.getByRole('spinbutton', { name: 'Bead colours' }).fill('4');
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await onTable()).beads.length).toBeLessThan(first.beads.length);
  const now = await onTable();
  expect(now.panels[0].rounds.join('')).not.toBe(first.panels[0].rounds.join(''));
  for (const s of ring) expect(idAt(now, s)).toBe(bead);
  expect(said).toEqual([]);
});

test('undo has no end: twenty strokes go back one by one, after the page was opened anew as well', async () => {
  await takeRare();
  for (let n = 0; n < 20; n++) await byMouse([[-120 + 12 * n, -60 + 3 * n]]);
  const all = stitches(await laid(18)).length;
  await page.reload();
  await settled(page);
  const steps = [all];
  for (let n = 0; n < 20; n++) {
    await page.keyboard.press('Control+z');
    await page.locator('main[data-kept="kept"]').waitFor();
    steps.push(Object.keys(await keptLaid(page)).length);
  }
  await expect.poll(async () => Object.keys(await keptLaid(page)).length).toBe(0);
  expect((await onTable()).panels).toEqual(first.panels);
  expect(said).toEqual([]);
});

// Pointer Events (W3C): pointerType, and button 5 for the other end of a pen.
async function byPen(way: Way): Promise<void> {
  const send = (
    type: 'mousePressed' | 'mouseMoved' | 'mouseReleased',
    [x, y]: readonly [number, number],
  ) =>
    screen.send('Input.dispatchMouseEvent', {
      type,
      ...at([x, y]),
      button: 'left',
      buttons: 1,
      clickCount: 1,
      pointerType: 'pen',
      force: 0.5,
    });
  await send('mousePressed', way[0]);
  for (const one of way.slice(1)) await send('mouseMoved', one);
  await send('mouseReleased', way.at(-1)!);
}
const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: Way) =>
  screen.send('Input.dispatchTouchEvent', {
    type,
    touchPoints: points.map((one, id) => ({ ...at(one), id: id + 10 })),
  });

test('a pen draws while the hand rests on the glass, before it and after it', async () => {
  const bead = await takeRare();
  const stroke: Way = Array.from({ length: 10 }, (_, n) => [-90 + 20 * n, -50] as const);
  await byPen(stroke);
  const alone = stitches(await laid(8));
  await page.keyboard.press('Control+z');
  await expect.poll(async () => Object.keys(await keptLaid(page)).length).toBe(0);

  // The side of the hand comes down first, moves along with the pen, and stays longer.
  await touch('touchStart', [[40, 120]]);
  await touch('touchMove', [[42, 121]]);
  await byPen(stroke.slice(0, 5));
  await touch('touchMove', [[60, 122]]);
  await byPen(stroke.slice(4));
  await touch('touchMove', [[90, 125]]);
  await touch('touchEnd', []);
  const rested = await laid(8);
  expect(stitches(rested)).toEqual(alone);
  expect(ids(rested)).toEqual([bead]);

  // Who draws with a pen lays nothing with a finger any more.
  await touch('touchStart', [[-100, 60]]);
  for (let n = 1; n < 8; n++) await touch('touchMove', [[-100 + 20 * n, 60]]);
  await touch('touchEnd', []);
  await settled(page);
  expect(stitches(await laid(8))).toEqual(alone);
  expect(said).toEqual([]);
});
