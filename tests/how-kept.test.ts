import { describe, expect, it } from 'vitest';
import { drain } from '../src/core/steps.js';
import { howKept } from '../src/core/beads/how-kept.js';

const side = 12;
const at = (x: number, y: number) => y * side + x;

/** The four cells that share a side. */
const neighbours = (s: number): number[] => {
  const [x, y] = [s % side, Math.floor(s / side)];
  return [
    ...(x > 0 ? [s - 1] : []),
    ...(x + 1 < side ? [s + 1] : []),
    ...(y > 0 ? [s - side] : []),
    ...(y + 1 < side ? [s + side] : []),
  ];
};

const palette = Float64Array.of(95, 0, 0, 20, 0, 0, 60, 60, 40);

/** A field of lightness 95 whose cells a rule changes. */
function field(rule: (x: number, y: number) => readonly number[] | undefined): Float64Array {
  return Float64Array.from(
    Array.from({ length: side * side }, (_, s) => [
      ...(rule(s % side, Math.floor(s / side)) ?? [95, 0, 0]),
    ]).flat(),
  );
}

/** Middles of the cells, from the centre of the field. */
const centres = Float64Array.from({ length: 2 * side * side }, (_, k) => {
  const s = k >> 1;
  return (k & 1 ? Math.floor(s / side) : s % side) + 0.5 - side / 2;
});
const rest = { palette, neighbours, centres };

describe('how well a picture is kept', () => {
  // Half the field dark, and a red eye of two by two in the light half.
  const stitches = field((x, y) =>
    x >= 6 ? [20, 0, 0] : x >= 2 && x < 4 && y >= 5 && y < 7 ? [60, 60, 40] : undefined,
  );
  const right = Int16Array.from({ length: side * side }, (_, s) => {
    const [L, a] = stitches.subarray(3 * s, 3 * s + 2);
    return a > 0 ? 2 : L > 50 ? 0 : 1;
  });

  it('is all of it where every stitch has its own colour', () => {
    const facts = drain(howKept({ stitches, beadOf: right, ...rest }));
    expect(facts).toEqual({
      edges: 1,
      features: 1,
      featuresKept: 1,
      lost: [],
      merged: 0,
      mergedAreas: [],
    });
  });

  it('counts a lost eye and its edges, worked by hand', () => {
    const beadOf = right.map((bead) => (bead === 2 ? 0 : bead));
    const facts = drain(howKept({ stitches, beadOf, ...rest }));
    // Twelve pairs between the halves, eight around the eye.
    expect(facts.edges).toBeCloseTo(12 / 20, 12);
    expect([facts.features, facts.featuresKept]).toEqual([1, 0]);
    expect([...facts.lost].sort((a, b) => a - b)).toEqual([at(2, 5), at(3, 5), at(2, 6), at(3, 6)]);
  });

  it('counts areas that got one bead', () => {
    const facts = drain(howKept({ stitches, beadOf: right.map(() => 0), ...rest }));
    expect(facts.merged).toBe(1);
    // The light half, left of the middle, can no longer be told from the dark one, or the other way round.
    const [{ lab, into, hour, stitches: many }] = facts.mergedAreas;
    expect([lab[0], into[0]].sort()).toEqual([20, 95]);
    expect(hour).toBe(lab[0] === 20 ? 3 : 9);
    expect(many.length).toBe(lab[0] === 20 ? 72 : 68);
    expect(facts.edges).toBe(0);
  });

  it('has no share of edges where the picture has none', () => {
    const flat = field(() => undefined);
    const facts = drain(howKept({ stitches: flat, beadOf: right.map(() => 0), ...rest }));
    expect([facts.edges, facts.features, facts.merged]).toEqual([undefined, 0, 0]);
  });

  it('leaves stitches without a bead out', () => {
    const beadOf = right.slice();
    for (let y = 0; y < side; y++) beadOf[at(6, y)] = -1;
    const facts = drain(howKept({ stitches, beadOf, ...rest }));
    expect(facts.edges).toBe(1);
  });
});
