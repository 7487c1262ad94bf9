import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { runsText } from './frame.js';
import { accusative, dative, from, genitive, inThe, upper } from './panel-name.js';

const { many } = numbersIn('de');

/** How the two panels of a purse are sewn together, by count. */
export const sewing: PageWords['sewing'] = {
  lay: (f) =>
    `${upper(accusative(f.back))} mit den Perlen nach unten hinlegen und ${accusative(f.front)} mit den Perlen nach oben darauf, beide Bilder aufrecht, sodass die Perlen auf beiden Seiten außen sind. Beide Teile werden mit derselben Hand gehäkelt; ${from(f.front)} aus gesehen laufen die Runden ${genitive(f.back)} andersherum.`,
  count: (f) =>
    `Die Ränder werden nach Zählung zusammengenäht. Die ${f.round}. Runde, die letzte, hat in jedem Teil ${f.stitches} Maschen. In beiden Teilen die erste Masche dieser Runde markieren und von dort in Arbeitsrichtung zählen.`,
  meet: (f) =>
    `Masche 1 ${genitive(f.front)} trifft auf Masche ${f.stitches} ${genitive(f.back)}, Masche 2 auf Masche ${f.stitches - 1} und so weiter: Die beiden Nummern ergeben zusammen immer ${f.stitches + 1}.`,
  meetShifted: (f) =>
    `Masche ${f.stitch} ${genitive(f.front)} trifft auf Masche ${f.meets} ${genitive(f.back)}; von dort ${inThe(f.front)} vorwärts und ${inThe(f.back)} rückwärts zählen.`,
  spiral:
    'Bei einer Spirale liegt das Ende der letzten Runde eine Reihe weiter außen als ihr Anfang, und die Stufen der beiden Teile steigen entgegengesetzt an: Die Ränder liegen bis zu einer Reihe auseinander, am meisten neben der Stufe. Nicht nach Augenmaß nähen: bei der Zählung bleiben und die Ränder durch die Naht zusammenziehen. Die Kettmaschen nach der letzten Runde zählen nicht.',
  joined:
    'Die Ränder liegen ringsum Kante an Kante. Die Kettmasche, die die letzte Runde schließt, zählt nicht.',
  opening: (f) =>
    `Oben bleibt der Rand für den Bügel offen: meist etwas weniger als die Hälfte, mit der Mitte bei 12 Uhr${f.marked ? ' (übliche Praxis, keine Quelle)' : ''}. Von einem Scharnier des Bügels hinunter über 6 Uhr und hinauf zum anderen nähen; 5 bis 10 mm unter jedem Scharnier enden.`,
  openingOfFrame: (f) => {
    const open = f.told
      ? 'Oben bleibt der Rand für den Bügel offen.'
      : `Oben bleibt der Rand für den Bügel offen: In ihm liegen die Maschen ${runsText(f.frontInFrame)} der letzten Runde ${genitive(f.front)} und die Maschen ${runsText(f.backInFrame)} ${genitive(f.back)}.`;
    if (!f.first || !f.last) return open;
    const pair = (one: { front: number; back: number }) =>
      `Masche ${one.front} ${genitive(f.front)} mit Masche ${one.back} ${genitive(f.back)}`;
    const pairs = many(f.pairs, { one: 'Paar', other: 'Paare' });
    const eased =
      f.halves === 0
        ? ''
        : f.halves === 1
          ? ' Ein Paar zwischen Naht und Bügel wird nicht zusammengenäht: Weil die Ränder nicht gleich ansteigen, liegt nur eine seiner Maschen im Bügel. Die andere am Scharnier einhalten.'
          : ` Die ${f.halves} Paare zwischen Naht und Bügel werden nicht zusammengenäht: Weil die Ränder nicht gleich ansteigen, liegt von jedem nur eine Masche im Bügel. Die andere am Scharnier einhalten.`;
    return `${open} ${pairs} zusammennähen, von ${pair(f.first)} über 6 Uhr bis ${pair(f.last)}.${eased}`;
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
    `${f.frontHour} Uhr (${f.backHour} Uhr auf ${dative(f.backName)})`,
    String(f.front),
    String(f.back),
  ],
};
