import type { PageWords } from '../index.js';
import { shapeCounts } from './chart.js';

/** What stands on an empty chart to colour by hand. */
export const blank: PageWords['blank'] = {
  shapeLine: (f) => [...shapeCounts(f), `stampare su ${f.paper}`].join('  ·  '),
  how: 'Colorare una casella per ogni perlina, ben coperta, con un colore per ogni colore di perlina. Tenere puliti i quattro segni rotondi negli angoli, poi scansionare il foglio o fotografarlo intero, disteso e con luce uniforme.',
};
