import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { fixed, short, sizeMm } = numbersIn('fr');
const tenth = (mm: number): string => fixed(mm, 1);
const percent = (share: number): string => `${short(100 * share, 1)} %`;

/** What stands on the cutting template of a lining. */
export const lining: PageWords['lining'] = {
  title: (f) =>
    f.panel === undefined ? `Doublure : ${f.title}` : `Doublure : ${f.title}, ${f.panel}`,
  size: (f) =>
    f.easeMm === 0
      ? `À l’endroit le plus large : ligne de coupe ${tenth(f.cutMm)} mm, ligne de couture ${tenth(f.seamMm)} mm (marge de ${short(f.allowanceMm, 1)} mm tout autour, sans réduction).`
      : `À l’endroit le plus large : ligne de coupe ${tenth(f.cutMm)} mm, ligne de couture ${tenth(f.seamMm)} mm (marge de ${short(f.allowanceMm, 1)} mm tout autour, ${short(f.easeMm, 1)} mm de moins que le panneau).`,
  measured: (f) =>
    `Pour un panneau de ${tenth(f.measuredMm)} mm, tel que vous l’avez mesuré (d’après le calcul, ${sizeMm(f.model, 1)} mm).`,
  estimate: (f) =>
    `ESTIMATION : ${sizeMm(f.model, 1)} mm est la taille du panneau d’après le calcul, et non mesurée à la règle. Mesurer le panneau fini à l’endroit le plus large, bords des perles compris, et couper d’autant plus grand ou plus petit.`,
  cutTwo:
    'Couper 2 fois (une pièce par panneau) : cette face vers le haut, sur l’envers du tissu, la flèche dans le droit-fil. Trait plein : couper. Tirets : coudre.',
  cutOne:
    'Couper 1 fois pour ce panneau ; l’autre panneau a sa propre feuille. Cette face vers le haut, sur l’envers du tissu, la flèche dans le droit-fil. Trait plein : couper. Tirets : coudre.',
  sew: (f) =>
    f.gapMm > 0
      ? `Endroit contre endroit, coudre d’un repère de charnière à l’autre en passant par le bas, et laisser ${short(f.gapMm, 1)} mm ouverts entre les deux petits traits pour pouvoir retourner la doublure.`
      : 'Endroit contre endroit, coudre d’un repère de charnière à l’autre en passant par le bas.',
  put: 'Ne pas la retourner : la placer dans le porte-monnaie telle quelle, envers contre les panneaux, pour que son endroit soit visible à l’intérieur.',
  fold: (f) =>
    `Replier le bord ouvert, au-dessus des repères de charnière, de ${short(f.allowanceMm, 1)} mm vers l’envers, le long du trait discontinu, et coudre le pli au bord du panneau le long du fermoir, sous les trous ou à l’intérieur du bord de la gorge.`,
  close:
    'Avec une ouverture, la doublure et les panneaux sont d’abord cousus le long du fermoir, endroit contre endroit ; retourner le porte-monnaie par l’ouverture, en rentrer les bords et la fermer à la main à petits points.',
  hinges: (f) =>
    ({
      asked: `Repères de charnière (points) : ${percent(f.share)} du bord est dans le fermoir, selon la valeur donnée.`,
      frame: `Repères de charnière (points) : ${Math.round(100 * f.share)} % du bord est dans le fermoir, d’après le fermoir du modèle.`,
      usual: `Repères de charnière (points) : une estimation, ${percent(f.share)} du bord dans le fermoir${f.marked ? ' (pratique courante, sans source)' : ''} : marquer l’endroit où finit le vrai fermoir.`,
    })[f.from],
  spiral:
    'La marche de la spirale au bord est laissée de côté : le contour est l’anneau fermé à mi-hauteur de la marche.',
  print:
    'Imprimer à 100 %, sans mise à l’échelle. Mesurer les deux carrés : si l’un est faux de plus de 0,5 mm, ne pas couper.',
  caution:
    'Attention : compter épingles et aiguilles avant et après, et les garder, ainsi que ciseaux et perles, hors de portée des jeunes enfants. N’arrêter à la flamme les bords effilochés que sur du tissu synthétique, jamais près de la colle ; aérer la pièce quand on colle. Les règles du lieu où l’on habite ou vend passent avant tout.',
  sheets: (f) =>
    f.rows * f.columns === 1
      ? 'La pièce est sur la feuille suivante.'
      : `La pièce est sur les ${f.rows * f.columns} feuilles suivantes, ${f.rows} en hauteur et ${f.columns} en largeur. Elles se chevauchent : de deux feuilles voisines, couper l’une le long de la ligne pointillée, la poser sur l’autre, croix sur croix, et les coller au ruban adhésif.`,
  sheet: (f) =>
    f.rows * f.columns === 1
      ? 'La pièce'
      : `Rangée ${f.row} sur ${f.rows}, colonne ${f.column} sur ${f.columns}`,
  marks: {
    pieces: (f) => `couper ${f.pieces} fois`,
    cut: (f) => `ligne de coupe ${tenth(f.mm)} mm`,
    seam: (f) => `ligne de couture ${tenth(f.mm)} mm`,
    estimate: 'estimation',
    grain: 'droit-fil',
    top: 'milieu haut',
    hinge: 'charnière',
    gap: (f) => `laisser ${short(f.mm, 1)} mm ouverts`,
  },
  check: {
    mm: '50 mm',
    inch: '2 pouces',
    cm: 'cm',
    in: '″',
  },
};
