import type { PageWords } from '../index.js';

/** How one booklet of a pattern differs from another. */
export const edition: PageWords['booklet']['edition'] = {
  grey: 'siyah beyaz yazıcı için',
  large: 'büyük puntolu baskı',
  left: 'sol el için',
  right: 'sağ el için',
  mirrored:
    'Bu baskı, tarifin hazırlandığı el için değil, öbür el içindir: sıralar, listeler ve sayılar aynıdır, resim ise ayna görüntüsü olarak çıkar. Resimdeki harfler ve rakamlar ters olur; onlar için bu elle örülmek üzere hazırlanmış bir tarif gerekir.',
  fills:
    'Renk kullanılmayan baskıda her boncuğun kendi gri tonu vardır; boncuk çeşidi çoksa harfin yanında bir işaret de bulunur: iki çizgi, dört nokta ya da hiçbiri. Rengi adları söyler.',
};

/** What stands for pictures where the booklet is read aloud. */
export const alt: PageWords['booklet']['alt'] = {
  panel: (f) => `Örülmüş panelin resmi, boncuklu yüz: ${f.panel}`,
  chart:
    'Panelin şeması. Sıralar listesi aynı şeyi yazıyla anlatır, harflerin karşılığı malzemelerdedir.',
  lining: 'Astarın gerçek boyutta kesim kalıbı, işaretleriyle.',
};
