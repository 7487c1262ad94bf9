import type { WorktableWords } from '../index.js';

/** The step Brush: beads laid by hand. */
export const brush: WorktableWords['brush'] = {
  step: 'Pinsel',
  inHand: 'Am Pinsel',
  take: 'Aufnehmen',
  none: 'Keine Perle',
  others: (n) => `Weitere meiner Perlen: ${n}`,
  lays: 'Er legt',
  also: 'Er kann auch',
  how: {
    bead: 'Auf dem Teil malen: Jede berührte Masche bekommt die Perle.',
    line: 'Von einer Masche zur anderen ziehen: eine gerade Linie aus Perlen.',
    ring: 'Eine Masche antippen: Ihre ganze Runde bekommt die Perle. Über Runden ziehen für mehrere.',
    wedge: 'Eine Masche antippen: Ihr ganzes Segment bekommt die Perle.',
    patch: 'Eine Fläche einer Farbe antippen: Sie bekommt ganz die Perle.',
    away: 'Über von Hand gelegte Perlen fahren: Diese Maschen sind wieder, wie das Bild sie gab.',
    replace: 'Eine Perle antippen: Wo sie auch liegt, kommt die Perle am Pinsel hin.',
    move: 'Eine Schlinge um ein Teil ziehen oder eine Fläche antippen; dann an den neuen Platz ziehen.',
    pick: 'Eine Perle auf dem Teil antippen, um sie aufzunehmen. Ein Häufchen auf der Matte tut dasselbe.',
  },
  laid: 'Von Hand gelegt',
  laidNone: 'Noch nichts.',
  laidCount: (n) => `Maschen: ${n}.`,
  laidWait: ({ n, wedges }) =>
    `Warten auf die ${wedges} Segmente, auf denen sie gelegt wurden: ${n}.`,
  laidOutside: (n) => `Außerhalb des Randes, warten auf mehr Runden: ${n}.`,
  laidHow:
    'Sie bleiben, wo sie sind, wenn das Bild neu gelegt oder andere Perlen gewählt werden. Bei anderen Segmenten oder außerhalb von weniger Runden haben sie keinen Platz: Sie warten, und Rückgängig bringt sie zurück.',
  noLetter:
    'Es sind schon 24 Farben, und für eine weitere ist kein Buchstabe übrig. Erst zwei Häufchen zusammenlegen.',
  heapHint: 'Perlen; aufnehmen',
  keysHow:
    'Mit der Tastatur: Die Pfeile gehen die Runde entlang und von Runde zu Runde, die Leertaste setzt den Pinsel an, Komma und Punkt wechseln die Perle. Mit der Umschalttaste setzen die Pfeile ihn im Gehen an.',
  place: ({ round, stitch, wedge, bead }) =>
    `Runde ${round}, Masche ${stitch}, Segment ${wedge}: ${bead}`,
  placeByHand: ({ round, stitch, wedge, bead }) =>
    `Runde ${round}, Masche ${stitch}, Segment ${wedge}: ${bead}, von Hand`,
  steps: {
    bead: 'Perlen legen',
    line: 'eine Linie legen',
    ring: 'einen Ring legen',
    wedge: 'ein Segment legen',
    patch: 'eine Fläche füllen',
    away: 'Perlen abheben',
    move: 'ein Teil verschieben',
    replace: 'eine Perle durch eine andere ersetzen',
    all: 'alles von Hand Gelegte abheben',
  },
};
