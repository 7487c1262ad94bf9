import type { Pair } from '../english/sewing.js';
import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { runsText } from './frame.js';

const { many } = numbersIn('it');

const fixedIn = (fixing: 'sewn' | 'glued' | undefined): string[] => [
  ...(fixing === undefined
    ? []
    : ['La montatura può contenere nichel, che in alcune persone provoca reazioni.']),
  ...(fixing === 'glued'
    ? [
        'Incollare in una stanza ben aerata, lontano da fiamme e bambini, e leggere l’etichetta della colla.',
      ]
    : []),
];

export const sewing: PageWords['sewing'] = {
  lay: (f) =>
    `Stendere il pannello «${f.back}» con le perline rivolte verso il basso e posarvi sopra il pannello «${f.front}» con le perline rivolte verso l’alto, entrambi i disegni diritti, in modo che le perline siano all’esterno da tutte e due le parti. I due pannelli si lavorano con la stessa mano; visti dal pannello «${f.front}», i giri del pannello «${f.back}» procedono in senso opposto.`,
  count: (f) =>
    `I bordi si cuciono contando. Il giro ${f.round}, l’ultimo, ha ${f.stitches} maglie in ogni pannello. Segnare la sua prima maglia in entrambi i pannelli e contare da lì nel senso in cui è stato lavorato.`,
  meet: (f) =>
    `La maglia 1 del pannello «${f.front}» va con la maglia ${f.stitches} del pannello «${f.back}», la maglia 2 con la maglia ${f.stitches - 1} e così via: la somma dei due numeri è sempre ${f.stitches + 1}.`,
  meetShifted: (f) =>
    `La maglia ${f.stitch} del pannello «${f.front}» va con la maglia ${f.meets} del pannello «${f.back}»; da lì contare in avanti nel pannello «${f.front}» e all’indietro nel pannello «${f.back}».`,
  spiral:
    'In una spirale la fine dell’ultimo giro sta un giro più in fuori del suo inizio, e gli scalini dei due pannelli salgono in sensi opposti: i bordi distano tra loro fino alla larghezza di un giro, soprattutto accanto allo scalino. Non cucire a occhio: attenersi al conteggio e lasciare che la cucitura avvicini i due bordi. Le maglie bassissime dopo l’ultimo giro non si contano.',
  joined:
    'I bordi combaciano tutto intorno. La maglia bassissima che chiude l’ultimo giro non si conta.',
  opening: (f) =>
    `La parte in alto resta aperta per la montatura: di solito un po’ meno della metà del bordo, con il centro a ore 12${f.marked ? ' (pratica comune, senza fonte)' : ''}. Cucire da uno snodo della montatura verso il basso, passando da ore 6, e risalire fino all’altro; fermarsi 5–10 mm sotto ogni snodo.`,
  openingOfFrame: (f) => {
    const open = f.told
      ? 'La parte in alto resta aperta per la montatura.'
      : `La parte in alto resta aperta per la montatura. Maglie dell’ultimo giro che stanno nella montatura: nel pannello «${f.front}», ${runsText(f.frontInFrame)}; nel pannello «${f.back}», ${runsText(f.backInFrame)}.`;
    if (!f.first || !f.last) return open;
    const pair = (one: Pair) =>
      `maglia ${one.front} del pannello «${f.front}» con maglia ${one.back} del pannello «${f.back}»`;
    const sew = `Cucire ${many(f.pairs, { one: 'coppia', other: 'coppie' })} di maglie: da ${pair(f.first)}, passando da ore 6, fino a ${pair(f.last)}.`;
    if (f.halves === 0) return `${open} ${sew}`;
    // M: assorbire, to ease in.
    const eased =
      f.halves === 1
        ? 'La coppia tra la cucitura e la montatura non si cuce: poiché i due bordi non salgono allo stesso modo, solo una delle sue maglie sta nella montatura. Assorbire l’altra accanto allo snodo.'
        : `Le ${f.halves} coppie tra la cucitura e la montatura non si cuciono: poiché i due bordi non salgono allo stesso modo, solo una maglia di ognuna sta nella montatura. Assorbire l’altra accanto allo snodo.`;
    return `${open} ${sew} ${eased}`;
  },
  work: 'Prima fermare con spilli o legare le coppie della tabella qui sotto, quella a ore 6 prima delle altre; poi cucire maglia con maglia, prendendo entrambi i fili di ogni maglia, con il filo del lavoro o con un filo robusto di nylon o poliestere lungo circa tre volte la cucitura.',
  care: (fixing) =>
    [
      'Attenzione: contare aghi e spilli prima e dopo, e tenerli, come le perline, fuori dalla portata dei bambini piccoli.',
      ...fixedIn(fixing),
      'Riposare spesso occhi e mani. Le norme del luogo in cui si vive o si vende vengono prima di questi consigli.',
    ].join(' '),
  columns: (f) => ['sull’orologio', f.front, f.back],
  row: (f) => [
    `ore ${f.frontHour} (ore ${f.backHour} su «${f.backName}»)`,
    String(f.front),
    String(f.back),
  ],
};
