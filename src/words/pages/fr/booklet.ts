import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';
import { work } from './work.js';

const { fixed, many, sizeInches, sizeMm } = numbersIn('fr');

/** What stands on the pages of a booklet that no other file says. */
export const booklet: PageWords['booklet'] = {
  // M: crochet avec perles.
  subject: 'Modèle d’un panneau rond au crochet avec perles',
  kind: 'Modèle rond au crochet avec perles',
  size: (f) =>
    `Environ ${sizeMm(f.across, 0)} mm (${sizeInches(f.across)} pouces) de large une fois fini`,
  sizeFrom: {
    swatch: 'd’après un échantillon de l’auteur',
    model: 'une estimation, tant que l’on n’a pas crocheté d’échantillon',
  },
  amounts: (f) =>
    [
      f.panels === 1
        ? '1 panneau, à crocheter deux fois'
        : many(f.panels, { one: 'panneau', other: 'panneaux' }),
      many(f.rounds, { one: 'tour', other: 'tours' }),
      lists.beads(f.beads),
      many(f.colours, { one: 'couleur', other: 'couleurs' }),
    ].join('  ·  '),
  by: (author) => `par ${author}`,

  panelNames: { front: 'devant', back: 'dos' },
  pageOf: (f) => `${f.page} sur ${f.pages}`,
  panel: (f) => `panneau « ${f.panel} »`,
  // M: longueur, one strung thread of several.
  length: (f) => `longueur ${f.length} sur ${f.lengths}`,
  continued: (heading) => `${heading}, suite`,
  parts: {
    cover: 'Couverture',
    materials: 'Matériel et outils',
    before: 'Avant de commencer',
    chart: 'Grille',
    rounds: 'Tour par tour',
    stringing: 'Enfilage',
    making: 'Montage',
    lining: 'Patron de doublure',
    cautions: 'Précautions',
    last: 'À propos de ce modèle',
  },
  ofPanel: (f) => `${f.part} : ${f.panel}`,

  materials: {
    beads: 'Perles',
    columns: {
      bead: 'Perle',
      name: 'Nom',
      id: 'Code',
      charted: (panels) => (panels === 1 ? 'Sur la grille' : 'Deux grilles'),
      reserve: 'À avoir, avec réserve',
      grams: 'Poids (g)',
    },
    total: 'Toutes les perles',
    unknownGrams: '–',
    onePanel:
      'La grille montre un panneau. Un porte-monnaie en a deux : les nombres avec réserve sont pour un devant et un dos identiques.',
    twoPanels: 'Un porte-monnaie a deux panneaux, et ce modèle a les deux.',
    thread: 'Fil',
    estimate:
      'La longueur de fil d’une maille varie d’une main à l’autre : marquer un mètre de fil, le crocheter, compter les mailles, et corriger ce chiffre avant d’acheter.',
    ownFigure: 'La longueur de fil d’une maille est un chiffre de l’auteur du modèle.',
    tools: 'Outils, fermoir, doublure',
  },

  before,

  rounds: {
    round: 'Tour',
    work: 'À crocheter',
    stitches: 'Mailles',
    beads: 'Perles',
    total: 'Total perles',
    how: 'Compter quand un tour est fini : la dernière colonne dit combien de perles sont crochetées jusqu’à sa fin.',
  },

  stringing: {
    round: (f) =>
      f.part
        ? `${lists.round(f.round)}, partie : ${lists.beads(f.beads)}`
        : `${lists.round(f.round)} : ${lists.beads(f.beads)}`,
    total: (total) => `total ${lists.number(total)}`,
    totalGrams: (f) => `total ${lists.number(f.total)} · ${fixed(f.grams, 1)} g`,
    weigh:
      'Les grammes à côté d’un total sont ceux des perles enfilées jusque-là : peser le fil avant de commencer et déduire son poids. La balance doit indiquer les dixièmes de gramme ; les perles d’un même pot varient, c’est donc le compte qui décide.',
    tickOne:
      'Enfiler chaque ligne à partir de la gauche. Cocher une case quand sa ligne est sur le fil, et compter à chaque total.',
    tick: 'D’abord la colonne de gauche de haut en bas, puis celle de droite ; dans chaque ligne à partir de la gauche. Cocher une case quand sa ligne est sur le fil, et compter à chaque total.',
    weight: (f) =>
      `${lists.beads(f.beads)} en tout ; enfilées, elles pèsent environ ${fixed(f.grams, 1)} g sans le fil et mesurent environ ${fixed(f.metres, 2)} m. Pour les crocheter, il faut environ ${fixed(f.threadM, 1)} m de fil, bouts et réserve compris.`,
    noWeight: (f) =>
      `${lists.beads(f.beads)} en tout, environ ${fixed(f.metres, 2)} m une fois enfilées. Pour les crocheter, il faut environ ${fixed(f.threadM, 1)} m de fil, bouts et réserve compris.`,
    rounds: (f) =>
      f.first === f.last ? `Pour le tour ${f.first}.` : `Pour les tours ${f.first} à ${f.last}.`,
    first: 'La première perle de cette liste s’enfile la première et se crochète la dernière.',
    nothing: 'Aucune perle n’est encore choisie, il n’y a donc rien à enfiler.',
  },

  work,

  making,
  enlarged,
  wedgeChart,
  level,
  edition,
  alt,

  last: {
    title: 'Titre',
    author: 'Auteur',
    date: 'Date de cette édition',
    licence: 'Licence',
    noLicence:
      'Aucune n’est indiquée. Demander à l’auteur avant de transmettre le modèle ou de vendre ce que l’on en fait.',
    version: 'Version',
    versionText: (f) => `Fait avec Rondure ${f.program}, format de modèle ${f.format}`,
    figures: 'Les chiffres',
    figuresText:
      'Les nombres de perles sont exacts. Grammes, longueurs de fil, tailles et outils sont des estimations tant que l’échantillon n’est pas fait ; ce qui est dit habituel relève de la pratique courante ou est cité de mémoire, sans source publiée.',
    read: 'Pour le lire à haute voix',
    readText:
      'Toutes les listes de ce livret sont du texte que l’on peut chercher, copier et faire lire à haute voix. Chaque perle a une lettre, il n’est donc jamais nécessaire de distinguer les couleurs.',
  },
};
