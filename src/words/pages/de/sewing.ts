import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { runsText } from './frame.js';

const { many } = numbersIn('de');

/** How the two panels of a purse are sewn together, by count. */
export const sewing: PageWords['sewing'] = {
  lay: (f) =>
    `Das Teil „${f.back}“ mit den Perlen nach unten hinlegen und das Teil „${f.front}“ mit den Perlen nach oben darauf, beide Bilder aufrecht, sodass die Perlen auf beiden Seiten außen sind. Beide Teile werden mit derselben Hand gehäkelt; von „${f.front}“ aus gesehen laufen die Runden von „${f.back}“ andersherum.`,
  count: (f) =>
    `Die Ränder werden nach Zählung zusammengenäht. Die ${f.round}. Runde, die letzte, hat in jedem Teil ${f.stitches} Maschen. In beiden Teilen die erste Masche dieser Runde markieren und von dort in Arbeitsrichtung zählen.`,
  meet: (f) =>
    `Masche 1 von „${f.front}“ trifft auf Masche ${f.stitches} von „${f.back}“, Masche 2 auf Masche ${f.stitches - 1} und so weiter: Die beiden Nummern ergeben zusammen immer ${f.stitches + 1}.`,
  meetShifted: (f) =>
    `Masche ${f.stitch} von „${f.front}“ trifft auf Masche ${f.meets} von „${f.back}“; von dort in „${f.front}“ vorwärts und in „${f.back}“ rückwärts zählen.`,
  spiral:
    'Bei einer Spirale liegt das Ende der letzten Runde eine Reihe weiter außen als ihr Anfang, und die Stufen der beiden Teile steigen entgegengesetzt an: Die Ränder liegen bis zu einer Reihe auseinander, am meisten neben der Stufe. Nicht nach Augenmaß nähen: bei der Zählung bleiben und die Ränder durch die Naht zusammenziehen. Die Kettmaschen nach der letzten Runde zählen nicht.',
  joined:
    'Die Ränder liegen ringsum Kante an Kante. Die Kettmasche, die die letzte Runde schließt, zählt nicht.',
  opening:
    'Oben bleibt der Rand für den Bügel offen: meist etwas weniger als die Hälfte, mit der Mitte bei 12 Uhr (übliche Praxis, keine Quelle). Von einem Scharnier des Bügels hinunter über 6 Uhr und hinauf zum anderen nähen; 5 bis 10 mm unter jedem Scharnier enden.',
  openingOfFrame: (f) => {
    const open = `Oben bleibt der Rand für den Bügel offen: In ihm liegen die Maschen ${runsText(f.frontInFrame)} der letzten Runde von „${f.front}“ und die Maschen ${runsText(f.backInFrame)} von „${f.back}“.`;
    if (!f.first || !f.last) return open;
    const pair = (one: { front: number; back: number }) =>
      `Masche ${one.front} von „${f.front}“ mit ${one.back} von „${f.back}“`;
    const pairs = many(f.pairs, { one: 'Paar', other: 'Paare' });
    const eased =
      f.halves === 0
        ? ''
        : f.halves === 1
          ? ' Bei einem Paar neben den Scharnieren liegt nur eine der beiden Maschen im Bügel, weil die Ränder nicht gleich ansteigen: dort die Mehrweite beim Nähen verteilen.'
          : ` Bei ${f.halves} Paaren neben den Scharnieren liegt nur eine der beiden Maschen im Bügel, weil die Ränder nicht gleich ansteigen: dort die Mehrweite beim Nähen verteilen.`;
    return `${open} ${pairs} zusammennähen, von ${pair(f.first)} über 6 Uhr bis ${pair(f.last)}; 5 bis 10 mm unter jedem Scharnier enden, damit es sich bewegen kann (übliche Praxis, keine Quelle).${eased}`;
  },
  work: 'Zuerst die Paare der Tabelle unten zusammenstecken oder -binden, 6 Uhr vor den anderen, dann Masche an Masche nähen, jeweils unter beiden Maschengliedern, mit dem Häkelgarn oder einem starken Nylon- oder Polyesterfaden, etwa dreimal so lang wie die Naht.',
  care: (fixing) =>
    [
      'Vorsicht: Nadeln und Stecknadeln vorher und nachher zählen und sie und die Perlen von kleinen Kindern fernhalten.',
      ...(fixing === undefined
        ? []
        : ['Der Bügel kann Nickel enthalten, auf das manche Menschen reagieren.']),
      ...(fixing === 'glued'
        ? [
            'In einem gut gelüfteten Raum kleben, fern von Flammen und Kindern, und die Hinweise auf der Klebstoffpackung lesen.',
          ]
        : []),
      'Augen und Hände oft ausruhen. Wo man wohnt oder verkauft, gehen die örtlichen Vorschriften vor.',
    ].join(' '),
  columns: (f) => ['auf der Uhr', f.front, f.back],
  row: (f) => [
    `${f.frontHour} Uhr (${f.backHour} Uhr auf „${f.backName}“)`,
    String(f.front),
    String(f.back),
  ],
};
