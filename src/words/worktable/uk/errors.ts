import type { WorktableWords } from '../index.js';

/** What goes wrong on the page alone; all else says itself by the sentences of the core. */
export const errors: WorktableWords['errors'] = {
  nothingToOpen:
    'У тому, що вставлено або перетягнуто, немає картинки. Скопіювати картинку або перетягти сюди файл із картинкою.',
  pictureNotRead: (name) =>
    `Файл ${name} тут не читається. Зберегти його як JPEG або PNG і відкрити цей файл.`,
  workerEnded: 'Добір бісеру зупинився. Оновити сторінку.',
};
