import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { ciede2000 } from '../src/core/colour/ciede2000.js';
import { hexToLab65 } from '../src/core/colour/lab.js';
import { makePattern } from '../src/core/make.js';
import { finishedEdge } from '../src/core/panel/edge.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { insideRing } from '../src/core/panel/rings.js';
import { completeShape } from '../src/core/panel/shape.js';
import type { Frame } from '../src/core/purse/frame/measures.js';
import type { Picture } from '../src/core/picture/picture.js';
import { placePicture } from '../src/core/picture/sampling/place.js';
import { hullOf } from '../src/core/picture/standing/hull.js';
import { laySubject } from '../src/core/picture/sampling/lay-subject.js';
import { subjectOf } from '../src/core/picture/subject.js';
import { bareUnderFrame } from '../src/core/purse/frame/plan.js';

const palette = readFileSync(new URL('../palettes/drawers.csv', import.meta.url), 'utf8');
const { beads } = readPalette(palette, 'drawers.csv');

type Colour = readonly [number, number, number, number];

/** A picture painted by a rule. */
function painted(width: number, height: number, at: (x: number, y: number) => Colour): Picture {
  const data = new Uint8Array(4 * width * height);
  for (let p = 0; p < width * height; p++) {
    data.set(at(p % width, Math.floor(p / width)), 4 * p);
  }
  return { width, height, data };
}

const clear = [0, 0, 0, 0] as const;

/** A disc of one colour off the middle, on a ground. */
const disc = (colour: Colour, ground: Colour): Picture =>
  painted(200, 120, (x, y) => ((x - 50) ** 2 + (y - 40) ** 2 < 30 ** 2 ? colour : ground));

const geometryOf = (wish: object = {}) =>
  panelGeometry(completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1, ...wish }));

const wishFor = (picture: Picture) => ({
  picture,
  pictureName: 'x.png',
  title: 'x',
  beads,
  colours: 6,
  shape: { wedges: 7, rounds: 8, beadDiameterMm: 2.1 },
  place: { place: 'subject' as const },
  art: 'auto' as const,
  background: 'auto',
});

describe('the hull of a subject', () => {
  it('reaches as far as whiskers finer than the raster that it is told on', () => {
    // A disc with two lines of one pixel, of a picture five times as large as its raster.
    const whiskers = painted(1280, 640, (x, y) =>
      (x - 640) ** 2 + (y - 320) ** 2 < 150 ** 2 || ((y === 300 || y === 341) && x > 60 && x < 1220)
        ? [20, 20, 20, 255]
        : clear,
    );
    const subject = subjectOf(whiskers);
    const xs = (mask: Uint8Array) => {
      const ring = hullOf(mask, subject, whiskers)!;
      const all = Array.from({ length: ring.length / 2 }, (_, n) => ring[2 * n]);
      return [Math.min(...all), Math.max(...all)];
    };
    expect(xs(subject.mask)[1]).toBeLessThan(800);
    const [left, right] = xs(subject.reach!);
    expect(left).toBeLessThan(62);
    expect(right).toBeGreaterThan(1218);
    // Without hairlines it is the mask, however soft the outline.
    expect(subjectOf(disc([20, 20, 20, 255], clear)).reach).toBeUndefined();
    const soft = painted(600, 600, (x, y) => {
      const far = Math.hypot(x - 300, y - 300);
      return [20, 20, 20, Math.round(255 * Math.min(1, Math.max(0, (220 - far) / 40)))];
    });
    expect(subjectOf(soft).reach).toBeUndefined();
  });

  it('is that of its cells, worked by hand, without a speck far off', () => {
    const mask = new Uint8Array(100 * 100);
    for (let y = 10; y < 60; y++) for (let x = 20; x < 50; x++) mask[y * 100 + x] = 1;
    mask[9999] = 1;
    const hull = hullOf(mask, { width: 100, height: 100 }, { width: 200, height: 300 })!;
    const corners = Array.from(
      { length: hull.length / 2 },
      (_, k) => `${hull.slice(2 * k, 2 * k + 2)}`,
    );
    expect(corners.sort()).toEqual(['100,180', '100,30', '40,180', '40,30']);
  });
});

