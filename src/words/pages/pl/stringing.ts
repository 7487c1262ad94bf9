import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order:
    'Nawlekać koraliki w kolejności tej listy, od góry do dołu, a w każdym wierszu od lewej do prawej: najpierw idzie na nić okrążenie najbardziej zewnętrzne. Koralik nawleczony jako ostatni przerabia się jako pierwszy.',
  reading:
    'Czytanie: 3A to trzy koraliki A. Część w nawiasie okrągłym, za którą stoi x 3, nawleka się 3 razy. W wierszu podano liczbę koralików okrążenia oraz sumę koralików na nici po nawleczeniu tego wiersza: liczyć na końcu każdego wiersza.',
  bare: 'Oczka puste nie potrzebują koralika i nie ma ich na tej liście.',
  join: (f) =>
    f.atRoundEnd
      ? `Dołączyć ten odcinek na początku okrążenia ${f.round}, mniej więcej na godzinie ${f.hour}, patrząc na stronę z koralikami.`
      : `Dołączyć ten odcinek przed oczkiem ${f.stitch} okrążenia ${f.round}, mniej więcej na godzinie ${f.hour}, patrząc na stronę z koralikami.`,
};
