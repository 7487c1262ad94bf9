import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RondureError } from '../src/core/errors.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import type { PanelGeometry } from '../src/core/panel/geometry.js';
import { completeShape, flatHeightPerWidth, stitchesBefore } from '../src/core/panel/shape.js';
import type { Shape } from '../src/core/panel/shape.js';
import { rimWedge } from '../src/core/swatch/model.js';
import { solveSwatch } from '../src/core/swatch/solve.js';
import type { SwatchWish } from '../src/core/swatch/solve.js';
import { parseSwatch, swatchText } from '../src/core/swatch/swatch-file.js';
import { en } from '../src/words/index.js';
import { smallSwatch } from './support/swatch.js';

/** Any panel that lies flat, of any way of working, with its height, lean and beads. */
const anyPanel = fc
  .record({
    wedges: fc.integer({ min: 3, max: 12 }),
    rounds: fc.integer({ min: 5, max: 20 }),
    increase: fc.constantFrom('first', 'middle', 'last'),
    lean: fc.double({ min: -1, max: 1, noNaN: true }),
    polygon: fc.boolean(),
    construction: fc.constantFrom('spiral', 'joined'),
    hand: fc.constantFrom('right', 'left'),
    beadsFace: fc.constantFrom('away', 'toward'),
    roundHeightMm: fc.double({ min: 1.4, max: 5, noNaN: true }),
    perPitch: fc.double({ min: 0.9, max: 1.02, noNaN: true }),
    wedge: fc.integer({ min: 1, max: 12 }),
  })
  .map(({ polygon, perPitch, wedge, ...rest }) => {
    const outline = polygon && rest.increase !== 'middle' ? 'polygon' : 'circle';
    const stitchWidthMm = rest.roundHeightMm / flatHeightPerWidth(rest.wedges, outline);
    const beadMm = perPitch * Math.sqrt(stitchWidthMm * rest.roundHeightMm);
    const wish = { ...rest, outline, stitchWidthMm, beadDiameterMm: beadMm } as const;
    const shape = completeShape(wish as Parameters<typeof completeShape>[0]);
    return { shape, beadMm, wedge: Math.min(wedge, rest.wedges) };
  });

const middle = ({ centres, shape }: PanelGeometry, r: number, i: number) => {
  const s = stitchesBefore(shape, r) + i;
  return [centres[2 * s], centres[2 * s + 1]] as const;
};

/** Callipers over the outer edges of all beads of the panel, each a disc. */
function callipers(geometry: PanelGeometry, beadMm: number): number {
  const { centres, count } = geometry;
  let widest = 0;
  for (let s = 0; s < count; s++) {
    for (let t = s + 1; t < count; t++) {
      const [dx, dy] = [centres[2 * s] - centres[2 * t], centres[2 * s + 1] - centres[2 * t + 1]];
      widest = Math.max(widest, Math.hypot(dx, dy));
    }
  }
  return widest + beadMm;
}

/** A thread laid from bead middle to bead middle of the rim, in the middle of the opposite wedge. */
function alongRim(geometry: PanelGeometry): { stitches: number; mm: number } {
  const { wedges, rounds } = geometry.shape;
  const first = (rimWedge(wedges) - 1) * rounds;
  let mm = 0;
  for (let i = first; i < first + rounds - 1; i++) {
    const [x, y] = middle(geometry, rounds, i);
    const [nextX, nextY] = middle(geometry, rounds, i + 1);
    mm += Math.hypot(nextX - x, nextY - y);
  }
  return { stitches: rounds - 1, mm };
}

/** The way of the marked stitch around the centre, round by round, with the work; degrees. */
function turned(geometry: PanelGeometry, wedge: number, from: number, to: number): number {
  let degrees = 0;
  const angle = (r: number) => {
    const [x, y] = middle(geometry, r, (wedge - 1) * r);
    return (geometry.direction * Math.atan2(x, -y) * 180) / Math.PI;
  };
  for (let r = from; r < to; r++) degrees += ((angle(r + 1) - angle(r) + 540) % 360) - 180;
  return degrees;
}

