import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RondureError } from '../src/core/errors.js';
import { panelGeometry } from '../src/core/geometry/panel.js';
import type { PanelGeometry } from '../src/core/geometry/panel.js';
import { completeShape, flatHeightPerWidth, stitchesBefore } from '../src/core/shape.js';
import type { Shape } from '../src/core/shape.js';
import { rimWedge } from '../src/core/swatch/model.js';
import { solveSwatch } from '../src/core/swatch/solve.js';
import type { SwatchWish } from '../src/core/swatch/solve.js';
import { parseSwatch, swatchText } from '../src/core/swatch/swatch-file.js';
import { smallSwatch } from './support/swatch.js';

/** Any panel that lies flat, of any way of working, with its height, lean and beads. */
const anyPanel = fc
  .record({
    wedges: fc.integer({ min: 3, max: 12 }),
    rounds: fc.integer({ min: 3, max: 24 }),
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
  const from = shape.rounds > 4 ? 2 : 1;
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
        expect(Math.abs(swatch.roundHeightMm!.value - shape.roundHeightMm)).toBeLessThan(2e-6);
        expect(Math.abs(swatch.stitchWidthMm!.value - shape.stitchWidthMm)).toBeLessThan(2e-6);
        expect(Math.abs(swatch.lean!.value - shape.lean)).toBeLessThan(2e-6);
        expect(Math.abs(swatch.flatWedges!.value - shape.wedges)).toBeLessThan(1e-4);
      }),
      { numRuns: 120 },
    );
  });
});
