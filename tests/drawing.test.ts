import { describe, expect, it } from 'vitest';
import { srgbToLinear } from '../src/core/colour/srgb.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { ringList } from '../src/core/panel/ring-list.js';
import { makeCoverage } from '../src/core/picture/sampling/coverage.js';
import { makeDrawingChooser } from '../src/core/picture/sampling/drawing.js';
import { placePicture } from '../src/core/picture/sampling/place.js';
import { samplePanel } from '../src/core/picture/sampling/sample.js';
import { completeShape } from '../src/core/panel/shape.js';
import { paint } from './support/paint.js';
import type { Rgba } from './support/paint.js';

const linearOf = (colour: readonly number[]) => colour.slice(0, 3).map((c) => srgbToLinear[c]);

describe('which colour of a cell wins', () => {
  const [black, white, red] = [
    [0, 0, 0],
    [255, 255, 255],
    [220, 40, 30],
  ] as const;
  const whole = Float64Array.of(0, 0, 10, 0, 10, 10, 0, 10);
  const winner = (columns: readonly Rgba[], darkCover?: number): number[] => {
    const picture = paint(10, 10, (x) => columns[Math.floor(x)]);
    const colour = new Float64Array(3);
    const coverage = makeCoverage({ width: 10, height: 10 })(ringList([whole]), 0, 1);
    expect(makeDrawingChooser(darkCover)(coverage, picture, undefined, colour)).toBeDefined();
    return [...colour];
  };
  const mix = (dark: number, light: Rgba, ink: Rgba = black) =>
    Array.from({ length: 10 }, (_, x) => (x < dark ? ink : light));

  it('black from 40 % on, white below; never a grey', () => {
    for (let dark = 0; dark <= 10; dark++) {
      expect(winner(mix(dark, white))).toEqual(linearOf(dark >= 4 ? black : white));
    }
  });

  it('the threshold is a setting', () => {
    expect(winner(mix(2, white), 0.2)).toEqual(linearOf(black));
    expect(winner(mix(4, white), 0.45)).toEqual(linearOf(white));
  });

  it('above half, a dark colour that is the largest may still cover too little', () => {
    for (let dark = 0; dark <= 10; dark++) {
      expect(winner(mix(dark, white), 0.8)).toEqual(linearOf(dark >= 8 ? black : white));
    }
    // Black 4, red 3, white 3: of the lighter ones the largest that covers enough, or the lightest.
    const three = [...mix(4, red).slice(0, 7), white, white, white];
    expect(winner(three, 0.4)).toEqual(linearOf(black));
    expect(winner(three, 0.6)).toEqual(linearOf(white));
  });

  it('a colour that is not clearly darker needs the larger part', () => {
    const [one, other] = [
      [200, 190, 90],
      [230, 110, 190],
    ] as const;
    expect(winner(mix(6, one, other))).toEqual(linearOf(other));
    expect(winner(mix(4, one, other))).toEqual(linearOf(one));
  });

  it('blended edge pixels count with the nearer colour but do not tinge it', () => {
    const columns: Rgba[] = [black, black, black, [60, 60, 60], [190, 190, 190]];
    while (columns.length < 10) columns.push(white);
    expect(winner(columns)[0]).toBeLessThan(0.02);
    expect(winner([...mix(6, red).slice(0, 9), [110, 20, 15]])).toEqual(linearOf(black));
  });

  it('with nothing to see there is no colour', () => {
    const picture = paint(10, 10, () => [0, 0, 0, 0]);
    const coverage = makeCoverage({ width: 10, height: 10 })(ringList([whole]), 0, 1);
    expect(makeDrawingChooser()(coverage, picture, undefined, new Float64Array(3))).toBeUndefined();
  });
});

/*
 * Outlined drawings whose truth is known. Four flat colours; outlines 1/40 of the picture wide,
 * edges smoothed over a pixel as a rasteriser does.
 *
 * Recall: of the stitches that the outline covers to 40 % or more, or whose centre lies within a
 * quarter of a stitch of the outline's middle line, the share whose colour is nearest to the ink.
 * Stray: a stitch whose colour is no colour of the drawing, further than 24 of 255 from each in some
 * channel.
 */
