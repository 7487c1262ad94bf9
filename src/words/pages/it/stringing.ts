import type { PageWords } from '../index.js';

export const stringing: PageWords['stringing'] = {
  order:
    'Infilare le perline nell’ordine di questa lista, dall’alto in basso e in ogni riga da sinistra: il giro più esterno si infila per primo. L’ultima perlina sul filo è la prima che si lavora.',
  reading:
    'Lettura: 3A sono tre perline A. Ciò che sta tra parentesi tonde seguite da x 3 si infila 3 volte. Davanti sono indicate le perline del giro e il totale sul filo quando la sua riga è infilata: contare alla fine di ogni riga.',
  bare: 'Le maglie senza perlina non ne richiedono e non sono in questa lista.',
  join: (f) =>
    f.atRoundEnd
      ? `Unire questo tratto all’inizio del giro ${f.round}, circa a ore ${f.hour} sulla faccia delle perline.`
      : `Unire questo tratto prima della maglia ${f.stitch} del giro ${f.round}, circa a ore ${f.hour} sulla faccia delle perline.`,
};
