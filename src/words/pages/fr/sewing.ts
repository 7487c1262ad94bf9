import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { runsText } from './frame.js';

const { many } = numbersIn('fr');

/** How the two panels of a purse are sewn together, by count. */
export const sewing: PageWords['sewing'] = {
  lay: (f) =>
    `Poser le panneau « ${f.back} » perles en dessous et le panneau « ${f.front} » par-dessus, perles au-dessus, le haut des deux motifs du même côté, de sorte que les perles soient à l’extérieur des deux côtés. Les deux panneaux sont crochetés de la même main ; vus du côté « ${f.front} », les tours de « ${f.back} » tournent en sens inverse.`,
  count: (f) =>
    `Les bords se cousent en comptant. Le tour ${f.round}, le dernier, compte ${f.stitches} mailles dans chaque panneau. Marquer sa première maille dans les deux panneaux, et compter à partir de celle-ci dans le sens du travail.`,
  meet: (f) =>
    `La maille 1 de « ${f.front} » correspond à la maille ${f.stitches} de « ${f.back} », la maille 2 à la maille ${f.stitches - 1}, et ainsi de suite : la somme des deux numéros fait toujours ${f.stitches + 1}.`,
  meetShifted: (f) =>
    `La maille ${f.stitch} de « ${f.front} » correspond à la maille ${f.meets} de « ${f.back} » ; de là, compter en avançant dans « ${f.front} » et en reculant dans « ${f.back} ».`,
  spiral:
    'Dans une spirale, la fin du dernier tour se trouve un rang plus à l’extérieur que son début, et les marches des deux panneaux montent en sens opposés : les bords sont écartés d’un rang au plus, surtout à côté de la marche. Ne pas coudre à l’œil : s’en tenir au compte, et laisser la couture rapprocher les deux bords. Les mailles coulées après le dernier tour ne sont pas comptées.',
  joined:
    'Les bords se touchent tout autour. La maille coulée qui ferme le dernier tour n’est pas comptée.',
  opening: (f) =>
    `Le haut reste ouvert pour le fermoir : d’ordinaire un peu moins de la moitié du bord, le milieu à 12 heures, en haut du cadran${f.marked ? ' (pratique courante, sans source)' : ''}. Coudre d’une charnière du fermoir en descendant jusqu’à 6 heures (le bas) puis en remontant jusqu’à l’autre ; finir 5 à 10 mm sous chaque charnière.`,
  openingOfFrame: (f) => {
    const open = f.told
      ? 'Le haut reste ouvert pour le fermoir.'
      : `Le haut reste ouvert pour le fermoir : les mailles ${runsText(f.frontInFrame)} de « ${f.front} » et ${runsText(f.backInFrame)} de « ${f.back} », au dernier tour, s’y placent.`;
    if (!f.first || !f.last) return open;
    const pair = (one: { front: number; back: number }) =>
      `la maille ${one.front} de « ${f.front} » avec la maille ${one.back} de « ${f.back} »`;
    const pairs = many(f.pairs, { one: 'paire', other: 'paires' });
    // M: résorber, to ease in.
    const eased =
      f.halves === 0
        ? ''
        : f.halves === 1
          ? ' Une paire entre la couture et le fermoir n’est pas cousue : comme les deux bords ne montent pas de la même façon, une seule de ses mailles est dans le fermoir. Résorber l’autre à la charnière.'
          : ` Les ${f.halves} paires entre la couture et le fermoir ne sont pas cousues : comme les deux bords ne montent pas de la même façon, une seule maille de chacune est dans le fermoir. Résorber l’autre à la charnière.`;
    return `${open} Coudre ${pairs}, de ${pair(f.first)} en passant par 6 heures jusqu’à ${pair(f.last)}.${eased}`;
  },
  work: 'Épingler ou nouer d’abord ensemble les paires du tableau ci-dessous, en commençant par celle de 6 heures (le bas du cadran), puis coudre maille à maille, sous les deux brins de chaque maille, avec le fil de l’ouvrage ou un fil solide en nylon ou polyester, environ trois fois plus long que la couture.',
  care: (fixing) =>
    [
      'Attention : compter aiguilles et épingles avant et après, et les garder, ainsi que les perles, hors de portée des jeunes enfants.',
      ...(fixing === undefined
        ? []
        : ['Le fermoir peut contenir du nickel, auquel certaines personnes réagissent.']),
      ...(fixing === 'glued'
        ? [
            'Coller dans une pièce bien aérée, loin des flammes et des enfants, et lire l’étiquette.',
          ]
        : []),
      'Reposer souvent les yeux et les mains. Les règles du lieu où l’on habite ou vend passent avant tout.',
    ].join(' '),
  columns: (f) => ['sur le cadran', f.front, f.back],
  row: (f) => [
    `${f.frontHour} h (${f.backHour} h sur « ${f.backName} »)`,
    String(f.front),
    String(f.back),
  ],
};