const px = 720;
const ink: Rgba = [24, 20, 32];
const flats: Rgba[] = [
  [248, 244, 230],
  [236, 150, 40],
  [60, 130, 200],
  [110, 180, 90],
];
const inkHalf = px / 80;

/** Signed distances of shapes, nearest first: body, head, belly, eye, beak. */
const shapes: [Rgba, (x: number, y: number) => number][] = [
  [flats[1], (x, y) => ellipse(x, y, 0.5, 0.62, 0.3, 0.24)],
  [flats[2], (x, y) => ellipse(x, y, 0.42, 0.34, 0.19, 0.17)],
  [flats[3], (x, y) => ellipse(x, y, 0.58, 0.66, 0.13, 0.11)],
  [flats[0], (x, y) => ellipse(x, y, 0.38, 0.31, 0.055, 0.055)],
];

function ellipse(x: number, y: number, cx: number, cy: number, rx: number, ry: number): number {
  const [u, v] = [(x / px - cx) / rx, (y / px - cy) / ry];
  const k = Math.hypot(u, v);
  const slope = Math.hypot(u / rx, v / ry) / k;
  return (px * (k - 1)) / slope;
}

/** Distance from the middle line of the outline that shows, and the flat colour there. */
function truthAt(x: number, y: number): { line: number; flat: Rgba } {
  let [line, flat] = [Infinity, flats[0]];
  for (const [colour, distance] of shapes) {
    const d = distance(x, y);
    if (d < inkHalf) line = Math.abs(d);
    else line = Math.min(line, d);
    if (d < 0) flat = colour;
  }
  return { line, flat };
}

const drawing = paint(px, px, (x, y) => {
  const { line, flat } = truthAt(x, y);
  const share = Math.max(0, Math.min(1, inkHalf + 0.5 - line));
  return flat.map((c, k) =>
    Math.round((c as number) * (1 - share) + share * (ink[k] as number)),
  ) as unknown as Rgba;
});

describe('outlines from 20 to 60 cells across', () => {
  it.each([10, 15, 20, 25, 30])(
    '%i rounds: recall 1.5 times the mean’s, strays a third',
    (rounds) => {
      const geometry = panelGeometry(completeShape({ wedges: 7, rounds, beadDiameterMm: 2.1 }));
      const footprints = panelFootprints(geometry);
      const place = placePicture(drawing, geometry, { place: 'fill' });
      const scale = 1 / place.mmPerPixel;
      const cover = inkCover(geometry.count, footprints.owner, scale);
      const measure = (art: 'photo' | 'drawing') => {
        const input = { picture: drawing, geometry, footprints, place, art };
        const { linear } = samplePanel({ ...input, background: [255, 255, 255] });
        let [truly, found, strays] = [0, 0, 0];
        for (let s = 0; s < geometry.count; s++) {
          const got = [...linear.subarray(3 * s, 3 * s + 3)].map(coded);
          const all = [ink, ...flats].map((colour) =>
            Math.max(...got.map((v, k) => Math.abs(v - (colour[k] as number)))),
          );
          if (Math.min(...all) > 24) strays++;
          const { line } = truthAt(
            geometry.centres[2 * s] * scale + px / 2,
            geometry.centres[2 * s + 1] * scale + px / 2,
          );
          if (cover[s] < 0.4 && line > 0.25 * 2.1 * scale) continue;
          truly++;
          if (all[0] === Math.min(...all)) found++;
        }
        return { recall: found / truly, strays: strays / geometry.count };
      };
      const mean = measure('photo');
      const ours = measure('drawing');
      expect(ours.recall).toBeGreaterThanOrEqual(1.5 * mean.recall);
      expect(ours.strays).toBeLessThanOrEqual(mean.strays / 3);
    },
  );
});

/** sRGB of linear light by IEC 61966-2-1, 0 to 255. */
function coded(v: number): number {
  return 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055);
}

