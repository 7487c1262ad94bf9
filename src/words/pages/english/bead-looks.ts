import { looksIn } from '../looks.js';
import type { BeadLook, LookWords } from '../looks.js';
import type { English } from './spelling.js';

/** What beads look like, the finish first: matt dark blue. */
export const beadLooks = ({ language, grey, colour: hue }: English) => {
  const american = language === 'en-US';
  const finishes: LookWords['finishes'] = {
    matt: american ? 'matte' : 'matt',
    'silver-lined': 'silver-lined',
    lined: `${hue}-lined`,
    metallic: 'metallic',
    rainbow: 'rainbow',
    pearl: 'pearl',
    lustre: american ? 'luster' : 'lustre',
    transparent: 'transparent',
    opaque: 'opaque',
  };
  const { colour } = looksIn({
    families: {
      white: 'white',
      grey,
      black: 'black',
      pink: 'pink',
      red: 'red',
      orange: 'orange',
      brown: 'brown',
      beige: 'beige',
      yellow: 'yellow',
      'yellow-green': 'yellow-green',
      green: 'green',
      'blue-green': 'blue-green',
      blue: 'blue',
      purple: 'purple',
    },
    toned: {
      dark: (family) => `dark ${family}`,
      light: (family) => `light ${family}`,
      greyish: (family) => `${grey}ish ${family}`,
    },
    finishes,
  });
  return {
    colour,
    look: (f: BeadLook): string =>
      [f.finish === undefined ? f.ownFinish : finishes[f.finish], colour(f)]
        .filter((part) => part !== undefined)
        .join(' '),
  };
};
