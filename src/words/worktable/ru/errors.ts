import type { WorktableWords } from '../index.js';

/** What goes wrong on the page alone; all else says itself by the sentences of the core. */
export const errors: WorktableWords['errors'] = {
  nothingToOpen:
    'В том, что вставлено или перетащено, нет картинки. Скопировать картинку или перетащить сюда файл с картинкой.',
  pictureNotRead: (name) =>
    `Файл ${name} здесь не читается. Сохранить его как JPEG или PNG и открыть этот файл.`,
  workerEnded: 'Подбор бисера остановился. Обновить страницу.',
};
