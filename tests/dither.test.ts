/** Dithering, judged by the light that reaches an eye too far away to tell beads apart. */
import { readFileSync } from 'node:fs';
import { differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';
import { chooseBeads, nearestBead } from '../src/core/beads/choice/choose.js';
import { lab65ToLinear, linearToLab65, srgbToLab65 } from '../src/core/colour/lab.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { parentOf } from '../src/core/panel/links.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import type { PanelGeometry } from '../src/core/panel/geometry.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { placePicture } from '../src/core/picture/sampling/place.js';
import { samplePanel } from '../src/core/picture/sampling/sample.js';
import { completeShape, stitchesBefore } from '../src/core/panel/shape.js';
import type { ShapeWish } from '../src/core/panel/shape.js';
import { ditherBeads } from '../src/core/beads/tidy/dither.js';
import { onwardFrom } from '../src/core/beads/tidy/onward.js';
import { readPicture } from '../src/node/read/read-picture.js';
import { sequence } from './support/paint.js';

const geometryOf = (wish: Partial<ShapeWish>) =>
  panelGeometry(completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1, ...wish }));

/** Linear light of beads, length 3·count; bare ones black. */
function lightOf(palette: Float64Array, beadOf: ArrayLike<number>): Float64Array {
  const light = new Float64Array(3 * beadOf.length);
  for (let s = 0; s < beadOf.length; s++) {
    const p = 3 * beadOf[s];
    if (p >= 0) light.set(lab65ToLinear(palette[p], palette[p + 1], palette[p + 2]), 3 * s);
  }
  return light;
}

/** The light of every stitch spread by a Gaussian whose deviation is `sigma` millimetres. */
function blurred({ centres, count }: PanelGeometry, light: Float64Array, sigma: number) {
  const out = new Float64Array(light.length);
  for (let s = 0; s < count; s++) {
    let weights = 0;
    for (let t = 0; t < count; t++) {
      const d =
        (centres[2 * t] - centres[2 * s]) ** 2 + (centres[2 * t + 1] - centres[2 * s + 1]) ** 2;
      if (d > 9 * sigma * sigma) continue;
      const weight = Math.exp(-d / (2 * sigma * sigma));
      weights += weight;
      for (let c = 0; c < 3; c++) out[3 * s + c] += weight * light[3 * t + c];
    }
    for (let c = 0; c < 3; c++) out[3 * s + c] /= weights;
  }
  return out;
}

const reference = differenceCiede2000();
function meanDifference(one: Float64Array, other: Float64Array): number {
  const lab = (light: Float64Array, s: number) => {
    const [l, a, b] = linearToLab65(light[s], light[s + 1], light[s + 2]);
    return { mode: 'lab65', l, a, b } as const;
  };
  let sum = 0;
  for (let s = 0; s < one.length; s += 3) sum += reference(lab(one, s), lab(other, s));
  return (3 * sum) / one.length;
}

/** Greys that lie near enough to be mixed. */
const greys = new Float64Array([...srgbToLab65(110, 110, 110), ...srgbToLab65(140, 140, 140)]);
const flat = (count: number, share: number) => {
  const [dark] = lab65ToLinear(greys[0], greys[1], greys[2]);
  const [light] = lab65ToLinear(greys[3], greys[4], greys[5]);
  return new Float64Array(3 * count).fill(dark + share * (light - dark));
};

