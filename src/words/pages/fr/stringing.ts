import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order:
    'Enfiler les perles dans l’ordre de la liste d’enfilage, de haut en bas et dans chaque ligne à partir de la gauche : le tour le plus extérieur s’enfile en premier. La dernière perle enfilée est la première crochetée.',
  reading:
    'Lecture : 3A signifie trois perles A. Une partie entre parenthèses suivie de x 3 s’enfile 3 fois. À chaque tour sont indiqués ses perles et le total sur le fil quand sa ligne est enfilée : compter à la fin de chaque ligne.',
  bare: 'Les mailles nues ne demandent pas de perle et ne sont pas dans la liste d’enfilage.',
  onBall:
    'Enfiler depuis la pelote, le bout du fil dans l’aiguille à perles, et ne pas couper le fil avant que la longueur soit crochetée.',
  stop: (f) =>
    `S’arrêter dans la ${f.atRoundEnd ? `dernière maille du tour ${f.round}` : `maille ${f.stitch} du tour ${f.round}`}, avant de tirer le fil pour la dernière fois. Retenir les boucles avec un marqueur, couper le fil à ${f.tailCm} cm, enfiler la longueur ${f.next} et la joindre dans cette maille, vers la position ${f.hour} h du cadran sur la face des perles.`,
};
