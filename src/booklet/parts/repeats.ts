import { roundBody } from '../../core/pages/lists/rounds.js';
import { strungText } from '../../core/pages/lists/stringing.js';
import type { BookletFacts } from '../facts.js';

/** Whether a list has parts in round brackets that are repeated. */
export function hasRepeats(
  { pattern, words }: Pick<BookletFacts, 'pattern' | 'words'>,
  list: 'strung' | 'worked',
): boolean {
  const { shape, panels } = pattern;
  return panels.some(({ rounds }) =>
    rounds.some((marks, n) =>
      list === 'strung'
        ? strungText(marks, n + 1).startsWith('(')
        : roundBody(shape, n + 1, marks, words).includes('('),
    ),
  );
}
