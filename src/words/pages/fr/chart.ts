import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { many, short, sizeMm } = numbersIn('fr');
const clockwise = (direction: 1 | -1): string =>
  direction === 1
    ? 'dans le sens des aiguilles d’une montre'
    : 'dans le sens inverse des aiguilles d’une montre';
const face = (beadsFace: 'away' | 'toward'): string =>
  beadsFace === 'away'
    ? 'perles derrière, sur la face opposée à soi'
    : 'perles devant, sur la face tournée vers soi';
const hand = (one: 'right' | 'left'): string => (one === 'right' ? 'main droite' : 'main gauche');

/** How many wedges, rounds and stitches a panel has. */
export const shapeCounts = (f: { wedges: number; rounds: number; stitches: number }): string[] => [
  // M: secteur or quartier.
  many(f.wedges, { one: 'secteur', other: 'secteurs' }),
  many(f.rounds, { one: 'tour', other: 'tours' }),
  many(f.stitches, { one: 'maille', other: 'mailles' }),
];

/** What stands on charts. */
export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title} : ${f.panel}`),
  wedgesTitle: (f) =>
    f.panel === undefined
      ? `${f.title} : secteur par secteur`
      : `${f.title} : ${f.panel}, secteur par secteur`,
  shapeLine: (f) =>
    [
      ...shapeCounts(f),
      many(f.beads, { one: 'perle', other: 'perles' }),
      `${sizeMm(f.across, 1)} mm de large`,
    ].join('  ·  '),
  workLine: (f) =>
    [
      `Main ${f.hand === 'right' ? 'droite' : 'gauche'}, ${f.beadsFace === 'away' ? 'perles derrière' : 'perles devant'}`,
      {
        first: 'augmentation dans la première maille du secteur',
        middle: 'augmentation dans la maille du milieu du secteur',
        last: 'augmentation dans la dernière maille du secteur',
      }[f.increase],
      // L: décalage, how far a stitch sits behind the one below.
      `décalage de ${short(f.lean, 3)} maille`,
      f.construction === 'spiral' ? 'en spirale' : 'tours fermés',
    ].join('  ·  '),
  start: 'début',
  direction: 'sens du travail',
  faceNote: (f) =>
    `Voici la face des perles, l’extérieur du porte-monnaie. Ici, le travail tourne ${clockwise(f.direction)} (${hand(f.hand)}, ${face(f.beadsFace)}).`,
  workerNote: (f) =>
    f.beadsFace === 'away'
      ? `En crochetant, on voit l’autre face, où le travail tourne ${clockwise(f.direction === 1 ? -1 : 1)}.`
      : 'En crochetant, on voit cette même face, car les perles sont tournées vers soi.',
  construction: {
    spiral: 'Spirale : chaque tour s’enchaîne au suivant, sans être fermé.',
    joined: 'Tours fermés : chaque tour est fermé par une maille coulée, qui n’est pas dessinée.',
  },
  marks: {
    pair: 'Augmentation : deux mailles piquées dans la même.',
    number: 'Numéro du tour, avant sa première maille.',
    tick: 'Traits au bord : toutes les 10 mailles du dernier tour, comptées depuis sa première.',
    five: 'Tous les 5 tours : numéro foncé, trait épais à l’extérieur.',
    startLine: 'Ligne de début : chaque tour y commence.',
    join: 'Jonction : une nouvelle longueur de fil commence à cette maille.',
  },
  larger:
    'Lettres plus grandes : secteur par secteur dans wedges.svg, et sur les feuilles agrandies du modèle en PDF.',
  bare: 'Maille nue, sans perle',
  undecided: 'Perle à choisir',
  wedge: (f) => `Secteur ${f.wedge}`,
  wedgeWay: (f) =>
    f.direction === 1
      ? 'Lire chaque rang de gauche à droite'
      : 'Lire chaque rang de droite à gauche',
  pageOf: (f) => `page ${f.page} sur ${f.pages}`,
};
