import type { WorktableWords } from '../index.js';

/** An empty chart to colour by hand, and its photo read back. */
export const coloured: WorktableWords['coloured'] = {
  title: 'Kolorowanie ręczne',
  how: 'Wydrukować pusty schemat tego panelu, pokolorować kredkami albo pisakami i wczytać jego zdjęcie.',
  saved: (name) => `Zapisano ${name}. Wydrukować w skali 100 %, pokolorować i wrócić ze zdjęciem.`,
  which: 'Pokolorowany schemat',
  whichHow: 'Kliny i okrążenia są podane u góry jego kartki.',
  blank: ({ title, wedges, rounds }) => `${title}, kliny: ${wedges}, okrążenia: ${rounds}`,
  openBlank: 'Otwórz inny pusty schemat',
  colours: 'Kolory, najwyżej',
  photo: 'Jego zdjęcie',
  photoHow:
    'Cała kartka, płasko i w równym świetle, z czterema znakami w rogach. Upuścić zdjęcie tutaj albo:',
  choose: 'Wybierz zdjęcie',
  drop: 'Puścić, żeby wczytać zdjęcie',
  goOn: ({ name, n, of }) => `Dalej z ${name}, ${n} z ${of}`,
  reading: 'Odczytuję pokolorowany schemat …',
  stop: 'Zatrzymaj',
  noCorners:
    'Nie znaleziono czterech okrągłych znaków w rogach: sfotografować całą kartkę, płasko i ostro, ze wszystkimi czterema znakami, i sprawdzić, czy powyżej wybrano właściwy schemat.',
  notColoured:
    'Nie znaleziono żadnego pokolorowanego pola: sprawdzić, czy powyżej wybrano właściwy schemat i czy pola są dobrze pokryte.',
  blankTaken: 'To sam pusty schemat; jest teraz wybrany. Brakuje jeszcze jego zdjęcia.',
  uneven:
    'Na kartce leży cień, więc więcej pól może być odczytanych źle: przejrzeć panel albo zrobić zdjęcie jeszcze raz w równym świetle.',
  many: 'Bardzo wiele pól jest wątpliwych. Sprawdzić, czy wybrano właściwy schemat.',
  count: ({ n, of }) => `${n} z ${of}`,
  place: ({ round, wedge, place }) => `Okrążenie ${round}, klin ${wedge}, oczko w klinie: ${place}`,
  reasons: {
    between: 'Kolor leży między dwoma koralikami.',
    uneven: 'Ma dwa kolory.',
    unlike: 'Kolor nie przypomina żadnego innego na kartce.',
    partly: 'Jest pokolorowane tylko częściowo.',
    outside: 'Leży poza zdjęciem.',
  },
  patch: 'Zdjęcie wokół pola z narysowanym obrysem',
  ask: 'Co to jest?',
  asRead: 'tak odczytane',
  white: 'Zostawione białe',
  other: 'Inny koralik',
  rest: 'Resztę wziąć tak, jak odczytano',
  keysHow: (n) => `Klawisze: od 1 do ${n} wybierają, strzałka w lewo wraca.`,
  done: 'Wszystkie pola są rozstrzygnięte',
  counts: ({ coloured, white }) => `Pola pokolorowane: ${coloured}. Białe: ${white}.`,
  whiteAsk: 'Białe pola to',
  whiteOpen: 'Jeszcze nierozstrzygnięte',
  whiteHow: 'To, co nierozstrzygnięte, można położyć pędzlem.',
  lay: 'Połóż na stole',
  laid: (title) => `„${title}” leży na stole. Cofnij przywraca to, co tam leżało.`,
  steps: {
    read: 'odczytanie pokolorowanego schematu',
  },
};
