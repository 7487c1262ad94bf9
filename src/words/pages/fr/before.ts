import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, sizeMm } = numbersIn('fr');

/** Before the work begins: swatch, hand, how to read, signs. */
export const before: PageWords['booklet']['before'] = {
  swatch: 'Crocheter d’abord un échantillon',
  swatchText: (f) =>
    `Crocheter 10 tours de ${f.wedges} secteurs, d’une seule couleur, avec les perles, le fil et le crochet que l’on va utiliser. Il faut ${count(f.beads)} perles ; les dessins de cette partie montrent le début, la maille et l’augmentation. Poser l’échantillon à plat. Ce modèle suppose des mailles de ${fixed(f.widthMm, 2)} mm de large et des tours de ${fixed(f.heightMm, 2)} mm de haut : après 5 tours l’échantillon mesure environ ${sizeMm(f.five, 0)} mm de large, après 10 tours environ ${sizeMm(f.ten, 0)} mm. S’il est plus grand, prendre un crochet plus fin ; s’il est plus petit, un plus gros. S’il se creuse en coupe, les mailles sont trop étroites pour leur hauteur ; s’il ondule, elles sont trop larges.`,
  hand: 'Quelle main, et quelle face',
  start: 'Comment commencer et continuer',
  read: 'Comment lire la liste des tours',
  string: 'Comment enfiler',
  signs: 'Signes et abréviations',
  sign: 'Signe',
  meaning: 'Sens',
  table: (second) => [
    ['T7', 'tour 7, compté à partir du centre'],
    ['A, B', 'les perles : lettres comme dans le tableau du matériel et sur la grille'],
    ['3A', 'trois mailles avec la perle A ; dans la liste d’enfilage trois perles A'],
    [`[A ${second}]`, 'deux mailles dans une seule et même maille du dessous : une augmentation'],
    ['( ) x 7', 'ce qui est entre parenthèses, 7 fois'],
    ['nue', 'une maille sans perle'],
    ['ms', 'maille serrée'],
  ],
  smallChart: (f) =>
    `La grille a tant de mailles que ses lettres sont petites sur ce papier. La lire agrandie à l’écran, ou faire imprimer cette page sur papier ${f.paper}. La liste des tours dit la même chose en mots.`,
};
