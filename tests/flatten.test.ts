import { expect, test } from 'vitest';
import { linearToSrgb8 } from '../src/core/colour/srgb.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { placePicture } from '../src/core/picture/sampling/place.js';
import { samplePanel } from '../src/core/picture/sampling/sample.js';
import { completeShape } from '../src/core/panel/shape.js';
import { paint } from './support/paint.js';

// Source-over compositing in linear light (W3C, Compositing and Blending Level 1, 5.1), done here
// with the transfer function of IEC 61966-2-1 written out.
const linear = (code: number): number =>
  code / 255 <= 0.04045 ? code / 255 / 12.92 : ((code / 255 + 0.055) / 1.055) ** 2.4;

test.each(['photo', 'drawing'] as const)(
  'a half-transparent colour counts as the blend that is seen: %s',
  (art) => {
    const shape = completeShape({ wedges: 6, rounds: 8, beadDiameterMm: 2.1 });
    const geometry = panelGeometry(shape);
    const picture = paint(60, 60, () => [255, 102, 0, 153]);
    const { linear: colours } = samplePanel({
      picture,
      geometry,
      footprints: panelFootprints(geometry),
      place: placePicture(picture, geometry, { place: 'fill' }),
      art,
      background: [255, 255, 255],
    });
    const seen = [255, 102, 0].map((code) => 0.4 + 0.6 * linear(code));
    for (let s = 0; s < geometry.count; s++) {
      for (let c = 0; c < 3; c++) {
        const off = linearToSrgb8(colours[3 * s + c]) - linearToSrgb8(seen[c]);
        expect(Math.abs(off), `stitch ${s}`).toBeLessThanOrEqual(1);
      }
    }
  },
);
