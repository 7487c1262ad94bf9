import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { hands } from './hands.js';

const { form, short } = numbersIn('de');
const clockwise = (is: boolean): string => (is ? 'im Uhrzeigersinn' : 'gegen den Uhrzeigersinn');

/** How to work a panel, and what a line of its list of rounds means. */
export const rounds: PageWords['rounds'] = {
  begin: (f) =>
    `Beginn: Einen Fadenring legen oder 3 oder 4 Luftmaschen mit einer Kettmasche zum Ring schließen; dann eine Luftmasche häkeln. Luftmaschen und Kettmasche tragen keine Perle und zählen nicht (übliche Praxis, keine Quelle). Die ${f.wedges} Maschen der 1. Runde in den Ring häkeln, jede mit ihrer Perle. Den Fadenring zuziehen; in der Mitte bleibt ein kleines Loch. Ein Fadenende von ${f.tailCm} cm zum Vernähen stehen lassen.`,
  stitch: (f) =>
    [
      f.way === 'slip'
        ? 'Die Masche: Kettmasche, mit einer Perle in jeder.'
        : 'Die Masche: feste Masche (fM), mit einer Perle in jeder.',
      ...(f.drawn ? [] : hands[f.way === 'slip' ? 'slip-stitch' : 'stitch'].steps(f)),
      f.lean === 0.5
        ? `Jede Masche bleibt dann gewöhnlich etwa eine halbe Masche hinter der darunter zurück (Versatz ${short(0.5, 2)}). Denn die oberen Maschenglieder liegen neben der Mitte der Masche: Linien von der Mitte zum Rand laufen schräg, und der Zählplan rechnet damit.`
        : `Diese Anleitung rechnet mit einem Versatz von ${short(f.lean, 3)} ${form(f.lean, { one: 'Masche', other: 'Maschen' })}: So weit bleibt jede Masche hinter der darunter zurück.`,
      f.measured
        ? 'So wurde er an der Probe gemessen: mit derselben Nadel, demselben Garn und denselben Perlen arbeiten.'
        : 'Jede Hand ist anders: den Versatz vor dem Beginn an einer Probe messen.',
      'Die Arbeit nie wenden.',
    ].join(' '),
  direction: (f) =>
    [
      `Die Rundenliste ist für die ${f.hand === 'right' ? 'rechte' : 'linke'} Hand, mit den Perlen auf der ${f.beadsFace === 'away' ? 'abgewandten' : 'zugewandten'} Seite.`,
      `Auf der Perlenseite, die der Zählplan zeigt und die außen an der Börse ist, läuft die Arbeit ${clockwise(f.clockwise)}.`,
      f.beadsFace === 'away'
        ? `Beim Häkeln sieht man die andere Seite; dort läuft sie ${clockwise(!f.clockwise)}.`
        : 'Beim Häkeln sieht man genau diese Seite.',
      'Mit der anderen Hand gehäkelt wird das Teil zu seinem Spiegelbild.',
    ].join(' '),
  marker:
    'Markierung: Einen Maschenmarkierer in die erste Masche der Runde hängen und zu Beginn jeder Runde hochsetzen.',
  increases: (example) =>
    `Zunahmen: Zwei Buchstaben in eckigen Klammern, ${example}, sind zwei Maschen, die in ein und dieselbe Masche der Runde darunter gehäkelt werden, in der geschriebenen Reihenfolge. Von der 2. Runde an gibt es in jedem Segment jeder Runde ein solches Paar.`,
  reading:
    'Lesen: 3A sind drei Maschen mit Perle A. Steht hinter runden Klammern x 3, wird ihr Inhalt 3-mal gehäkelt. Bei jeder Runde stehen ihre Maschen und Perlen und die Summe der bis zu ihrem Ende verhäkelten Perlen: zählen, wenn eine Runde fertig ist.',
  bare: '„2 leer“ sind zwei Maschen ohne Perle.',
  spiral: 'Die Runden laufen als Spirale weiter und werden nicht geschlossen.',
  joined:
    'Jede Runde mit einer Kettmasche in ihre erste Masche schließen und eine Steigeluftmasche häkeln. Die erste Masche der nächsten Runde kommt in genau diese erste Masche. Kettmaschen und Steigeluftmaschen tragen keine Perle und zählen nicht.',
  end: {
    spiral: (f) =>
      `Nach der letzten Masche der letzten Runde zwei oder drei Kettmaschen häkeln, um die Stufe zu glätten; sie tragen keine Perle und zählen nicht. Den Faden auf ${f.tailCm} cm abschneiden und durch die letzte Schlinge ziehen.`,
    joined: (f) =>
      `Am Ende den Faden auf ${f.tailCm} cm abschneiden und durch die letzte Schlinge ziehen.`,
  },
};
