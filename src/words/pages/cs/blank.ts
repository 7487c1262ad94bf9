import type { PageWords } from '../index.js';
import { shapeCounts } from './chart.js';

/** What stands on an empty chart to colour by hand. */
export const blank: PageWords['blank'] = {
  shapeLine: (f) => [...shapeCounts(f), `tisknout na ${f.paper}`].join('  ·  '),
  how: 'Pro každý korálek vybarvěte jedno políčko, dobře krycí barvou, pro každou barvu korálků jednou pastelkou. Čtyři kulaté značky v rozích nechte čisté, pak stránku naskenujte nebo celou vyfoťte: rovně položenou, v rovnoměrném světle.',
};
