import type { PageWords } from '../index.js';
import { shapeCounts } from './chart.js';

/** What stands on an empty chart to colour by hand. */
export const blank: PageWords['blank'] = {
  shapeLine: (f) => [...shapeCounts(f), `auf ${f.paper} drucken`].join('  ·  '),
  how: 'Je Perle ein Feld ausmalen, gut gedeckt, für jede Perlenfarbe einen eigenen Stift. Die vier runden Eckmarken sauber halten, dann das Blatt scannen oder ganz fotografieren: flach liegend, in gleichmäßigem Licht.',
};
