import { roundBody } from '../../core/pages/lists/rounds.js';
import { strungText } from '../../core/pages/lists/stringing.js';
import { rememberedFor } from '../../core/remember.js';
import type { BookletFacts } from '../facts.js';

/** Which lists have parts in round brackets that are repeated; worked out once, as pages are tried in more than one way. */
export const repeatsOf = rememberedFor(({ pattern, words }: BookletFacts) => {
  const { shape, panels } = pattern;
  const someRound = (has: (marks: string, round: number) => boolean) =>
    panels.some(({ rounds }) => rounds.some((marks, n) => has(marks, n + 1)));
  const strung = someRound((marks, round) => strungText(marks, round).startsWith('('));
  return {
    strung,
    either: strung || someRound((marks, r) => roundBody(shape, r, marks, words).includes('(')),
  };
});
