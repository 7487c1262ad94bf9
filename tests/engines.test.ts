import { createServer } from 'node:http';
import type { Server } from 'node:http';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { engineNames, startEngine } from './support/engines/index.js';
import type { Engine, EnginePage } from './support/engines/index.js';

// That the drivers themselves press, drag, type and look alike; with the policy that the page has.

const html = `<!doctype html><title>Trial</title>
<style>body{margin:0}canvas{display:block;background:#b5482a}</style>
<canvas width="200" height="100"></canvas><input aria-label="Name"><script src="trial.js"></script>`;
const script = `const seen = [];
const canvas = document.querySelector('canvas');
for (const kind of ['pointerdown', 'pointerup']) canvas.addEventListener(kind, (e) => seen.push([kind, e.clientX, e.clientY]));
canvas.addEventListener('pointermove', (e) => { if (e.buttons === 1) seen.push(['drag', e.clientX, e.clientY]); });
addEventListener('keydown', (e) => { if (e.ctrlKey && e.key !== 'Control') seen.push(['with Control', e.key]); });
globalThis.seen = seen;`;

let server: Server;
let address: string;

beforeAll(async () => {
  server = createServer((request, response) => {
    const isScript = request.url === '/trial.js';
    response.setHeader('Content-Type', isScript ? 'text/javascript' : 'text/html; charset=utf-8');
    response.setHeader(
      'Content-Security-Policy',
      "default-src 'self'; style-src 'self' 'unsafe-inline'",
    );
    response.end(isScript ? script : html);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  address = `http://127.0.0.1:${(server.address() as { port: number }).port}/`;
});

afterAll(() => void server.close());

describe.each(engineNames)('%s', (name) => {
  let engine: Engine;
  let page: EnginePage;

  beforeAll(async () => {
    engine = await startEngine(name);
    page = await engine.newPage(820, 700);
    await page.open(address);
  });

  afterAll(() => engine?.close());

  test('has a window of the wished size', async () => {
    expect(await page.evaluate('[innerWidth, innerHeight]')).toEqual([820, 700]);
    await page.size(500, 800);
    expect(await page.evaluate('[innerWidth, innerHeight]')).toEqual([500, 800]);
  });

  test('presses and drags where it should', async () => {
    await page.pressAt(30, 40);
    expect(await page.evaluate('seen.splice(0)')).toEqual([
      ['pointerdown', 30, 40],
      ['pointerup', 30, 40],
    ]);
    await page.drag([
      [20, 20],
      [60, 30],
      [100, 50],
    ]);
    const dragged = await page.evaluate<[string, number, number][]>('seen.splice(0)');
    expect(dragged[0]).toEqual(['pointerdown', 20, 20]);
    expect(dragged.at(-1)).toEqual(['pointerup', 100, 50]);
    expect(dragged).toContainEqual(['drag', 60, 30]);
  });

  test('types into what has the focus, and holds a key', async () => {
    await page.evaluate(`document.querySelector('input').focus()`);
    await page.type('barley 7');
    expect(await page.evaluate(`document.querySelector('input').value`)).toBe('barley 7');
    await page.key('z', 'Control');
    expect(await page.evaluate('seen.splice(0)')).toEqual([['with Control', 'z']]);
  });

  test('waits for promises, tells what went wrong, and takes a picture', async () => {
    expect(
      await page.evaluate('new Promise((done) => setTimeout(() => done({ a: [1, "é"] }), 5))'),
    ).toEqual({
      a: [1, 'é'],
    });
    await expect(page.evaluate('missing.thing')).rejects.toThrow(/missing/);
    const png = Buffer.from(await page.screenshot());
    expect(png.subarray(1, 4).toString()).toBe('PNG');
    // The page is on it: the canvas is 200 × 100 in the colour of its style, and a ring round the field touches its edge.
    const { data } = await sharp(png).removeAlpha().raw().toBuffer({ resolveWithObject: true });
    let shown = 0;
    for (let p = 0; p < data.length; p += 3) {
      if (data[p] === 0xb5 && data[p + 1] === 0x48 && data[p + 2] === 0x2a) shown++;
    }
    expect(shown).toBeGreaterThan(19_500);
    expect(shown).toBeLessThanOrEqual(20_000);
  });
});
