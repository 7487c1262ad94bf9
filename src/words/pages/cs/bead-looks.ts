import type { PageWords } from '../index.js';
import { looksIn } from '../looks.js';

/** What beads look like: M throughout, for shops differ in their words for finishes. */
export const beadLooks: PageWords['beadLooks'] = looksIn({
  families: {
    white: 'bílá',
    grey: 'šedá',
    black: 'černá',
    pink: 'růžová',
    red: 'červená',
    orange: 'oranžová',
    brown: 'hnědá',
    beige: 'béžová',
    yellow: 'žlutá',
    'yellow-green': 'žlutozelená',
    green: 'zelená',
    'blue-green': 'modrozelená',
    blue: 'modrá',
    purple: 'fialová',
  },
  toned: {
    dark: (family) => `tmavě ${family}`,
    light: (family) => `světle ${family}`,
    greyish: (family) => `šedavě ${family}`,
  },
  finishes: {
    matt: 'matná',
    'silver-lined': 'se stříbrným průtahem',
    lined: 's barevným průtahem',
    metallic: 'metalická',
    rainbow: 'duhová',
    pearl: 'perleťová',
    lustre: 's listrem',
    transparent: 'průhledná',
    opaque: 'neprůhledná',
  },
});