describe('dithering', () => {
  it.each([0.1, 0.25, 0.5, 0.8])('mixes as much light as a grey has: %d', (share) => {
    const { shape, count } = geometryOf({ rounds: 24 });
    const beadOf = ditherBeads({
      shape,
      linear: flat(count, share),
      beadOf: new Int16Array(count),
      chosen: [0, 1],
      palette: greys,
      strength: 1,
      repeat: false,
    });
    const light = beadOf.reduce((sum, bead) => sum + bead, 0) / count;
    expect(Math.abs(light - share)).toBeLessThan(0.03);
  });

  it.each([20, 30])(
    'across the room brings six beads a seventh nearer to the dahlia, %d rounds',
    async (rounds) => {
      const file = new URL('../fixtures/pictures/dahlia.jpg', import.meta.url);
      const picture = await readPicture(readFileSync(file), 'dahlia.jpg');
      const table = new URL('../palettes/drawers.csv', import.meta.url);
      const { beads } = readPalette(readFileSync(table, 'utf8'), 'drawers.csv');
      const palette = new Float64Array(beads.flatMap(({ lab }) => lab));
      const geometry = geometryOf({ rounds });
      const { linear } = samplePanel({
        picture,
        geometry,
        footprints: panelFootprints(geometry),
        place: placePicture(picture, geometry, { place: 'fill' }),
        art: 'photo',
        background: [255, 255, 255],
      });
      const stitches = new Float64Array(linear.length);
      for (let s = 0; s < linear.length; s += 3) {
        stitches.set(linearToLab65(linear[s], linear[s + 1], linear[s + 2]), s);
      }
      const { chosen, beadOf } = chooseBeads({ stitches, palette, most: 6 });
      const { shape } = geometry;
      const mixed = ditherBeads({
        shape,
        linear,
        beadOf,
        chosen,
        palette,
        strength: 0.75,
        repeat: false,
      });
      const sigma = Math.sqrt(shape.stitchWidthMm * shape.roundHeightMm);
      const seen = blurred(geometry, linear, sigma);
      const without = meanDifference(seen, blurred(geometry, lightOf(palette, beadOf), sigma));
      const dithered = meanDifference(seen, blurred(geometry, lightOf(palette, mixed), sigma));
      expect(dithered).toBeLessThan(0.85 * without);
    },
  );

  it('at strength 0 gives the nearest bead, and leaves bare and guarded stitches as they are', () => {
    const { shape, count } = geometryOf({ rounds: 9 });
    const next = sequence(4);
    const linear = Float64Array.from({ length: 3 * count }, () => next(1000) / 1000);
    const palette = new Float64Array(
      [0, 60, 120, 180, 255].flatMap((v) => srgbToLab65(v, 255 - v, (v * 2) % 256)),
    );
    const given = Int16Array.from({ length: count }, () => next(6) - 1);
    const guarded = Uint8Array.from({ length: count }, () => (next(3) === 0 ? 1 : 0));
    const input = { shape, linear, beadOf: given, chosen: [0, 1, 2, 3, 4], palette, guarded };
    for (const strength of [0, 0.75, 1]) {
      ditherBeads({ ...input, strength, repeat: false }).forEach((bead, s) => {
        const lab = linearToLab65(linear[3 * s], linear[3 * s + 1], linear[3 * s + 2]);
        if (given[s] < 0 || guarded[s]) expect(bead).toBe(given[s]);
        else if (strength === 0) expect(bead).toBe(nearestBead(palette, ...lab));
        else expect(bead).toBeGreaterThanOrEqual(0);
      });
    }
  });

  it.each<Partial<ShapeWish>>([{}, { wedges: 3, construction: 'joined' }, { increase: 'middle' }])(
    'hands errors on along the thread and to the children: %o',
    (wish) => {
      const { shape } = geometryOf({ rounds: 8, ...wish });
      for (let r = 1; r <= 8; r++) {
        for (let i = 0; i < shape.wedges * r; i++) {
          const s = stitchesBefore(shape, r) + i;
          const [next, ...above] = onwardFrom(shape, 1, r, i);
          if (r < 8 || i + 1 < shape.wedges * r) expect(next).toEqual([s + 1, 0.5]);
          if (r === 8) continue;
          expect(above.reduce((sum, [, share]) => sum + share, 0)).toBe(0.5);
          const children: number[] = [];
          for (let j = 0; j < shape.wedges * (r + 1); j++) {
            if (parentOf(shape, r + 1, j) === i) children.push(stitchesBefore(shape, r + 1) + j);
          }
          expect(above.map(([to]) => to)).toEqual(children);
        }
      }
    },
  );

  it('keeps the wedges of a repeat alike', () => {
    const { shape, count } = geometryOf({ rounds: 15, wedges: 5 });
    const given = new Int16Array(count);
    const beadOf = ditherBeads({
      shape,
      linear: flat(count, 0.4),
      beadOf: given,
      chosen: [0, 1],
      palette: greys,
      strength: 0.75,
      repeat: true,
    });
    expect(new Set(beadOf).size).toBe(2);
    for (let r = 1, s = 0; r <= 15; s += 5 * r, r++) {
      for (let i = r; i < 5 * r; i++) expect(beadOf[s + i]).toBe(beadOf[s + i - r]);
    }
  });
});
