import type { Pattern } from './pattern.js';

/**
 * The same pattern for the other hand: the same rounds, lists and counts, worked the other way
 * round, so that the panel comes out as its mirror image: the other hand, its start negated. The
 * pictures that it was made from are left out, since they lie the other way.
 */
export function forOtherHand(pattern: Pattern): Pattern {
  const { shape, panels } = pattern;
  return {
    ...pattern,
    shape: { ...shape, hand: shape.hand === 'right' ? 'left' : 'right' },
    panels: panels.map(({ name, startDegrees, rounds }) => ({
      name,
      // No -0: it would be written and compared as another number.
      startDegrees: startDegrees === 0 ? 0 : -startDegrees,
      rounds,
    })),
  };
}
