import type { WorktableWords } from '../index.js';

/** The step Picture. */
export const picture: WorktableWords['picture'] = {
  step: 'Immagine',
  invite: 'Mettere la propria immagine sul pannello',
  inviteHow: 'Trascinarla ovunque, incollarla, oppure:',
  drop: 'Lasciare per posare l’immagine sul pannello',
  yours: 'La tua immagine',
  sampleNote: 'Questo è il nostro campione. Qui si può provare tutto.',
  local: 'L’immagine resta su questo dispositivo. Non si invia nulla da nessuna parte.',
  moveHow:
    'Trascinare l’immagine sotto il pannello. La rotella o due dita ne cambiano la misura; la maniglia rotonda la ruota.',
  size: 'Misura',
  sizeUnit: '%',
  turned: 'Ruotata',
  turnedUnit: '°',
  across: 'A destra',
  down: 'In basso',
  mm: 'mm',
  lies: 'Come è posata',
  liesHow: {
    subject:
      'Ciò che risalta su uno sfondo uniforme è grande quanto sta dentro il bordo; se nulla risalta, l’immagine riempie il pannello.',
    fill: 'L’immagine copre tutto il pannello; ciò che sporge dal bordo è tagliato.',
    fit: 'Il lato più lungo attraversa il pannello: gli angoli sono tagliati e lungo i lati lunghi resta sfondo.',
    inside: 'Nulla è tagliato; tutt’intorno all’immagine c’è sfondo.',
  },
  kind: 'Che cos’è',
  kindHow:
    'In un disegno le linee scure vincono la perlina; in una foto ogni perlina prende il colore medio.',
  kindDecided: ({ art }) => (art === 'photo' ? 'Presa come foto.' : 'Presa come disegno.'),
  around: 'Intorno e dietro',
  groundAuto: 'Ciò che gli si addice',
  cutOutHow: 'Toglie uno sfondo uniforme, così che il soggetto posi su perline sue.',
  white: 'Bianco',
  bare: 'Senza perline',
  aroundHow: 'Ciò che si vede dove l’immagine finisce o lascia trasparire lo sfondo.',
  mind: 'Ciò che non deve perdersi',
  mindHow: 'Passate il pennello su un occhio o un becco: le sue perline sono scelte con più cura.',
  mindSize: 'Pennello',
  mindKeys:
    'Con la tastiera: le frecce portano il pennello lungo il giro e da un giro all’altro, Spazio segna, virgola e punto lo fanno più piccolo e più grande. Con Maiusc le frecce segnano passando. Esc posa il pennello.',
  mindThere: ({ place }) => `${place}; segnato`,
  opening: 'L’immagine si apre …',
  noPicture:
    'Questo schema è arrivato senza la sua immagine. Le perline restano come sono; aprire un’immagine per posarne una nuova.',
  steps: {
    move: 'spostare l’immagine',
    size: 'misura dell’immagine',
    turn: 'ruotare l’immagine',
    place: 'posare l’immagine',
    open: 'aprire un’immagine',
    art: 'tipo di immagine',
    background: 'sfondo',
    mind: 'segnare ciò che non deve perdersi',
  },
};
