import type { WorktableWords } from '../index.js';

/** The step Purse: both sides in their frame. */
export const purse: WorktableWords['purse'] = {
  step: 'Börse',
  label: 'Die Börse, wie sie hängt, mit einer Münze und einem Lineal daneben',
  back: 'Die Rückseite',
  backHow:
    'Unter der Börse Hinten wählen, dann den Schritt Bild: Das Bild der Rückseite wird für sich gelegt.',
  plain: 'Oder ganz aus einer Perle',
  frame: 'Der Bügel',
  width: 'Breite',
  height: 'Höhe',
  corner: 'Eckenradius',
  hinges: 'Zwischen den Scharnieren',
  channel: 'Tiefe der Rinne',
  holes: 'Von Loch zu Loch',
  bare: 'Runden ohne Perlen',
  mm: 'mm',
  frameHow:
    'Dort messen, wo der Rand liegen wird: quer und von der Linie zwischen den Scharnieren bis oben.',
  fixing: 'Wie er befestigt wird',
  fits: (n) => `Es passt schon: ${n} Runden hängen in diesem Bügel.`,
  fitNow: ({ before, after }) => `Das Teil passt jetzt in den Bügel. Runden: ${before} → ${after}.`,
  sits: 'Wie es sitzt',
  worn: ({ panel, frame }) =>
    `Das Teil hängt ${panel} mm breit in einem ${frame} mm breiten Bügel.`,
  inFrame: ({ n, round, bare }) =>
    `Im Bügel: ${n} Maschen von Runde ${round}. Runden ohne Perlen darunter: ${bare}.`,
  hingesAt: ({ left, right }) =>
    `Die Scharniere liegen zwischen den Maschen ${left} links und ${right} rechts.`,
  seam: ({ n, mm }) => `Unten zusammengenäht: ${n} Maschen, ${mm} mm.`,
  holesHow: ({ spaces, stitches, more }) =>
    `Etwa ${spaces} Abstände zwischen Löchern: je ${stitches} Maschen, in ${more} davon eine mehr.`,
  lining: 'Das Futter',
  liningHow: ({ cut, seam }) =>
    `Den Stoff ${cut} mm breit zuschneiden; die Naht läuft bei ${seam} mm. Die Schablone steht im Heft.`,
  size: 'Wahre Größe',
  cardHow:
    'Eine Bankkarte an den Bildschirm halten und ziehen, bis das Feld gleich groß ist. Es gilt für diesen Bildschirm.',
  cardBox: 'so groß wie eine Bankkarte',
  steps: {
    frame: 'Bügel',
    back: 'Rückseite der Börse',
    fit: 'Teil an den Bügel anpassen',
  },
};
