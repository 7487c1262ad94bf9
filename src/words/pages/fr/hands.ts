import type { PageWords } from '../index.js';

/** The questions and steps beside the drawings of the handwork. */
export const hands: PageWords['hands'] = {
  ring: {
    ask: 'Comment commencer ?',
    steps: (f) => [
      `(1) Former un anneau avec le fil, en laissant un bout de ${f.tailCm} cm.`,
      '(2) Piquer le crochet dans l’anneau et prendre le fil qui mène aux perles. (3) Le tirer à travers en une boucle et faire une maille en l’air, qui ne compte pas.',
      `Crocheter les ${f.wedges} mailles du tour 1 autour de l’anneau. (4) Tirer sur le bout : l’anneau se ferme, un petit trou reste au centre. Un rond de 3 ou 4 mailles en l’air convient aussi.`,
    ],
  },
  'bead-side': {
    ask: 'De quel côté sont les perles ?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? 'Les perles se placent derrière l’ouvrage : on regarde la face sans perles.'
        : 'Les perles se placent devant l’ouvrage : on regarde les perles.',
    ],
  },
  stitch: {
    ask: 'Comment se fait une maille ?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? `(1) Piquer le crochet sous ${f.way === 'both-loops' ? 'les deux brins' : 'le seul brin arrière'} de la maille suivante, de l’avant vers l’arrière.`
        : `(1) Tenir le fil devant l’ouvrage. Piquer le crochet sous ${f.way === 'both-loops' ? 'les deux brins' : 'le seul brin avant'} de la maille suivante, de l’arrière vers soi.`,
      '(2) Faire un jeté. (3) Le tirer à travers la maille : il y a deux boucles sur le crochet.',
      '(4) Glisser la perle suivante tout contre l’ouvrage.',
      '(5) Au-delà de la perle, faire un jeté. (6) Le tirer à travers les deux boucles.',
      f.beadsFace === 'away'
        ? 'La maille est finie : sa perle est derrière l’ouvrage.'
        : 'La maille est finie : sa perle est devant l’ouvrage.',
    ],
  },
  'slip-stitch': {
    ask: 'Comment se fait une maille ?',
    steps: (f) => [
      `(1) ${
        f.beadsFace === 'away'
          ? 'Piquer le crochet sous le brin qui tient la perle de la maille suivante du dessous, de l’avant vers l’arrière.'
          : 'Tenir le fil devant l’ouvrage. Piquer le crochet sous le brin qui tient la perle de la maille suivante du dessous, de l’arrière vers soi.'
      } (2) Basculer cette perle du côté déjà crocheté.`,
      '(3) Glisser la perle suivante tout contre l’ouvrage.',
      '(4) Au-delà de la perle, faire un jeté. (5) Le tirer d’un coup à travers la maille et la boucle du crochet.',
    ],
  },
  increase: {
    ask: 'Que veulent dire deux lettres entre crochets ?',
    steps: () => [
      'Deux mailles se piquent dans une seule et même maille du tour précédent : d’abord (1), puis (2), chacune avec sa perle.',
    ],
  },
  'round-run': {
    ask: 'Comment courent les tours ?',
    steps: (f) => [
      f.construction === 'spiral'
        ? 'En spirale : chaque tour se poursuit dans le suivant. On le voit comme en travaillant ; un point noir est la première maille d’un tour.'
        : 'En anneaux : chaque tour est fermé avant que le suivant commence. On le voit comme en travaillant ; un point noir est la première maille d’un tour.',
    ],
  },
  marker: {
    ask: 'Où commence un tour ?',
    steps: () => [
      '(1) Dès que l’on a piqué dans la maille marquée, remonter le marqueur dans la maille que l’on vient de faire.',
    ],
  },
  'round-end': {
    ask: 'Comment fermer un tour ?',
    steps: () => [
      '(1) Piquer le crochet dans la première maille du tour et prendre le fil. (2) Le tirer à travers la maille et la boucle du crochet : une maille coulée, sans perle.',
      '(3) Faire une maille en l’air pour monter, sans perle. (4) Piquer la première maille du tour suivant dans cette même première maille.',
    ],
  },
  'new-length': {
    ask: 'Comment joindre la longueur suivante ?',
    steps: (f) => [
      `(1) Dans la dernière maille de l’ancienne longueur, une fois sa perle contre l’ouvrage, faire le jeté avec le nouveau fil, en laissant un bout de ${f.tailCm} cm. (2) Le tirer à travers tout ce qui est sur le crochet.`,
      '(3) Coucher les deux bouts le long du bord et crocheter les 5 à 10 mailles suivantes par-dessus ; rentrer plus tard ce qui en reste.',
    ],
  },
  'last-stitches': {
    ask: 'Comment finir le dernier tour ?',
    steps: (f) => [
      `(1, 2, 3) Faire deux ou trois mailles coulées le long de la marche, sans perles. (4) Couper le fil à ${f.tailCm} cm et le passer dans la dernière boucle.`,
    ],
  },
  seam: {
    ask: 'Quelles mailles se cousent ensemble ?',
    steps: (f) => [
      `Les derniers tours des deux panneaux et les numéros de leurs mailles ; à l’extérieur : ${f.front} ; à l’intérieur : ${f.back}. Chaque trait relie deux mailles qui se rencontrent. Les mailles blanches restent ouvertes pour le fermoir.`,
    ],
  },
  'seam-stitch': {
    ask: 'Comment se coud la couture ?',
    steps: () => [
      '(1) Passer l’aiguille sous les deux brins d’une maille de chaque panneau, toujours du même côté, et continuer paire par paire.',
    ],
  },
  frame: {
    ask: 'Par où commencer au fermoir ?',
    steps: (f) => [
      `(1) Commencer au milieu et aller vers une charnière ; puis recommencer au milieu et aller vers l’autre. ${f.bare ? 'Les mailles sans perles se trouvent au fermoir.' : 'Le bord du panneau se trouve au fermoir.'}`,
    ],
  },
  'frame-edge': {
    ask: 'Comment le bord tient-il dans le fermoir ?',
    steps: (f) => [
      f.fixing === 'sewn'
        ? '(1) De l’intérieur, sortir à travers le bord par le deuxième trou plus loin. (2) Rentrer par le trou d’avant : point arrière, trou après trou.'
        : '(1) Mettre de la colle dans la gorge. (2) Y pousser le bord du panneau, avec la doublure cousue dessus. (3) Enfoncer à côté de la cordelette de papier.',
    ],
  },
  lining: {
    ask: 'Comment poser la doublure ?',
    steps: (f) => [
      '(1) Endroit contre endroit, coudre d’un repère de charnière à l’autre en passant par le bas.',
      '(2) La laisser à l’envers et rabattre le bord ouvert vers l’extérieur.',
      '(3) La glisser dans le porte-monnaie.',
      f.fixing === 'sewn'
        ? '(4) À l’intérieur, coudre le bord rabattu au bord du panneau, sous les trous.'
        : '(4) À l’intérieur, coudre le bord rabattu au bord du panneau.',
    ],
  },
  braid: {
    ask: 'Comment cacher la couture du fermoir ?',
    steps: () => [
      'Pour finir, si on le souhaite : à l’intérieur, poser de chaque côté la moitié du galon le long de la couture du fermoir, les bouts repliés de 10 mm aux charnières. (1) Coudre les deux bords à la doublure et au panneau, l’aiguille passant sous le galon.',
    ],
  },
};
