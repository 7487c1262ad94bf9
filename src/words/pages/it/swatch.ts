import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, short } = numbersIn('it');

/** What stands on the guide to a swatch. */
export const swatch: PageWords['swatch'] = {
  guide: {
    title: 'Misurare la propria maglia',
    describe:
      'Come lavorare e misurare un campione, con un cerchio di rotazione su cui posarlo; da stampare al 100%.',
    intro:
      'Ogni mano fa una maglia diversa. Un piccolo pannello di prova, un campione, dice quanto la tua è alta, larga e inclinata, così che lo schema e la misura finita si adattino alla mano.',
    steps: (f) => [
      {
        head: 'Lavorare.',
        text: `Infilare sul gomitolo ${count(f.beads)} perline (${f.size}) di un solo colore e lavorare ${f.rounds} giri di ${f.wedges} spicchi con il filo e l’uncinetto del portamonete, una perlina in ogni maglia (l’ultimo foglio dice come si lavora la maglia), aumento nella ${{ first: 'prima maglia', middle: 'maglia centrale', last: 'ultima maglia' }[f.increase]} di ogni spicchio, ${f.construction === 'spiral' ? 'a spirale' : 'con ogni giro chiuso'}, con la mano ${f.hand === 'right' ? 'destra' : 'sinistra'}. Dopo il giro ${f.fromRound} segnare il filo a 1 m dall’uncinetto.`,
      },
      {
        head: 'Segnare.',
        text: `Nel giro ${f.fromRound} e nel giro ${f.toRound} mettere un’asola di filo vistoso intorno alla prima maglia dello spicchio ${f.markedWedge}${f.markedWedge === 1 ? ' (la prima maglia del giro)' : ''}.`,
      },
      {
        head: 'Guardare.',
        text: 'Inumidire il campione, spianarlo con la mano, lasciarlo asciugare. Sta in piano? Se si alza a ciotola o se il bordo fa le onde, annotarlo e saltare il passo 4.',
      },
      {
        head: 'Larghezza.',
        text: 'Nel punto più largo, sui bordi esterni delle perline, con il calibro o tra due blocchetti dritti.',
      },
      {
        head: 'Lungo il bordo.',
        text: `A metà dello spicchio ${f.rimWedge}, posare un filo lungo l’ultimo giro per 50 mm, sul centro delle perline, e contare le maglie da centro a centro di perlina. Le mezze contano.`,
      },
      {
        head: 'Rotazione.',
        text: `Posare il campione sul cerchio, perline in su, il foro sulla croce, la maglia segnata del giro ${f.fromRound} sulla linea dello 0. Posare un righello dalla croce sulla maglia segnata del giro ${f.toRound}: leggere i gradi, e se sono nel senso di lavorazione o contro.`,
      },
      {
        head: 'Filo.',
        text: `Quante maglie ha dato il metro, dalla fine del giro ${f.fromRound} finché il segno è arrivato all’uncinetto?`,
      },
      { head: 'Perline.', text: 'Infilare 50 perline, accostarle, misurare la fila.' },
    ],
    write: 'Da annotare',
    blanks: (f) => [
      'piano, ciotola o onde',
      'larghezza, mm',
      'maglie su 50 mm di bordo',
      `rotazione, giri ${f.fromRound}–${f.toRound}, gradi`,
      'nel senso di lavorazione o contro',
      'maglie da 1 m di filo',
      '50 perline, mm',
      'maglia 1–3 (ultimo foglio)',
    ],
    then: 'Dare poi questi numeri, con ciò che dice il passo 1, dove si fa lo schema: nel programma, in «Pannello», «La mia maglia».',
    stitchTitle: 'La maglia',
    stitchIntro:
      'Scegliere quella con cui si lavorerà il portamonete, e non cambiarla: filo, uncinetto, fili della maglia e mano fanno la misura. Un campione in una non dice nulla delle altre. Annotarne il numero sul primo foglio.',
    ways: {
      'both-loops': 'Maglia bassa, sotto entrambi i fili',
      'bead-side-loop': 'La stessa sotto un filo solo, quello dal lato delle perline',
      slip: 'Maglia bassissima',
    },
    gaugeTitle: 'Cerchio di rotazione',
    gaugeAlt:
      'Un cerchio con i gradi, 0 in alto e 180 in basso, nel senso di lavorazione e contro; al centro giri e spicchi su cui posare il campione.',
    round: (r) => `giro ${r}`,
    lean: (lean) => `inclinazione ${short(lean, 2)}`,
    with: 'nel senso di lavorazione',
    against: 'contro il senso di lavorazione',
    scale:
      'Stampare al 100%, senza adattare alla pagina. Misurare i quadrati: se sono sbagliati di più di mezzo millimetro, stampare di nuovo senza ridimensionare.',
    read: `In grigio: giri e spicchi di una maglia abituale, per centrare il pezzo. Fuori della scala: dove viene la maglia segnata con un’inclinazione di 0, ${short(0.25, 2)} e ${short(0.5, 1)} maglie.`,
  },
};
