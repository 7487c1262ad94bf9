import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order:
    'Nawlekać koraliki w kolejności listy nawlekania, od góry do dołu, a w każdym wierszu od lewej do prawej: najpierw idzie na nić okrążenie najbardziej zewnętrzne. Koralik nawleczony jako ostatni przerabia się jako pierwszy.',
  reading:
    'Czytanie: 3A to trzy koraliki A. Część w nawiasie okrągłym, za którą stoi x 3, nawleka się 3 razy. W wierszu podano liczbę koralików okrążenia oraz sumę koralików na nici po nawleczeniu tego wiersza: liczyć na końcu każdego wiersza.',
  bare: 'Oczka puste nie potrzebują koralika i nie ma ich na liście nawlekania.',
  onBall:
    'Nawlekać na nić z kłębka, z jej końcem w igle do koralików, i nie ucinać jej, dopóki odcinek nie jest gotowy.',
  stop: (f) =>
    `Zatrzymać się w ${f.atRoundEnd ? `ostatnim oczku okrążenia ${f.round}` : `oczku ${f.stitch} okrążenia ${f.round}`}, przed ostatnim przeciągnięciem nici. Pętelki zabezpieczyć znacznikiem, uciąć nić, zostawiając ${f.tailCm} cm, nawlec odcinek ${f.next} i dołączyć go w tym oczku, mniej więcej na godzinie ${f.hour}, patrząc na stronę z koralikami.`,
};
