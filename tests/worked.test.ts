import { readFileSync } from 'node:fs';
import { differenceCiede2000 } from 'culori';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { parseHex } from '../src/core/colour/hex.js';
import { scaledOnWhite } from '../src/core/pages/surface/scale.js';
import { threadRgb } from '../src/core/pages/worked/thread-ground.js';
import {
  beadPerStitch,
  renderWorked,
  workedPxPerMm,
  workedWidthPx,
} from '../src/core/pages/worked/worked.js';
import {
  compareCaptionsSvg,
  compareLayout,
  renderCompare,
} from '../src/core/pages/worked/compare.js';
import { loadFonts } from '../src/core/pages/surface/font.js';
import { acrossMm } from '../src/core/panel/edge.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { completeShape } from '../src/core/panel/shape.js';
import type { Picture } from '../src/core/picture/picture.js';
import { en } from '../src/words/index.js';

// Judged by culori's CIEDE2000, not by ours.
const difference = differenceCiede2000();
type Rgb = [number, number, number];
const culori = ([r, g, b]: Rgb) => ({ mode: 'rgb' as const, r: r / 255, g: g / 255, b: b / 255 });
const far = (a: Rgb, b: Rgb) => difference(culori(a), culori(b));

const panel = (rounds: number, more: object = {}) =>
  panelGeometry(completeShape({ wedges: 7, rounds, beadDiameterMm: 2.1, ...more }));

const at = (picture: Picture, x: number, y: number): Rgb => {
  const p = 4 * (Math.floor(y) * picture.width + Math.floor(x));
  return [picture.data[p], picture.data[p + 1], picture.data[p + 2]];
};

/** IEC 61966-2-1, written out here so that the mean owes nothing to the code under test. */
const toLight = (c: number) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
const toCode = (l: number) => 255 * (l <= 0.0031308 ? 12.92 * l : 1.055 * l ** (1 / 2.4) - 0.055);

/** Mean colour, in linear light, of the oval that a bead covers. */
function meanOfBead(picture: Picture, x: number, y: number, radius: number): Rgb {
  const sums = [0, 0, 0];
  let n = 0;
  for (let py = Math.floor(y - radius); py <= y + radius; py++) {
    for (let px = Math.floor(x - radius); px <= x + radius; px++) {
      if (Math.hypot(px + 0.5 - x, py + 0.5 - y) > radius) continue;
      at(picture, px, py).forEach((code, c) => (sums[c] += toLight(code / 255)));
      n++;
    }
  }
  return sums.map((sum) => toCode(sum / n)) as Rgb;
}

describe('the worked picture', () => {
  it('keeps true proportions: a round panel is as wide as it is high, and as large as it says', () => {
    const geometry = panel(14, { outline: 'circle', construction: 'joined' });
    const picture = renderWorked({ geometry, hexOf: () => '#101010', widthPx: 900 });
    const dark = (x: number, y: number) => at(picture, x, y)[0] < 150;
    const span = (test: (k: number) => boolean) => {
      const hits = Array.from({ length: 900 }, (_, k) => k).filter(test);
      return hits[hits.length - 1] - hits[0] + 1;
    };
    const wide = span((x) => Array.from({ length: 900 }, (_, y) => dark(x, y)).includes(true));
    const high = span((y) => Array.from({ length: 900 }, (_, x) => dark(x, y)).includes(true));
    const expected = acrossMm(geometry.shape) * workedPxPerMm(geometry.shape, 900);
    expect(Math.abs(wide - high)).toBeLessThanOrEqual(2);
    expect(Math.abs(wide - expected)).toBeLessThanOrEqual(3);
  });

  it.each(['left', 'right'] as const)('puts every bead in its place, %s hand', (hand) => {
    const geometry = panel(8, { hand });
    const hexes = ['#2f7fb5', '#d9692b', '#4c9a3e', '#c13f7e'];
    const hexOf = (s: number) => hexes[(s * 7 + (s >> 3)) % 4];
    const widthPx = 800;
    const picture = renderWorked({ geometry, hexOf, widthPx });
    const scale = workedPxPerMm(geometry.shape, widthPx);
    for (let s = 0; s < geometry.count; s++) {
      const x = geometry.centres[2 * s] * scale + widthPx / 2;
      const y = geometry.centres[2 * s + 1] * scale + widthPx / 2;
      const got = at(picture, x, y);
      const nearest = hexes.reduce((a, b) =>
        far(got, parseHex(a)!) <= far(got, parseHex(b)!) ? a : b,
      );
      expect(nearest, `stitch ${s}`).toBe(hexOf(s));
    }
  });

  // The picture has to read true: mean of a bead's area against its hex.
  it.each([
    ['opaque', 8],
    ['matte', 8],
    ['pearl', 8],
    ['silver-lined', 8],
    ['lustre', 8],
    ['metallic', 8],
  ])('keeps the mean colour of %s beads', (finish, most) => {
    const geometry = panel(3, { construction: 'joined' });
    const hexes = '#8e3327 #d9b36a #1d5fb4 #168a94 #4c9a3e #9a83bd #a5845a #6a737b #eb9fb0 #cc2a2b';
    const list = hexes.split(' ');
    const picture = renderWorked({
      geometry,
      hexOf: (s) => list[s % list.length],
      finishOf: () => finish,
      widthPx: 600,
    });
    const scale = workedPxPerMm(geometry.shape, 600);
    const radius = (geometry.shape.stitchWidthMm * beadPerStitch * scale) / 2;
    // The last round: no later bead lies over its beads.
    for (let s = geometry.count - list.length; s < geometry.count; s++) {
      const x = geometry.centres[2 * s] * scale + 300;
      const y = geometry.centres[2 * s + 1] * scale + 300;
      const hex = list[s % list.length];
      const got = far(meanOfBead(picture, x, y, radius), parseHex(hex)!);
      expect(got, `${hex} ${finish}`).toBeLessThan(most);
    }
  });

  it('shows thread where a stitch is bare, and no bead colour at all', () => {
    const geometry = panel(6);
    const picture = renderWorked({ geometry, hexOf: () => undefined, widthPx: 500 });
    const [r, g, b] = threadRgb;
    let most = 0;
    let clear = 0;
    for (let p = 0; p < picture.data.length; p += 4) {
      const [red, , blue] = picture.data.subarray(p, p + 3);
      most = Math.max(most, Math.abs(red - blue));
      if (picture.data[p + 3] !== 255) clear++;
    }
    expect(clear).toBe(0);
    // Nothing is more colourful than lit thread.
    expect(most).toBeLessThanOrEqual(1.6 * (Math.max(r, g, b) - Math.min(r, g, b)));
    const half = renderWorked({
      geometry,
      hexOf: (s) => (s % 2 ? '#cc2a2b' : undefined),
      widthPx: 500,
    });
    const scale = workedPxPerMm(geometry.shape, 500);
    for (let s = 0; s < geometry.count; s++) {
      const [red, , blue] = at(
        half,
        geometry.centres[2 * s] * scale + 250,
        geometry.centres[2 * s + 1] * scale + 250,
      );
      expect(red - blue > 60, `stitch ${s}`).toBe(s % 2 === 1);
    }
  });

  it('lights all beads from the upper left, however they are turned', () => {
    const geometry = panel(6, { construction: 'joined' });
    const picture = renderWorked({ geometry, hexOf: () => '#6a737b', widthPx: 900 });
    const scale = workedPxPerMm(geometry.shape, 900);
    const step = geometry.shape.stitchWidthMm * scale * 0.25;
    for (let s = geometry.count - 42; s < geometry.count; s++) {
      const x = geometry.centres[2 * s] * scale + 450;
      const y = geometry.centres[2 * s + 1] * scale + 450;
      expect(at(picture, x - step, y - step)[1]).toBeGreaterThan(
        at(picture, x + step, y + step)[1],
      );
    }
  });

  it('comes out the same twice, at a width that suits the panel', () => {
    const geometry = panel(10);
    const draw = () => renderWorked({ geometry, hexOf: () => '#1d5fb4', widthPx: 400 });
    expect(Buffer.from(draw().data).equals(Buffer.from(draw().data))).toBe(true);
    expect(workedWidthPx({ rounds: 20 })).toBe(1400);
    expect(workedWidthPx({ rounds: 60 })).toBeGreaterThan(1400);
    expect(workedWidthPx({ rounds: 80 })).toBeLessThanOrEqual(3200);
  });
});

