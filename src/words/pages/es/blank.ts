import type { PageWords } from '../index.js';
import { shapeCounts } from './chart.js';

/** What stands on an empty chart to colour by hand. */
export const blank: PageWords['blank'] = {
  shapeLine: (f) => [...shapeCounts(f), `imprimir en ${f.paper}`].join('  ·  '),
  how: 'Colorear una casilla por abalorio, bien cubierta, con un color para cada color de abalorio. Mantener limpias las cuatro marcas redondas de las esquinas y después escanear la hoja o fotografiarla entera, plana y con luz uniforme.',
};
