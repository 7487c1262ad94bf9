import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { form, many, short, sizeMm } = numbersIn('de');
const clockwise = (direction: 1 | -1): string =>
  direction === 1 ? 'im Uhrzeigersinn' : 'gegen den Uhrzeigersinn';
const face = (beadsFace: 'away' | 'toward'): string =>
  beadsFace === 'away' ? 'Perlen auf der abgewandten Seite' : 'Perlen auf der zugewandten Seite';
const hand = (one: 'right' | 'left'): string => (one === 'right' ? 'rechte Hand' : 'linke Hand');

/** How many wedges, rounds and stitches a panel has. */
export const shapeCounts = (f: { wedges: number; rounds: number; stitches: number }): string[] => [
  // M: Segment or Keil.
  many(f.wedges, { one: 'Segment', other: 'Segmente' }),
  many(f.rounds, { one: 'Runde', other: 'Runden' }),
  many(f.stitches, { one: 'Masche', other: 'Maschen' }),
];

/** What stands on charts. */
export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title}: ${f.panel}`),
  wedgesTitle: (f) =>
    f.panel === undefined
      ? `${f.title}: Segment für Segment`
      : `${f.title}: ${f.panel}, Segment für Segment`,
  shapeLine: (f) =>
    [
      ...shapeCounts(f),
      many(f.beads, { one: 'Perle', other: 'Perlen' }),
      `${sizeMm(f.across, 1)} mm breit`,
    ].join('  ·  '),
  workLine: (f) =>
    [
      `${f.hand === 'right' ? 'Rechte' : 'Linke'} Hand, ${f.beadsFace === 'away' ? 'Perlen abgewandt' : 'Perlen zugewandt'}`,
      {
        first: 'Zunahme: erste Masche je Segment',
        middle: 'Zunahme: mittlere Masche je Segment',
        last: 'Zunahme: letzte Masche je Segment',
      }[f.increase],
      // L: Versatz, how far a stitch sits behind the one below.
      `Versatz ${short(f.lean, 3)} ${form(f.lean, { one: 'Masche', other: 'Maschen' })}`,
      f.construction === 'spiral' ? 'in Spiralrunden' : 'geschlossene Runden',
    ].join('  ·  '),
  start: 'Start',
  direction: 'Arbeitsrichtung',
  faceNote: (f) =>
    `Dies ist die Perlenseite, die Außenseite der Börse. Hier läuft die Arbeit ${clockwise(f.direction)} (${hand(f.hand)}, ${face(f.beadsFace)}).`,
  workerNote: (f) =>
    f.beadsFace === 'away'
      ? `Beim Häkeln sieht man die andere Seite; dort läuft die Arbeit ${clockwise(f.direction === 1 ? -1 : 1)}.`
      : 'Beim Häkeln sieht man genau diese Seite, denn die Perlen liegen auf der zugewandten Seite.',
  construction: {
    spiral: 'Spirale: Jede Runde geht ohne Schließen in die nächste über.',
    joined:
      'Geschlossene Runden: Jede Runde wird mit einer Kettmasche geschlossen, die nicht gezeichnet ist.',
  },
  marks: {
    pair: 'Zunahme: zwei Maschen in dieselbe Masche.',
    number: 'Rundennummer, vor der ersten Masche ihrer Runde.',
    tick: 'Striche am Rand: jede 10. Masche der letzten Runde, von ihrer ersten an gezählt.',
    five: 'Jede 5. Runde: dunkle Nummer, außen eine dicke Linie.',
    startLine: 'Startlinie: Hier beginnt jede Runde.',
    join: 'Ansatz: Mit dieser Masche beginnt ein neuer Abschnitt.',
  },
  larger:
    'Größere Buchstaben: Segment für Segment in wedges.svg und auf den vergrößerten Blättern der PDF-Anleitung.',
  bare: 'Leere Masche, ohne Perle',
  undecided: 'Noch nicht festgelegt',
  wedge: (f) => `Segment ${f.wedge}`,
  wedgeWay: (f) =>
    f.direction === 1
      ? 'Jede Reihe von links nach rechts lesen'
      : 'Jede Reihe von rechts nach links lesen',
  pageOf: (f) => `Seite ${f.page} von ${f.pages}`,
};
