import type { WorktableWords } from '../index.js';

/** What goes wrong on the page alone; all else says itself by the sentences of the core. */
export const errors: WorktableWords['errors'] = {
  nothingToOpen:
    'Yapıştırılan ya da bırakılan şeyin içinde resim yok. Bir resim kopyalayın ya da bir resim dosyası bırakın.',
  pictureNotRead: (name) => `${name} burada okunamadı. JPEG ya da PNG olarak kaydedip onu açın.`,
  workerEnded: 'Boncuk seçimi durdu. Sayfayı yeniden yükleyin.',
};
