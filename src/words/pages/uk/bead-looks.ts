import type { PageWords } from '../index.js';
import { looksIn } from '../looks.js';

/** What beads look like: M throughout, for shops differ in their words for finishes. */
export const beadLooks: PageWords['beadLooks'] = looksIn({
  families: {
    white: 'білий',
    grey: 'сірий',
    black: 'чорний',
    pink: 'рожевий',
    red: 'червоний',
    orange: 'помаранчевий',
    brown: 'коричневий',
    beige: 'бежевий',
    yellow: 'жовтий',
    'yellow-green': 'жовто-зелений',
    green: 'зелений',
    'blue-green': 'синьо-зелений',
    blue: 'синій',
    purple: 'фіолетовий',
  },
  toned: {
    dark: (family) => `темно-${family}`,
    light: (family) => `світло-${family}`,
    greyish: (family) => `сірувато-${family}`,
  },
  own: { blue: { light: 'блакитний' } },
  finishes: {
    matt: 'матовий',
    'silver-lined': 'зі срібною серединкою',
    lined: 'з кольоровою серединкою',
    metallic: 'металік',
    rainbow: 'райдужний',
    pearl: 'перламутровий',
    lustre: 'з люстром',
    transparent: 'прозорий',
    opaque: 'непрозорий',
  },
});
