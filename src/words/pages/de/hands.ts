import type { PageWords } from '../index.js';

/** The questions and steps beside the drawings of the handwork. */
export const hands: PageWords['hands'] = {
  ring: {
    ask: 'Wie beginne ich?',
    steps: (f) => [
      `(1) Den Faden zu einem Ring legen; das Fadenende ist ${f.tailCm} cm lang.`,
      '(2) In den Ring einstechen und den Faden holen, der zu den Perlen führt. (3) Als Schlinge durchziehen und eine Luftmasche häkeln, die nicht zählt.',
      `Die ${f.wedges} Maschen der 1. Runde um den Ring häkeln. (4) Am Fadenende ziehen: Der Ring schließt sich, in der Mitte bleibt ein kleines Loch. Ein Ring aus 3 oder 4 Luftmaschen geht auch.`,
    ],
  },
  'bead-side': {
    ask: 'Auf welcher Seite liegen die Perlen?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? 'Die Perlen kommen hinter der Arbeit zu liegen: Man sieht auf die Seite ohne Perlen.'
        : 'Die Perlen kommen vor der Arbeit zu liegen: Man sieht auf die Perlen.',
    ],
  },
  stitch: {
    ask: 'Wie wird eine Masche gehäkelt?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? `(1) Unter ${f.way === 'both-loops' ? 'beiden Maschengliedern' : 'dem hinteren Maschenglied allein'} der nächsten Masche einstechen, von vorn nach hinten.`
        : `(1) Den Faden vor die Arbeit nehmen. Unter ${f.way === 'both-loops' ? 'beiden Maschengliedern' : 'dem vorderen Maschenglied allein'} der nächsten Masche einstechen, von hinten nach vorn.`,
      '(2) Den Faden um die Nadel legen. (3) Durch die Masche ziehen: Zwei Schlingen liegen auf der Nadel.',
      '(4) Die nächste Perle dicht an die Arbeit schieben.',
      '(5) Jenseits der Perle den Faden um die Nadel legen. (6) Durch beide Schlingen ziehen.',
      f.beadsFace === 'away'
        ? 'Die Masche ist fertig: Ihre Perle sitzt hinter der Arbeit.'
        : 'Die Masche ist fertig: Ihre Perle sitzt vor der Arbeit.',
    ],
  },
  'slip-stitch': {
    ask: 'Wie wird eine Masche gehäkelt?',
    steps: (f) => [
      `(1) ${
        f.beadsFace === 'away'
          ? 'Unter dem Maschenglied einstechen, das die Perle der nächsten Masche darunter hält, von vorn nach hinten.'
          : 'Den Faden vor die Arbeit nehmen. Unter dem Maschenglied einstechen, das die Perle der nächsten Masche darunter hält, von hinten nach vorn.'
      } (2) Diese Perle auf die schon gehäkelte Seite kippen.`,
      '(3) Die nächste Perle dicht an die Arbeit schieben.',
      '(4) Jenseits der Perle den Faden um die Nadel legen. (5) In einem Zug durch die Masche und die Schlinge auf der Nadel ziehen.',
    ],
  },
  increase: {
    ask: 'Was heißen zwei Buchstaben in eckigen Klammern?',
    steps: () => [
      'Zwei Maschen kommen in ein und dieselbe Masche der Runde darunter: erst (1), dann (2), jede mit ihrer eigenen Perle.',
    ],
  },
  'round-run': {
    ask: 'Wie laufen die Runden?',
    steps: (f) => [
      f.construction === 'spiral'
        ? 'Als Spirale: Jede Runde geht in die nächste über. Gesehen wie beim Häkeln; schwarze Punkte sind erste Maschen.'
        : 'Als Ringe: Jede Runde wird geschlossen, bevor die nächste beginnt. Gesehen wie beim Häkeln; schwarze Punkte sind erste Maschen.',
    ],
  },
  marker: {
    ask: 'Wo beginnt eine Runde?',
    steps: () => [
      '(1) Sobald in die markierte Masche gehäkelt ist, den Markierer in die neue Masche setzen.',
    ],
  },
  'round-end': {
    ask: 'Wie schließe ich eine Runde?',
    steps: () => [
      '(1) In die erste Masche der Runde einstechen und den Faden holen. (2) Durch die Masche und die Schlinge auf der Nadel ziehen: eine Kettmasche, ohne Perle.',
      '(3) Eine Steigeluftmasche häkeln, ohne Perle. (4) Die erste Masche der nächsten Runde in genau diese erste Masche häkeln.',
    ],
  },
  'new-length': {
    ask: 'Wie setze ich den nächsten Abschnitt an?',
    steps: (f) => [
      `(1) In der letzten Masche, wenn ihre Perle anliegt, den neuen Faden mit ${f.tailCm} cm Ende um die Nadel legen. (2) Durch alles ziehen, was auf der Nadel liegt.`,
      '(3) Beide Fadenenden an den Rand legen und die nächsten 5 bis 10 Maschen darüber häkeln; was übrig bleibt, später vernähen.',
    ],
  },
  'last-stitches': {
    ask: 'Wie beende ich die letzte Runde?',
    steps: (f) => [
      `(1, 2, 3) Zwei oder drei Kettmaschen die Stufe hinunter häkeln, ohne Perlen. (4) Den Faden auf ${f.tailCm} cm abschneiden und durch die letzte Schlinge ziehen.`,
    ],
  },
  seam: {
    ask: 'Welche Maschen werden zusammengenäht?',
    steps: (f) => [
      `Die letzten Runden beider Teile mit den Nummern ihrer Maschen; außen: ${f.front}; innen: ${f.back}. Jede Linie verbindet zwei Maschen, die aufeinandertreffen. Weiße Maschen bleiben für den Bügel offen.`,
    ],
  },
  'seam-stitch': {
    ask: 'Wie wird die Naht genäht?',
    steps: () => [
      '(1) Unter beiden Maschengliedern je einer Masche jedes Teils einstechen, immer von derselben Seite, und Paar für Paar weiternähen.',
    ],
  },
  frame: {
    ask: 'Wo fange ich am Bügel an?',
    steps: (f) => [
      `(1) In der Mitte beginnen und nach außen zum einen Scharnier arbeiten; dann wieder in der Mitte beginnen und zum anderen. ${f.bare ? 'Am Bügel liegen die Maschen ohne Perlen.' : 'Am Bügel liegt der Rand des Teils.'}`,
    ],
  },
  'frame-edge': {
    ask: 'Wie hält der Rand im Bügel?',
    steps: (f) => [
      f.fixing === 'sewn'
        ? '(1) Von innen durch den Rand und das übernächste Loch ausstechen. (2) Durch das Loch davor wieder einstechen: Rückstich, Loch für Loch.'
        : '(1) Klebstoff in die Rinne geben. (2) Den Rand des Teils mit dem angenähten Futter hineinschieben. (3) Papierkordel daneben eindrücken.',
    ],
  },
  lining: {
    ask: 'Wie kommt das Futter hinein?',
    steps: (f) => [
      '(1) Rechts auf rechts von einem Scharnierzeichen unten herum zum anderen nähen.',
      '(2) Nicht wenden: Die linke Seite bleibt außen. Die offene Kante nach außen umschlagen.',
      '(3) In die Börse schieben.',
      f.fixing === 'sewn'
        ? '(4) Innen die umgeschlagene Kante an den Rand des Teils nähen, unterhalb der Löcher.'
        : '(4) Innen die umgeschlagene Kante an den Rand des Teils nähen.',
    ],
  },
  braid: {
    ask: 'Wie verdecke ich die Bügelnaht?',
    steps: () => [
      'Zuletzt, wer möchte: innen auf jede Seite die Hälfte der Borte auf die Bügelnaht legen, die Enden an den Scharnieren 10 mm einschlagen. (1) Beide Kanten an Futter und Teil festnähen, die Nadel unter der Borte durch.',
    ],
  },
};
