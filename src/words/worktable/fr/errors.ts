import type { WorktableWords } from '../index.js';

/** What goes wrong on the page alone; all else says itself by the sentences of the core. */
export const errors: WorktableWords['errors'] = {
  nothingToOpen:
    'Il n’y a pas d’image dans ce qui a été collé ou déposé. Copier une image, ou déposer un fichier image.',
  pictureNotRead: (name) =>
    `${name} n’a pas pu être lu ici. L’enregistrer en JPEG ou en PNG, et ouvrir ce fichier.`,
  workerEnded: 'Le choix des perles s’est arrêté. Recharger la page.',
};
