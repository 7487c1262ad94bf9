import type { WorktableWords } from '../index.js';

/** What goes wrong on the page alone; all else says itself by the sentences of the core. */
export const errors: WorktableWords['errors'] = {
  nothingToOpen:
    'En lo que se ha pegado o soltado no hay ninguna imagen. Copiar una imagen o soltar aquí un archivo de imagen.',
  pictureNotRead: (name) =>
    `Aquí no se ha podido leer ${name}. Guardarlo como JPEG o PNG y abrir ese archivo.`,
  workerEnded: 'La elección de abalorios se ha detenido. Volver a cargar la página.',
};
