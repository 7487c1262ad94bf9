import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { longDrawings, svg } from '../bench/heavy/drawings.js';
import { RondureError } from '../src/core/errors.js';
import { drawSvg } from '../src/node/svg/draw-svg.js';
import { isPlain } from '../src/core/picture/svg/judge.js';

const top = join(import.meta.dirname, '..');
const times = (count: number, one: (n: number) => string) =>
  Array.from({ length: count }, (_, n) => one(n)).join('');

describe('an SVG that is heavy to draw', () => {
  it.each(longDrawings)(
    '%s: is given up in time, and nothing goes on drawing',
    async (_, drawing) => {
      const children = () =>
        process.getActiveResourcesInfo().filter((one) => one === 'ProcessWrap');
      const before = children().length;
      const start = performance.now();
      const error: unknown = await drawSvg(svg(drawing), 'heavy.svg', 1).catch(
        (one: unknown) => one,
      );
      expect(performance.now() - start).toBeLessThan(4000);
      expect(error).toBeInstanceOf(RondureError);
      expect((error as RondureError).code).toMatch(/^(svg-too-slow|picture-damaged)$/);
      expect((error as Error).message).toMatch(/^heavy\.svg .*\.$/);
      await expect.poll(() => children().length).toBe(before);
    },
  );

  it('does not keep the program waiting after its sentence', () => {
    const module = pathToFileURL(join(top, 'dist/node/svg/draw-svg.js')).href;
    const script = `import { drawSvg } from ${JSON.stringify(module)};
      let text = ''; for await (const part of process.stdin) text += part;
      await drawSvg(text, 'heavy.svg', 1).catch((error) => console.log(error.code));`;
    const input = svg(longDrawings[0][1]);
    const start = performance.now();
    const argv = ['--input-type=module', '-e', script];
    const { stdout, status } = spawnSync(process.execPath, argv, { input });
    expect([stdout.toString(), status]).toEqual(['svg-too-slow\n', 0]);
    // All of its gradients take a minute.
    expect(performance.now() - start).toBeLessThan(6000);
  });

  it('with 2,000 elements is still drawn', async () => {
    const drawing = svg(times(2000, (n) => `<rect x="${n % 99}" width="1" height="99"/>`));
    expect(isPlain(drawing)).toBe(false);
    const { width, height } = await drawSvg(drawing, 'many.svg');
    expect([width, height]).toEqual([1600, 1600]);
  });
});

it('plain drawings are told from those that may take long', () => {
  for (const name of ['kingfisher.svg', 'lighthouse.svg', 'pictures/moon.svg']) {
    expect(isPlain(readFileSync(join(top, 'fixtures', name), 'utf8')), name).toBe(true);
  }
  for (const [what, drawing] of longDrawings) expect(isPlain(svg(drawing)), what).toBe(false);
  const hidden = [
    '<g style="\\66ilter:none"/>',
    '<g style="&#102;ilter:none"/>',
    '<g opacity=".5"/>',
  ];
  for (const one of hidden) expect(isPlain(svg(one)), one).toBe(false);
  expect(isPlain(svg('<g fill-opacity=".5"/>'))).toBe(true);
});

it('a plain drawing is the same to the last pixel in a process of its own', async () => {
  const text = readFileSync(join(top, 'fixtures/kingfisher.svg'), 'utf8');
  const apart = await drawSvg(text.replace('<title>', '<title>&#32;'), 'apart');
  const here = await drawSvg(text, 'here');
  expect(Buffer.compare(Buffer.from(here.data), Buffer.from(apart.data))).toBe(0);
});
