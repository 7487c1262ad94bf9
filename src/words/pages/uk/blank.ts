import type { PageWords } from '../index.js';
import { shapeCounts } from './chart.js';

/** What stands on an empty chart to colour by hand. */
export const blank: PageWords['blank'] = {
  shapeLine: (f) => [...shapeCounts(f), `друкувати на ${f.paper}`].join('  ·  '),
  how: 'На кожну бісеринку зафарбовуйте одну клітинку, щільно, для кожного кольору бісеру одним олівцем. Чотири круглі позначки в кутах лишіть чистими, потім відскануйте аркуш або сфотографуйте його цілком: рівно покладений, за рівномірного світла.',
};
