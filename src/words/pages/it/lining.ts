import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { fixed, short, sizeMm } = numbersIn('it');
/** 95 as 95,0: sizes to cut by are said to a tenth. */
const tenth = (mm: number) => fixed(mm, 1);
/** Never after an article: «il 42%» but «l’8%». */
const percent = (share: number) => `${short(100 * share, 1)}%`;

export const lining: PageWords['lining'] = {
  title: (f) => (f.panel === undefined ? `Fodera: ${f.title}` : `Fodera: ${f.title}, ${f.panel}`),
  size: (f) =>
    `Nel punto più largo: linea di taglio ${tenth(f.cutMm)} mm, linea di cucitura ${tenth(f.seamMm)} mm (margine di cucitura ${short(f.allowanceMm, 1)} mm tutto intorno, ${f.easeMm === 0 ? 'senza agio' : `${short(f.easeMm, 1)} mm più stretta del pannello`}).`,
  measured: (f) =>
    `Per un pannello di ${tenth(f.measuredMm)} mm, come misurato (secondo il calcolo ${sizeMm(f.model, 1)} mm).`,
  estimate: (f) =>
    `STIMA: ${sizeMm(f.model, 1)} mm è la misura del pannello secondo il calcolo, non presa con il righello. Misurare il pannello finito nel punto più largo, fino al bordo esterno delle perline, e tagliare più grande o più piccolo di quella differenza.`,
  cutTwo:
    'Tagliare 2 pezzi (uno per pannello): questo lato verso l’alto sul rovescio della stoffa, la freccia in drittofilo. Linea continua: tagliare. Linea tratteggiata: cucire.',
  cutOne:
    'Tagliare 1 pezzo per questo pannello; l’altro pannello ha un foglio a parte. Questo lato verso l’alto sul rovescio della stoffa, la freccia in drittofilo. Linea continua: tagliare. Linea tratteggiata: cucire.',
  sew: (f) =>
    f.gapMm > 0
      ? `Dritto contro dritto, cucire da un segno dello snodo, passando dal basso, fino all’altro, e lasciare ${short(f.gapMm, 1)} mm aperti tra le barrette per rivoltare.`
      : 'Dritto contro dritto, cucire da un segno dello snodo, passando dal basso, fino all’altro.',
  put: 'Non rivoltarla: inserirla nel portamonete così com’è, con il rovescio contro i pannelli, in modo che all’interno si veda il suo dritto.',
  fold: (f) =>
    `Ripiegare verso il rovescio, lungo la linea tratteggiata, ${short(f.allowanceMm, 1)} mm del margine aperto sopra i segni degli snodi e cucire la piega al bordo del pannello lungo la montatura, sotto i fori o all’interno del margine della scanalatura.`,
  close:
    'Con un’apertura, la fodera e i pannelli si cuciono prima lungo la montatura, dritto contro dritto; rivoltare il portamonete attraverso l’apertura, ripiegarne i margini all’interno e chiuderla a mano a piccoli punti.',
  hinges: (f) =>
    ({
      asked: `Segni degli snodi (cerchietti neri): ${percent(f.share)} del bordo nella montatura, come indicato.`,
      frame: `Segni degli snodi (cerchietti neri): ${Math.round(100 * f.share)}% del bordo nella montatura, secondo la montatura del modello.`,
      usual: `Segni degli snodi (cerchietti neri): una stima, ${percent(f.share)} del bordo nella montatura${f.marked ? ' (pratica comune, senza fonte)' : ''}: segnare dove finisce la montatura che si usa.`,
    })[f.from],
  spiral:
    'Lo scalino della spirale sul bordo non è considerato: il contorno è l’anello chiuso a metà altezza dello scalino.',
  print:
    'Stampare al 100%, senza adattare alla pagina. Misurare entrambi i quadrati: se uno è sbagliato di più di 0,5 mm, non tagliare.',
  caution:
    'Attenzione: contare spilli e aghi prima e dopo, e tenerli, come le forbici e le perline, fuori dalla portata dei bambini piccoli. Sigillare con la fiamma i bordi sfilacciati solo su stoffe sintetiche, mai vicino alla colla; aerare la stanza quando si incolla. Le norme del luogo in cui si vive o si vende vengono prima di questi consigli.',
  sheets: (f) =>
    f.rows * f.columns === 1
      ? 'Il pezzo è sul foglio seguente.'
      : `Il pezzo è sui fogli seguenti: ${f.rows * f.columns} fogli, ${f.rows} in altezza e ${f.columns} in larghezza. Si sovrappongono: di due fogli vicini tagliarne uno lungo la linea punteggiata, posarlo sull’altro in modo che le crocette cadano sulle crocette, e unirli con nastro adesivo.`,
  sheet: (f) =>
    f.rows * f.columns === 1
      ? 'Il pezzo'
      : `Riga ${f.row} di ${f.rows}, colonna ${f.column} di ${f.columns}`,
  marks: {
    pieces: (f) => `tagliare ${f.pieces}`,
    cut: (f) => `taglio ${tenth(f.mm)} mm`,
    seam: (f) => `cucitura ${tenth(f.mm)} mm`,
    estimate: 'stima',
    grain: 'drittofilo',
    top: 'centro in alto',
    hinge: 'snodo',
    gap: (f) => `aperto ${short(f.mm, 1)} mm`,
  },
  check: {
    mm: '50 mm',
    inch: '2 pollici',
    cm: 'cm',
    // M: poll. for want of room on the ruler; in is the symbol.
    in: 'poll.',
  },
};
