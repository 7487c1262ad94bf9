import type { WorktableWords } from '../index.js';

/** The shelf of pieces, and how they are kept. */
export const shelf: WorktableWords['shelf'] = {
  title: 'L’étagère',
  intro: 'Vos ouvrages sont gardés sur cet appareil, dans ce navigateur, après chaque pas.',
  empty: 'Il n’y a encore rien ici. Un ouvrage vient sur l’étagère avec sa première image.',
  onTable: 'sur la table',
  removed: 'Retirés de l’étagère',
  removedHow: 'Ils peuvent être remis tant qu’ils ne sont pas débarrassés.',
  open: (title) => `Poser ${title} sur la table`,
  take: (title) => `Retirer ${title} de l’étagère`,
  back: (title) => `Remettre ${title} sur l’étagère`,
  takeShort: 'Retirer',
  backShort: 'Remettre',
  takenOff: (title) => `${title} a été retiré de l’étagère.`,
  putBack: (title) => `${title} est de nouveau sur l’étagère.`,
  waits: (title) => `${title} est sur l’étagère.`,
  copyOf: (title) => `${title}, second ouvrage`,
  copied: 'L’autre fenêtre garde son ouvrage. Ce qui se fait ici continue comme un ouvrage à part.',
  when: (date) => `dernier travail le ${date}`,
  elsewhere: 'Cet ouvrage est ouvert dans une autre fenêtre.',
  refused:
    'Ce navigateur ne garde rien, peut-être parce que la fenêtre est privée. Enregistrer l’ouvrage comme fichier avant de la fermer.',
  full: 'Il n’y a plus de place sur cet appareil. Les derniers pas sont sur la table mais ne sont pas gardés : enregistrer l’ouvrage comme fichier maintenant.',
  edition: 'Une nouvelle édition de cette page est prête. Votre ouvrage est gardé.',
  fileDamaged: (file) =>
    `${file} : cet ouvrage ne peut pas être ouvert, une partie manque ou est abîmée.`,
  fileNewer: (file) =>
    `${file} : cet ouvrage vient d’une édition plus récente de cette page. Ouvrir la page de nouveau, ou demander un fichier plus ancien.`,
  forClass: 'Pour un atelier',
  classHow:
    'La grille et le travail de chaque pièce cochée, en un seul PDF : pour chaque nom, toujours sur une nouvelle feuille ; sans noms, une fois.',
  classNames: 'Noms, un par ligne',
  classSave: 'Enregistrer en un seul PDF',
};
