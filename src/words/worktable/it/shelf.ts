import type { WorktableWords } from '../index.js';

/** The shelf of pieces, and how they are kept. */
export const shelf: WorktableWords['shelf'] = {
  title: 'Lo scaffale',
  intro: 'I lavori restano su questo dispositivo, in questo browser, dopo ogni passo.',
  empty: 'Qui non c’è ancora nulla. Un lavoro arriva sullo scaffale con la sua prima immagine.',
  onTable: 'sul tavolo',
  removed: 'Tolti dallo scaffale',
  removedHow: 'Si possono rimettere finché non si tolgono per sempre.',
  open: (title) => `Metti ${title} sul tavolo`,
  take: (title) => `Togli ${title} dallo scaffale`,
  back: (title) => `Rimetti ${title} sullo scaffale`,
  takeShort: 'Togli',
  backShort: 'Rimetti',
  takenOff: (title) => `${title} è stato tolto dallo scaffale.`,
  putBack: (title) => `${title} è di nuovo sullo scaffale.`,
  waits: (title) => `${title} è sullo scaffale.`,
  copyOf: (title) => `${title}, secondo lavoro`,
  copied:
    'L’altra finestra tiene il suo lavoro. Ciò che si fa qui continua come un lavoro a parte.',
  when: (date) => `ultima volta: ${date}`,
  elsewhere: 'Questo lavoro è aperto in un’altra finestra.',
  refused:
    'Questo browser non conserva nulla, forse perché la finestra è privata. Salvare il lavoro come file prima di chiuderla.',
  full: 'Su questo dispositivo non c’è più posto. Gli ultimi passi sono sul tavolo, ma non sono conservati: salvare subito il lavoro come file.',
  edition: 'È pronta una nuova edizione di questa pagina. Il lavoro resta.',
  fileDamaged: (file) =>
    `${file}: questo lavoro non si può aprire, una parte manca o è danneggiata.`,
  fileNewer: (file) =>
    `${file}: questo lavoro viene da un’edizione più recente di questa pagina. Aprire di nuovo la pagina o chiedere un file più vecchio.`,
  forClass: 'Per un corso',
  classHow:
    'Lo schema e il lavoro di ogni pezzo spuntato, in un solo PDF: per ogni nome, sempre su un foglio nuovo; senza nomi, una volta.',
  classNames: 'Nomi, uno per riga',
  classSave: 'Salva in un solo PDF',
};
