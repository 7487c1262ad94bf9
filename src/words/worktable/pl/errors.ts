import type { WorktableWords } from '../index.js';

/** What goes wrong on the page alone; all else says itself by the sentences of the core. */
export const errors: WorktableWords['errors'] = {
  nothingToOpen:
    'W tym, co wklejono lub upuszczono, nie ma obrazu. Skopiować obraz albo upuścić tu plik z obrazem.',
  pictureNotRead: (name) =>
    `Pliku ${name} nie da się tu odczytać. Zapisać go jako JPEG lub PNG i otworzyć ten plik.`,
  workerEnded: 'Dobieranie koralików zatrzymało się. Wczytać stronę ponownie.',
};
