import type { WorktableWords } from '../index.js';

/** The step Work: stringing and crocheting beside the bead mat. */
export const work: WorktableWords['work'] = {
  step: 'Arbeiten',
  intro:
    'Den Bildschirm neben die Perlenmatte stellen. Er zeigt immer nur eines und merkt sich auf die Perle genau, wo man aufhört.',
  waiting: 'Die Perlen werden noch ausgesucht …',
  changed:
    'Das Teil wurde geändert, nachdem die Arbeit begonnen war. Gearbeitet wird noch nach dem, mit dem begonnen wurde.',
  which: 'Welches Teil',
  copies: 'Wie viele von jedem',
  panel: 'Teil',
  sides: { front: 'Vorderteil', back: 'Rückteil' },
  panelOf: (f) => `${f.name}, ${f.n} von ${f.of}`,
  strung: (f) => `${f.done} von ${f.all} Perlen aufgefädelt`,
  worked: (f) => `${f.done} von ${f.all} Maschen gehäkelt`,
  length: (f) => `Abschnitt ${f.n} von ${f.of}`,
  stringRound: (f) => `Runde ${f.r} · ${f.done} von ${f.all} Perlen`,
  then: (run) => `dann ${run}`,
  thenDone: 'das sind die letzten',
  notStrung: (n) =>
    `Nach dieser Seite sind von diesem Abschnitt noch nicht auf dem Faden: ${n} Perlen. Zuerst wird aufgefädelt.`,
  strungByList: 'Sie sind alle auf dem Faden',
  tapStrung: 'Irgendwo antippen, wenn sie auf dem Faden sind',
  stands: (f) =>
    `Auf dem Faden: ${f.beads} Perlen, ${f.metres} m${f.grams === undefined ? '' : `, ${f.grams} g`}`,
  lengthDone: (f) =>
    f.of === '1'
      ? `Alle ${f.beads} Perlen sind aufgefädelt`
      : `Abschnitt ${f.n} von ${f.of} ist aufgefädelt: ${f.beads} Perlen`,
  lengthDoneHow:
    'Die zuletzt aufgefädelte Perle wird zuerst gehäkelt. Die Perlen den Faden entlang schieben und den Faden am Knäuel lassen.',
  stringLength: (f) => `Abschnitt ${f.n} von ${f.of} auffädeln`,
  inHand: 'Die Arbeit, wie sie in der Hand liegt, die jetzige Masche an der Häkelnadel',
  roundOf: (f) => `Runde ${f.r} von ${f.of}`,
  inRound: (f) => `Segment ${f.wedge} · Masche ${f.stitch} von ${f.of}`,
  allWorked: (n) => `alle ${n} Maschen`,
  begin: (wedges) =>
    `Mit einem Fadenring beginnen und die ${wedges} Maschen der 1. Runde hineinhäkeln.`,
  roundDone: (f) =>
    `Runde ${f.r} ist fertig: ${f.stitches} Maschen, ${f.beads} Perlen, zusammen ${f.all} Perlen.`,
  moveMarker: 'Den Maschenmarkierer in die erste Masche der nächsten Runde setzen.',
  closeRound:
    'Die Runde mit einer Kettmasche schließen und eine Steigeluftmasche häkeln; beide ohne Perle.',
  joinHere: (length) => `Halt: Hier Abschnitt ${length} ansetzen.`,
  bothInOne: 'beide in eine Masche',
  bare: 'ohne Perle',
  open: 'noch offen',
  tapWorked: 'Antippen, wenn gehäkelt',
  coming: 'Die nächsten Perlen am Faden',
  pace: 'Wie viel auf einmal',
  panelDone: 'Das Teil ist fertig',
  endSpiral:
    'Zwei oder drei Kettmaschen ohne Perle häkeln, um die Stufe zu glätten, den Faden auf 20 cm abschneiden und durchziehen.',
  endJoined:
    'Die Runde mit einer Kettmasche schließen, den Faden auf 20 cm abschneiden und durchziehen.',
  voiceless: 'Dieses Gerät hat keine Stimme für die Sprache der Seite.',
  cannot: {
    stayAwake:
      'Dieser Browser kann den Bildschirm nicht wach halten: in den Einstellungen des Geräts länger anlassen.',
    speak: 'Dieser Browser kann nicht vorlesen.',
    listen: 'Dieser Browser kann nicht zuhören: Ein Tippen oder die Leertaste führt weiter.',
  },
  heard: { next: ['weiter', 'ja', 'fertig'], back: ['zurück', 'falsch'] },
  listens:
    'Hört auf „weiter“ und „zurück“. Manche Browser schicken, was sie hören, an ihren Hersteller, um es zu verstehen; diese Seite schickt nichts.',
  deaf: 'Der Browser kann jetzt nicht zuhören: Es wurde nicht erlaubt, oder er braucht dafür ein Netz.',
};
