import type { WorktableWords } from '../index.js';

/** The step Purse: both sides in their frame. */
export const purse: WorktableWords['purse'] = {
  step: 'Bourse',
  label: 'La bourse telle qu’elle pend, avec une pièce et une règle à côté',
  back: 'Le dos',
  backHow: 'Choisissez Dos sous la bourse, puis l’étape Image : l’image du dos se place à part.',
  plain: 'Ou une seule perle partout',
  frame: 'Le fermoir',
  width: 'Largeur',
  height: 'Hauteur',
  corner: 'Rayon des coins',
  hinges: 'Entre les charnières',
  channel: 'Profondeur de la gorge',
  holes: 'De trou en trou',
  bare: 'Tours sans perles',
  mm: 'mm',
  frameHow:
    'Mesurez là où sera le bord : en largeur, et de la ligne entre les charnières jusqu’en haut.',
  fixing: 'Comment il est fixé',
  fits: (n) => `Il va déjà : ${n} tours sont suspendus à ce fermoir.`,
  fitNow: ({ before, after }) =>
    `Le panneau va maintenant avec son fermoir. Tours : ${before} → ${after}.`,
  sits: 'Comment il tient',
  worn: ({ panel, frame }) =>
    `Le panneau pend sur ${panel} mm de large dans un fermoir de ${frame} mm.`,
  inFrame: ({ n, round, bare }) =>
    `Dans le fermoir : ${n} mailles du tour ${round}. Tours sans perles dessous : ${bare}.`,
  hingesAt: ({ left, right }) =>
    `Les charnières viennent entre les mailles ${left} à gauche et ${right} à droite.`,
  seam: ({ n, mm }) => `Cousu ensemble en bas : ${n} mailles, ${mm} mm.`,
  holesHow: ({ spaces, stitches, more }) =>
    `Environ ${spaces} intervalles entre trous : ${stitches} mailles dans chacun, une de plus dans ${more}.`,
  lining: 'La doublure',
  liningHow: ({ cut, seam }) =>
    `Coupez le tissu à ${cut} mm de large ; sa couture passe à ${seam} mm. Le patron est dans le livret.`,
  size: 'Taille réelle',
  cardHow:
    'Tenez une carte bancaire contre l’écran et tirez jusqu’à ce que le cadre soit aussi grand. Cela vaut pour cet écran.',
  cardBox: 'grand comme une carte bancaire',
  steps: {
    frame: 'fermoir',
    back: 'dos de la bourse',
    fit: 'ajuster le panneau au fermoir',
  },
};
