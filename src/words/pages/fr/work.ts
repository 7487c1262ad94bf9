import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count } = numbersIn('fr');

/** The order of the work, and what stands on its pages. */
export const work: PageWords['booklet']['work'] = {
  contents: 'Sommaire',
  glance: 'Le travail en un coup d’œil',
  steps: {
    gather: 'Réunir perles, fil et outils',
    swatch: 'Crocheter un échantillon et le mesurer',
    string: (f) => (f.lengths === 1 ? 'Enfiler les perles' : `Enfiler la longueur ${f.length}`),
    rounds: (f) =>
      f.first === f.last
        ? `Crocheter le tour ${f.first}`
        : `Crocheter les tours ${f.first} à ${f.last}`,
    again: 'Crocheter le même panneau une seconde fois',
    seam: 'Coudre les panneaux ensemble',
    frame: 'Fixer le porte-monnaie dans son fermoir',
    lining: 'Le doubler de tissu',
  },
  print: 'Avant d’imprimer',
  printText: (f) =>
    `Imprimer à 100 %, sans ajuster à la page. Chaque côté de ce carré doit mesurer ${f.side}. Sinon, rien de ce qui est dessiné en taille réelle dans ce livret n’est juste : régler l’imprimante sur 100 % ou « taille réelle » et imprimer de nouveau.`,
  stop: 'Stop',
  seePage: (f) => `Voir page ${f.page}.`,
  part: 'Enfiler et crocheter',
  heads: { string: 'Perles à enfiler', total: 'Total', grams: 'g', count: 'Perles' },
  tick: (f) =>
    `Chaque ligne${f.brackets ? ', et chaque répétition d’une partie entre parenthèses,' : ''} a une case : la cocher quand ses perles sont sur le fil. Au-delà de 20 perles pareilles, elles sont comptées par dix. Le total en bout de ligne compte les perles de cette longueur jusque-là.`,
  twoBoxes: 'Deux cases côte à côte : une pour chaque panneau.',
  roundsTick:
    'Un fin trait vertical sépare les secteurs. Cocher la case quand un tour est fini ; son total est celui de toutes les perles crochetées jusque-là.',
  mixed: (f) =>
    `${count(f.beads)}/${count(f.stitches)} veut dire ${count(f.beads)} perles dans ${count(f.stitches)} mailles ; les autres sont nues.`,
  round: (round) => `Tour ${round}`,
  working: {
    part: 'Grille vue en crochetant',
    note: (f) =>
      `Voici la face que l’on regarde en crochetant, tournée comme elle est dans la main : le début est en haut et le travail avance vers ${f.hand === 'right' ? 'la gauche' : 'la droite'}, en s’éloignant du crochet.${f.mirrored ? ' Les perles sont derrière, si bien que l’image est inversée par rapport au porte-monnaie fini.' : ''}`,
    wedges: 'Les chiffres cerclés comptent les secteurs dans le sens du travail.',
    hook: 'crochet',
    use: 'En crochetant, suivre la grille vue en crochetant ; comparer le panneau fini à la grille de la face des perles.',
  },
  sector: {
    name: (f) => (f.from === f.to ? `secteur ${f.from}` : `secteurs ${f.from} à ${f.to}`),
    how: 'Les perles pâles sur les côtés appartiennent aux secteurs voisins. Les numéros se trouvent devant la première maille de chaque tour.',
  },
  time: (f) => `Temps : ${f.time}`,
  rights: {
    title: 'Droits',
    none: 'Ce livret n’indique ni auteur ni licence. Le garder pour son propre usage tant que la personne dont on le tient n’a pas dit ce qui est permis de plus.',
    authorOnly: (f) =>
      `Le modèle est de ${f.author} ; aucune licence n’est indiquée. Demander avant de le transmettre ou de vendre ce que l’on en fait.`,
    contact: 'Corrections',
    contactText: (f) => `Une erreur, ou quelque chose n’est pas clair ? Écrire à ${f.contact}.`,
  },
  yours: {
    title: 'Mon porte-monnaie',
    madeFor: 'Fait pour',
    begun: 'Commencé',
    finished: 'Terminé',
    swatch: 'Mon échantillon',
    bead: 'Perles',
    thread: 'Fil',
    hook: 'Crochet',
    after: (f) => `Largeur après ${f.rounds} tours`,
    notes: 'Notes',
  },
  alt: {
    square: 'Un carré pour vérifier l’impression.',
    photo: 'Photographie de l’ouvrage fini.',
    purse: (f) => `Dessin du porte-monnaie fermé dans son fermoir : ${f.panel}.`,
    working:
      'Grille du panneau vue en crochetant. La liste des tours dit la même chose en mots, et le matériel explique les lettres.',
    sector: (f) => `Grille agrandie, ${f.wedges}. La liste des tours dit la même chose en mots.`,
  },
  listing: {
    size: 'Taille',
    level: 'Niveau',
    beads: 'Perles',
    tools: 'Il faut aussi',
    file: 'Dans le fichier',
    fileText: (f) =>
      `Un PDF, ${f.pages} pages, ${f.paper}, ${f.languages}. On peut y chercher du texte et le faire lire à voix haute ; chaque perle a une lettre, il n’y a donc aucune couleur à distinguer.`,
    digital:
      'C’est un modèle à télécharger et à imprimer. Les perles et les outils ne sont pas fournis.',
  },
};
