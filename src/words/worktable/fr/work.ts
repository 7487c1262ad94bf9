import type { WorktableWords } from '../index.js';

/** The step Work: stringing and crocheting beside the bead mat. */
export const work: WorktableWords['work'] = {
  step: 'Travail',
  intro:
    'Poser l’écran à côté du tapis à perles. Il montre une seule chose à la fois et retient, à la perle près, où l’on s’arrête.',
  waiting: 'Le choix des perles est en cours …',
  changed:
    'Le panneau a été modifié après le début du travail. On travaille toujours celui avec lequel on a commencé.',
  which: 'Lequel',
  copies: 'Combien de chacun',
  panel: 'Panneau',
  sides: { front: 'Devant', back: 'Dos' },
  panelOf: (f) => `${f.name}, ${f.n} sur ${f.of}`,
  strung: (f) => `${f.done} perles enfilées sur ${f.all}`,
  worked: (f) => `${f.done} mailles crochetées sur ${f.all}`,
  length: (f) => `longueur ${f.n} sur ${f.of}`,
  stringRound: (f) => `Tour ${f.r} · ${f.done} perles sur ${f.all}`,
  then: (run) => `puis ${run}`,
  thenDone: 'ce sont les dernières',
  notStrung: (n) =>
    `D’après cette page, restent à enfiler de cette longueur : ${n}. On enfile d’abord.`,
  strungByList: 'Elles sont toutes sur le fil',
  tapStrung: 'Toucher n’importe où quand elles sont sur le fil',
  stands: (f) =>
    `Sur le fil : ${f.beads} perles, ${f.metres} m${f.grams === undefined ? '' : `, ${f.grams} g`}`,
  lengthDone: (f) =>
    f.of === '1'
      ? `Les ${f.beads} perles sont enfilées`
      : `La longueur ${f.n} sur ${f.of} est enfilée : ${f.beads} perles`,
  lengthDoneHow:
    'La dernière perle enfilée se crochète la première. Pousser les perles le long du fil et laisser le fil sur la pelote.',
  stringLength: (f) => `Enfiler la longueur ${f.n} sur ${f.of}`,
  inHand: 'L’ouvrage comme on le tient, la maille en cours au crochet',
  roundOf: (f) => `Tour ${f.r} sur ${f.of}`,
  inRound: (f) => `secteur ${f.wedge} · maille ${f.stitch} sur ${f.of}`,
  allWorked: (n) => `les ${n} mailles`,
  begin: (wedges) => `Commencer par un anneau et y crocheter les ${wedges} mailles du tour 1.`,
  roundDone: (f) =>
    `Le tour ${f.r} est fini : ${f.stitches} mailles, ${f.beads} perles, ${f.all} perles en tout.`,
  moveMarker: 'Placer le marqueur dans la première maille du tour suivant.',
  closeRound:
    'Fermer le tour par une maille coulée et faire une maille en l’air pour monter ; toutes deux sans perle.',
  joinHere: (length) => `Stop : joindre ici la longueur ${length}.`,
  bothInOne: 'les deux dans une même maille',
  bare: 'sans perle',
  open: 'pas décidé',
  tapWorked: 'Toucher quand c’est crocheté',
  coming: 'Prochaines perles sur le fil',
  pace: 'Combien à la fois',
  panelDone: 'Le panneau est fini',
  endSpiral:
    'Faire deux ou trois mailles coulées sans perle pour adoucir la marche, couper le fil à 20 cm et le passer dans la boucle.',
  endJoined:
    'Fermer le tour par une maille coulée, couper le fil à 20 cm et le passer dans la boucle.',
  voiceless: 'Cet appareil n’a pas de voix pour la langue de la page.',
  cannot: {
    stayAwake:
      'Ce navigateur ne peut pas garder l’écran allumé\u00a0: allonger sa durée dans les réglages de l’appareil.',
    speak: 'Ce navigateur ne peut pas lire à voix haute.',
    listen:
      'Ce navigateur ne peut pas écouter\u00a0: toucher l’écran ou la barre d’espace fait avancer.',
  },
  heard: { next: ['suivant', 'suivante', 'oui'], back: ['retour', 'faux'] },
  listens:
    'À l’écoute de « suivant » et « retour ». Certains navigateurs envoient ce qu’ils entendent à leur fabricant pour le comprendre ; cette page n’envoie rien.',
  deaf: 'Le navigateur ne peut pas écouter maintenant : il n’en a pas reçu l’autorisation, ou il lui faut un réseau.',
};
