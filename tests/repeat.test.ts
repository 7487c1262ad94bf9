import { describe, expect, it } from 'vitest';
import { makePattern } from '../src/core/make.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { roundsText } from '../src/core/pages/lists/rounds.js';
import { en } from '../src/words/index.js';
import { paint, sequence } from './support/paint.js';

const palette = readPalette('hex\n#ffffff\n#a01020\n#1040a0\n#208040\n#e0c020\n', 'test.csv');

/** Blots of five colours without any symmetry of their own. */
function blots() {
  const next = sequence(11);
  const spots = Array.from({ length: 40 }, () => [next(120), next(120), next(5)]);
  const colours = [
    [255, 255, 255],
    [160, 16, 32],
    [16, 64, 160],
    [32, 128, 64],
    [224, 192, 32],
  ] as const;
  return paint(120, 120, (x, y) => {
    const near = spots.reduce((a, b) =>
      Math.hypot(x - a[0], y - a[1]) < Math.hypot(x - b[0], y - b[1]) ? a : b,
    );
    return colours[near[2]];
  });
}

const shapes = [
  { wedges: 7, rounds: 12 },
  { wedges: 7, rounds: 12, hand: 'left' },
  { wedges: 6, rounds: 15, increase: 'first', lean: -0.5 },
  { wedges: 5, rounds: 10, increase: 'middle', beadsFace: 'toward' },
  { wedges: 12, rounds: 9, construction: 'joined', outline: 'circle', hand: 'left' },
  { wedges: 3, rounds: 14, construction: 'joined', lean: 0.2, beadsFace: 'toward' },
] as const;

describe('--repeat', () => {
  it.each(shapes)('gives every wedge the same stitches, told once a round: %o', (shape) => {
    for (const art of ['photo', 'drawing'] as const) {
      const { pattern } = makePattern({
        picture: blots(),
        pictureName: 'blots',
        title: 'blots',
        beads: palette.beads,
        colours: 5,
        shape: { ...shape, beadDiameterMm: 2.1 },
        place: {
          place: 'fill',
          zoom: 1,
          shiftXmm: 0,
          shiftYmm: 0,
          rotateDegrees: 0,
          mirror: false,
          repeat: true,
        },
        art,
        background: '#ffffff',
      });
      expect(pattern.beads.length).toBeGreaterThan(2);
      const { rounds } = pattern.panels[0];
      rounds.forEach((marks, index) => {
        const wedge = marks.slice(0, index + 1);
        expect(marks).toBe(wedge.repeat(shape.wedges));
      });
      // Round 1 has no pairs, and so one run of N stitches says it all.
      const [first, ...lines] = roundsText(pattern, 0, en)
        .replaceAll('\n    ', ' ')
        .split('\n')
        .filter((line) => /^R\d/.test(line));
      expect(first).toMatch(new RegExp(`: ${shape.wedges}[A-E]$`));
      expect(lines).toHaveLength(shape.rounds - 1);
      for (const line of lines) {
        expect(line).toMatch(new RegExp(`: \\([^()]+\\) x ${shape.wedges}$`));
      }
    }
  });

  it('keeps lines thinner than a stitch, the same in every wedge', () => {
    // A black cross on white, its bars a quarter of a stitch wide.
    const picture = paint(200, 200, (x, y) =>
      Math.min(Math.abs(x - 77), Math.abs(y - 113)) < 3 ? [0, 0, 0] : [255, 255, 255],
    );
    const black = readPalette('hex\n#ffffff\n#000000\n', 'test.csv');
    const { pattern } = makePattern({
      picture,
      pictureName: 'cross',
      title: 'cross',
      beads: black.beads,
      colours: 2,
      shape: { wedges: 7, rounds: 20, beadDiameterMm: 2.1 },
      place: { place: 'inside', zoom: 1, shiftXmm: 0, shiftYmm: 0, rotateDegrees: 0, mirror: false, repeat: true }, // prettier-ignore
      art: 'drawing',
      background: '#ffffff',
    });
    const { rounds } = pattern.panels[0];
    const dark = pattern.beads.find(({ hex }) => hex === '#000000')!.letter;
    rounds.forEach((marks, index) => expect(marks).toBe(marks.slice(0, index + 1).repeat(7)));
    const inWedge = rounds.map((marks, index) => marks.slice(0, index + 1).split(dark).length - 1);
    // The upright crosses every one of ten rounds, the bar lies along one of them.
    expect(inWedge.filter((count) => count > 0)).toHaveLength(10);
    expect(Math.max(...inWedge)).toBeGreaterThanOrEqual(8);
  });
});

describe('a motif that is finer than a bead', () => {
  const said = (thick: number, repeat: boolean) => {
    // Bands in two colours, woven over and under, on white; 1 mm of the motif is about 6 pixels.
    const picture = paint(300, 300, (x, y) => {
      if (Math.hypot(x - 150, y - 150) > 140) return [255, 255, 255];
      const [a, b] = [Math.floor((x + y) / thick), Math.floor((x - y + 900) / thick)];
      const tones = [[160, 16, 32], [255, 255, 255], [16, 64, 160]] as const; // prettier-ignore
      return tones[(a + 2 * b) % 3];
    });
    const { report } = makePattern({
      picture,
      pictureName: 'weave.png',
      title: 'Weave',
      shape: { wedges: 7, rounds: 18, beadDiameterMm: 2.1 },
      place: { place: 'fill', repeat },
      art: 'drawing',
      beads: palette.beads,
      colours: 4,
      background: '#ffffff',
    });
    return report.warnings.find(({ code }) => code === 'motif-too-fine');
  };

  it('is told with its share, where it repeats', () => {
    const fine = said(12, true);
    expect((fine?.facts as { percent: number }).percent).toBeGreaterThan(60);
    expect(said(90, true)).toBeUndefined();
  });
});
