import type { PageWords } from '../index.js';

type Booklet = PageWords['booklet'];

export const enlarged: Booklet['enlarged'] = {
  part: 'Schema ingrandito',
  sheet: (f) => `foglio ${f.sheet} di ${f.sheets}`,
  how: 'La mappa mostra dove si trova questo foglio. Ciò che sta oltre una linea punteggiata è anche sul foglio vicino; un triangolo dice quale. La legenda è sullo schema intero.',
};

export const wedgeChart: Booklet['wedgeChart'] = {
  part: 'Schema di uno spicchio',
  alike: (f) =>
    `Tutti gli spicchi (${f.wedges}) sono uguali, e questo è uno di loro: lavorare ogni riga ${f.wedges} volte nel suo giro.`,
  how: (f) =>
    f.direction === 1
      ? 'Faccia delle perline, bordo in alto. La riga 1 è la punta, al centro del pannello. Leggere ogni riga da sinistra a destra. Un triangolo nero su due maglie indica la maglia sottostante in cui si lavorano entrambe.'
      : 'Faccia delle perline, bordo in alto. La riga 1 è la punta, al centro del pannello. Leggere ogni riga da destra a sinistra. Un triangolo nero su due maglie indica la maglia sottostante in cui si lavorano entrambe.',
};

export const level: Booklet['level'] = {
  title: 'Livello del progetto',
  intermediate: 'Intermedio: giri che si ripetono; filo sottile, uncinetto sottile',
  complex: 'Complesso: un disegno da seguire perlina per perlina; filo sottile, uncinetto sottile',
};
