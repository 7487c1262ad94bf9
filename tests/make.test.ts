import { expect, test } from 'vitest';
import { nearestBead } from '../src/core/beads/choice/choose.js';
import { hexToLab65, linearToLab65 } from '../src/core/colour/lab.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { makePattern } from '../src/core/make.js';
import type { PanelWish } from '../src/core/make.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { checkPattern } from '../src/core/pattern/read/check.js';
import { lettersInWorkingOrder } from '../src/core/pattern/stitches.js';
import type { Picture } from '../src/core/picture/picture.js';
import { samplePanel } from '../src/core/picture/sampling/sample.js';

const { beads } = readPalette(
  'id,name,hex\nw,foam,#f4f1e6\nr,rust,#b5482a\ns,sea,#1f6f8b\nb,barley,#d9b36a\nk,tar,#202022\n',
  'palette',
  {},
);

/** A picture painted by a rule: r, g, b and, where given, alpha. */
function painted(
  width: number,
  height: number,
  rule: (x: number, y: number) => readonly number[],
): Picture {
  const data = new Uint8Array(4 * width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [r, g, b, a = 255] = rule(x, y);
      data.set([r, g, b, a], 4 * (y * width + x));
    }
  }
  return { width, height, data };
}

function made(picture: Picture, more: Partial<PanelWish> = {}) {
  return makePattern({
    picture,
    pictureName: 'made.png',
    title: 'made',
    beads,
    colours: 5,
    shape: { wedges: 7, rounds: 12, beadDiameterMm: 2.1 },
    place: { place: 'fill' },
    art: 'photo',
    background: '#ffffff',
    ...more,
  });
}

const rust = [0xb5, 0x48, 0x2a] as const;
const sea = [0x1f, 0x6f, 0x8b] as const;

test('letters go by use, most used first, and the pattern is sound', () => {
  const { pattern, report } = made(painted(90, 90, (x) => (x < 30 ? rust : sea)));
  expect(checkPattern(pattern)).toEqual([]);
  expect(pattern.beads.slice(0, 2).map(({ letter, id }) => letter + id)).toEqual(['As', 'Br']);
  expect(report.beads).toBe(report.stitches);
  // Rust and sea are of one lightness: they part in colour only.
  expect(report.warnings.map(({ code }) => code)).toEqual(['beads-alike-in-grey']);
});

test('one colour in, one colour out, with a warning that the picture is lost', () => {
  const { pattern, report } = made(painted(50, 50, () => rust));
  expect(pattern.beads.map((bead) => bead.id)).toEqual(['r']);
  expect(report.meanDifference).toBe(0);
  expect(report.warnings.map((one) => one.code)).toEqual(['one-colour-only']);
});

test('the background is a colour, a bead or bare', () => {
  const half = painted(80, 80, (x) => [...rust, x < 40 ? 255 : 0]);
  const onSea = made(half, { background: 2 }).pattern;
  expect(onSea.beads.map((bead) => bead.id).sort()).toEqual(['r', 's']);
  expect(onSea.panels[0].picture?.background).toBe('#1f6f8b');
  const bare = made(half, { background: 'bare' });
  const letters = lettersInWorkingOrder(bare.pattern.panels[0]);
  const share = [...letters].filter((letter) => letter === '.').length / letters.length;
  expect(share).toBeGreaterThan(0.45);
  expect(share).toBeLessThan(0.55);
  expect(bare.report.beads).toBe([...letters].filter((letter) => letter === 'A').length);
});

test('kept beads are there, left-out beads are not, and too much kept is refused', () => {
  const picture = painted(60, 60, (x) => (x < 30 ? rust : sea));
  const without = made(picture, { leaveOut: [1], colours: 2 }).pattern;
  expect(without.beads.map((bead) => bead.id)).not.toContain('r');
  const { report } = made(picture, { keep: [3], colours: 3 });
  expect(report.warnings.map((one) => one.code)).toContain('kept-bead-unused');
  expect(() => made(picture, { keep: [0, 1, 2], colours: 2 })).toThrow(/more|only|keep/i);
});

test('a large picture, reduced before it is sampled, gives what the whole picture gives', () => {
  // A rosette whose colours run smoothly; over 4 million pixels, so it is reduced.
  const picture = painted(2400, 2000, (x, y) => [
    (x * 255) / 2400,
    128 + 127 * Math.sin(x / 150) * Math.cos(y / 130),
    (y * 255) / 2000,
  ]);
  const { pattern } = made(picture, { shape: { wedges: 7, rounds: 20, beadDiameterMm: 2.1 } });
  const { startDegrees, picture: entry } = pattern.panels[0];
  expect([entry?.width, entry?.height]).toEqual([2400, 2000]);
  const geometry = panelGeometry(pattern.shape, { startDegrees });
  const whole = samplePanel({
    picture,
    geometry,
    footprints: panelFootprints(geometry),
    place: entry!.place,
    art: 'photo',
    background: [255, 255, 255],
  });
  const palette = new Float64Array(pattern.beads.flatMap((bead) => hexToLab65(bead.hex)));
  const letters = lettersInWorkingOrder(pattern.panels[0]);
  let same = 0;
  for (let s = 0; s < geometry.count; s++) {
    const [r, g, b] = whole.linear.subarray(3 * s, 3 * s + 3);
    const nearest = nearestBead(palette, ...linearToLab65(r, g, b));
    if (pattern.beads[nearest].letter === letters[s]) same += 1;
  }
  expect(same / geometry.count).toBeGreaterThan(0.995);
});
