import type { PageWords } from '../index.js';
import { shapeCounts } from './chart.js';

/** What stands on an empty chart to colour by hand. */
export const blank: PageWords['blank'] = {
  shapeLine: (f) => [...shapeCounts(f), `drukować na ${f.paper}`].join('  ·  '),
  how: 'Kolorować jedno pole na koralik, dobrze kryjąc, jedną kredką na każdy kolor koralików. Cztery okrągłe znaki w rogach zostawić czyste, potem kartkę zeskanować albo sfotografować w całości: płasko i w równym świetle.',
};
