import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { hands } from './hands.js';
import { turn } from './chart.js';

const { short } = numbersIn('it');

export const rounds: PageWords['rounds'] = {
  begin: (f) =>
    `Per cominciare: fare un anello magico, oppure 3 o 4 catenelle chiuse ad anello con una maglia bassissima; poi una catenella. Le catenelle e la maglia bassissima non portano perline e non si contano (pratica comune, senza fonte). Lavorare nell’anello le ${f.wedges} maglie del giro 1, ognuna con la sua perlina. L’anello magico si stringe tirando il filo; al centro resta un piccolo foro. Lasciare un capo di filo di ${f.tailCm} cm da nascondere alla fine.`,
  stitch: (f) =>
    [
      // H: maglia bassa; «punto basso» is said too.
      f.way === 'slip'
        ? 'Il punto: maglia bassissima, con una perlina in ogni maglia.'
        : 'Il punto: maglia bassa (m.b., detta anche punto basso), con una perlina in ogni maglia.',
      ...(f.drawn ? [] : hands[f.way === 'slip' ? 'slip-stitch' : 'stitch'].steps(f)),
      f.lean === 0.5
        ? `Così di solito ogni maglia resta arretrata di circa mezza maglia rispetto a quella sottostante (inclinazione: ${short(0.5, 2)} di maglia). I fili in cima a una maglia non stanno sopra il suo centro: le linee di maglie dal centro al bordo vanno perciò di sbieco, e lo schema ne tiene conto.`
        : `Questo modello si basa su un’inclinazione di ${short(f.lean, 3)} di maglia: ogni maglia resta arretrata di questa misura rispetto a quella sottostante, contro il senso di lavorazione.`,
      f.measured
        ? 'È quella misurata sul campione: lavorare con lo stesso uncinetto, lo stesso filo e le stesse perline.'
        : 'Ogni mano è diversa: misurare l’inclinazione su un campione prima di cominciare.',
      'Non girare mai il lavoro.',
    ].join(' '),
  direction: (f) =>
    [
      `La lista dei giri è per chi lavora con la ${f.hand === 'right' ? 'mano destra' : 'mano sinistra'} e con le perline sulla faccia che ${f.beadsFace === 'away' ? 'chi lavora non vede' : 'chi lavora vede'}.`,
      `Sulla faccia delle perline, quella che lo schema mostra e che è l’esterno del borsellino, il lavoro procede ${turn(f.clockwise)}.`,
      f.beadsFace === 'away'
        ? `Chi lavora guarda l’altra faccia, dove procede ${turn(!f.clockwise)}.`
        : 'Mentre si lavora si guarda quella stessa faccia.',
      'Lavorato con l’altra mano, il pannello viene come la sua immagine allo specchio.',
    ].join(' '),
  marker:
    'Segnamaglie: appendere un segnamaglie alla prima maglia del giro e spostarlo in su all’inizio di ogni giro.',
  increases: (example) =>
    `Aumenti: due lettere tra parentesi quadre, ${example}, sono due maglie lavorate in una stessa maglia del giro sottostante, nell’ordine in cui sono scritte. Dal secondo giro in poi c’è una di queste coppie in ogni spicchio di ogni giro.`,
  reading:
    'Lettura: 3A sono tre maglie con la perlina A. Ciò che sta tra parentesi tonde seguite da x 3 si lavora 3 volte. Accanto a ogni giro sono indicate le sue maglie e le sue perline, e il totale delle perline lavorate fino alla sua fine: contare quando un giro è finito.',
  bare: '«2 senza» sono due maglie senza perlina.',
  spiral: 'I giri proseguono a spirale e non si chiudono.',
  joined:
    'Chiudere ogni giro con una maglia bassissima nella sua prima maglia e fare una catenella per salire. La prima maglia del giro successivo si lavora in quella stessa prima maglia. Le maglie bassissime e le catenelle per salire non portano perline e non si contano.',
  end: {
    spiral: (f) =>
      `Dopo l’ultima maglia dell’ultimo giro lavorare due o tre maglie bassissime per addolcire lo scalino; non portano perline e non si contano. Tagliare il filo lasciando ${f.tailCm} cm e farlo passare nell’ultima asola.`,
    joined: (f) =>
      `Alla fine tagliare il filo lasciando ${f.tailCm} cm e farlo passare nell’ultima asola.`,
  },
};
