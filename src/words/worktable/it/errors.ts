import type { WorktableWords } from '../index.js';

/** What goes wrong on the page alone; all else says itself by the sentences of the core. */
export const errors: WorktableWords['errors'] = {
  nothingToOpen:
    'In ciò che è stato incollato o trascinato non c’è un’immagine. Copiare un’immagine o trascinare qui un file d’immagine.',
  pictureNotRead: (name) => `Qui ${name} non si legge. Salvarlo come JPEG o PNG e aprire quello.`,
  workerEnded: 'La scelta delle perline si è fermata. Ricaricare la pagina.',
};
