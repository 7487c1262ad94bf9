import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, sizeMm } = numbersIn('it');

export const before: PageWords['booklet']['before'] = {
  swatch: 'Lavorare prima un campione',
  swatchText: (f) =>
    `Lavorare 10 giri di ${f.wedges} spicchi in un solo colore con le stesse perline, lo stesso filo e lo stesso uncinetto che si useranno. Servono ${count(f.beads)} perline; i disegni di questa parte mostrano l’inizio, la maglia e l’aumento. Stendere il campione in piano. Questo modello si basa su maglie larghe ${fixed(f.widthMm, 2)} mm e giri alti ${fixed(f.heightMm, 2)} mm: dopo 5 giri il campione misura circa ${sizeMm(f.five, 0)} mm di diametro, dopo 10 giri circa ${sizeMm(f.ten, 0)} mm. Se è più grande, prendere un uncinetto più sottile; se è più piccolo, uno più grosso. Se si incurva a coppa, le maglie sono troppo strette per la loro altezza; se fa le onde, sono troppo larghe.`,
  hand: 'Quale mano e quale faccia',
  start: 'Come cominciare e proseguire',
  read: 'Come leggere la lista dei giri',
  string: 'Come infilare',
  signs: 'Segni e abbreviazioni',
  sign: 'Segno',
  meaning: 'Significato',
  table: (second) => [
    ['G7', 'giro 7, contato dal centro'],
    ['A, B', 'le perline: lettere come nella tabella dei materiali e nello schema'],
    ['3A', 'tre maglie con la perlina A; nella lista di infilatura tre perline A'],
    [`[A ${second}]`, 'due maglie lavorate in una stessa maglia sottostante: un aumento'],
    ['( ) x 7', 'ciò che sta tra parentesi, 7 volte'],
    ['senza', 'una maglia senza perlina'],
    ['m.b.', 'maglia bassa, detta anche punto basso'],
  ],
  smallChart: (f) =>
    `Lo schema ha tante maglie che su questa carta le sue lettere sono piccole. Leggerlo ingrandito su uno schermo, oppure far stampare quella pagina in formato ${f.paper}. La lista dei giri dice le stesse cose a parole.`,
};
