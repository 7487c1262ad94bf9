import type { PageWords } from '../index.js';
import { looksIn } from '../looks.js';

/** What beads look like: M throughout, for shops differ in their words for finishes. */
export const beadLooks: PageWords['beadLooks'] = looksIn({
  families: {
    white: 'beyaz',
    grey: 'gri',
    black: 'siyah',
    pink: 'pembe',
    red: 'kırmızı',
    orange: 'turuncu',
    brown: 'kahverengi',
    beige: 'bej',
    yellow: 'sarı',
    'yellow-green': 'sarımsı yeşil',
    green: 'yeşil',
    'blue-green': 'mavimsi yeşil',
    blue: 'mavi',
    purple: 'mor',
  },
  toned: {
    dark: (family) => `koyu ${family}`,
    light: (family) => `açık ${family}`,
    greyish: (family) => `grimsi ${family}`,
  },
  finishes: {
    matt: 'mat',
    'silver-lined': 'içi gümüş',
    lined: 'içi renkli',
    metallic: 'metalik',
    rainbow: 'yanardöner',
    pearl: 'sedefli',
    lustre: 'lüsterli',
    transparent: 'saydam',
    opaque: 'opak',
  },
});
