import { expect, it } from 'vitest';
import { hexToLab65 } from '../src/core/colour/lab.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { maskOfStitches } from '../src/core/picture/importance/mask.js';
import { stitchImportance } from '../src/core/picture/importance/stitch-importance.js';
import type { ImportanceInput } from '../src/core/picture/importance/stitch-importance.js';
import { makePattern } from '../src/core/make.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { placePicture } from '../src/core/picture/sampling/place.js';
import { completeShape } from '../src/core/panel/shape.js';
import { paint } from './support/paint.js';

const geometry = panelGeometry(completeShape({ wedges: 6, rounds: 12, beadDiameterMm: 2.1 }));
const footprints = panelFootprints(geometry);
const { count } = geometry;
const at = (s: number) => [geometry.centres[2 * s], geometry.centres[2 * s + 1]];

/** Sand with a dark eye (4 stitches), a dark field and a faint spot. */
const eye = [150, 151, 151 + 48, 151 + 47];
const labs = new Float64Array(3 * count);
for (let s = 0; s < count; s++) {
  const faint = s >= 300 && s < 303;
  const dark = eye.includes(s) || at(s)[1] < -9;
  labs.set(hexToLab65(dark ? '#302418' : faint ? '#e0c492' : '#ebcd96'), 3 * s);
}
const given = (more: Partial<ImportanceInput> = {}) =>
  stitchImportance({
    geometry,
    neighbours: footprints.neighbours,
    labs,
    bare: new Uint8Array(count),
    detail: 0.5,
    repeat: false,
    ...more,
  });

const mean = (values: Float64Array) => values.reduce((a, b) => a + b, 0) / values.length;

it('a small dark eye counts for more, a large field or a faint spot hardly', () => {
  const { weights, guarded } = given();
  expect(mean(weights)).toBeCloseTo(1, 5);
  const field = weights.findIndex((_, s) => at(s)[1] < -12);
  expect(weights[300]).toBeLessThan(1.001);
  const [more, usual] = [weights[eye[0]], weights[310]];
  expect(more / usual).toBeGreaterThan(2);
  expect(weights[field] / usual).toBeLessThan(1.2);
  expect(guarded[eye[0]]).toBe(1);
  expect(guarded[field] + guarded[300] + guarded[310]).toBe(0);
});

it('off, every stitch counts alike and none is guarded', () => {
  const { weights, guarded } = given({ detail: 0 });
  expect(new Set(weights)).toEqual(new Set([1]));
  expect(guarded.every((one) => one === 0)).toBe(true);
});

it('stitches without a bead have no weight, the others a mean of 1', () => {
  const bare = Uint8Array.from({ length: count }, (_, s) => (s % 3 === 0 ? 1 : 0));
  const { weights } = given({ bare });
  expect(weights.every((weight, s) => (weight === 0) === (bare[s] === 1))).toBe(true);
  expect(mean(weights.filter((weight) => weight > 0))).toBeCloseTo(1, 5);
});

it('with a repeat every wedge counts the same', () => {
  const { weights, guarded } = given({ repeat: true });
  for (let r = 1, first = 0; r <= 12; first += 6 * r, r++) {
    for (let i = 0; i < 6 * r; i++) {
      expect(weights[first + i]).toBe(weights[first + (i % r)]);
      expect(guarded[first + i]).toBe(guarded[first + (i % r)]);
    }
  }
});

const half = paint(60, 60, (x) =>
  x < 30 ? [255, 255, 255] : x < 45 ? [0, 0, 0] : [255, 255, 255, 0],
);
const main = { width: 240, height: 240 };
const place = placePicture(main, geometry, { place: 'fill' });

it('a mask lies as the picture does; black and transparent are as usual', () => {
  const mask = maskOfStitches({ picture: half, name: 'm' }, main, {
    lay: { geometry, footprints },
    place,
  });
  const { weights, guarded } = given({ mask, detail: 0 });
  const usual = weights[at(0)[0] > 0 ? 0 : 5];
  for (let s = 0; s < count; s++) {
    const [x] = at(s);
    if (Math.abs(x) < 2.5) continue;
    expect(weights[s] / usual).toBeCloseTo(x < 0 ? 8 : 1, 3);
    expect(guarded[s]).toBe(x < 0 ? 1 : 0);
  }
});

it('a mask of other proportions is refused', () => {
  const input = { picture: paint(60, 50, () => [255, 255, 255]), name: 'm.png' };
  expect(() => maskOfStitches(input, main, { lay: { geometry, footprints }, place })).toThrow(
    /m\.png is 60 × 50 pixels, and the picture is 240 × 240/,
  );
});

const { beads } = readPalette(
  'name,hex\nsand,#ebcd96\nstraw,#e3c07f\ntar,#302418\n',
  'palette',
  {},
);
const scene = paint(240, 240, (x, y) => {
  if ((x - 150) ** 2 + (y - 90) ** 2 < 130) return [48, 36, 24];
  return x < 150 ? [235, 205, 150] : [224, 186, 116];
});
const panel = (more: object) =>
  makePattern({
    picture: scene,
    pictureName: 'scene',
    title: 'scene',
    beads,
    colours: 2,
    shape: { wedges: 6, rounds: 12, beadDiameterMm: 2.1 },
    place: { place: 'fill' },
    art: 'drawing',
    background: '#ffffff',
    ...more,
  });
const names = (made: ReturnType<typeof panel>) => made.pattern.beads.map(({ name }) => name).sort();

it('detail brings the eye into the choice, and a mask does too', () => {
  expect(names(panel({ detail: 0 }))).toEqual(['sand', 'straw']);
  const detailed = panel({ detail: 0.5 });
  expect(names(detailed)).toContain('tar');
  const mask = {
    picture: paint(24, 24, (x, y) =>
      (x - 15) ** 2 + (y - 9) ** 2 < 3 ? [255, 255, 255] : [0, 0, 0],
    ),
    name: 'mask.png',
  };
  const masked = panel({ detail: 0, mask });
  expect(names(masked)).toContain('tar');
  expect(masked.report.warnings.map(({ code }) => code)).not.toContain('mask-says-nothing');
  expect(masked.report.meanDifference).not.toBe(masked.pattern.choice!.objective);
});

it('a mask of one tone is told', () => {
  const mask = { picture: paint(24, 24, () => [0, 0, 0]), name: 'black.png' };
  const { report } = panel({ mask });
  expect(report.warnings.map(({ code }) => code)).toContain('mask-says-nothing');
});
