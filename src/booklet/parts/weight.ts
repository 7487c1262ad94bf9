import { perGramOf } from '../../core/beads/amounts.js';
import type { BookletFacts } from '../facts.js';

/** What beads weigh; undefined where it is not known of every one. */
export function gramsOf({ pattern }: BookletFacts, letters: string): number | undefined {
  const perGram = new Map(pattern.beads.map((bead) => [bead.letter, perGramOf(bead)]));
  let grams = 0;
  for (const letter of letters) {
    const per = perGram.get(letter);
    if (per === undefined) return undefined;
    grams += 1 / per;
  }
  return grams;
}
