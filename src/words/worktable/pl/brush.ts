import type { WorktableWords } from '../index.js';

/** The step Brush: beads laid by hand. */
export const brush: WorktableWords['brush'] = {
  step: 'Pędzel',
  inHand: 'Na pędzlu',
  take: 'Weź',
  none: 'Bez koralika',
  others: (n) => `Inne moje koraliki: ${n}`,
  lays: 'Kładzie',
  also: 'Potrafi też',
  how: {
    bead: 'Rysuj po panelu: każde dotknięte oczko dostaje koralik.',
    line: 'Przeciągnij od oczka do oczka: prosta linia koralików.',
    ring: 'Dotknij oczka: całe jego okrążenie dostaje koralik. Przeciągnij przez okrążenia, by było ich więcej.',
    wedge: 'Dotknij oczka: cały jego klin dostaje koralik.',
    patch: 'Dotknij plamy jednego koloru: cała dostaje koralik.',
    away: 'Przejedź po koralikach położonych ręką: te oczka będą znów takie, jak dał je obraz.',
    replace: 'Dotknij koralika: gdziekolwiek leży, zastąpi go ten z pędzla.',
    move: 'Obrysuj część pętlą albo dotknij plamy; potem przeciągnij ją na nowe miejsce.',
    pick: 'Dotknij koralika na panelu, by go wziąć. Kupka na macie robi to samo.',
  },
  laid: 'Położone ręką',
  laidNone: 'Jeszcze nic.',
  laidCount: (n) => `Oczka: ${n}.`,
  laidWait: ({ n, wedges }) => `Czekają na kliny, na których je położono (${wedges}): ${n}.`,
  laidOutside: (n) => `Poza brzegiem, czekają na więcej okrążeń: ${n}.`,
  laidHow:
    'Zostają tam, gdzie są, gdy obraz położysz inaczej lub wybierzesz inne koraliki. Przy innych klinach albo poza mniejszą liczbą okrążeń nie mają miejsca: czekają, a cofnięcie je przywraca.',
  noLetter: 'Są już 24 kolory i nie ma litery dla następnego. Najpierw połącz dwie kupki.',
  heapHint: 'koraliki; weź je',
  keysHow:
    'Z klawiatury: strzałki idą wzdłuż okrążenia i z okrążenia na okrążenie, spacja używa pędzla, przecinek i kropka zmieniają koralik. Z Shiftem strzałki używają go po drodze.',
  place: ({ round, stitch, wedge, bead }) =>
    `Okrążenie ${round}, oczko ${stitch}, klin ${wedge}: ${bead}`,
  placeByHand: ({ round, stitch, wedge, bead }) =>
    `Okrążenie ${round}, oczko ${stitch}, klin ${wedge}: ${bead}, ręką`,
  steps: {
    bead: 'kładzenie koralików',
    line: 'linia',
    ring: 'pierścień',
    wedge: 'klin',
    patch: 'wypełnienie plamy',
    away: 'zdjęcie koralików',
    move: 'przesunięcie części',
    replace: 'koralik zamiast innego',
    all: 'zdjęcie wszystkiego, co położono ręką',
  },
};
