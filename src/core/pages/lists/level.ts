import type { Pattern } from '../../pattern/pattern.js';
import { runsOf, wedgesOf } from './runs.js';

/**
 * How demanding a project is; the project is described, not the person (Craft Yarn Council, project
 * levels, from a second-hand quotation). Fine thread and thin hooks make every panel at least
 * intermediate.
 */
export type ProjectLevel = 'intermediate' | 'complex';

/** With more colours in a round on average a panel is followed bead by bead (our own bound). */
const fewRunsInRound = 4;

/** `complex` for pictures; `intermediate` for plain rings and for motifs that repeat in few colours. */
export function projectLevel({ panels }: Pick<Pattern, 'panels'>): ProjectLevel {
  const simple = panels.every(({ rounds }) => {
    const runs = rounds.map((marks, index) => {
      const [first, ...rest] = wedgesOf(marks, index + 1);
      return runsOf(rest.every((wedge) => wedge === first) ? first : marks).length;
    });
    return runs.reduce((sum, n) => sum + n, 0) <= fewRunsInRound * rounds.length;
  });
  return simple ? 'intermediate' : 'complex';
}
