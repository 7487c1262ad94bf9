import type { PageWords } from '../index.js';

/** The questions and steps beside the drawings of the handwork. */
export const hands: PageWords['hands'] = {
  ring: {
    ask: 'Come si comincia?',
    steps: (f) => [
      `(1) Formare un anello con il filo, lasciando un capo di ${f.tailCm} cm.`,
      '(2) Inserire l’uncinetto nell’anello e prendere il filo che va alle perline. (3) Estrarlo come asola e fare una catenella, che non si conta.',
      `Lavorare le ${f.wedges} maglie del giro 1 intorno all’anello. (4) Tirare il capo: l’anello si chiude e al centro resta un piccolo foro. Va bene anche un anello di 3 o 4 catenelle.`,
    ],
  },
  'bead-side': {
    ask: 'Da che parte stanno le perline?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? 'Le perline si dispongono dietro il lavoro: chi lavora guarda la faccia senza perline.'
        : 'Le perline si dispongono davanti al lavoro: chi lavora guarda le perline.',
    ],
  },
  stitch: {
    ask: 'Come si lavora una maglia?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? `(1) Inserire l’uncinetto sotto ${f.way === 'both-loops' ? 'entrambi i fili' : 'il solo filo dietro'} della maglia successiva, da davanti a dietro.`
        : `(1) Portare il filo davanti al lavoro. Inserire l’uncinetto sotto ${f.way === 'both-loops' ? 'entrambi i fili' : 'il solo filo davanti'} della maglia successiva, da dietro a davanti.`,
      '(2) Gettare il filo. (3) Estrarlo attraverso la maglia: sull’uncinetto ci sono due asole.',
      '(4) Far scorrere la perlina successiva vicino al lavoro.',
      '(5) Oltre la perlina, gettare il filo. (6) Estrarlo attraverso le due asole.',
      f.beadsFace === 'away'
        ? 'La maglia è fatta: la sua perlina sta dietro.'
        : 'La maglia è fatta: la sua perlina sta davanti.',
    ],
  },
  'slip-stitch': {
    ask: 'Come si lavora una maglia?',
    steps: (f) => [
      `(1) ${
        f.beadsFace === 'away'
          ? 'Inserire l’uncinetto sotto il filo che tiene la perlina della prossima maglia sottostante, da davanti a dietro.'
          : 'Portare il filo davanti al lavoro. Inserire l’uncinetto sotto il filo che tiene la perlina della prossima maglia sottostante, da dietro a davanti.'
      } (2) Inclinare quella perlina dalla parte già lavorata.`,
      '(3) Far scorrere la perlina successiva vicino al lavoro.',
      '(4) Oltre la perlina, gettare il filo. (5) Estrarlo in una volta attraverso la maglia e l’asola sull’uncinetto.',
    ],
  },
  increase: {
    ask: 'Che cosa significano due lettere tra parentesi quadre?',
    steps: () => [
      'Due maglie si lavorano in una stessa maglia del giro sottostante: prima (1), poi (2), ognuna con la sua perlina.',
    ],
  },
  'round-run': {
    ask: 'Come corrono i giri?',
    steps: (f) => [
      f.construction === 'spiral'
        ? 'A spirale: ogni giro prosegue nel successivo. Si vede come lavorando; un punto nero è la prima maglia di un giro.'
        : 'Ad anelli: ogni giro si chiude prima che cominci il successivo. Si vede come lavorando; un punto nero è la prima maglia di un giro.',
    ],
  },
  marker: {
    ask: 'Dove comincia un giro?',
    steps: () => [
      '(1) Appena si è lavorato nella maglia segnata, spostare il segnamaglie in su nella maglia appena fatta.',
    ],
  },
  'round-end': {
    ask: 'Come si chiude un giro?',
    steps: () => [
      '(1) Inserire l’uncinetto nella prima maglia del giro e prendere il filo. (2) Estrarlo attraverso la maglia e l’asola sull’uncinetto: una maglia bassissima, senza perlina.',
      '(3) Fare una catenella per salire, senza perlina. (4) Lavorare la prima maglia del giro successivo in quella stessa prima maglia.',
    ],
  },
  'new-length': {
    ask: 'Come si unisce il tratto successivo?',
    steps: (f) => [
      `(1) Nell’ultima maglia del tratto vecchio, quando la sua perlina è vicina al lavoro, gettare il filo nuovo sull’uncinetto, lasciando un capo di ${f.tailCm} cm. (2) Estrarlo attraverso tutto ciò che è sull’uncinetto.`,
      '(3) Stendere i due capi lungo il bordo e lavorarvi sopra le 5–10 maglie successive; nascondere più tardi quello che ne resta.',
    ],
  },
  'last-stitches': {
    ask: 'Come si finisce l’ultimo giro?',
    steps: (f) => [
      `(1, 2, 3) Lavorare due o tre maglie bassissime giù per lo scalino, senza perline. (4) Tagliare il filo lasciando ${f.tailCm} cm e farlo passare nell’ultima asola.`,
    ],
  },
  seam: {
    ask: 'Quali maglie si cuciono insieme?',
    steps: (f) => [
      `Gli ultimi giri dei due pannelli e i numeri delle loro maglie; all’esterno: ${f.front}; all’interno: ${f.back}. Ogni linea unisce due maglie che si incontrano. Le maglie bianche restano aperte per la montatura.`,
    ],
  },
  'seam-stitch': {
    ask: 'Come si cuce la cucitura?',
    steps: () => [
      '(1) Passare l’ago sotto entrambi i fili di una maglia di ogni pannello, sempre dalla stessa parte, e proseguire coppia per coppia.',
    ],
  },
  frame: {
    ask: 'Da dove si comincia alla montatura?',
    steps: (f) => [
      `(1) Cominciare dal centro e andare verso uno snodo; poi ricominciare dal centro e andare verso l’altro. ${f.bare ? 'Alla montatura stanno le maglie senza perline.' : 'Alla montatura sta il bordo del pannello.'}`,
    ],
  },
  'frame-edge': {
    ask: 'Come tiene il bordo nella montatura?',
    steps: (f) => [
      f.fixing === 'sewn'
        ? '(1) Da dentro, uscire attraverso il bordo dal secondo foro più avanti. (2) Rientrare dal foro precedente: punto indietro, foro per foro.'
        : '(1) Mettere la colla nella scanalatura. (2) Spingervi il bordo del pannello, con la fodera cucita sopra. (3) Premere accanto cordoncino di carta.',
    ],
  },
  lining: {
    ask: 'Come si mette la fodera?',
    steps: (f) => [
      '(1) Dritto contro dritto, cucire da un segno di snodo all’altro passando dal basso.',
      '(2) Lasciarla al rovescio e ripiegare il margine aperto verso l’esterno.',
      '(3) Infilarla nel borsellino.',
      f.fixing === 'sewn'
        ? '(4) All’interno, cucire il margine ripiegato al bordo del pannello, sotto i fori.'
        : '(4) All’interno, cucire il margine ripiegato al bordo del pannello.',
    ],
  },
  braid: {
    ask: 'Come si copre la cucitura della montatura?',
    steps: () => [
      'Per finire, se si vuole: all’interno, stendere su ogni lato metà della passamaneria lungo la cucitura della montatura, con le estremità ripiegate di 10 mm agli snodi. (1) Cucire i due bordi alla fodera e al pannello, passando l’ago sotto la passamaneria.',
    ],
  },
};
