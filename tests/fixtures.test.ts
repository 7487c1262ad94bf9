import { readFileSync, readdirSync } from 'node:fs';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';

const folder = new URL('../fixtures/', import.meta.url);
const drawings = readdirSync(folder).filter((file) => file.endsWith('.svg'));

it('the three drawings are there, each with its credit', () => {
  expect(drawings).toEqual(
    expect.arrayContaining(['barley-moon.svg', 'kingfisher.svg', 'lighthouse.svg']),
  );
  const credits = readFileSync(new URL('CREDITS.md', folder), 'utf8');
  for (const file of drawings) expect(credits).toContain(`\`${file}\``);
});

describe.each(drawings)('%s', (file) => {
  const svg = readFileSync(new URL(file, folder));

  it('is square, covers its whole page, and differs from its mirror image', async () => {
    const { data, info } = await sharp(svg).resize(128).ensureAlpha().raw().toBuffer({
      resolveWithObject: true,
    });
    expect([info.width, info.height]).toEqual([128, 128]);
    let clear = 0;
    let unlike = 0;
    for (let p = 0; p < 128 * 128; p++) {
      const mirrored = p - (p % 128) + 127 - (p % 128);
      if (data[4 * p + 3] !== 255) clear++;
      if (Math.abs(data[4 * p] - data[4 * mirrored]) > 40) unlike++;
    }
    expect(clear).toBe(0);
    expect(unlike / 128 ** 2).toBeGreaterThan(0.1);
  });

  it('uses few flat colours and nothing from outside', () => {
    const text = svg.toString();
    const colours = new Set(text.match(/#[0-9a-f]{6}\b/g));
    expect(colours.size).toBeGreaterThanOrEqual(6);
    expect(colours.size).toBeLessThanOrEqual(9);
    expect(text).not.toMatch(
      /<(image|script|style|text|linearGradient|radialGradient)\b|href="(?!#)/,
    );
  });
});