describe('the comparison', () => {
  const plain = (width: number, height: number, [r, g, b]: Rgb): Picture => ({
    width,
    height,
    data: Uint8Array.from({ length: 4 * width * height }, (_, p) => [r, g, b, 255][p % 4]),
  });

  it('puts each picture in its box and keeps the inset in proportion', () => {
    const picture = renderCompare({
      upright: plain(500, 500, [10, 120, 20]),
      leaned: plain(1600, 1600, [200, 30, 20]),
      inset: plain(300, 150, [20, 30, 200]),
    });
    const middle = ({ x, y, side }: { x: number; y: number; side: number }) =>
      at(picture, x + side / 2, y + side / 2);
    expect([picture.width, picture.height]).toEqual([1600, compareLayout.heightPx]);
    expect(middle(compareLayout.upright)).toEqual([10, 120, 20]);
    expect(middle(compareLayout.leaned)).toEqual([200, 30, 20]);
    expect(middle(compareLayout.inset)).toEqual([20, 30, 200]);
    const { x, y, side } = compareLayout.inset;
    expect(at(picture, x + 1, y + side / 2)).toEqual([20, 30, 200]);
    expect(at(picture, x + side / 2, y + side / 4 - 2)).toEqual([255, 255, 255]);
  });

  it('scales in linear light: fine black and white lines give code 188, as sRGB defines it', () => {
    // IEC 61966-2-1: linear 0.5 is coded 187.5.
    const lines = plain(64, 64, [0, 0, 0]);
    for (let p = 0; p < lines.data.length; p += 8) lines.data.fill(255, p, p + 4);
    const small = scaledOnWhite(lines, 16, 16);
    for (let p = 0; p < small.data.length; p += 4) {
      expect(Math.abs(small.data[p] - 187.5)).toBeLessThan(1.1);
    }
  });

  it('puts its captions where no picture lies', async () => {
    const font = (weight: string) =>
      readFileSync(new URL(`../fonts/NotoSans-${weight}.ttf`, import.meta.url));
    const svg = compareCaptionsSvg(loadFonts(font('Regular'), font('Bold')), en);
    const { data, info } = await sharp(Buffer.from(svg))
      .resize(compareLayout.widthPx)
      .greyscale()
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([compareLayout.widthPx, compareLayout.heightPx]);
    const boxes = [compareLayout.inset, compareLayout.leaned, compareLayout.upright];
    let ink = 0;
    let covered = 0;
    for (let p = 0; p < info.width * info.height; p++) {
      if (data[p * info.channels] > 200) continue;
      const x = p % info.width;
      const y = Math.floor(p / info.width);
      ink++;
      const inside = (b: { x: number; y: number; side: number }) =>
        x >= b.x && x < b.x + b.side && y >= b.y && y < b.y + b.side;
      if (boxes.some(inside)) covered++;
      // Nothing runs off the page.
      if (x < 10 || x >= info.width - 10 || y < 10 || y >= info.height - 10) covered++;
    }
    expect(ink).toBeGreaterThan(5000);
    expect(covered).toBe(0);
  });
});
