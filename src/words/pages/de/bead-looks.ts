import type { PageWords } from '../index.js';
import { looksIn } from '../looks.js';

/** What beads look like: M throughout, for shops differ in their words for finishes. */
export const beadLooks: PageWords['beadLooks'] = looksIn({
  families: {
    white: 'weiß',
    grey: 'grau',
    black: 'schwarz',
    pink: 'rosa',
    red: 'rot',
    orange: 'orange',
    brown: 'braun',
    beige: 'beige',
    yellow: 'gelb',
    'yellow-green': 'gelbgrün',
    green: 'grün',
    'blue-green': 'blaugrün',
    blue: 'blau',
    purple: 'lila',
  },
  toned: {
    dark: (family) => `dunkel${family}`,
    light: (family) => `hell${family}`,
    greyish: (family) => `grau${family}`,
  },
  finishes: {
    matt: 'matt',
    'silver-lined': 'mit Silbereinzug',
    lined: 'mit Farbeinzug',
    metallic: 'metallisch',
    rainbow: 'regenbogenfarben',
    pearl: 'perlmuttglänzend',
    lustre: 'gelüstert',
    transparent: 'transparent',
    opaque: 'opak',
  },
});
