import type { WorktableWords } from '../index.js';

/** What goes wrong on the page alone; all else says itself by the sentences of the core. */
export const errors: WorktableWords['errors'] = {
  nothingToOpen:
    'V tom, co bylo vloženo nebo puštěno, není obrázek. Zkopírujte obrázek, nebo sem přetáhněte soubor s obrázkem.',
  pictureNotRead: (name) =>
    `${name} tu nejde přečíst. Uložte ho jako JPEG nebo PNG a otevřete ten.`,
  workerEnded: 'Výběr korálků se zastavil. Načtěte stránku znovu.',
};
