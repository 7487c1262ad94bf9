import { labOf } from './bead.js';
import { ciede2000 } from '../colour/ciede2000.js';
import { lab65ToLinear, linearToLab65 } from '../colour/lab.js';
import { seenAs, sights } from '../colour/vision.js';
import type { Sight } from '../colour/vision.js';
import { warning } from '../errors.js';
import type { Warning } from '../errors.js';
import type { PatternBead } from './bead.js';

/** CIEDE2000 below which two beads are mistaken for one another on a needle (judged by eye). */
export const mistakenBelow = 5;
/** Pairs that a warning names before it counts the rest. */
const mostNamed = 6;

/** Two beads of a pattern that look alike in one way of seeing. */
export interface MistakenPair {
  readonly sight: Sight;
  /** Letters of the two, in the pattern's order. */
  readonly letters: readonly [string, string];
  /** CIEDE2000 of what is seen. */
  readonly difference: number;
}

/**
 * Pairs of beads that will be mistaken for one another: nearer than `mistakenBelow` as they are,
 * as seen with protanopia, deuteranopia and tritanopia, or in a grey print. A pair that is alike
 * to everybody is not named again for the others. By sight, then nearest first.
 */
export function mistakenPairs(beads: readonly Pick<PatternBead, 'letter' | 'hex' | 'lab'>[]) {
  const found: MistakenPair[] = [];
  const alikeToAll = new Set<string>();
  for (const sight of sights) {
    const labs = beads.map((bead) => labSeenAs(sight, bead));
    const pairs: MistakenPair[] = [];
    for (let b = 1; b < beads.length; b++) {
      for (let a = 0; a < b; a++) {
        const difference = ciede2000(...labs[a], ...labs[b]);
        const letters = [beads[a].letter, beads[b].letter] as const;
        if (difference >= mistakenBelow || alikeToAll.has(letters.join())) continue;
        if (sight === 'usual') alikeToAll.add(letters.join());
        pairs.push({ sight, letters, difference });
      }
    }
    found.push(...pairs.sort((one, other) => one.difference - other.difference));
  }
  return found;
}

/** What the maker is told of them: at most one sentence each for needle, colour sight and print. */
export function mistakenWarnings(
  beads: readonly Pick<PatternBead, 'letter' | 'hex' | 'lab'>[],
): Warning[] {
  const found = mistakenPairs(beads);
  const named = (sight: Sight) => {
    const pairs = found.filter((pair) => pair.sight === sight);
    const shown = pairs.slice(0, mostNamed).map(({ letters }) => letters.join('/'));
    return { sight, pairs: shown, more: pairs.length - shown.length };
  };
  const told: Warning[] = [];
  const usual = named('usual');
  if (usual.pairs.length > 0) {
    told.push(warning('beads-look-alike', { pairs: usual.pairs, more: usual.more }));
  }
  const others = (['protanopia', 'deuteranopia', 'tritanopia'] as const)
    .map(named)
    .filter(({ pairs }) => pairs.length > 0);
  if (others.length > 0) told.push(warning('beads-look-alike-to-some', { sights: others }));
  const grey = named('grey');
  if (grey.pairs.length > 0) {
    told.push(warning('beads-alike-in-grey', { pairs: grey.pairs, more: grey.more }));
  }
  return told;
}

function labSeenAs(
  sight: Sight,
  bead: Pick<PatternBead, 'hex' | 'lab'>,
): readonly [number, number, number] {
  const lab = labOf(bead);
  return sight === 'usual' ? lab : linearToLab65(...seenAs(sight, lab65ToLinear(...lab)));
}
