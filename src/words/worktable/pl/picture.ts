import type { WorktableWords } from '../index.js';

/** The step Picture. */
export const picture: WorktableWords['picture'] = {
  step: 'Obraz',
  invite: 'Położyć na panelu własny obraz',
  inviteHow: 'Upuścić gdziekolwiek, wkleić albo:',
  drop: 'Puścić, żeby położyć obraz na panelu',
  yours: 'Twój obraz',
  sampleNote: 'To nasz przykład. Można na nim wypróbować wszystko.',
  local: 'Obraz zostaje na tym urządzeniu. Nic nie jest nigdzie wysyłane.',
  moveHow:
    'Przeciągać obraz pod panelem. Kółko lub dwa palce zmieniają jego wielkość, okrągły uchwyt go obraca.',
  size: 'Wielkość',
  sizeUnit: '%',
  turned: 'Obrót',
  turnedUnit: '°',
  across: 'W prawo',
  down: 'W dół',
  mm: 'mm',
  lies: 'Jak leży',
  liesHow: {
    subject:
      'To, co odcina się od gładkiego tła, jest tak duże, jak zmieści się w brzegu; gdy nic się nie odcina, obraz wypełnia panel.',
    fill: 'Obraz pokrywa cały panel; co wystaje poza brzeg, zostaje obcięte.',
    fit: 'Dłuższy bok idzie przez cały panel: rogi są obcięte, a wzdłuż dłuższych boków zostaje tło.',
    inside: 'Nic nie jest obcięte; wokół obrazu jest tło.',
  },
  kind: 'Co to jest',
  kindHow:
    'Na rysunku ciemne linie wygrywają koralik; na zdjęciu każdy koralik dostaje kolor średni.',
  kindDecided: ({ art }) =>
    art === 'photo' ? 'Potraktowano jak zdjęcie.' : 'Potraktowano jak rysunek.',
  around: 'Wokół niego i za nim',
  groundAuto: 'Co pasuje',
  cutOutHow: 'Usuwa gładkie tło, żeby motyw leżał na własnych koralikach.',
  white: 'Biały',
  bare: 'Puste, bez koralików',
  aroundHow: 'Co widać tam, gdzie obraz się kończy albo jest przezroczysty.',
  mind: 'Co nie może zginąć',
  mindHow: 'Zamaluj na panelu oko albo dziób: ich koraliki będą dobrane staranniej.',
  mindSize: 'Pędzel',
  mindKeys:
    'Z klawiatury: strzałki prowadzą pędzel wzdłuż okrążenia i z okrążenia na okrążenie, spacja zamalowuje, przecinek i kropka zmniejszają go i powiększają. Z Shiftem strzałki zamalowują po drodze. Esc odkłada pędzel.',
  mindThere: ({ place }) => `${place}; zamalowane`,
  opening: 'Otwieram obraz …',
  noPicture:
    'Ten schemat przyszedł bez obrazu. Koraliki zostają, jak są; otworzyć obraz, żeby położyć nowy.',
  steps: {
    move: 'przesunięcie obrazu',
    size: 'wielkość obrazu',
    turn: 'obrót obrazu',
    place: 'położenie obrazu',
    open: 'otwarcie obrazu',
    art: 'rodzaj obrazu',
    background: 'tło',
    mind: 'zaznaczyć, co nie może zginąć',
  },
};
