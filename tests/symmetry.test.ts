import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ciede2000 } from '../src/core/colour/ciede2000.js';
import { linearToLab65 } from '../src/core/colour/lab.js';
import { makePattern } from '../src/core/make.js';
import { layPanel } from '../src/core/panel/lay.js';
import type { Picture } from '../src/core/picture/picture.js';
import { sampleStitches } from '../src/core/picture/sampling/sample-stitches.js';
import { readPicture } from '../src/node/read/read-picture.js';
import { beads } from './support/sketch-panel.js';

// A spiral, and stitches that lean, have no mirror: a round of joined ones without lean nearly has.

const file = (name: string) => readFileSync(new URL(`../${name}`, import.meta.url));

/** The picture's left half, and its mirror image as the right one. */
function mirrored({ width, height, data }: Picture): Picture {
  const both = new Uint8Array(data);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width >> 1; x++) {
      const [from, to] = [4 * (y * width + x), 4 * (y * width + width - 1 - x)];
      both.copyWithin(to, from, from + 4);
    }
  }
  return { width, height, data: both };
}

test.each([
  'fixtures/kingfisher.svg',
  'fixtures/pictures/sakura.svg',
  'fixtures/pictures/dahlia.jpg',
])(
  'a symmetric %s stays symmetric: stitches that mirror each other have one bead',
  async (name) => {
    const picture = mirrored(await readPicture(file(name), name));
    const { pattern } = makePattern({
      picture,
      pictureName: 'x',
      title: 'x',
      beads,
      colours: 8,
      shape: {
        wedges: 7,
        rounds: 20,
        beadDiameterMm: 2.1,
        construction: 'joined',
        increase: 'middle',
        lean: 0,
      },
      place: { place: 'fill' },
      art: 'auto',
      background: '#ffffff',
      edges: 0.3,
      lift: 0.5,
      tidy: 2,
    });
    const [panel] = pattern.panels;
    const lay = layPanel(pattern.shape, { startDegrees: panel.startDegrees });
    const { centres, count } = lay.geometry;
    const { art, place } = panel.picture!;
    const laid = { picture, uprightWidth: picture.width, place };
    const { linear } = sampleStitches(lay, laid, { art, background: '#ffffff' });
    const labOf = (s: number) => linearToLab65(linear[3 * s], linear[3 * s + 1], linear[3 * s + 2]);
    const letters = panel.rounds.join('');
    let [pairs, alike] = [0, 0];
    for (let s = 0; s < count; s++) {
      const [x, y] = [-centres[2 * s], centres[2 * s + 1]];
      const other = lay.footprints.owner(x, y);
      if (other <= s) continue;
      if (Math.hypot(centres[2 * other] - x, centres[2 * other + 1] - y) > 0.25) continue;
      // Nearly equal: less than an eye sees beside one another (CIEDE2000 1, common practice, no source).
      if (ciede2000(...labOf(s), ...labOf(other)) > 1) continue;
      pairs++;
      if (letters[s] === letters[other]) alike++;
    }
    expect(pairs).toBeGreaterThan(350);
    // Where two beads are about as near, the edges beside a stitch decide: 1, 1 and 0.97 when this was written.
    expect(alike / pairs).toBeGreaterThan(0.96);
  },
);
