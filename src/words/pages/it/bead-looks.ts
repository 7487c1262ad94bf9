import type { PageWords } from '../index.js';
import { looksIn } from '../looks.js';

/** What beads look like: M throughout, for shops differ in their words for finishes. */
export const beadLooks: PageWords['beadLooks'] = looksIn({
  families: {
    white: 'bianco',
    grey: 'grigio',
    black: 'nero',
    pink: 'rosa',
    red: 'rosso',
    orange: 'arancione',
    brown: 'marrone',
    beige: 'beige',
    yellow: 'giallo',
    'yellow-green': 'verde-giallo',
    green: 'verde',
    'blue-green': 'verde-azzurro',
    blue: 'blu',
    purple: 'viola',
  },
  toned: {
    dark: (family) => `${family} scuro`,
    light: (family) => `${family} chiaro`,
    greyish: (family) => `${family} grigiastro`,
  },
  own: { blue: { light: 'azzurro' } },
  finishes: {
    matt: 'matt',
    'silver-lined': 'con anima argentata',
    lined: 'con anima colorata',
    metallic: 'metallizzato',
    rainbow: 'iridescente',
    pearl: 'perlato',
    lustre: 'lustrato',
    transparent: 'trasparente',
    opaque: 'coprente',
  },
});
