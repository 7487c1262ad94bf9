import type { PageWords } from '../index.js';
import { looksIn } from '../looks.js';

/** What beads look like: M throughout, for shops differ in their words for finishes. */
export const beadLooks: PageWords['beadLooks'] = looksIn({
  families: {
    white: 'biały',
    grey: 'szary',
    black: 'czarny',
    pink: 'różowy',
    red: 'czerwony',
    orange: 'pomarańczowy',
    brown: 'brązowy',
    beige: 'beżowy',
    yellow: 'żółty',
    'yellow-green': 'żółtozielony',
    green: 'zielony',
    'blue-green': 'niebieskozielony',
    blue: 'niebieski',
    purple: 'fioletowy',
  },
  toned: {
    dark: (family) => `ciemno${family}`,
    light: (family) => `jasno${family}`,
    greyish: (family) => `szaro${family}`,
  },
  finishes: {
    matt: 'matowy',
    'silver-lined': 'ze srebrnym środkiem',
    lined: 'z barwionym środkiem',
    metallic: 'metaliczny',
    rainbow: 'tęczowy',
    pearl: 'perłowy',
    lustre: 'z połyskiem',
    transparent: 'przezroczysty',
    opaque: 'nieprzezroczysty',
  },
});
