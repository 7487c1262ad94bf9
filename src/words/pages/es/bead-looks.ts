import type { PageWords } from '../index.js';
import { looksIn } from '../looks.js';

/** What beads look like: M throughout, for shops differ in their words for finishes. */
export const beadLooks: PageWords['beadLooks'] = looksIn({
  families: {
    white: 'blanco',
    grey: 'gris',
    black: 'negro',
    pink: 'rosa',
    red: 'rojo',
    orange: 'naranja',
    brown: 'marrón',
    beige: 'beis',
    yellow: 'amarillo',
    'yellow-green': 'verde amarillento',
    green: 'verde',
    'blue-green': 'verde azulado',
    blue: 'azul',
    purple: 'morado',
  },
  toned: {
    dark: (family) => `${family} oscuro`,
    light: (family) => `${family} claro`,
    greyish: (family) => `${family} grisáceo`,
  },
  finishes: {
    matt: 'mate',
    'silver-lined': 'con interior plateado',
    lined: 'con interior de color',
    metallic: 'metalizado',
    rainbow: 'irisado',
    pearl: 'perlado',
    lustre: 'lustrado',
    transparent: 'transparente',
    opaque: 'opaco',
  },
});