function measuredOn(shape: Shape, beadMm: number, wedge: number): SwatchWish {
  const geometry = panelGeometry(shape);
  const rim = alongRim(geometry);
  const from = 2;
  const { stitchWidthMm: _w, roundHeightMm: _h, lean: _l, ...worked } = shape;
  return {
    worked,
    lies: 'flat',
    measured: {
      beadMm,
      beadOffMm: 0,
      acrossMm: callipers(geometry, beadMm),
      rimStitches: rim.stitches,
      rimMm: rim.mm,
      turnDegrees: turned(geometry, wedge, from, shape.rounds),
      turnOffDegrees: 2,
      fromRound: from,
      toRound: shape.rounds,
      markedWedge: wedge,
      rulerMm: 0.5,
    },
  };
}

describe('a swatch', () => {
  it('gives back height, width and lean of any panel that is measured on its bead middles', () => {
    fc.assert(
      fc.property(anyPanel, ({ shape, beadMm, wedge }) => {
        const { swatch } = solveSwatch(measuredOn(shape, beadMm, wedge));
        expect(Math.abs(swatch.roundHeightMm!.value - shape.roundHeightMm)).toBeLessThan(1.01e-6);
        expect(Math.abs(swatch.stitchWidthMm!.value - shape.stitchWidthMm)).toBeLessThan(1.01e-6);
        expect(Math.abs(swatch.lean!.value - shape.lean)).toBeLessThan(1.01e-6);
        expect(Math.abs(swatch.flatWedges!.value - shape.wedges)).toBeLessThan(1e-4);
      }),
      { numRuns: 80 },
    );
  });

  it('keeps the truth within its bars when every measurement is off as far as the ruler allows', () => {
    const anyShift = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), {
      minLength: 4,
      maxLength: 4,
    });
    fc.assert(
      fc.property(anyPanel, anyShift, ({ shape, beadMm, wedge }, [a, b, c, d]) => {
        fc.pre(Math.abs(shape.lean) < 0.9 && shape.rounds > 5);
        const wish = measuredOn(shape, beadMm, wedge);
        const { measured } = wish;
        const off = {
          ...measured,
          beadMm: beadMm + 0.05 * d,
          beadOffMm: 0.05,
          acrossMm: measured.acrossMm! + 0.5 * a,
          rimMm: measured.rimMm! + 0.5 * b,
          turnDegrees: measured.turnDegrees! + 2 * c,
        };
        const { swatch } = solveSwatch({ ...wish, measured: off });
        for (const [key, truth] of [
          ['roundHeightMm', shape.roundHeightMm],
          ['stitchWidthMm', shape.stitchWidthMm],
          ['lean', shape.lean],
          ['flatWedges', shape.wedges],
        ] as const) {
          const { least, value, most } = swatch[key]!;
          expect(truth, key).toBeGreaterThan(least - 1e-3);
          expect(truth, key).toBeLessThan(most + 1e-3);
          expect(least).toBeLessThanOrEqual(value);
          expect(value).toBeLessThanOrEqual(most);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('finds the outline that goes with the lean where none is said', () => {
    const shape = completeShape({ wedges: 7, rounds: 10, beadDiameterMm: 2.1 });
    const wish = measuredOn(shape, 2.1, 1);
    const { outline: _outline, ...worked } = wish.worked;
    const { swatch } = solveSwatch({ ...wish, worked });
    expect(swatch.worked.outline).toBe('polygon');
    expect(swatch.lean!.value).toBeCloseTo(0.5, 5);
    expect(swatch.roundHeightMm!.value).toBeCloseTo(shape.roundHeightMm, 5);
  });

  it.each(['cups', 'ruffles'] as const)(
    'that %s gives no height from its width, and says so',
    (lies) => {
      const shape = completeShape({ wedges: 7, rounds: 10, beadDiameterMm: 2.1 });
      const { swatch, warnings } = solveSwatch({ ...measuredOn(shape, 2.1, 1), lies });
      expect(swatch.roundHeightMm).toBeUndefined();
      expect(swatch.flatWedges).toBeUndefined();
      expect(swatch.stitchWidthMm!.value).toBeCloseTo(shape.stitchWidthMm, 3);
      expect(warnings.map(({ code }) => code)).toEqual(['swatch-no-height']);
    },
  );

  it('says when width and rim of a flat piece do not agree', () => {
    const shape = completeShape({ wedges: 7, rounds: 10, beadDiameterMm: 2.1 });
    const wish = measuredOn(shape, 2.1, 1);
    const codes = (share: number) => {
      const measured = { ...wish.measured, rimMm: wish.measured.rimMm! * share };
      return solveSwatch({ ...wish, measured }).warnings.map(({ code }) => code);
    };
    expect(codes(1)).toEqual([]);
    expect(codes(0.85)).toEqual(['swatch-rim-short']);
    expect(codes(1.15)).toEqual(['swatch-rim-long']);
  });

  // A cone of half-angle asin(N/N*) is as wide as its rim is long: plane geometry, no source needed.
  it('knows the flat number of increases, 2π·h/w on a circle', () => {
    const wish = measuredOn(
      completeShape({ wedges: 6, rounds: 12, outline: 'circle', beadDiameterMm: 2.1 }),
      2.1,
      1,
    );
    const { swatch } = solveSwatch(wish);
    const { roundHeightMm: h, stitchWidthMm: w } = swatch;
    expect(swatch.flatWedges!.value).toBeCloseTo((2 * Math.PI * h!.value) / w!.value, 4);
  });

  it('refuses what cannot be, with the range of what can', () => {
    const shape = completeShape({ wedges: 7, rounds: 10, beadDiameterMm: 2.1 });
    const wish = measuredOn(shape, 2.1, 1);
    const refusal = (measured: Partial<SwatchWish['measured']>) => {
      try {
        solveSwatch({ ...wish, measured: { ...wish.measured, ...measured } });
      } catch (error) {
        if (error instanceof RondureError) return { code: error.code, facts: error.facts };
        throw error;
      }
      return undefined;
    };
    expect(refusal({})).toBeUndefined();
    for (const acrossMm of [0.1, 2, 12, 400]) {
      expect(refusal({ acrossMm })?.code).toBe('measurement-impossible');
    }
    expect(refusal({ rimStitches: 70, rimMm: 50 })?.code).toBe('measurement-impossible');
    expect(refusal({ rimStitches: 4, rimMm: 50 })?.code).toBe('measurement-impossible');
    expect(refusal({ threadMm: 100, threadStitches: 42 })?.code).toBe('measurement-impossible');
    expect(refusal({ fiftyBeadsMm: 7.5 })?.code).toBe('measurement-impossible');
    // 7 wedges: 50 mm over 0.45 and 3 beads of 2.1 mm are 52.91 and 7.94 stitches.
    const rim = {
      unit: 'stitches' as const,
      rounds: 10,
      beadMm: 2.1,
      least: 50 / 6.3,
      most: 50 / 0.945,
    };
    const facts = { option: '--rim-stitches', got: 53, ...rim };
    const sentence = en.errors['measurement-impossible'](facts);
    expect(sentence).toMatch(/ it is 8 to 52\.9\. /);
    const leanOf3 = refusal({ turnDegrees: -250 });
    expect(leanOf3?.code).toBe('turn-impossible');
    expect(leanOf3?.facts).toMatchObject({ otherWay: false, from: 2, to: 10 });
  });
});

/** The file of a swatch with so much thread a stitch, millimetres. */
function withThread(value: number): string {
  return swatchText({ ...smallSwatch(), perStitchMm: { value, least: value, most: value } });
}

describe('the file of a swatch', () => {
  it('reads back as it was written', () => {
    expect(parseSwatch(swatchText(smallSwatch()), 'swatch.json')).toEqual(smallSwatch());
  });

  it.each([
    ['{"format":"rondure-pattern"}', 'swatch-not-ours'],
    ['not json', 'swatch-not-ours'],
    ['[]', 'swatch-not-ours'],
    ['{"format":"rondure-swatch","version":2}', 'swatch-too-new'],
    ['{"format":"rondure-swatch","version":1}', 'swatch-invalid'],
    [swatchText(smallSwatch()).replace('"lean": {', '"lien": {'), 'swatch-invalid'],
    [swatchText(smallSwatch()).replace(/"value": -?0\.\d+/, '"value": 3'), 'swatch-invalid'],
    [withThread(-1), 'swatch-invalid'],
    [withThread(1e300), 'swatch-invalid'],
    [swatchText(smallSwatch()).replace('"flat"', '"wobbles"'), 'swatch-invalid'],
  ])('is refused when it is not sound (%#)', (text, code) => {
    expect(() => parseSwatch(text, 'swatch.json')).toThrow(expect.objectContaining({ code }));
  });
});
