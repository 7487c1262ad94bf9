import type { WorktableWords } from '../index.js';

/** Help while working: where one is, what is wrong, notes, time, and a colour that runs out. */
export const mending: WorktableWords['mending'] = {
  findTitle: 'Dove sono?',
  findHow: 'Toccare le perline che vengono ora dal filo, per prima la più vicina all’uncinetto.',
  findNone: 'Così non compaiono da nessuna parte. Guardare l’ultima toccata.',
  findMore: (n) => `Punti che corrispondono: ${n}. Toccare la perlina seguente.`,
  found: (f) => `Segue la maglia ${f.stitch} del giro ${f.round}, nello spicchio ${f.wedge}.`,
  foundSlips: (n) => `Perline che lì differiscono dalla lista: ${n}.`,
  goThere: 'Continuare da lì',
  jumped: (f) => `Si è arrivati qui dalla maglia ${f.stitch} del giro ${f.round}.`,
  checkTitle: 'È giusto?',
  checkHow: (after) =>
    after === '0'
      ? 'Il filo deve apparire così, per prima la prima perlina infilata.'
      : `Il filo deve apparire così dopo le ${after} perline controllate.`,
  checkRight: 'Il mio è uguale',
  readStrung: (after) =>
    after === '0'
      ? 'Se no, toccare ciò che c’è davvero, per prima la prima perlina infilata.'
      : `Se no, toccare ciò che c’è davvero, cominciando dopo la perlina ${after}.`,
  wrongTitle: 'Qualcosa non va',
  readComing:
    'Toccare le perline come vengono davvero dal filo, per prima la più vicina all’uncinetto.',
  agree: (n) => `Come nella lista: ${n} perline.`,
  tooMany: 'Non è quel pezzo di filo, o è stato letto dall’altro capo.',
  notHere: 'Queste perline non vanno qui. Forse il lavoro è in un altro punto.',
  slip: {
    missing: (f) =>
      `Dopo la perlina ${f.after}: manca ${f.wanted} (giro ${f.round}, maglia ${f.stitch})`,
    extra: (f) =>
      `Dopo la perlina ${f.after}: ${f.got} di troppo (giro ${f.round}, prima della maglia ${f.stitch})`,
    other: (f) =>
      `Dopo la perlina ${f.after}: ${f.got} invece di ${f.wanted} (giro ${f.round}, maglia ${f.stitch})`,
    swap: (f) =>
      `Dopo la perlina ${f.after}: ${f.got} nell’ordine sbagliato, ci vuole ${f.wanted} (giro ${f.round}, maglia ${f.stitch})`,
  },
  ways: {
    missing:
      'Manca: lavorare quella maglia senza perlina e cucire la perlina dopo con un ago sottile e lo stesso filo.',
    extra:
      'Di troppo: rompere la perlina con pinze piatte quando arriva. Portare occhiali protettivi, tenere un panno su perlina e pinze, raccogliere le schegge e tastare il filo per sentire se è tagliato.',
    other:
      'Altro colore: rompere la perlina sbagliata quando arriva, lavorare la maglia senza perlina e cucire quella giusta dopo.',
    swap: 'Ordine sbagliato: trattarle come due di altro colore, o lavorarle così se nessuno lo vedrà.',
  },
  broken:
    'Il vetro rotto taglia filo e pelle e schizza negli occhi: mai senza occhiali protettivi.',
  takeOff: (after) => `Ho tolto tutto dopo la perlina ${after}`,
  mendLater: 'Lasciare e rimediare all’uncinetto',
  noteThem: 'Annotarlo alle maglie',
  here: {
    sewOn: (letter) =>
      `Qui manca ${letter}: lavorare la maglia senza perlina e cucire la perlina dopo.`,
    extra: (letters) => `Togliere prima dal filo: ${letters}.`,
  },
  ten: 'Dieci alla volta',
  takeBack: 'Togliere l’ultima',
  typeThem: 'Oppure scriverle, per esempio 3A 2B',
  addTyped: 'Aggiungerle',
  typedWrong: (letters) => `Solo numeri e queste lettere: ${letters}`,
  tapped: (n) => `Perline indicate: ${n}`,
  notes: 'Note',
  noteAt: (f) => `Nota alla maglia ${f.stitch} del giro ${f.round}`,
  noteHow: 'Toccare una maglia del lavoro per fissarvi una nota.',
  noteLine: (f) => `Giro ${f.round}, maglia ${f.stitch}: ${f.text}`,
  sewOnLine: (f) => `Giro ${f.round}, maglia ${f.stitch}: cucire ${f.letter}, ${f.name}.`,
  sewn: 'Cucita',
  takeAway: 'Togliere',
  sewOnTitle: 'Perline da cucire',
  timeTitle: 'Tempo e costo',
  time: (f) => `${f.h} h ${f.min} min`,
  timeHow: 'Il tempo conta da un tocco all’altro; una pausa di più di due minuti non conta.',
  hourly: 'Quanto vale un’ora',
  cost: {
    beads: 'Perline',
    thread: 'Filo',
    time: 'Tempo',
    sum: 'In tutto',
    unknown: 'prezzo non noto',
  },
  costHow: 'Per uno di ogni pannello, nella moneta dei prezzi delle perline.',
  outTitle: 'Un colore finisce',
  outHow:
    'Ciò che è infilato resta. Da un giro in poi un’altra perlina ne prende il posto, e tutte le liste seguono.',
  outWhich: 'Quale colore',
  outFrom: 'Dal giro',
  outPanels: 'In quale pannello',
  outAll: 'In tutti',
  outNeeds: (n) => `Perline necessarie da lì in poi: ${n}`,
  outInJar: (n) => `nel barattolo: ${n}`,
  outNone: 'Da quel giro in poi questo colore non si lavora più.',
  outDone: (f) => `Dal giro ${f.round} c’è ${f.to} invece di ${f.from}.`,
  practice: 'Pezzo di prova',
  practiceHow:
    'Quattro giri per imparare, con il proprio punto e le proprie perline: le due maglie di ogni aumento hanno un colore loro, e così la prima maglia di ogni giro. Pagine ne fa un libretto a parte.',
  steps: { runsOut: 'un’altra perlina dove una finisce' },
};
