import type { PageWords } from '../index.js';

/** How one booklet of a pattern differs from another. */
export const edition: PageWords['booklet']['edition'] = {
  grey: 'do druku czarno-białego',
  large: 'duży druk',
  left: 'dla lewej ręki',
  right: 'dla prawej ręki',
  mirrored:
    'To wydanie jest dla innej ręki niż ta, dla której zrobiono wzór: okrążenia, listy i liczby są te same, a obrazek wychodzi jako lustrzane odbicie. Litery i cyfry wyszłyby w nim odwrócone jak w lustrze; dla nich potrzebny jest wzór zrobiony dla tej ręki.',
  fills:
    'Bez kolorów każdy koralik ma swój odcień szarości, a gdy rodzajów koralików jest wiele, także znak obok litery: dwie kreski, cztery kropki albo nic. Kolor podają nazwy.',
};

/** What stands for pictures where the booklet is read aloud. */
export const alt: PageWords['booklet']['alt'] = {
  panel: (f) => `Obraz gotowego panelu, strona z koralikami: ${f.panel}`,
  chart: 'Schemat panelu. Lista okrążeń mówi to samo słowami, a materiały objaśniają litery.',
  lining: 'Szablon podszewki w rzeczywistej wielkości, z oznaczeniami.',
};
