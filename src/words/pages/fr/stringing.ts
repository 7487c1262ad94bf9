import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order:
    'Enfiler les perles dans l’ordre de cette liste, de haut en bas et dans chaque ligne à partir de la gauche : le tour le plus extérieur s’enfile en premier. La dernière perle enfilée est la première crochetée.',
  reading:
    'Lecture : 3A signifie trois perles A. Une partie entre parenthèses suivie de x 3 s’enfile 3 fois. Devant figurent les perles du tour, et le total sur le fil quand sa ligne est enfilée : compter à la fin de chaque ligne.',
  bare: 'Les mailles nues ne demandent pas de perle et ne sont pas dans cette liste.',
  join: (f) =>
    f.atRoundEnd
      ? `Joindre cette longueur au début du tour ${f.round}, vers la position ${f.hour} h du cadran sur la face des perles.`
      : `Joindre cette longueur avant la maille ${f.stitch} du tour ${f.round}, vers la position ${f.hour} h du cadran sur la face des perles.`,
};
