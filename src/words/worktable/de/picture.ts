import type { WorktableWords } from '../index.js';

/** The step Picture. */
export const picture: WorktableWords['picture'] = {
  step: 'Bild',
  invite: 'Das eigene Bild auf das Teil legen',
  inviteHow: 'Irgendwo ablegen, einfügen oder:',
  drop: 'Loslassen, um das Bild auf das Teil zu legen',
  yours: 'Das eigene Bild',
  sampleNote: 'Das ist unser Muster. Hier lässt sich alles ausprobieren.',
  local: 'Das Bild bleibt auf diesem Gerät. Nichts wird verschickt.',
  moveHow:
    'Das Bild unter dem Teil ziehen. Mit dem Mausrad oder zwei Fingern wird es größer und kleiner, am runden Griff dreht es sich.',
  size: 'Größe',
  sizeUnit: '%',
  turned: 'Gedreht',
  turnedUnit: '°',
  across: 'Nach rechts',
  down: 'Nach unten',
  mm: 'mm',
  lies: 'Wie es liegt',
  liesHow: {
    subject:
      'Was auf einfarbigem Grund steht, ist so groß, wie es in den Rand passt; wo sich nichts abhebt, füllt das Bild das Teil.',
    fill: 'Das Bild bedeckt das ganze Teil; was über den Rand steht, wird abgeschnitten.',
    fit: 'Die längere Seite geht quer durch: Die Ecken werden abgeschnitten, neben den langen Seiten liegt Grund.',
    inside: 'Nichts wird abgeschnitten; rund um das Bild liegt Grund.',
  },
  kind: 'Was es ist',
  kindHow:
    'In einer Zeichnung gewinnen dunkle Linien die Perle; bei einem Foto bekommt jede Perle die mittlere Farbe.',
  kindDecided: ({ art }) => (art === 'photo' ? 'Als Foto genommen.' : 'Als Zeichnung genommen.'),
  around: 'Um es herum und dahinter',
  groundAuto: 'Was dazu passt',
  cutOutHow: 'Nimmt einen einfarbigen Grund weg, sodass das Motiv auf eigenen Perlen liegt.',
  white: 'Weiß',
  bare: 'Frei, ohne Perlen',
  aroundHow: 'Was zu sehen ist, wo das Bild endet oder durchscheint.',
  mind: 'Was nicht verloren gehen darf',
  mindHow:
    'Auf dem Teil über ein Auge oder einen Schnabel pinseln: Diese Perlen werden mit mehr Sorgfalt ausgesucht.',
  mindSize: 'Pinsel',
  mindKeys:
    'Mit der Tastatur: Die Pfeile führen den Pinsel die Runde entlang und von Runde zu Runde, die Leertaste pinselt, Komma und Punkt machen ihn kleiner und größer. Mit der Umschalttaste pinseln die Pfeile im Gehen. Esc legt den Pinsel weg.',
  mindThere: ({ place }) => `${place}; darübergepinselt`,
  opening: 'Das Bild wird geöffnet …',
  noPicture:
    'Dieser Zählplan kam ohne sein Bild. Seine Perlen bleiben, wie sie sind; ein neues Bild öffnen, um es aufzulegen.',
  steps: {
    move: 'Bild verschieben',
    size: 'Größe des Bildes',
    turn: 'Bild drehen',
    place: 'Bild auflegen',
    open: 'Bild öffnen',
    art: 'Art des Bildes',
    background: 'Hintergrund',
    mind: 'über Wichtiges pinseln',
  },
};