describe('a subject on the panel', () => {
  const shapes = [
    {},
    { construction: 'joined' },
    { outline: 'circle', wedges: 5 },
    { increase: 'first', wedges: 12, rounds: 9 },
    { increase: 'middle', wedges: 6, hand: 'left' },
    { wedges: 4, rounds: 3, lean: 0.2 },
  ];
  const hulls = [
    [-3, -1, 3, -1, 3, 1, -3, 1],
    [0, -5, 2, 4, -9, 4],
    [100, 40, 130, 60, 90, 200, 60, 90],
  ].map((one) => Float64Array.from(one));

  it.each(shapes)('lies inside the rim, and nowhere else more of it would: %o', (wish) => {
    const geometry = geometryOf(wish);
    const edge = finishedEdge(geometry);
    for (const hull of hulls) {
      const { mmPerPixel, centreXmm, centreYmm } = laySubject(hull, geometry)!;
      const inside = (scale: number, x: number, y: number) =>
        Array.from(hull.keys())
          .filter((p) => p % 2 === 0)
          .every((p) => insideRing(edge, scale * hull[p] + x, scale * hull[p + 1] + y));
      expect(inside(mmPerPixel, centreXmm, centreYmm)).toBe(true);
      // Trying places on a grid finds nothing that is larger by more than what the margin of one
      // round and the step of a spiral take.
      const { roundHeightMm, rounds } = geometry.shape;
      const larger = (mmPerPixel * (rounds + 0.5)) / (rounds - 1.5);
      const off = larger - mmPerPixel;
      const [midX, midY] = [0, 1].map((c) => {
        const own = Array.from(hull).filter((_, p) => p % 2 === c);
        return (Math.min(...own) + Math.max(...own)) / 2;
      });
      let fits = 0;
      for (let x = -4; x <= 4; x++) {
        for (let y = -4; y <= 4; y++) {
          const [dx, dy] = [(x * roundHeightMm) / 2, (y * roundHeightMm) / 2];
          const at = [centreXmm - off * midX + dx, centreYmm - off * midY + dy] as const;
          if (inside(1.01 * larger, ...at)) fits++;
        }
      }
      expect(fits).toBe(0);
    }
  });

  it('keeps clear of what a frame covers', () => {
    const geometry = geometryOf();
    const frame: Frame = {
      kind: 'half-round',
      widthMm: 85,
      heightMm: 45,
      fixing: 'sewn',
      ratio: 1.15,
      gatherPercent: 0,
      bareRounds: 5,
    };
    const bare = bareUnderFrame(frame, geometry);
    expect(bare.reduce((sum, one) => sum + one, 0)).toBeGreaterThan(50);
    const hull = Float64Array.of(-1, -1, 1, -1, 1, 1, -1, 1);
    const free = laySubject(hull, geometry)!;
    const framed = laySubject(hull, geometry, bare)!;
    expect(framed.mmPerPixel).toBeLessThan(free.mmPerPixel);
    const { mmPerPixel: half, centreXmm, centreYmm } = framed;
    for (let s = 0; s < geometry.count; s++) {
      if (!bare[s]) continue;
      const [x, y] = geometry.centres.subarray(2 * s, 2 * s + 2);
      const inside = Math.abs(x - centreXmm) < half && Math.abs(y - centreYmm) < half;
      expect(inside).toBe(false);
    }
  });

  it('is found by transparency and on a plain ground, and zoomed around the panel’s centre', () => {
    for (const ground of [clear, [250, 240, 220, 255] as const]) {
      const picture = disc([180, 30, 40, 255], ground);
      const subject = subjectOf(picture);
      const hull = hullOf(subject.mask, subject, picture)!;
      const geometry = geometryOf();
      const place = placePicture(picture, geometry, { place: 'subject' }, { hull });
      // The disc of 60 pixels spans the panel but for a margin of a round on either side.
      expect(60 * place.mmPerPixel).toBeGreaterThan(0.85 * 2 * 20.5 * 2.247);
      expect(place.centreXmm).toBeCloseTo(50 * place.mmPerPixel, -0.5);
      const near = placePicture(picture, geometry, { place: 'subject', zoom: 2 }, { hull });
      expect(near.centreXmm).toBeCloseTo(2 * place.centreXmm, 5);
    }
  });

  it('a picture without one is laid as with fill', () => {
    const busy = painted(90, 60, (x, y) => [(x * 37) % 256, (y * 91) % 256, (x * y) % 256, 255]);
    const { pattern, report } = makePattern(wishFor(busy));
    const filled = makePattern({ ...wishFor(busy), place: { place: 'fill' } });
    // What was wished differs, what came of it does not.
    expect({ ...pattern, wish: undefined }).toEqual({ ...filled.pattern, wish: undefined });
    expect(report.panels[0].laid).toBe('fill');
  });
});

