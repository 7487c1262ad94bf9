import type { WorktableWords } from '../index.js';

/** What goes wrong on the page alone; all else says itself by the sentences of the core. */
export const errors: WorktableWords['errors'] = {
  nothingToOpen:
    '貼り付けたもの、ドロップしたものの中に絵がありません。絵をコピーするか、絵のファイルをドロップしてください。',
  pictureNotRead: (name) =>
    `${name} はここでは読めませんでした。JPEG か PNG で保存し、それを開いてください。`,
  workerEnded: 'ビーズ選びが止まりました。ページを再読み込みしてください。',
};
