import { expect, it } from 'vitest';
import { hexToLab65 } from '../src/core/colour/lab.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { placePicture } from '../src/core/picture/sampling/place.js';
import { completeShape } from '../src/core/panel/shape.js';
import { paint } from './support/paint.js';

/** The measure that the bench reports must find what we know to be there, and nothing else. */
const { smallFeatures, featuresKept } = await import(
  new URL('../bench/small-features.js', import.meta.url).href
);

const geometry = panelGeometry(completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1 }));
const footprints = panelFootprints(geometry);
const pitchMm = Math.sqrt(geometry.shape.stitchWidthMm * geometry.shape.roundHeightMm);
const px = 480;
const size = { width: px, height: px };
const place = placePicture(size, geometry, { place: 'fill' });
const pitch = pitchMm / place.mmPerPixel;
/** Radius of a disc that covers so many stitches. */
const radius = (stitches: number) => pitch * Math.sqrt(stitches / Math.PI);
const within = (x: number, y: number, cx: number, cy: number, r: number) =>
  (x - cx) ** 2 + (y - cy) ** 2 < r * r;

const picture = paint(px, px, (x, y) => {
  if (within(x, y, 150, 200, radius(5))) return [30, 20, 20];
  if (within(x, y, 300, 200, radius(60))) return [30, 20, 20];
  if (within(x, y, 200, 330, radius(5))) return [225, 190, 130];
  if (within(x, y, 330, 330, radius(0.7))) return [30, 20, 20];
  return [235, 205, 150];
});

it('finds the small dark disc, not the large, the faint or the tiny one', () => {
  const found = smallFeatures(picture, { geometry, footprints, place });
  expect(found).toHaveLength(1);
  // Blended pixels along its edge may go either way.
  expect([4, 5]).toContain(found[0].stitches.length);
  for (const s of found[0].stitches) {
    const [x, y] = [geometry.centres[2 * s], geometry.centres[2 * s + 1]];
    const [cx, cy] = [150, 200].map((at) => (at - px / 2) * place.mmPerPixel);
    expect(Math.hypot(x - cx, y - cy)).toBeLessThan(2 * pitchMm);
  }
});

it('counts it as kept when half of its stitches are dark', () => {
  const features = smallFeatures(picture, { geometry, footprints, place });
  const { stitches } = features[0];
  const [dark, ground] = [hexToLab65('#332222'), hexToLab65('#e8c890')];
  const keptWith = (n: number): number =>
    featuresKept(features, (s: number) => (stitches.slice(0, n).includes(s) ? dark : ground));
  const half = Math.ceil(stitches.length / 2);
  expect([5, half, half - 1, 0].map(keptWith)).toEqual([1, 1, 0, 0]);
});
