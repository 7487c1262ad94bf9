import type { WorktableWords } from '../index.js';

/** An empty chart to colour by hand, and its photo read back. */
export const coloured: WorktableWords['coloured'] = {
  title: 'Von Hand ausmalen',
  how: 'Einen leeren Zählplan dieses Teils drucken, mit Stiften ausmalen und sein Foto wieder einlesen.',
  saved: (name) =>
    `${name} ist gespeichert. Mit 100 % drucken, ausmalen und mit einem Foto wiederkommen.`,
  which: 'Der ausgemalte Zählplan',
  whichHow: 'Segmente und Runden stehen oben auf seinem Blatt.',
  blank: ({ title, wedges, rounds }) => `${title}: ${wedges} Segmente, ${rounds} Runden`,
  openBlank: 'Einen anderen leeren öffnen',
  colours: 'Farben, höchstens',
  photo: 'Sein Foto',
  photoHow:
    'Das ganze Blatt, flach und gleichmäßig beleuchtet, mit seinen vier Eckmarken. Das Foto hier ablegen oder:',
  choose: 'Ein Foto wählen',
  drop: 'Loslassen, um das Foto einzulesen',
  goOn: ({ name, n, of }) => `Weiter mit ${name}, ${n} von ${of}`,
  reading: 'Der ausgemalte Zählplan wird gelesen …',
  stop: 'Anhalten',
  noCorners:
    'Die vier runden Eckmarken wurden nicht gefunden: das ganze Blatt flach und scharf fotografieren, alle vier Marken im Bild, und nachsehen, ob oben der richtige Zählplan gewählt ist.',
  notColoured:
    'Kein ausgemaltes Feld wurde gefunden: nachsehen, ob oben der richtige Zählplan gewählt ist und die Felder gut gedeckt sind.',
  blankTaken: 'Das ist der leere Zählplan selbst; er ist jetzt gewählt. Es fehlt noch sein Foto.',
  uneven:
    'Auf dem Blatt liegt ein Schatten, sodass weitere Felder falsch gelesen sein können: das Teil durchsehen oder das Blatt in gleichmäßigem Licht neu fotografieren.',
  many: 'Sehr viele Felder sind zweifelhaft. Nachsehen, ob der richtige Zählplan gewählt war.',
  count: ({ n, of }) => `${n} von ${of}`,
  place: ({ round, wedge, place }) => `Runde ${round}, Segment ${wedge}, darin Masche ${place}`,
  reasons: {
    between: 'Seine Farbe liegt zwischen zwei Perlen.',
    uneven: 'Es hat zwei Farben.',
    unlike: 'Seine Farbe gleicht keiner anderen auf dem Blatt.',
    partly: 'Es ist nur zum Teil ausgemalt.',
    outside: 'Es liegt außerhalb des Fotos.',
  },
  patch: 'Das Foto um das Feld; sein Umriss ist eingezeichnet',
  ask: 'Was ist es?',
  asRead: 'so gelesen',
  white: 'Weiß gelassen',
  other: 'Eine andere Perle',
  rest: 'Den Rest nehmen, wie er gelesen ist',
  keysHow: (n) => `Tasten: 1 bis ${n} wählen, der Pfeil nach links geht zurück.`,
  done: 'Alle Felder sind geklärt',
  counts: ({ coloured, white }) => `Ausgemalte Felder: ${coloured}. Weiße: ${white}.`,
  whiteAsk: 'Weiße Felder sind',
  whiteOpen: 'Noch offen',
  whiteHow: 'Was noch offen ist, lässt sich mit dem Pinsel legen.',
  lay: 'Auf den Tisch legen',
  laid: (title) => `„${title}“ liegt auf dem Tisch. Rückgängig bringt zurück, was dort lag.`,
  steps: {
    read: 'ausgemalten Zählplan einlesen',
  },
};
