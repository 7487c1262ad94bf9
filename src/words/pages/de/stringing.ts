import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order:
    'Die Perlen in der Reihenfolge dieser Liste auffädeln, von oben nach unten und in jeder Zeile von links: Die äußerste Runde kommt zuerst auf den Faden. Die letzte Perle auf dem Faden wird als erste verhäkelt.',
  reading:
    'Lesen: 3A sind drei Perlen A. Steht hinter runden Klammern x 3, wird ihr Inhalt 3-mal aufgefädelt. Davor stehen die Perlen der Runde und die Summe auf dem Faden, wenn ihre Zeile aufgefädelt ist: am Ende jeder Zeile zählen.',
  bare: 'Leere Maschen brauchen keine Perle und stehen nicht in dieser Liste.',
  join: (f) =>
    f.atRoundEnd
      ? `Diesen Abschnitt zu Beginn der ${f.round}. Runde ansetzen, auf der Perlenseite etwa bei ${f.hour} Uhr.`
      : `Diesen Abschnitt vor der ${f.stitch}. Masche der ${f.round}. Runde ansetzen, auf der Perlenseite etwa bei ${f.hour} Uhr.`,
};
