import { describe, expect, it } from 'vitest';
import { drain } from '../src/core/steps.js';
import { layPanel } from '../src/core/panel/lay.js';
import { completeShape } from '../src/core/panel/shape.js';
import { keepLines } from '../src/core/picture/lines/keep-lines.js';
import { ridgeLines } from '../src/core/picture/lines/ridges.js';
import { sampleStitches } from '../src/core/picture/sampling/sample-stitches.js';
import { placePicture } from '../src/core/picture/sampling/place.js';
import { linearToLab65 } from '../src/core/colour/lab.js';
import { paint, sequence } from './support/paint.js';
import type { Rgba } from './support/paint.js';

const [width, height] = [120, 100];
const fieldOf = (light: (x: number, y: number) => number) => ({
  width,
  height,
  light: Float32Array.from({ length: width * height }, (_, p) =>
    light(p % width, Math.floor(p / width)),
  ),
});

describe('crests', () => {
  it('are thin lines darker or lighter than both sides, at any angle', () => {
    for (const [a, b] of [
      [1, 0],
      [0, 1],
      [0.8, 0.6],
      [-0.5, 0.866],
    ]) {
      // prettier-ignore
      const field = fieldOf((x, y) => (Math.abs(a * (x - 60) + b * (y - 50)) < 1 ? 30 : 60));
      const [line, ...others] = drain(ridgeLines(field, 3));
      expect(others).toEqual([]);
      expect(line.lighter).toBe(false);
      expect(line.strength).toBeGreaterThan(12);
      for (const p of line.pixels) {
        const [x, y] = [p % width, Math.floor(p / width)];
        expect(Math.abs(a * (x - 60) + b * (y - 50))).toBeLessThan(1.6);
      }
    }
    const light = drain(
      ridgeLines(
        fieldOf((x) => (x === 60 ? 90 : 50)),
        3,
      ),
    );
    expect(light.map(({ lighter }) => lighter)).toEqual([true]);
  });

  it('are no borders between two areas, no slopes and no wide bands', () => {
    expect(drain(ridgeLines(fieldOf((x) => (x < 60 ? 30 : 70)), 3))).toEqual([]);
    expect(drain(ridgeLines(fieldOf((x) => x / 2), 3))).toEqual([]);
    expect(drain(ridgeLines(fieldOf((x) => (Math.abs(x - 60) < 8 ? 30 : 70)), 3))).toEqual([]);
  }); // prettier-ignore
});

