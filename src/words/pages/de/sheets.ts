import type { PageWords } from '../index.js';

type Booklet = PageWords['booklet'];

export const enlarged: Booklet['enlarged'] = {
  part: 'Zählplan, vergrößert',
  sheet: (f) => `Blatt ${f.sheet} von ${f.sheets}`,
  how: 'Die Übersicht zeigt, wo dieses Blatt liegt. Was jenseits einer gepunkteten Linie liegt, steht auch auf dem Nachbarblatt; ein Dreieck nennt es. Die Buchstaben sind beim ganzen Zählplan und beim Material erklärt.',
};

export const wedgeChart: Booklet['wedgeChart'] = {
  part: 'Segmentplan',
  alike: (f) =>
    `Alle ${f.wedges} Segmente sind gleich, und dies ist eines davon: jede Reihe in ihrer Runde ${f.wedges}-mal häkeln.`,
  how: (f) =>
    f.direction === 1
      ? 'Perlenseite, Rand oben. Reihe 1 ist die Spitze, in der Mitte des Teils. Jede Reihe von links nach rechts lesen. Ein schwarzes Dreieck auf zwei Maschen zeigt auf die Masche darunter, in die beide gehäkelt werden.'
      : 'Perlenseite, Rand oben. Reihe 1 ist die Spitze, in der Mitte des Teils. Jede Reihe von rechts nach links lesen. Ein schwarzes Dreieck auf zwei Maschen zeigt auf die Masche darunter, in die beide gehäkelt werden.',
};

export const level: Booklet['level'] = {
  title: 'Schwierigkeit',
  intermediate: 'Mittel: Runden, die sich wiederholen; feines Garn, dünne Nadel',
  complex: 'Anspruchsvoll: ein Bild, dem man Perle für Perle folgt; feines Garn, dünne Nadel',
};
