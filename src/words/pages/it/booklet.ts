import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';
import { work } from './work.js';

const { fixed, many, sizeInches, sizeMm } = numbersIn('it');

export const booklet: PageWords['booklet'] = {
  subject: 'Modello di un pannello rotondo all’uncinetto con perline',
  kind: 'Modello rotondo all’uncinetto con perline',
  size: (f) => `Diametro finito circa ${sizeMm(f.across, 0)} mm (${sizeInches(f.across)} pollici)`,
  sizeFrom: {
    swatch: 'secondo il campione di chi ha fatto il modello',
    model: 'una stima, finché non si è lavorato un campione',
  },
  amounts: (f) =>
    [
      f.panels === 1
        ? '1 pannello, da lavorare due volte'
        : many(f.panels, { one: 'pannello', other: 'pannelli' }),
      many(f.rounds, { one: 'giro', other: 'giri' }),
      lists.beads(f.beads),
      many(f.colours, { one: 'colore', other: 'colori' }),
    ].join('  ·  '),
  by: (author) => `di ${author}`,

  panelNames: { front: 'davanti', back: 'dietro' },
  pageOf: (f) => `${f.page} di ${f.pages}`,
  panel: (f) => `pannello «${f.panel}»`,
  // M: tratto, a length of thread with its beads.
  length: (f) => `tratto ${f.length} di ${f.lengths}`,
  continued: (heading) => `${heading}, continua`,
  parts: {
    cover: 'Copertina',
    materials: 'Materiali e attrezzi',
    before: 'Prima di cominciare',
    chart: 'Schema',
    rounds: 'Giro per giro',
    // M: infilatura; «infilaggio» is said too.
    stringing: 'Lista di infilatura',
    making: 'Confezione',
    lining: 'Cartamodello della fodera',
    cautions: 'Avvertenze',
    last: 'Su questo modello',
  },
  ofPanel: (f) => `${f.part}: ${f.panel}`,

  materials: {
    beads: 'Perline',
    columns: {
      // Narrow: the letter on a patch of the bead's colour stands below.
      bead: 'Sigla',
      name: 'Nome',
      id: 'Codice',
      charted: (panels) => (panels === 1 ? 'Nello schema' : 'Nei due schemi'),
      reserve: 'Per un borsellino, con scorta',
      grams: 'Grammi da avere',
    },
    total: 'Tutte le perline',
    unknownGrams: '–',
    onePanel:
      'Lo schema è di un pannello. Un borsellino ne ha due: i numeri con la scorta valgono per un davanti e un dietro uguali.',
    twoPanels: 'Un borsellino ha due pannelli, e questo modello li ha entrambi.',
    thread: 'Filo',
    estimate:
      'Il filo che una maglia consuma cambia da mano a mano: segnare un metro, lavorarlo, contare le maglie e correggere questo valore prima di comprare.',
    ownFigure: 'Il filo che una maglia consuma è un valore proprio di chi ha fatto il modello.',
    tools: 'Attrezzi, montatura, fodera',
  },

  before,

  rounds: {
    round: 'Giro',
    work: 'Lavorare',
    stitches: 'Maglie',
    beads: 'Perline',
    total: 'Totale perline',
    how: 'Contare quando un giro è finito: l’ultima colonna dice quante perline sono lavorate fino alla sua fine.',
  },

  stringing: {
    round: (f) =>
      f.part
        ? `${lists.round(f.round)}, parte: ${lists.beads(f.beads)}`
        : `${lists.round(f.round)}: ${lists.beads(f.beads)}`,
    total: (total) => `totale ${lists.number(total)}`,
    totalGrams: (f) => `totale ${lists.number(f.total)} · ${fixed(f.grams, 1)} g`,
    weigh:
      'I grammi accanto a un totale sono quelli delle perline infilate fin lì: pesare il filo prima di cominciare e sottrarne il peso. La bilancia deve mostrare i decimi di grammo; le perline di uno stesso barattolo non pesano tutte uguale, perciò vale il conteggio.',
    tickOne:
      'In ogni riga da sinistra. Spuntare la casella quando la sua riga è sul filo, e contare a ogni totale.',
    tick: 'Prima la colonna sinistra dall’alto in basso, poi la destra; in ogni riga da sinistra. Spuntare la casella quando la sua riga è sul filo, e contare a ogni totale.',
    weight: (f) =>
      `${lists.beads(f.beads)} in tutto. Infilate, senza il filo: peso circa ${fixed(f.grams, 1)} g, lunghezza circa ${fixed(f.metres, 2)} m. Per lavorarle servono circa ${fixed(f.threadM, 1)} m di filo, capi e scorta compresi.`,
    noWeight: (f) =>
      `${lists.beads(f.beads)} in tutto; lunghezza infilata circa ${fixed(f.metres, 2)} m. Per lavorarle servono circa ${fixed(f.threadM, 1)} m di filo, capi e scorta compresi.`,
    rounds: (f) =>
      f.first === f.last ? `Per il giro ${f.first}.` : `Per i giri da ${f.first} a ${f.last}.`,
    first: 'La prima perlina di questa lista si infila per prima e si lavora per ultima.',
    nothing: 'Nessuna perlina è ancora decisa, quindi non c’è niente da infilare.',
  },

  work,

  making,
  enlarged,
  wedgeChart,
  level,
  edition,
  alt,

  last: {
    title: 'Titolo',
    author: 'Autore',
    date: 'Data di questa edizione',
    licence: 'Licenza',
    noLicence:
      'Non ne è indicata nessuna. Chiedere a chi ha fatto il modello prima di darlo ad altri o di vendere i lavori realizzati.',
    version: 'Versione',
    versionText: (f) => `Fatto con Rondure ${f.program}, formato del modello ${f.format}`,
    figures: 'I valori',
    figuresText:
      'Il numero delle perline è esatto. Grammi, lunghezze di filo, misure e attrezzi sono stime finché non si è lavorato un campione; ciò che è detto abituale è pratica comune o è citato a memoria, senza una fonte pubblicata.',
    read: 'Per la lettura ad alta voce',
    readText:
      'Tutte le liste di questo libretto sono testo che si può cercare, copiare e far leggere ad alta voce. Ogni perlina ha una lettera, così non occorre distinguere nessun colore.',
  },
};
