import type { PageWords } from '../index.js';

// «sıra» means row and order: here it is said of rounds only, a line of the list is «satır».
export const stringing: PageWords['stringing'] = {
  order:
    'Boncukları ipliğe dizme listesinde yazıldığı gibi dizin: yukarıdan aşağıya, her satırda soldan sağa. En dıştaki sıranın boncukları ipliğe ilk dizilir. İplikteki son boncuk, örülen ilk boncuktur.',
  reading:
    'Okuma: 3A, üç A boncuğudur. Arkasında x 3 olan ayraç içi 3 kez dizilir. Her sıranın yanında boncuk sayısı ve satırı dizilince iplikte olan toplam yazar: her satırın sonunda sayın.',
  bare: 'Boş ilmekler boncuk istemez ve dizme listesinde yoktur.',
  onBall:
    'Boncukları yumaktan kesmediğiniz ipliğe, ucunu boncuk iğnesine geçirerek dizin; dizi örülmeden ipliği kesmeyin.',
  stop: (f) =>
    `${f.round}. sıranın ${f.atRoundEnd ? 'son' : `${f.stitch}.`} ilmeğinde, ipliği son kez çekmeden durun. Tığdaki ilmekleri işaretleyiciyle sabitleyin, ipliği ${f.tailCm} cm bırakarak kesin, ${f.next}. diziyi dizin ve bu ilmekte, boncuklu yüzde yaklaşık saat ${f.hour} hizasında ekleyin.`,
};
