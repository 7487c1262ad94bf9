import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { hands } from './hands.js';

const { short } = numbersIn('fr');
const clockwise = (is: boolean): string =>
  is
    ? 'dans le sens des aiguilles d’une montre'
    : 'dans le sens inverse des aiguilles d’une montre';

/** How to work a panel, and what a line of its list of rounds means. */
export const rounds: PageWords['rounds'] = {
  begin: (f) =>
    `Pour commencer : faire un anneau magique, ou 3 ou 4 mailles en l’air fermées en rond par une maille coulée ; puis une maille en l’air. Ni les mailles en l’air ni la maille coulée ne portent de perle ni ne sont comptées (pratique courante, sans source). Crocheter dans l’anneau les ${f.wedges} mailles du tour 1, chacune avec sa perle. Serrer l’anneau magique ; un petit trou reste au centre. Laisser un bout de fil de ${f.tailCm} cm, à rentrer plus tard.`,
  stitch: (f) =>
    [
      f.way === 'slip'
        ? 'La maille : maille coulée, chacune avec une perle.'
        : 'La maille : maille serrée (ms), chacune avec une perle.',
      ...(f.drawn ? [] : hands[f.way === 'slip' ? 'slip-stitch' : 'stitch'].steps(f)),
      f.lean === 0.5
        ? `Chaque maille est alors d’ordinaire décalée d’environ une demi-maille en arrière de celle du dessous, à l’opposé du sens du travail (décalage ${short(0.5, 2)}). Les brins du haut d’une maille ne sont pas au-dessus de son milieu : les lignes de mailles du centre au bord partent donc de biais, et la grille en tient compte.`
        : `Ce modèle suppose un décalage de ${short(f.lean, 3)} maille : chaque maille est décalée d’autant en arrière de celle du dessous, à l’opposé du sens du travail.`,
      f.measured
        ? 'C’est ce que l’on a mesuré sur l’échantillon : travailler avec le même crochet, le même fil et les mêmes perles.'
        : 'Les mains diffèrent : mesurer le décalage sur un échantillon avant de commencer.',
      'Ne jamais retourner l’ouvrage.',
    ].join(' '),
  direction: (f) =>
    [
      `La liste des tours est pour la main ${f.hand === 'right' ? 'droite' : 'gauche'}, perles ${f.beadsFace === 'away' ? 'derrière, sur la face opposée à soi' : 'devant, sur la face tournée vers soi'}.`,
      `Sur la face des perles, que montre la grille et qui est l’extérieur du porte-monnaie, le travail tourne ${clockwise(f.clockwise)}.`,
      f.beadsFace === 'away'
        ? `En crochetant, on voit l’autre face, où il tourne ${clockwise(!f.clockwise)}.`
        : 'En crochetant, on voit cette même face.',
      'Crocheté de l’autre main, le panneau donne son image en miroir.',
    ].join(' '),
  marker:
    'Marqueur : accrocher un marqueur dans la première maille du tour et le remonter au début de chaque tour.',
  increases: (example) =>
    `Augmentations : deux lettres entre crochets, ${example}, sont deux mailles crochetées dans une seule et même maille du tour précédent, dans l’ordre où elles sont écrites. À partir du tour 2, il y a une telle paire dans chaque secteur de chaque tour.`,
  reading:
    'Lecture : 3A signifie trois mailles avec la perle A. Une partie entre parenthèses suivie de x 3 se crochète 3 fois. À chaque tour sont indiqués ses mailles et ses perles, et le total des perles crochetées jusqu’à sa fin : compter quand un tour est fini.',
  bare: '« 2 nue » signifie deux mailles sans perle.',
  spiral: 'Les tours se suivent en spirale et ne sont pas fermés.',
  joined:
    'Fermer chaque tour par une maille coulée dans sa première maille et faire une maille en l’air pour monter. La première maille du tour suivant se pique dans cette même première maille. Les mailles coulées et les mailles en l’air pour monter ne portent pas de perle et ne sont pas comptées.',
  end: {
    spiral: (f) =>
      `Après la dernière maille du dernier tour, faire deux ou trois mailles coulées pour adoucir la marche à cet endroit ; elles ne portent pas de perle et ne sont pas comptées. Couper le fil à ${f.tailCm} cm et le passer dans la dernière boucle.`,
    joined: (f) => `À la fin, couper le fil à ${f.tailCm} cm et le passer dans la dernière boucle.`,
  },
};
