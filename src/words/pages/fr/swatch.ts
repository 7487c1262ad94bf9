import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, short } = numbersIn('fr');

/** What stands on the guide to a swatch. */
export const swatch: PageWords['swatch'] = {
  guide: {
    title: 'Mesurer sa maille',
    describe:
      'Comment crocheter et mesurer un échantillon, avec un cadran de rotation sur lequel le poser ; à imprimer à 100 %.',
    intro:
      'Chaque main fait une maille différente. Un petit panneau d’essai, un échantillon, dit combien la vôtre est haute, large et penchée, pour que la grille et la taille finie s’accordent à votre main.',
    steps: (f) => [
      {
        head: 'Crocheter.',
        text: `Enfiler sur la pelote ${count(f.beads)} perles (${f.size}) d’une seule couleur et crocheter ${f.rounds} tours de ${f.wedges} secteurs avec le fil et le crochet du porte-monnaie, une perle à chaque maille (la dernière feuille dit comment se fait la maille), augmentation dans la ${{ first: 'première maille', middle: 'maille du milieu', last: 'dernière maille' }[f.increase]} de chaque secteur, ${f.construction === 'spiral' ? 'en spirale' : 'chaque tour fermé'}, main ${f.hand === 'right' ? 'droite' : 'gauche'}. Après le tour ${f.fromRound}, marquer le fil à 1 m du crochet.`,
      },
      {
        head: 'Marquer.',
        text: `Au tour ${f.fromRound} et au tour ${f.toRound}, passer une boucle de fil voyant autour de la première maille du secteur ${f.markedWedge}${f.markedWedge === 1 ? ' (la première maille du tour)' : ''}.`,
      },
      {
        head: 'Regarder.',
        text: 'Humidifier, aplatir de la main, laisser sécher. L’échantillon est-il plat ? S’il se relève en bol ou si son bord ondule, le noter et sauter l’étape 4.',
      },
      {
        head: 'Largeur.',
        text: 'À l’endroit le plus large, sur les bords extérieurs des perles, au pied à coulisse ou entre deux cales droites.',
      },
      {
        head: 'Le long du bord.',
        text: `Au milieu du secteur ${f.rimWedge}, poser un fil le long du dernier tour sur 50 mm, par le milieu des perles, et compter les mailles de milieu de perle à milieu de perle. Les moitiés comptent.`,
      },
      {
        head: 'Rotation.',
        text: `Poser l’échantillon sur le cadran, perles en haut, son trou sur la croix, la maille marquée du tour ${f.fromRound} sur la ligne du 0. Poser une règle de la croix par la maille marquée du tour ${f.toRound} : lire les degrés, et s’ils sont dans le sens du travail ou à l’opposé.`,
      },
      {
        head: 'Fil.',
        text: `Combien de mailles le mètre a-t-il données, de la fin du tour ${f.fromRound} jusqu’à ce que la marque arrive au crochet ?`,
      },
      { head: 'Perles.', text: 'Enfiler 50 perles, les serrer, mesurer la rangée.' },
    ],
    write: 'À noter',
    blanks: (f) => [
      'plat, bol ou vagues',
      'largeur, mm',
      'mailles sur 50 mm de bord',
      `rotation, tours ${f.fromRound} à ${f.toRound}, degrés`,
      'dans le sens du travail ou à l’opposé',
      'mailles pour 1 m de fil',
      '50 perles, mm',
      'maille 1 à 3 (dernière feuille)',
    ],
    then: 'Donner ensuite ces nombres, avec ce que dit l’étape 1, là où se fait la grille : dans le programme, sous « Panneau », « Ma maille ».',
    stitchTitle: 'La maille',
    stitchIntro:
      'Prendre celle du porte-monnaie, et s’y tenir : le fil, le crochet, les brins et la main font la taille. Un échantillon dans l’une ne dit rien des autres. Noter son numéro sur la première feuille.',
    ways: {
      'both-loops': 'Maille serrée, sous les deux brins',
      'bead-side-loop': 'La même sous un seul brin, celui du côté des perles',
      slip: 'Maille coulée',
    },
    gaugeTitle: 'Cadran de rotation',
    gaugeAlt:
      'Un cercle gradué, 0 en haut et 180 en bas, dans le sens du travail et à l’opposé ; au milieu, des tours et des secteurs sur lesquels poser l’échantillon.',
    round: (r) => `tour ${r}`,
    lean: (lean) => `décalage ${short(lean, 2)}`,
    with: 'dans le sens du travail',
    against: 'à l’opposé du sens du travail',
    scale:
      'Imprimer à 100 %, sans mise à l’échelle. Mesurer les carrés : s’ils sont faux de plus d’un demi-millimètre, imprimer de nouveau sans changer l’échelle.',
    read: `En gris : tours et secteurs d’une maille d’usage, pour centrer la pièce. Hors de l’échelle : où arrive la maille marquée avec un décalage de 0, ${short(0.25, 2)} et ${short(0.5, 1)} maille.`,
  },
};
