import type { PageWords } from '../index.js';
import { shapeCounts } from './chart.js';

/** What stands on an empty chart to colour by hand. */
export const blank: PageWords['blank'] = {
  shapeLine: (f) => [...shapeCounts(f), `печатать на ${f.paper}`].join('  ·  '),
  how: 'На каждую бисерину закрашивайте одну клетку, плотно, для каждого цвета бисера одним карандашом. Четыре круглые метки в углах оставьте чистыми, затем отсканируйте лист или сфотографируйте его целиком: ровно лежащим, при равномерном свете.',
};