describe('the ground of a cut-out', () => {
  const groundOf = (colour: Colour, ground: Colour) => {
    const { pattern, report } = makePattern(wishFor(disc(colour, ground)));
    return { hex: pattern.panels[0].picture!.background!, report, pattern };
  };

  it('is white where the outline stands out from white', () => {
    const { hex, report } = groundOf([30, 60, 120, 255], clear);
    expect(hex).toBe('#ffffff');
    expect(report.panels[0].ground).toBeUndefined();
  });

  it('is a bead from which a white subject stands out, and which is used', () => {
    const { hex, report, pattern } = groundOf([252, 252, 250, 255], clear);
    const { ground } = report.panels[0];
    expect(pattern.beads.map(({ id }) => id)).toContain(ground!.id);
    expect(ciede2000(...hexToLab65(hex), ...hexToLab65('#fcfcfa'))).toBeGreaterThan(15);
  });

  it('counts a colour that lets the ground through as it is seen on it', () => {
    const { report } = groundOf([30, 60, 200, 140], clear);
    expect(report.panels[0].ground).toBeUndefined();
    const faint = groundOf([250, 120, 120, 130], clear);
    expect(faint.hex).toMatch(/^#/);
    const [own, ground] = ['#fa7878', faint.hex].map(hexToLab65);
    expect(ciede2000(...own, ...ground)).toBeGreaterThan(15);
  });

  it('goes on in its own colour where it is plain, and is as asked otherwise', () => {
    expect(groundOf([30, 60, 120, 255], [240, 230, 200, 255]).hex).toBe('#f0e6c8');
    const picture = disc([252, 252, 250, 255], clear);
    const asked = makePattern({ ...wishFor(picture), background: '#ffffff' });
    expect(asked.pattern.panels[0].picture!.background).toBe('#ffffff');
  });
});

describe('a subject that is cut out', () => {
  const red = [180, 30, 40, 255] as const;
  const clearOne = makePattern({ ...wishFor(disc(red, clear)), background: '#204060' }).pattern;

  it('of a plain ground stands on another one, as a clear one does', () => {
    const picture = disc(red, [250, 240, 220, 255]);
    const wish = { ...wishFor(picture), background: '#204060', subject: 'plain' as const };
    const { pattern, report } = makePattern(wish);
    expect(pattern.panels[0].picture!.background).toBe('#204060');
    expect(pattern.beads.map(({ id }) => id)).toEqual(clearOne.beads.map(({ id }) => id));
    expect(report.panels[0].laid).toBe('subject');
    expect(report.warnings.map(({ code }) => code)).not.toContain('ground-not-plain');
  });

  it('and painted white on a mask, of any ground', () => {
    const busy = painted(200, 120, (x, y) =>
      (x - 50) ** 2 + (y - 40) ** 2 < 30 ** 2 ? red : [(x * 37) % 256, (y * 91) % 256, 128, 255],
    );
    const mask = disc([255, 255, 255, 255], [0, 0, 0, 255]);
    const wish = { ...wishFor(busy), background: '#204060' };
    const { pattern } = makePattern({ ...wish, subject: { picture: mask, name: 'mask.png' } });
    expect(pattern.panels[0].rounds).toEqual(clearOne.panels[0].rounds);
    const wrong = { picture: painted(10, 10, () => red), name: 'mask.png' };
    expect(() => makePattern({ ...wish, subject: wrong })).toThrow(
      expect.objectContaining({ code: 'mask-shape-differs' }),
    );
    const { report } = makePattern({ ...wish, subject: 'plain' });
    expect(report.warnings.map(({ code }) => code)).toContain('ground-not-plain');
  });
});

it('a pattern leaves the pixels alone, a Buffer’s too', () => {
  const { data, ...size } = disc([252, 252, 250, 255], clear);
  const buffer = Buffer.from(data);
  makePattern({ ...wishFor({ ...size, data: buffer }), art: 'drawing' });
  expect(buffer.equals(Buffer.from(data))).toBe(true);
});
