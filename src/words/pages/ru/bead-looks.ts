import type { PageWords } from '../index.js';
import { looksIn } from '../looks.js';

/** What beads look like: M throughout, for shops differ in their words for finishes. */
export const beadLooks: PageWords['beadLooks'] = looksIn({
  families: {
    white: 'белый',
    grey: 'серый',
    black: 'чёрный',
    pink: 'розовый',
    red: 'красный',
    orange: 'оранжевый',
    brown: 'коричневый',
    beige: 'бежевый',
    yellow: 'жёлтый',
    'yellow-green': 'жёлто-зелёный',
    green: 'зелёный',
    'blue-green': 'сине-зелёный',
    blue: 'синий',
    purple: 'фиолетовый',
  },
  toned: {
    dark: (family) => `тёмно-${family}`,
    light: (family) => `светло-${family}`,
    greyish: (family) => `серовато-${family}`,
  },
  own: { blue: { light: 'голубой' } },
  finishes: {
    matt: 'матовый',
    'silver-lined': 'с серебряной серединкой',
    lined: 'с цветной серединкой',
    metallic: 'металлик',
    rainbow: 'радужный',
    pearl: 'перламутровый',
    lustre: 'с люстром',
    transparent: 'прозрачный',
    opaque: 'непрозрачный',
  },
});
