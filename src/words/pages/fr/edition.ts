import type { PageWords } from '../index.js';

/** How one booklet of a pattern differs from another. */
export const edition: PageWords['booklet']['edition'] = {
  grey: 'pour imprimante noir et blanc',
  large: 'gros caractères',
  left: 'pour la main gauche',
  right: 'pour la main droite',
  mirrored:
    'Cette édition est pour la main opposée à celle pour laquelle le modèle a été fait : tours, listes et nombres sont les mêmes, et l’image sort inversée, comme dans un miroir. Des lettres et des chiffres dans l’image seraient inversés ; il leur faut un modèle fait pour cette main.',
  fills:
    'Sans couleurs, chaque perle a un gris et, quand il y a beaucoup de sortes de perles, aussi une marque à côté de sa lettre : deux traits, quatre points ou rien. Les noms disent la couleur.',
};

/** What stands for pictures where the booklet is read aloud. */
export const alt: PageWords['booklet']['alt'] = {
  panel: (f) => `Image du panneau crocheté, face des perles : ${f.panel}`,
  chart:
    'Grille du panneau. La liste des tours dit la même chose en mots, et le matériel explique les lettres.',
  lining: 'Patron de coupe de la doublure en taille réelle, avec ses repères.',
};
