import type { WorktableWords } from '../index.js';

/** What goes wrong on the page alone; all else says itself by the sentences of the core. */
export const errors: WorktableWords['errors'] = {
  nothingToOpen:
    'In dem, was eingefügt oder abgelegt wurde, ist kein Bild. Ein Bild kopieren oder eine Bilddatei hier ablegen.',
  pictureNotRead: (name) =>
    `${name} ist hier nicht lesbar. Als JPEG oder PNG speichern und diese Datei öffnen.`,
  workerEnded: 'Das Aussuchen der Perlen ist stehen geblieben. Die Seite neu laden.',
};
