import type { PageWords } from '../index.js';
import { shapeCounts } from './chart.js';

/** What stands on an empty chart to colour by hand. */
export const blank: PageWords['blank'] = {
  shapeLine: (f) => [...shapeCounts(f), `à imprimer sur ${f.paper}`].join('  ·  '),
  how: 'Colorier une case par perle, bien couverte, d’une couleur pour chaque couleur de perle. Garder propres les quatre repères ronds des coins, puis numériser la feuille ou la photographier en entier, posée à plat sous une lumière égale.',
};
