import type { PageWords } from '../index.js';

export const stringing: PageWords['stringing'] = {
  order:
    'Infilare le perline nell’ordine della lista di infilatura, dall’alto in basso e in ogni riga da sinistra: il giro più esterno si infila per primo. L’ultima perlina sul filo è la prima che si lavora.',
  reading:
    'Lettura: 3A sono tre perline A. Ciò che sta tra parentesi tonde seguite da x 3 si infila 3 volte. Accanto a ogni giro sono indicate le sue perline e il totale sul filo quando la sua riga è infilata: contare alla fine di ogni riga.',
  bare: 'Le maglie senza perlina non ne richiedono e non sono nella lista di infilatura.',
  onBall:
    'Infilare dal gomitolo, con il capo del filo nell’ago da perline, e non tagliare il filo prima che il tratto sia lavorato.',
  stop: (f) =>
    `Fermarsi ${f.atRoundEnd ? `nell’ultima maglia del giro ${f.round}` : `nella maglia ${f.stitch} del giro ${f.round}`}, prima di estrarre il filo per l’ultima volta. Fermare le asole con un segnamaglie, tagliare il filo lasciando ${f.tailCm} cm, infilare il tratto ${f.next} e unirlo in questa maglia, circa a ore ${f.hour} sulla faccia delle perline.`,
};
