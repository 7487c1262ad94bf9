import type { PageWords } from '../index.js';
import { looksIn } from '../looks.js';

/** What beads look like: M throughout, for shops differ in their words for finishes. */
export const beadLooks: PageWords['beadLooks'] = looksIn({
  families: {
    white: 'blanc',
    grey: 'gris',
    black: 'noir',
    pink: 'rose',
    red: 'rouge',
    orange: 'orange',
    brown: 'brun',
    beige: 'beige',
    yellow: 'jaune',
    'yellow-green': 'vert-jaune',
    green: 'vert',
    'blue-green': 'bleu-vert',
    blue: 'bleu',
    purple: 'violet',
  },
  toned: {
    dark: (family) => `${family} foncé`,
    light: (family) => `${family} clair`,
    greyish: (family) => `${family} grisé`,
  },
  finishes: {
    matt: 'mat',
    'silver-lined': 'doublé argent',
    lined: 'doublé couleur',
    metallic: 'métallisé',
    rainbow: 'irisé',
    pearl: 'nacré',
    lustre: 'lustré',
    transparent: 'transparent',
    opaque: 'opaque',
  },
});
