import fc from 'fast-check';
import { readPalette } from '../../src/core/beads/palette/read-palette.js';
import { Charting } from '../../src/core/charting.js';
import { makePattern } from '../../src/core/make.js';
import type { PanelWish } from '../../src/core/make.js';
import { patternText } from '../../src/core/pattern/serialise.js';
import type { Picture } from '../../src/core/picture/picture.js';
import { drain } from '../../src/core/steps.js';

// Long series of changes of a wish, for Node and for a browser alike: nothing here knows of either.

const { beads } = readPalette(
  'id,name,hex,count\nr,rust,#b5482a,900\ns,sea,#1f6f8b,900\nb,barley,#d9b36a,900\n' +
    'f,foam,#f4f1e6,2000\nd,dusk,#2b2740,700\nm,moss,#5f7a3a,300\np,plum,#6d3b5e,400\n',
  'palette',
  {},
);

/** Blocks of flat colour, some of them see-through, and some noise. */
function picture(width: number, height: number, seed: number, flat: boolean): Picture {
  const data = new Uint8Array(4 * width * height);
  let state = seed;
  for (let p = 0; p < width * height; p++) {
    const [x, y] = [p % width, Math.floor(p / width)];
    const block = ((x >> 3) * 7 + (y >> 3) * 13 + seed) % 11;
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
    const noise = flat ? 0 : (state >> 16) & 31;
    data[4 * p] = Math.min(255, block * 23 + noise);
    data[4 * p + 1] = Math.min(255, ((block * 5) % 11) * 23 + noise);
    data[4 * p + 2] = Math.min(255, ((block * 3) % 11) * 23 + noise);
    data[4 * p + 3] = block === 4 ? 0 : block === 7 ? 128 : 255;
  }
  return { width, height, data };
}

const pictures = [picture(60, 40, 3, true), picture(40, 44, 5, false), picture(31, 31, 8, true)];
const masks = pictures.map(({ width, height }, n) => ({
  picture: picture(width, height, 20 + n, true),
  name: `mask-${n}.png`,
}));

export const first: PanelWish = {
  picture: pictures[0],
  pictureName: 'one.png',
  title: 'One',
  beads,
  colours: 4,
  shape: { wedges: 7, rounds: 9, beadDiameterMm: 2.1 },
  place: { place: 'fill' },
  art: 'auto',
  background: '#ffffff',
};

const place = fc.record({
  place: fc.constantFrom('subject', 'fit', 'fill', 'inside'),
  zoom: fc.constantFrom(0.6, 1, 1.7),
  shiftXmm: fc.constantFrom(0, 4.5),
  shiftYmm: fc.constantFrom(0, -3),
  rotateDegrees: fc.constantFrom(0, 33, 90),
  mirror: fc.boolean(),
  repeat: fc.constantFrom(false, false, true),
});

const shape = fc.record({
  wedges: fc.constantFrom(6, 7),
  rounds: fc.constantFrom(5, 9),
  beadDiameterMm: fc.constant(2.1),
  lean: fc.constantFrom(0, 0.35),
  construction: fc.constantFrom('spiral', 'joined'),
});

const frame = { widthMm: 25, heightMm: 12, fixing: 'sewn', ratio: 1.15, gatherPercent: 0 } as const;

const change = fc.oneof(
  place.map((one) => ({ place: one })),
  shape.map((one) => ({ shape: one })),
  fc.constantFrom(2, 4, 6).map((colours) => ({ colours })),
  fc.constantFrom(0, 1, 2).map((n) => ({ picture: pictures[n], pictureName: `${n}.png` })),
  fc.constantFrom('photo', 'drawing', 'auto').map((art) => ({ art })),
  fc.constantFrom(0, 0.25, 1).map((detail) => ({ detail })),
  fc.constantFrom(undefined, 0.3, 0.8).map((edges) => ({ edges })),
  fc.constantFrom(undefined, 0.5).map((lift) => ({ lift })),
  fc.constantFrom(0.1, 0.4, undefined).map((darkCover) => ({ darkCover })),
  fc.constantFrom('#ffffff', 'auto', '#204060', 'bare', 3).map((background) => ({ background })),
  fc.constantFrom(undefined, [1], [5]).map((keep) => ({ keep })),
  fc.constantFrom(undefined, [2], [6]).map((leaveOut) => ({ leaveOut })),
  fc.constantFrom('off', 'normal', undefined).map((proof) => ({ proof })),
  fc.constantFrom(
    { tidy: 3, dither: undefined },
    { tidy: undefined, dither: 0.7 },
    { tidy: undefined, dither: undefined },
  ),
  fc
    .constantFrom(
      undefined,
      'same',
      { plain: 1 },
      { picture: pictures[2], pictureName: 'back.png' },
    )
    .map((back) => ({ back })),
  fc.constantFrom(0, 1, 2, undefined).map((n) => ({ mask: n === undefined ? n : masks[n] })),
  fc.constantFrom(true, undefined).map((paper) => ({ paper })),
  fc.constantFrom(true, undefined).map((useStock) => ({ useStock })),
  fc.constantFrom(frame, undefined).map((one) => ({ frame: one })),
  fc.constantFrom(undefined, 12).map((startDegrees) => ({ startDegrees })),
  fc.constantFrom('One', 'Two').map((title) => ({ title })),
  fc.constant({ beads: beads.slice(0, 6) }),
);

/** Changes of a wish, one after another. */
export const series = fc.array(change, { minLength: 15, maxLength: 25 });
export type Series = readonly { [K in keyof PanelWish]?: PanelWish[K] | undefined }[];

/** What comes of a wish: the pattern's bytes and the report, or what was refused. */
function outcome(make: () => ReturnType<typeof makePattern>): string {
  try {
    const { pattern, report } = make();
    return patternText(pattern) + JSON.stringify(report);
  } catch (error) {
    return String(error);
  }
}

/** What a new Charting makes of a wish: see `afterEach`. */
export const anew = (wish: PanelWish): string => outcome(() => makePattern(wish));

/**
 * What one Charting makes after each change; sometimes it is followed, sometimes begun and dropped.
 *
 * @returns the outcome and the wish that it belongs to
 */
export function* afterEach(changes: Series): Generator<{ got: string; wish: PanelWish }> {
  const charting = new Charting(first);
  for (const [n, part] of changes.entries()) {
    charting.change(part);
    if (n % 3 === 0) outcome(() => (charting.follow(), makePattern(first)));
    if (n % 4 === 1) {
      const dropped = charting.settle();
      for (let step = 0; step < 1 + ((n * n * 7) % 300); step++) {
        try {
          if (dropped.next().done) break;
        } catch {
          break;
        }
      }
    }
    yield { got: outcome(() => drain(charting.settle())), wish: charting.wish };
  }
}

/** All outcomes of so many series that belong to a seed. */
export function outcomes(many: number, seed: number): string[] {
  return fc
    .sample(series, { numRuns: many, seed })
    .flatMap((changes) => Array.from(afterEach(changes as Series), ({ got }) => got));
}
