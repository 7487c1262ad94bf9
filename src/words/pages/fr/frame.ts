import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { short } = numbersIn('fr');

interface Span {
  readonly from: number;
  readonly to: number;
}

/** `1 à 30 et 111 à 140`. */
export const runsText = (runs: readonly Span[]): string =>
  runs.length === 0
    ? 'aucune'
    : runs.map(({ from, to }) => (from === to ? String(from) : `${from} à ${to}`)).join(' et ');

const kinds = { 'half-round': 'demi-rond', squared: 'rectangulaire', oval: 'ovale' };
const fixings = { sewn: 'cousu', glued: 'collé' };

/** Which stitches lie in the frame. */
export const frame: PageWords['frame'] = {
  kinds,
  paragraph: (f) =>
    [
      `Fermoir (${kinds[f.kind]}, ${short(f.widthMm, 1)} mm de large, ${fixings[f.fixing]}) : les mailles ${runsText(f.runs)} du tour ${f.round} s’y placent, sur la même longueur de part et d’autre de 12 heures.`,
      `La charnière gauche, vue sur la face des perles, vient entre les mailles ${f.left.inFrame} et ${f.left.inSeam}, la droite entre ${f.right.inFrame} et ${f.right.inSeam} ; la couture vient au-dessous.`,
      f.bare.length === 0
        ? 'Aucune maille n’est laissée nue pour le fermoir.'
        : `Sont laissées nues, crochetées sans perle : ${f.bare.map(({ round, runs }) => `au tour ${round} les mailles ${runsText(runs)}`).join(' ; ')}.`,
    ].join(' '),
  spread: (f) =>
    `Sur chaque panneau, répartir régulièrement les mailles du fermoir (${f.stitches}) sur toute sa longueur, ${short(f.railMm, 1)} mm de charnière à charnière${f.holes ? ` : environ ${short(f.holes.perSpace, 1)} par intervalle entre les trous, s’ils sont espacés de ${short(f.holes.spacingMm, 1)} mm. Compter les trous de son fermoir` : ''}.${
      Math.abs(f.longerPercent) < 0.05
        ? ''
        : f.longerPercent > 0
          ? ` Le bord est ${short(Math.abs(f.longerPercent), 1)} % plus long que le fermoir : répartir l’excédent régulièrement.`
          : ` Le bord est ${short(Math.abs(f.longerPercent), 1)} % plus court que le fermoir : l’étirer régulièrement.`
    }`,
  word: 'fermoir',
  mark: 'Le bord entre les deux points, les charnières, se place dans le fermoir.',
};
