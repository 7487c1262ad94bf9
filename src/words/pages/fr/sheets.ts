import type { PageWords } from '../index.js';

type Booklet = PageWords['booklet'];

export const enlarged: Booklet['enlarged'] = {
  part: 'Grille agrandie',
  sheet: (f) => `feuille ${f.sheet} sur ${f.sheets}`,
  how: 'Le petit plan montre où se trouve cette feuille. Ce qui est au-delà d’une ligne pointillée est aussi sur la feuille voisine ; un triangle la nomme. Les lettres sont expliquées avec la grille entière et dans le matériel.',
};

export const wedgeChart: Booklet['wedgeChart'] = {
  part: 'Grille d’un secteur',
  alike: (f) =>
    `Les ${f.wedges} secteurs sont identiques, et celui-ci en est un : crocheter chaque rang ${f.wedges} fois dans son tour.`,
  how: (f) =>
    f.direction === 1
      ? 'Face des perles, bord en haut. Le rang 1 est la pointe, au milieu du panneau. Lire chaque rang de gauche à droite. Un triangle noir sur deux mailles montre la maille du dessous dans laquelle les deux se crochètent.'
      : 'Face des perles, bord en haut. Le rang 1 est la pointe, au milieu du panneau. Lire chaque rang de droite à gauche. Un triangle noir sur deux mailles montre la maille du dessous dans laquelle les deux se crochètent.',
};

export const level: Booklet['level'] = {
  title: 'Niveau du projet',
  intermediate: 'Intermédiaire : des tours qui se répètent ; fil fin, crochet fin',
  complex: 'Complexe : une image suivie perle après perle ; fil fin, crochet fin',
};