describe('lines on a panel', () => {
  const shape = completeShape({ wedges: 7, rounds: 16, beadDiameterMm: 2.1 });
  const lay = layPanel(shape, { startDegrees: 0 });
  const kept = (picture: ReturnType<typeof paint>, art: 'photo' | 'drawing' = 'photo') => {
    const place = placePicture(picture, lay.geometry, { place: 'fill' });
    const laid = { picture, uprightWidth: picture.width, place };
    const how = { art, background: '#ffffff' };
    const before = sampleStitches(lay, laid, how);
    return { before, after: drain(keepLines(before, lay, laid, how)) };
  };
  const lightAt = ({ linear }: { linear: Float64Array }, s: number): number =>
    linearToLab65(linear[3 * s], linear[3 * s + 1], linear[3 * s + 2])[0];
  /** 320 pixels for 32 stitches: a whisker of three pixels is a third of a stitch wide. */
  const whisker = (thick: number, line: Rgba) =>
    paint(320, 320, (x, y) => (Math.abs(y - 0.4 * x - 90) < thick / 2 ? line : [150, 140, 130]));

  it('a dark whisker in a photograph is clearly darker than what lies beside it, one stitch wide', () => {
    const { before, after } = kept(whisker(3, [20, 20, 20]));
    const changed = [...before.bare.keys()].filter(
      (s) => lightAt(after, s) < lightAt(before, s) - 5,
    );
    // It crosses the panel at a slant: about 32 stitches, no stitch beside another one twice.
    expect(changed.length).toBeGreaterThan(22);
    expect(changed.length).toBeLessThan(50);
    const mean = changed.reduce((sum, s) => sum + lightAt(after, s), 0) / changed.length;
    // Beside it the fur has L* 59, and means alone would show the whisker at 50.
    expect(mean).toBeLessThan(42);
  });

  it('a whisker nearly as thick as a stitch shows in its means, and is left to them', () => {
    const { before, after } = kept(whisker(8, [20, 20, 20]));
    expect(after.linear).toEqual(before.linear);
  });

  it('light veins of a drawing are kept, and dark ones left to its sampling', () => {
    const veins = kept(whisker(3, [255, 255, 255]), 'drawing');
    expect([...veins.after.linear].some((one, p) => one > veins.before.linear[p] + 0.1)).toBe(true);
    const dark = kept(whisker(3, [20, 20, 20]), 'drawing');
    expect(dark.after).toBe(dark.before);
  });

  it('faint light rays of a flat drawing are kept, all of them', () => {
    // An orange's: ten rays, six L* lighter, a third of a stitch wide, where stitches are ten pixels.
    const rayAt = (x: number, y: number): number => {
      const [dx, dy] = [x - 160, y - 160];
      const far = Math.hypot(dx, dy);
      const turn = (Math.atan2(dy, dx) * 10) / (2 * Math.PI);
      const off = Math.abs(turn - Math.round(turn)) * ((2 * Math.PI) / 10) * far;
      return far > 25 && far < 140 && off < 1.7 ? 1 : 0;
    };
    const orange: Rgba = [250, 200, 45];
    const pith: Rgba = [254, 219, 110];
    const { before, after } = kept(
      paint(320, 320, (x, y) => (rayAt(x, y) ? pith : orange)),
      'drawing',
    );
    const rays = new Set<number>();
    const { centres } = lay.geometry;
    for (let s = 0; s < after.bare.length; s++) {
      if (lightAt(after, s) < lightAt(before, s) + 3) continue;
      const turn = (Math.atan2(centres[2 * s + 1], centres[2 * s]) * 10) / (2 * Math.PI);
      rays.add(((Math.round(turn) % 10) + 10) % 10);
    }
    expect(rays.size).toBe(10);
  });

  it('a drawing of nothing but hairlines is drawn all the same, and no longer told as lost', () => {
    // A house: walls and a roof, a twelfth of a stitch wide.
    const wall = (x: number, y: number) =>
      (Math.abs(x - 90) < 0.6 || Math.abs(x - 230) < 0.6) && y > 150 && y < 250;
    const floor = (x: number, y: number) =>
      (Math.abs(y - 250) < 0.6 || Math.abs(y - 150) < 0.6) && x > 90 && x < 230;
    const roof = (x: number, y: number) =>
      y > 80 && y < 150 && Math.abs(Math.abs(x - 160) - (y - 80)) < 0.8;
    const { before, after } = kept(
      paint(320, 320, (x, y) =>
        wall(x, y) || floor(x, y) || roof(x, y) ? [0, 0, 0] : [255, 255, 255],
      ),
      'drawing',
    );
    const dark = (of: { linear: Float64Array; bare: Uint8Array }) =>
      [...of.bare.keys()].filter((s) => lightAt(of, s) < 97).length;
    expect(before.lostLines().share).toBeGreaterThan(0.3);
    expect(dark(before)).toBeLessThan(40);
    expect(dark(after)).toBeGreaterThan(45);
    expect(after.lostLines().share).toBeLessThan(0.2);
  });

  it('hatching finer than stitches is told, bold shapes and outlines are not', () => {
    const shareOf = (at: (x: number, y: number) => boolean) => {
      const picture = paint(320, 320, (x, y) => (at(x, y) ? [0, 0, 0] : [255, 255, 255]));
      return kept(picture, 'drawing').before.hatched();
    };
    // Strokes four pixels apart under stitches of ten, dense on the left as an engraver's shade.
    expect(shareOf((x, y) => (x + 2 * y) % 7 < (x < 160 ? 3 : 2))).toBeGreaterThan(0.9);
    expect(shareOf((x, y) => Math.hypot(x - 160, y - 160) < 90)).toBeLessThan(0.1);
    expect(shareOf((x, y) => Math.abs(Math.hypot(x - 160, y - 160) - 90) < 4)).toBeLessThan(0.1);
    expect(shareOf((x, y) => (x >> 5) % 2 === (y >> 5) % 2)).toBeLessThan(0.1);
  });

  it('a small motif in many colours is finely drawn, and no hatching', () => {
    const colours: Rgba[] = [
      [20, 30, 80],
      [120, 70, 40],
      [30, 130, 100],
      [230, 170, 50],
      [245, 235, 200],
    ];
    const mosaic = paint(320, 320, (x, y) => colours[((x >> 2) + 3 * (y >> 2)) % 5]);
    expect(kept(mosaic, 'drawing').before.hatched()).toBe(0);
  });

  it('wide bands, borders and short strokes change nothing, and fur little', () => {
    const wide = kept(whisker(30, [20, 20, 20]));
    expect(wide.after.linear).toEqual(wide.before.linear);
    const short = kept(
      paint(320, 320, (x, y) =>
        Math.abs(y - 160) < 2 && Math.abs(x - 160) < 18 ? [20, 20, 20] : [150, 140, 130],
      ),
    );
    expect(short.after.linear).toEqual(short.before.linear);
    const random = sequence(4);
    const fur = kept(
      paint(320, 320, (x, y) => {
        const grey = 120 + random(80) + (((3 * x + y) >> 3) % 3) * 20;
        return [grey, grey, grey];
      }),
    );
    const count = fur.before.bare.length;
    let changed = 0;
    for (let s = 0; s < count; s++) {
      if (fur.after.linear[3 * s] !== fur.before.linear[3 * s]) changed++;
    }
    expect(changed).toBeLessThanOrEqual(0.05 * count);
  });
});
