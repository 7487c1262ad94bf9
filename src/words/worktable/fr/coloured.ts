import type { WorktableWords } from '../index.js';

/** An empty chart to colour by hand, and its photo read back. */
export const coloured: WorktableWords['coloured'] = {
  title: 'Colorier à la main',
  how: 'Imprimer une grille vide de ce panneau, la colorier aux crayons ou aux feutres, puis relire sa photo.',
  saved: (name) => `${name} est enregistré. Imprimer à 100 %, colorier, et revenir avec une photo.`,
  which: 'La grille coloriée',
  whichHow: 'Les secteurs et les tours sont indiqués en haut de sa feuille.',
  blank: ({ title, wedges, rounds }) => `${title} : ${wedges} secteurs, ${rounds} tours`,
  openBlank: 'Ouvrir une autre grille vide',
  colours: 'Couleurs, au plus',
  photo: 'Sa photo',
  photoHow:
    'Toute la feuille, bien à plat sous une lumière égale, avec ses quatre repères. Déposer la photo ici, ou :',
  choose: 'Choisir une photo',
  drop: 'Lâcher pour lire la photo',
  goOn: ({ name, n, of }) => `Continuer avec ${name}, ${n} sur ${of}`,
  reading: 'Lecture de la grille coloriée …',
  stop: 'Arrêter',
  noCorners:
    'Les quatre repères ronds des coins n’ont pas été trouvés : photographier toute la feuille, à plat et nette, avec les quatre repères, et vérifier que la bonne grille est choisie ci-dessus.',
  notColoured:
    'Aucune case coloriée n’a été trouvée : vérifier que la bonne grille est choisie ci-dessus et que ses cases sont bien couvertes.',
  blankTaken:
    'C’est la grille vide elle-même ; elle est maintenant choisie. Il manque encore sa photo.',
  uneven:
    'Une ombre couvre la feuille, d’autres cases peuvent donc être mal lues : parcourir le panneau, ou reprendre la photo sous une lumière égale.',
  many: 'Beaucoup de cases sont douteuses. Vérifier que la bonne grille était choisie.',
  count: ({ n, of }) => `${n} sur ${of}`,
  place: ({ round, wedge, place }) => `Tour ${round}, secteur ${wedge}, sa maille ${place}`,
  reasons: {
    between: 'Sa couleur est entre deux perles.',
    uneven: 'Elle a deux couleurs.',
    unlike: 'Sa couleur ne ressemble à aucune autre de la feuille.',
    partly: 'Elle n’est coloriée qu’en partie.',
    outside: 'Elle est hors de la photo.',
  },
  patch: 'La photo autour de la case, dont le contour est tracé',
  ask: 'Qu’est-ce que c’est ?',
  asRead: 'lue ainsi',
  white: 'Laissée blanche',
  other: 'Une autre perle',
  rest: 'Prendre le reste comme il est lu',
  keysHow: (n) => `Touches : 1 à ${n} choisissent, la flèche gauche revient.`,
  done: 'Toutes les cases sont réglées',
  counts: ({ coloured, white }) => `Cases coloriées : ${coloured}. Blanches : ${white}.`,
  whiteAsk: 'Les cases blanches sont',
  whiteOpen: 'Pas encore choisies',
  whiteHow: 'Ce qui n’est pas encore choisi peut se poser au pinceau.',
  lay: 'La poser sur la table',
  laid: (title) => `« ${title} » est sur la table. Annuler ramène ce qui s’y trouvait.`,
  steps: {
    read: 'lire une grille coloriée',
  },
};
