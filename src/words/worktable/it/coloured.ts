import type { WorktableWords } from '../index.js';

/** An empty chart to colour by hand, and its photo read back. */
export const coloured: WorktableWords['coloured'] = {
  title: 'Colorare a mano',
  how: 'Stampare uno schema vuoto di questo pannello, colorarlo con matite o pennarelli e rileggerne la foto.',
  saved: (name) => `${name} è salvato. Stampare al 100 %, colorare e tornare con una foto.`,
  which: 'Lo schema colorato',
  whichHow: 'Spicchi e giri sono scritti in alto sul suo foglio.',
  blank: ({ title, wedges, rounds }) => `${title}: ${wedges} spicchi, ${rounds} giri`,
  openBlank: 'Apri un altro schema vuoto',
  colours: 'Colori, al massimo',
  photo: 'La sua foto',
  photoHow:
    'Tutto il foglio, disteso e con luce uniforme, con i suoi quattro segni. Trascinare qui la foto, oppure:',
  choose: 'Scegli una foto',
  drop: 'Lasciare per leggere la foto',
  goOn: ({ name, n, of }) => `Continua con ${name}, ${n} di ${of}`,
  reading: 'Lettura dello schema colorato …',
  stop: 'Ferma',
  noCorners:
    'I quattro segni rotondi negli angoli non sono stati trovati: fotografare tutto il foglio, disteso e nitido, con i quattro segni in vista, e controllare che sopra sia scelto lo schema giusto.',
  notColoured:
    'Nessuna casella colorata è stata trovata: controllare che sopra sia scelto lo schema giusto e che le caselle siano ben coperte.',
  blankTaken: 'Questo è lo schema vuoto stesso; ora è scelto. Manca ancora la sua foto.',
  uneven:
    'C’è un’ombra sul foglio, perciò altre caselle possono essere lette male: riguardare il pannello, o rifare la foto con luce uniforme.',
  many: 'Moltissime caselle sono dubbie. Controllare che fosse scelto lo schema giusto.',
  count: ({ n, of }) => `${n} di ${of}`,
  place: ({ round, wedge, place }) => `Giro ${round}, spicchio ${wedge}, la sua maglia ${place}`,
  reasons: {
    between: 'Il suo colore sta tra due perline.',
    uneven: 'È di due colori.',
    unlike: 'Il suo colore non somiglia a nessun altro del foglio.',
    partly: 'È colorata solo in parte.',
    outside: 'È fuori dalla foto.',
  },
  patch: 'La foto intorno alla casella, con il suo contorno disegnato',
  ask: 'Che cos’è?',
  asRead: 'letta così',
  white: 'Lasciata bianca',
  other: 'Un’altra perlina',
  rest: 'Prendi il resto com’è stato letto',
  keysHow: (n) => `Tasti: da 1 a ${n} scelgono, la freccia a sinistra torna indietro.`,
  done: 'Tutte le caselle sono decise',
  counts: ({ coloured, white }) => `Caselle colorate: ${coloured}. Bianche: ${white}.`,
  whiteAsk: 'Le caselle bianche sono',
  whiteOpen: 'Ancora da decidere',
  whiteHow: 'Ciò che è da decidere si può posare con il pennello.',
  lay: 'Posalo sul tavolo',
  laid: (title) => `«${title}» è sul tavolo. Annulla riporta ciò che c’era prima.`,
  steps: {
    read: 'leggere uno schema colorato',
  },
};
