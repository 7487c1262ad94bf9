import fc from 'fast-check';
import { letters } from '../../src/core/pattern/marks.js';
import type { Pattern } from '../../src/core/pattern/pattern.js';
import type { PatternBead } from '../../src/core/beads/bead.js';
import type { Shape, ShapeWish } from '../../src/core/panel/shape.js';
import { completeShape } from '../../src/core/panel/shape.js';

/** `count` beads named by the letters in order. */
export function someBeads(count: number): PatternBead[] {
  return Array.from(letters.slice(0, count), (letter, index) => ({
    letter,
    id: `op-${index + 1}`,
    name: `colour ${index + 1}`,
    hex: `#${(index * 654321).toString(16).padStart(6, '0').slice(0, 6)}`,
    size: '11/0',
    diameterMm: 2.1,
    beadsPerGram: 110,
  }));
}

/** A pattern with these rounds; its shape follows their number and the given wish. */
export function patternOf(
  rounds: string[],
  wish: Partial<ShapeWish> = {},
  beads: PatternBead[] = someBeads(4),
): Pattern {
  const shape: Shape = completeShape({
    wedges: rounds[0].length,
    rounds: rounds.length,
    beadDiameterMm: 2.1,
    ...wish,
  });
  return {
    format: 'rondure-pattern',
    version: 1,
    title: 'Barley moon',
    shape,
    beads,
    panels: [{ name: 'front', startDegrees: 0, rounds }],
  };
}

const increases = ['first', 'middle', 'last'] as const;

/** Any pattern: few or many colours, plain wedges, equal wedges or any mixture, bare and open too. */
export const anyPattern: fc.Arbitrary<Pattern> = fc
  .record({
    wedges: fc.integer({ min: 3, max: 12 }),
    rounds: fc.integer({ min: 2, max: 12 }),
    increase: fc.constantFrom(...increases),
    marks: fc.constantFrom('A', 'AAAB', 'AB', 'ABCX', 'AAA.', 'AB._', letters),
    equalWedges: fc.boolean(),
    seed: fc.infiniteStream(fc.nat(1000)),
  })
  .map(({ wedges, rounds, increase, marks, equalWedges, seed }) => {
    const next = () => marks[seed.next().value % marks.length];
    const lines = Array.from({ length: rounds }, (_, index) => {
      const r = index + 1;
      const wedge = () => Array.from({ length: r }, next).join('');
      if (equalWedges) return wedge().repeat(wedges);
      return Array.from({ length: wedges }, wedge).join('');
    });
    return patternOf(lines, { increase, outline: 'circle' }, someBeads(24));
  });
