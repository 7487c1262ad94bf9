import type { WorktableWords } from '../index.js';

/** The step Brush: beads laid by hand. */
export const brush: WorktableWords['brush'] = {
  step: 'Pinceau',
  inHand: 'Sur le pinceau',
  take: 'Prendre',
  none: 'Pas de perle',
  others: (n) => `Mes autres perles : ${n}`,
  lays: 'Il pose',
  also: 'Il peut aussi',
  how: {
    bead: 'Dessinez sur le panneau : chaque maille touchée prend la perle.',
    line: 'Tirez d’une maille à une autre : une ligne droite de perles.',
    ring: 'Touchez une maille : tout son tour prend la perle. Tirez d’un tour à l’autre pour plusieurs.',
    wedge: 'Touchez une maille : tout son secteur prend la perle.',
    patch: 'Touchez une plage d’une couleur : elle prend toute la perle.',
    away: 'Passez sur les perles posées à la main : ces mailles redeviennent comme l’image les a données.',
    replace: 'Touchez une perle : partout où elle est, celle du pinceau prend sa place.',
    move: 'Entourez une partie d’une boucle, ou touchez une plage ; puis tirez-la à sa nouvelle place.',
    pick: 'Touchez une perle du panneau pour la prendre. Un tas du tapis fait de même.',
  },
  laid: 'Posé à la main',
  laidNone: 'Rien encore.',
  laidCount: (n) => `Mailles : ${n}.`,
  laidWait: ({ n, wedges }) =>
    `En attente des ${wedges} secteurs sur lesquels elles ont été posées : ${n}.`,
  laidOutside: (n) => `Hors du bord, en attente de plus de tours : ${n}.`,
  laidHow:
    'Elles restent où elles sont quand vous placez l’image autrement ou choisissez d’autres perles. Avec d’autres secteurs, ou hors de moins de tours, elles n’ont pas de place : elles attendent, et Annuler les ramène.',
  noLetter:
    'Il y a déjà 24 couleurs, et il ne reste pas de lettre pour une autre. Réunissez d’abord deux tas.',
  heapHint: 'perles ; les prendre',
  keysHow:
    'Au clavier : les flèches suivent le tour et vont de tour en tour, Espace pose le pinceau, virgule et point changent la perle. Avec Maj, les flèches posent en passant.',
  place: ({ round, stitch, wedge, bead }) =>
    `Tour ${round}, maille ${stitch}, secteur ${wedge} : ${bead}`,
  placeByHand: ({ round, stitch, wedge, bead }) =>
    `Tour ${round}, maille ${stitch}, secteur ${wedge} : ${bead}, à la main`,
  steps: {
    bead: 'poser des perles',
    line: 'poser une ligne',
    ring: 'poser un anneau',
    wedge: 'poser un secteur',
    patch: 'remplir une plage',
    away: 'enlever des perles',
    move: 'déplacer une partie',
    replace: 'poser une perle pour une autre',
    all: 'enlever tout ce qui a été posé à la main',
  },
};
