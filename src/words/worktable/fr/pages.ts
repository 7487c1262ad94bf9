import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('fr');

/** The step Pages. */
export const pages: WorktableWords['pages'] = {
  step: 'Pages',
  intro: 'Tout ce qu’il faut à côté du crochet : grille, liste d’enfilage, liste d’achats.',
  bookletHow: 'Un PDF à imprimer ou à garder sur une tablette.',
  zipHow: 'Un zip avec le livret, les grilles, toutes les listes et le modèle lui-même.',
  making: 'Les pages se dessinent …',
  waiting: 'Les perles sont encore en cours de choix …',
  pages: (n) => `${n} ${form(n, { one: 'page', other: 'pages' })}`,
  pageOf: ({ n, of }) => `Page ${n} sur ${of}`,
  how: 'Comment c’est imprimé',
  language: 'Langue',
  second: 'Seconde langue à côté',
  none: 'Aucune',
  paper: 'Papier',
  papers: {
    a4: 'A4',
    letter: 'Letter',
  },
  author: 'Qui l’a fait',
  licence: 'Ce que les acheteurs peuvent en faire',
  date: 'Date',
  contact: 'Où envoyer les corrections',
  time: 'Combien de temps l’ouvrage prend',
  lists: 'Listes',
  listsHow: 'Chacune comme elle sera enregistrée.',
  list: {
    'rounds.txt': 'Tours',
    'stringing.txt': 'Liste d’enfilage',
    'shopping.txt': 'Liste d’achats',
    'chart.svg': 'Grille',
  },
  pieces: 'Combien de porte-monnaie',
  printHow: 'Imprimer à 100 %, ou « taille réelle ».',
  steps: {
    how: 'comment c’est imprimé',
  },
};
