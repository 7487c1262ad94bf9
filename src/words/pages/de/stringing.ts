import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order:
    'Die Perlen in der Reihenfolge der Auffädelliste auffädeln, von oben nach unten und in jeder Zeile von links: Die äußerste Runde kommt zuerst auf den Faden. Die letzte Perle auf dem Faden wird als erste verhäkelt.',
  reading:
    'Lesen: 3A sind drei Perlen A. Steht hinter runden Klammern x 3, wird ihr Inhalt 3-mal aufgefädelt. Bei jeder Runde stehen ihre Perlen und die Summe auf dem Faden, wenn ihre Zeile aufgefädelt ist: am Ende jeder Zeile zählen.',
  bare: 'Leere Maschen brauchen keine Perle und stehen nicht in der Auffädelliste.',
  onBall:
    'Vom Knäuel auffädeln, das Fadenende in der Perlnadel, und den Faden nicht abschneiden, bevor der Abschnitt gehäkelt ist.',
  stop: (f) =>
    `In der ${f.atRoundEnd ? `letzten Masche der ${f.round}. Runde` : `${f.stitch}. Masche der ${f.round}. Runde`} anhalten, vor dem letzten Durchziehen. Die Schlingen mit einem Maschenmarkierer sichern, den Faden auf ${f.tailCm} cm abschneiden, Abschnitt ${f.next} auffädeln und in dieser Masche ansetzen, auf der Perlenseite etwa bei ${f.hour} Uhr.`,
};
