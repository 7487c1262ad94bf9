import type { WorktableWords } from '../index.js';

/** Help while working: where one is, what is wrong, notes, time, and a colour that runs out. */
export const mending: WorktableWords['mending'] = {
  findTitle: 'Où en suis-je ?',
  findHow: 'Toucher les perles qui viennent maintenant du fil, d’abord la plus proche du crochet.',
  findNone: 'Elles ne se suivent ainsi nulle part. Regarder la dernière touchée.',
  findMore: (n) => `${n} endroits conviennent. Toucher la perle suivante.`,
  found: (f) =>
    `La suite est la maille ${f.stitch} du tour ${f.round}, dans le secteur ${f.wedge}.`,
  foundSlips: (n) => `Perles qui y diffèrent de la liste : ${n}.`,
  goThere: 'Continuer à partir de là',
  jumped: (f) => `On est venu ici depuis la maille ${f.stitch} du tour ${f.round}.`,
  checkTitle: 'Est-ce juste ?',
  checkHow: (after) =>
    after === '0'
      ? 'Le fil doit avoir cet aspect, la première perle enfilée en premier.'
      : `Le fil doit avoir cet aspect après les ${after} perles vérifiées.`,
  checkRight: 'Le mien est pareil',
  readStrung: (after) =>
    after === '0'
      ? 'Sinon, toucher ce qui s’y trouve vraiment, la première perle enfilée en premier.'
      : `Sinon, toucher ce qui s’y trouve vraiment, en commençant après la perle ${after}.`,
  wrongTitle: 'Quelque chose ne va pas',
  readComing:
    'Toucher les perles comme elles viennent vraiment du fil, d’abord la plus proche du crochet.',
  agree: (n) => `Comme dans la liste : ${n} perles.`,
  tooMany: 'Ce n’est pas ce bout de fil, ou il a été lu depuis l’autre extrémité.',
  notHere: 'Ces perles ne vont pas ici. L’ouvrage en est peut-être ailleurs.',
  slip: {
    missing: (f) =>
      `Après la perle ${f.after} : ${f.wanted} manque (tour ${f.round}, maille ${f.stitch})`,
    extra: (f) =>
      `Après la perle ${f.after} : ${f.got} en trop (tour ${f.round}, avant la maille ${f.stitch})`,
    other: (f) =>
      `Après la perle ${f.after} : ${f.got} au lieu de ${f.wanted} (tour ${f.round}, maille ${f.stitch})`,
    swap: (f) =>
      `Après la perle ${f.after} : ${f.got} dans le mauvais ordre, il faut ${f.wanted} (tour ${f.round}, maille ${f.stitch})`,
  },
  ways: {
    missing:
      'Il en manque : crocheter cette maille sans perle et coudre la perle plus tard avec une aiguille fine et le même fil.',
    extra:
      'En trop : casser la perle à la pince plate quand son tour vient. Porter des lunettes de protection, tenir un tissu sur la perle et la pince, ramasser les éclats et tâter le fil pour voir s’il est coupé.',
    other:
      'Autre couleur : casser la mauvaise perle quand son tour vient, crocheter la maille sans perle et coudre la bonne plus tard.',
    swap: 'Mauvais ordre : les traiter comme deux perles d’une autre couleur, ou les crocheter telles quelles si personne ne le verra.',
  },
  broken:
    'Le verre cassé coupe le fil et la peau et saute aux yeux : jamais sans lunettes de protection.',
  takeOff: (after) => `J’ai retiré tout ce qui suit la perle ${after}`,
  mendLater: 'Laisser, réparer au crochet',
  noteThem: 'Le noter à ses mailles',
  here: {
    sewOn: (letter) =>
      `Ici ${letter} manque : crocheter la maille sans perle, coudre la perle plus tard.`,
    extra: (letters) => `Retirer d’abord ceci du fil : ${letters}.`,
  },
  ten: 'Dix à la fois',
  takeBack: 'Enlever la dernière',
  typeThem: 'Ou les taper, par exemple 3A 2B',
  addTyped: 'Les ajouter',
  typedWrong: (letters) => `Seulement des nombres et ces lettres : ${letters}`,
  tapped: (n) => `Perles indiquées : ${n}`,
  notes: 'Notes',
  noteAt: (f) => `Note à la maille ${f.stitch} du tour ${f.round}`,
  noteHow: 'Toucher une maille de l’ouvrage pour y épingler une note.',
  noteLine: (f) => `Tour ${f.round}, maille ${f.stitch} : ${f.text}`,
  sewOnLine: (f) => `Tour ${f.round}, maille ${f.stitch} : coudre ${f.letter}, ${f.name}.`,
  sewn: 'Cousue',
  takeAway: 'Enlever',
  sewOnTitle: 'Perles à coudre',
  timeTitle: 'Temps et coût',
  time: (f) => `${f.h} h ${f.min} min`,
  timeHow:
    'Le temps compte d’un toucher à l’autre ; une pause de plus de deux minutes ne compte pas.',
  hourly: 'Ce que vaut une heure',
  cost: { beads: 'Perles', thread: 'Fil', time: 'Temps', sum: 'En tout', unknown: 'prix inconnu' },
  costHow: 'Pour un exemplaire de chaque panneau, dans la monnaie des prix des perles.',
  outTitle: 'Une couleur s’épuise',
  outHow:
    'Ce qui est enfilé reste. À partir d’un tour, une autre perle prend la place et toutes les listes suivent.',
  outWhich: 'Quelle couleur',
  outFrom: 'À partir du tour',
  outPanels: 'Dans quel panneau',
  outAll: 'Dans tous',
  outNeeds: (n) => `Perles nécessaires à partir de là : ${n}`,
  outInJar: (n) => `dans le bocal : ${n}`,
  outNone: 'À partir de ce tour, cette couleur ne vient plus.',
  outDone: (f) => `À partir du tour ${f.round}, ${f.to} remplace ${f.from}.`,
  practice: 'Pièce d’exercice',
  practiceHow:
    'Quatre tours pour apprendre, avec sa maille et ses perles : les deux mailles de chaque augmentation ont leur couleur, et la première maille de chaque tour aussi. Pages en fait un livret à part.',
  steps: { runsOut: 'une autre perle là où une s’épuise' },
};
