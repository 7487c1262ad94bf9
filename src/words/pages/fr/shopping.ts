import type { PageWords } from '../index.js';
import { amountsIn } from '../amounts.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many, short } = numbersIn('fr');
const { tenths, metres, cm } = amountsIn('fr');
const range = (f: readonly [number, number], digits: number): string =>
  `${short(f[0], digits)} à ${short(f[1], digits)}`;
const kinds = { 'half-round': 'demi-rond', squared: 'rectangulaire', oval: 'ovale' };
const fixings = { sewn: 'à coudre', glued: 'à coller' };

/** Things to have for a purse: thread, tools, frame, lining, and the usual cautions. */
export const shopping: PageWords['shopping'] = {
  beadReserveSaid: (f) =>
    f.percent === 0
      ? 'Sans réserve : les perles cassées ou mal formées ne sont pas comptées.'
      : f.batch
        ? `La réserve est de ${short(f.percent, 2)} %, au moins 30 perles de chaque sorte, calculée une fois pour tous les porte-monnaie.`
        : `La réserve est de ${short(f.percent, 2)} %, au moins 30 perles de chaque sorte.`,
  noBeads: 'Aucune perle n’est encore choisie.',
  crochetThread: (f) =>
    [
      `${f.name ?? `Fil à crocheter d’une couleur qui va avec les perles${f.mostMm === undefined ? '' : `, de ${short(f.mostMm, 2)} mm d’épaisseur au plus`}`} : ${metres(f.mm)}`,
      ...(f.grams === undefined
        ? []
        : [`environ ${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} g`]),
    ].join(', '),
  threadSum: (f) =>
    `${[
      `${count(f.stitches)} mailles de ${short(f.perStitchMm, 1)} mm demandent ${tenths(f.netMm / 1000)} m`,
      ...(f.reservePercent === 0
        ? []
        : [
            `une réserve de ${short(f.reservePercent, 1)} % ajoute ${tenths(f.reserveMm / 1000)} m`,
          ]),
      `${many(f.tails, { one: 'bout', other: 'bouts' })} de ${short(f.tailMm / 10, 1)} cm : ${tenths(f.tailsMm / 1000)} m de plus`,
    ].join(' ; ')}.`,
  lengths: (f) =>
    f.lengths === 1
      ? `Enfilées, les perles en occupent ${fixed(f.strungMm / 1000, 2)} m, en une seule longueur.`
      : `Enfilées, les perles en occupent ${fixed(f.strungMm / 1000, 2)} m, en ${count(f.lengths)} longueurs.`,
  thickness: (f) =>
    `Dans le trou de ${f.size}, d’ordinaire ${short(f.holeMm, 2)} mm, passe un fil de ${short(f.singleMostMm, 2)} mm au plus ; plié en deux au chas de l’aiguille, de ${short(f.doubledMostMm, 2)} mm au plus (environ ${short(f.doubledMostTex, 0)} tex : 1 g fait environ ${short(1000 / f.doubledMostTex, 0)} m).`,
  thicknessGiven: (f) => {
    const start = `Le fil a ${short(f.diameterMm, 2)} mm d’épaisseur, le trou de ${f.size} d’ordinaire ${short(f.holeMm, 2)} mm :`;
    if (!f.single)
      return `${start} TROP ÉPAIS. Prendre un fil plus fin ou des perles plus grosses.`;
    return f.doubled
      ? `${start} il passe, même plié en deux au chas de l’aiguille.`
      : `${start} il passe en simple, mais pas plié en deux au chas de l’aiguille. Enfiler avec un bout de fil raidi, ou par une boucle de fil plus fin.`;
  },
  sewingThread: (f) =>
    `Fil à coudre solide, nylon ou polyester de 70 à 135 tex ou 2 à 6 brins : ${metres(f.mm)}`,
  cord: (f) => `Colle pour le fermoir, et cordelette de papier pour remplir sa gorge : ${cm(f.mm)}`,
  hook: (f) =>
    f.range === undefined
      ? 'Crochet : selon l’échantillon'
      : `Crochet, ${range(f.range, 2)} mm pour ${f.size ?? 'ces perles'} : c’est l’échantillon qui décide`,
  needle: (f) =>
    f.range === undefined
      ? 'Aiguille à perles qui passe dans les perles'
      : `Aiguille à perles, ${range(f.range, 2)} mm d’épaisseur : elle doit passer dans chaque perle`,
  sewingNeedle: (f) =>
    f.panels === 2
      ? 'Aiguille à coudre et épingles, pour couture, fermoir et doublure'
      : 'Aiguille à coudre et épingles, pour bouts de fil et doublure',
  frame: (f) => {
    const wide =
      f.range === undefined
        ? `${short(f.widthMm, 1)} mm de large`
        : `environ ${short(f.widthMm, 0)} mm de large (${range(f.range, 0)} mm peuvent convenir)`;
    return [
      f.pieces === 1 ? 'Fermoir à clip' : `${count(f.pieces)} fermoirs à clip`,
      ...(f.kind === undefined ? [] : [kinds[f.kind]]),
      ...(f.fixing ? [fixings[f.fixing]] : []),
      wide,
    ].join(', ');
  },
  lining: (f) =>
    `Tissu de doublure, ${f.widthCm} x ${f.heightCm} cm (dans un tissu de ${f.clothWidthCm} cm de large, 2 cm de plus que la coupe) : ${many(f.pieces, { one: 'pièce', other: 'pièces' })} de ${f.pieceWidthCm} x ${f.pieceHeightCm} cm, marge de ${short(f.allowanceMm, 1)} mm comprise`,
  crochetInstead: (f) =>
    `Ou crocheter la doublure : les deux panneaux encore une fois sans perles, environ ${metres(f.mm)} de fil. Les coudre ensemble comme les panneaux, les placer à l’intérieur et coudre leur bord au bord du porte-monnaie le long du fermoir.`,
  crochetedLining: (f) =>
    `Pour la doublure au crochet, ${many(f.pieces, { one: 'panneau', other: 'panneaux' })} sans perles : ${metres(f.mm)} de fil`,
  frameThread: (f) => `Fil de nylon transparent pour coudre le fermoir : ${metres(f.mm)}`,
  spools: (f) =>
    `${many(f.spools, { one: 'pelote ou bobine', other: 'pelotes ou bobines' })} de ${short(f.metres, 1)} m${f.cost === undefined ? '' : `, ${fixed(f.cost, 2)} en tout`}`,
  ownHook: (f) => `Crochet de ${short(f.mm, 2)} mm : celui de ce modèle`,
  marker:
    'Un bout de fil d’une autre couleur pour marquer le début du tour : il monte à chaque tour',
  mat: 'Tapis à perles et notes repositionnables pour marquer la ligne en cours',
  pencil: 'Crayon tendre ou craie de tailleur pour la doublure',
  seal: 'Briquet (bouts synthétiques seulement) ou produit anti-effilochage',
  glue: 'Colle textile transparente pour les nœuds et les bouts de fil',
  liningThread: 'Fil à coudre de la couleur de la doublure',
  scissors: 'Petits ciseaux bien aiguisés pour le fil et le tissu',
  samples:
    'Les codes ne sont pas des numéros de magasin, mais nos propres couleurs d’échantillon : acheter selon la couleur et la finition.',
  braid: (f) =>
    `Galon pour couvrir la couture du fermoir à l’intérieur, si on le souhaite : ${cm(f.mm)}`,
  care: [
    'Chaque perle est une petite pièce avec laquelle un enfant de moins de trois ans peut s’étouffer : garder perles, aiguilles, ciseaux et porte-monnaie finis hors de portée des jeunes enfants. Un porte-monnaie n’est pas un jouet.',
    'Pour casser une perle mal placée : lunettes de protection, un tissu sur la perle. Compter aiguilles et crochets avant et après.',
    'N’arrêter à la chaleur que des bouts synthétiques, et jamais près d’une colle à solvant ; aérer la pièce quand on colle.',
    'Les fermoirs en métal peuvent contenir du nickel. Reposer yeux et mains toutes les demi-heures ; s’arrêter dès que quelque chose fait mal.',
    'Ce sont les précautions habituelles, pas un conseil juridique : pour vendre, voir les règles de son pays et de celui des acheteurs.',
  ],
};