/** Share of each footprint under the outline, by asking points on a grid for their owner. */
function inkCover(
  count: number,
  owner: (x: number, y: number) => number,
  scale: number,
): Float64Array {
  const [inked, points] = [new Float64Array(count), new Float64Array(count)];
  for (let x = 0.5; x < px; x += 1.5) {
    for (let y = 0.5; y < px; y += 1.5) {
      const s = owner((x - px / 2) / scale, (y - px / 2) / scale);
      if (s < 0) continue;
      points[s]++;
      if (truthAt(x, y).line < inkHalf) inked[s]++;
    }
  }
  return inked.map((n, s) => n / Math.max(1, points[s]));
}

describe('lines thinner than a stitch', () => {
  it.each([0.3, 0.45])('a ring %s stitches wide stays a ring, one stitch wide', (thickness) => {
    const geometry = panelGeometry(completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1 }));
    const footprints = panelFootprints(geometry);
    const scale = 9; // pixels a millimetre
    const radius = 31.3;
    const pitch = Math.sqrt(geometry.shape.stitchWidthMm * geometry.shape.roundHeightMm);
    const picture = paint(960, 960, (x, y) => {
      const off = Math.abs(Math.hypot(x - 480, y - 480) / scale - radius);
      return off < (thickness * pitch) / 2 ? [0, 0, 0] : [255, 255, 255];
    });
    const place = { ...placePicture(picture, geometry, { place: 'fill' }), mmPerPixel: 1 / scale };
    const input = { picture, geometry, footprints, place, background: [255, 255, 255] } as const;
    const { linear } = samplePanel({ ...input, art: 'drawing' });
    const isDark = (s: number) => linear[3 * s] < 0.1;
    let met = 0;
    for (let degrees = 0; degrees < 360; degrees++) {
      const angle = (degrees * Math.PI) / 180;
      const s = footprints.owner(radius * Math.sin(angle), -radius * Math.cos(angle));
      if (isDark(s) || footprints.neighbours(s).filter(isDark).length >= 2) met++;
    }
    expect(met).toBeGreaterThan(0.85 * 360);
    let dark = 0;
    for (let s = 0; s < geometry.count; s++) {
      if (!isDark(s)) continue;
      dark++;
      const distance = Math.hypot(geometry.centres[2 * s], geometry.centres[2 * s + 1]);
      expect(Math.abs(distance - radius)).toBeLessThan(0.75 * pitch);
    }
    // One stitch wide: about as many stitches as fit around the ring.
    expect((dark * pitch) / (2 * Math.PI * radius)).toBeGreaterThan(0.75);
    expect((dark * pitch) / (2 * Math.PI * radius)).toBeLessThan(1.35);
  });
});

describe('an outline between two sides', () => {
  const geometry = panelGeometry(completeShape({ wedges: 7, rounds: 16, beadDiameterMm: 2.1 }));
  const footprints = panelFootprints(geometry);
  /** Dark stitches of a disc on white with a black outline a third of a stitch thick. */
  const darkRound = (inside: Rgba, sparing: boolean) => {
    const [scale, radius] = [9, 20];
    const thick = geometry.shape.stitchWidthMm / 6;
    const picture = paint(960, 960, (x, y) => {
      const off = Math.hypot(x - 480, y - 480) / scale - radius;
      return Math.abs(off) < thick ? [0, 0, 0] : off < 0 ? inside : [255, 255, 255];
    });
    const place = { ...placePicture(picture, geometry, { place: 'fill' }), mmPerPixel: 1 / scale };
    const input = { picture, geometry, footprints, place, background: [255, 255, 255] } as const;
    const { linear } = samplePanel({ ...input, art: 'drawing', sparing });
    let dark = 0;
    for (let s = 0; s < geometry.count; s++) {
      if (Math.max(...linear.subarray(3 * s, 3 * s + 3)) < 0.1) dark++;
    }
    return dark;
  };

  it('is left out where it is nearer to the darker side than that is to the lighter', () => {
    expect(darkRound([255, 0, 0], true)).toBe(0);
    expect(darkRound([255, 0, 0], false)).toBeGreaterThan(40);
  });

  it('stays where it tells two light sides apart, or is far darker than both', () => {
    const sides: Rgba[] = [
      [255, 255, 255],
      [255, 220, 80],
      [240, 130, 40],
    ];
    for (const inside of sides) {
      expect(darkRound(inside, true)).toBe(darkRound(inside, false));
      expect(darkRound(inside, true)).toBeGreaterThan(40);
    }
  });
});
