import type { WorktableWords } from '../index.js';

/** The step Work: stringing and crocheting beside the bead mat. */
export const work: WorktableWords['work'] = {
  step: 'Lavoro',
  intro:
    'Appoggiare lo schermo accanto al tappetino delle perline. Mostra una cosa alla volta e ricorda, perlina per perlina, dove ci si ferma.',
  waiting: 'Le perline si stanno ancora scegliendo …',
  changed:
    'Il pannello è stato cambiato a lavoro iniziato. Si lavora ancora quello con cui si è cominciato.',
  which: 'Quale',
  copies: 'Quanti di ciascuno',
  panel: 'Pannello',
  sides: { front: 'Davanti', back: 'Dietro' },
  panelOf: (f) => `${f.name}, ${f.n} di ${f.of}`,
  strung: (f) => `${f.done} perline infilate su ${f.all}`,
  worked: (f) => `${f.done} maglie lavorate su ${f.all}`,
  length: (f) => `tratto ${f.n} di ${f.of}`,
  stringRound: (f) => `Giro ${f.r} · ${f.done} perline su ${f.all}`,
  then: (run) => `poi ${run}`,
  thenDone: 'queste sono le ultime',
  notStrung: (n) =>
    `Secondo questa pagina, di questo tratto restano da infilare: ${n}. Prima si infila.`,
  strungByList: 'Sono tutte sul filo',
  tapStrung: 'Toccare ovunque quando sono sul filo',
  stands: (f) =>
    `Sul filo: ${f.beads} perline, ${f.metres} m${f.grams === undefined ? '' : `, ${f.grams} g`}`,
  lengthDone: (f) =>
    f.of === '1'
      ? `Tutte le ${f.beads} perline sono infilate`
      : `Il tratto ${f.n} di ${f.of} è infilato: ${f.beads} perline`,
  lengthDoneHow:
    'L’ultima perlina infilata si lavora per prima. Spingere le perline lungo il filo e lasciare il filo sul gomitolo.',
  stringLength: (f) => `Infilare il tratto ${f.n} di ${f.of}`,
  inHand: 'Il lavoro come sta in mano, con la maglia di adesso all’uncinetto',
  roundOf: (f) => `Giro ${f.r} di ${f.of}`,
  inRound: (f) => `spicchio ${f.wedge} · maglia ${f.stitch} di ${f.of}`,
  allWorked: (n) => `tutte le ${n} maglie`,
  begin: (wedges) => `Cominciare con un anello e lavorarvi le ${wedges} maglie del giro 1.`,
  roundDone: (f) =>
    `Il giro ${f.r} è finito: ${f.stitches} maglie, ${f.beads} perline, ${f.all} perline in tutto.`,
  moveMarker: 'Spostare il segnamaglie nella prima maglia del giro seguente.',
  closeRound:
    'Chiudere il giro con una maglia bassissima e fare una catenella per salire; entrambe senza perlina.',
  joinHere: (length) => `Alt: unire qui il tratto ${length}.`,
  bothInOne: 'tutte e due in una maglia',
  bare: 'senza perlina',
  open: 'non deciso',
  tapWorked: 'Toccare quando è lavorato',
  coming: 'Prossime perline sul filo',
  pace: 'Quanto alla volta',
  panelDone: 'Il pannello è finito',
  endSpiral:
    'Lavorare due o tre maglie bassissime senza perline per addolcire lo scalino, tagliare il filo lasciando 20 cm e farlo passare nell’asola.',
  endJoined:
    'Chiudere il giro con una maglia bassissima, tagliare il filo lasciando 20 cm e farlo passare nell’asola.',
  voiceless: 'Questo dispositivo non ha una voce per la lingua della pagina.',
  cannot: {
    stayAwake:
      'Questo browser non può tenere acceso lo schermo: allungarne la durata nelle impostazioni del dispositivo.',
    speak: 'Questo browser non può leggere ad alta voce.',
    listen: 'Questo browser non può ascoltare: un tocco o la barra spaziatrice manda avanti.',
  },
  heard: { next: ['avanti', 'sì', 'prossimo'], back: ['indietro', 'sbagliato'] },
  listens:
    'In ascolto di «avanti» e «indietro». Alcuni browser inviano ciò che sentono al loro produttore per capirlo; questa pagina non invia nulla.',
  deaf: 'Il browser adesso non può ascoltare: non gli è stato permesso, o gli serve una rete.',
};
