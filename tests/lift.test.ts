import { describe, expect, it } from 'vitest';
import type { Bead } from '../src/core/beads/bead.js';
import { lab65ToLinear, linearToLab65 } from '../src/core/colour/lab.js';
import type { StitchColours } from '../src/core/picture/sampling/sample.js';
import { liftTone } from '../src/core/picture/tone/lift.js';

const bead = (L: number): Bead =>
  ({ id: `${L}`, name: `${L}`, hex: '#000000', lab: [L, 0, 0] }) as never;
const beads = [bead(12), bead(50), bead(95)];

function coloursOf(labs: readonly (readonly [number, number, number])[]): StitchColours {
  const linear = Float64Array.from(labs.flatMap((lab) => lab65ToLinear(...lab)));
  const covered = new Float64Array(labs.length).fill(1);
  return {
    linear,
    covered,
    bare: new Uint8Array(labs.length),
    lostLines: () => ({ share: 0, stroke: 0 }),
    mixed: () => 0,
    hatched: () => 0,
  };
}

const labsOf = ({ linear }: StitchColours) =>
  Array.from({ length: linear.length / 3 }, (_, s) =>
    linearToLab65(linear[3 * s], linear[3 * s + 1], linear[3 * s + 2]),
  );

/** A ramp of lightness with a little colour. */
const ramp = (from: number, to: number, a = 0, b = 0) =>
  Array.from({ length: 101 }, (_, k) => [from + ((to - from) * k) / 100, a, b] as const);

const rangeOf = (labs: readonly (readonly number[])[]) =>
  Math.max(...labs.map(([L]) => L)) - Math.min(...labs.map(([L]) => L));

describe('lift', () => {
  it('stretches a picture of little contrast, within what the beads show', () => {
    const lifted = labsOf(liftTone(coloursOf(ramp(40, 60)), beads, 1));
    // Twenty steps of lightness, stretched 1.8-fold at most.
    expect(rangeOf(lifted)).toBeGreaterThan(1.7 * 20);
    expect(rangeOf(lifted)).toBeLessThan(1.9 * 20);
    const bright = labsOf(liftTone(coloursOf(ramp(80, 94)), beads, 1));
    expect(Math.max(...bright.map(([L]) => L))).toBeLessThanOrEqual(95.001);
  });

  it('leaves a faithful picture, and one of a single colour, exactly as it came', () => {
    for (const labs of [ramp(10, 90, 5, 5), ramp(50, 52)]) {
      const colours = coloursOf(labs);
      expect(liftTone(colours, beads, 1)).toBe(colours);
    }
    // An orange: little lightness between skin and flesh, and a great deal of hue.
    const orange = coloursOf(
      Array.from({ length: 101 }, (_, k) => [80 + k / 10, 10, 30 + k / 2] as const),
    );
    expect(liftTone(orange, beads, 1)).toBe(orange);
    const dull = coloursOf(ramp(40, 60));
    expect(liftTone(dull, beads, 0)).toBe(dull);
  });

  it('keeps hues, keeps grey grey, and stays within sRGB', () => {
    const tinted = labsOf(liftTone(coloursOf(ramp(40, 60, 12, -9)), beads, 1));
    for (const [, a, b] of tinted) {
      expect(Math.atan2(b, a)).toBeCloseTo(Math.atan2(-9, 12), 3);
      expect(Math.hypot(a, b)).toBeGreaterThan(15);
    }
    for (const [, a, b] of labsOf(liftTone(coloursOf(ramp(40, 60)), beads, 1))) {
      expect(Math.hypot(a, b)).toBeLessThan(0.01);
    }
    // Near the gamut's edge: sRGB blue is 32, 79, -108.
    const vivid = liftTone(coloursOf(ramp(28, 40, 60, -80)), beads, 1);
    expect(Math.min(...vivid.linear)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...vivid.linear)).toBeLessThanOrEqual(1);
  });

  it('does not let the ground decide, and remembers the picture’s own colours', () => {
    const colours = coloursOf([...ramp(40, 60), ...ramp(100, 100)]);
    colours.covered.fill(0, 101);
    const lifted = liftTone(colours, beads, 1);
    expect(rangeOf(labsOf(lifted).slice(0, 101))).toBeGreaterThan(1.7 * 20);
    expect(labsOf(lifted)[150]).toEqual(labsOf(colours)[150]);
    expect(lifted.own).toBe(colours.linear);
  });
});
