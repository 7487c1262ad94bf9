import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('fr');

/** What stands on the table whatever step is open. */
export const table: WorktableWords['table'] = {
  untitled: 'Panneau sans nom',
  titleLabel: 'Nom de l’ouvrage',
  way: 'Le chemin de l’image au porte-monnaie',
  mat: 'Le tapis',
  matEmpty: 'Les perles viendront ici dès qu’il y aura une image.',
  heap: (n) => `${n} ${form(n, { one: 'perle', other: 'perles' })}`,
  heapHint: 'perles ; montrer où elles sont',
  matSum: ({ colours, beads }) =>
    `${colours} ${form(colours, { one: 'couleur', other: 'couleurs' })}, ${beads} ${form(beads, { one: 'perle', other: 'perles' })}`,
  panel: 'Le panneau, face des perles dessus',
  panelLabel: ({ rounds, wedges, mm }) =>
    `Panneau rond : ${rounds} ${form(rounds, { one: 'tour', other: 'tours' })}, ${wedges} ${form(wedges, { one: 'secteur', other: 'secteurs' })}, environ ${mm} mm de large`,
  panelSize: ({ rounds, cm }) =>
    `${rounds} ${form(rounds, { one: 'tour', other: 'tours' })} · ${cm} cm`,
  working: 'Choix des perles …',
  stitch: ({ round, stitch, letter, name }) =>
    `Tour ${round}, maille ${stitch} : ${letter}, ${name}`,
  bareStitch: ({ round, stitch }) => `Tour ${round}, maille ${stitch} : sans perle`,
  thread: 'Le fil',
  threadLabel: ({ n }) =>
    `${n} ${form(n, { one: 'perle', other: 'perles' })} dans l’ordre d’enfilage ; les flèches le parcourent`,
  length: ({ n, beads, m }) =>
    `Longueur ${n} : ${beads} ${form(beads, { one: 'perle', other: 'perles' })}, ${m} m`,
  lengthMark: (n) => `longueur ${n}`,
  roundMark: (r) => `tour ${r}`,
  mirrored: 'comme on le voit en travaillant : gauche et droite sont échangées',
  byRound: 'Le panneau en texte, tour par tour',
  roundLine: ({ r, runs }) => `Tour ${r} : ${runs}`,
  run: ({ n, letter, name }) => `${n} ${letter} (${name})`,
  bareRun: (n) => `${n} sans perle`,
  undone: (what) => `Annulé : ${what}`,
  redone: (what) => `Rétabli : ${what}`,
  saved: (file) => `Enregistré : ${file}`,
  close: 'Fermer',
  keys: 'Touches',
  keysIntro: 'Tout peut se faire au clavier aussi.',
  more: 'Plus',
};
