import type { PageWords } from '../index.js';

type Booklet = PageWords['booklet'];

export const enlarged: Booklet['enlarged'] = {
  part: 'Büyütülmüş şema',
  sheet: (f) => `yaprak ${f.sheet} / ${f.sheets}`,
  how: 'Küçük plan bu yaprağın yerini gösterir. Noktalı çizginin ötesindeki bölüm komşu yaprakta da vardır; bir üçgen o yaprağın numarasını söyler. Boncukların açıklaması bütün şemanın sayfasındadır.',
};

export const wedgeChart: Booklet['wedgeChart'] = {
  part: 'Dilim şeması',
  alike: (f) =>
    `${f.wedges} dilimin hepsi aynıdır, bu onlardan biridir: dilimdeki her sırayı, panelin o sırasında ${f.wedges} kez örün.`,
  how: (f) =>
    f.direction === 1
      ? 'Boncuklu yüz, kenar yukarıda. 1. sıra uçtur, panelin ortasındadır. Her sırayı soldan sağa okuyun. İki ilmeğin üzerindeki siyah üçgen, ikisinin de örüldüğü alttaki ilmeği gösterir.'
      : 'Boncuklu yüz, kenar yukarıda. 1. sıra uçtur, panelin ortasındadır. Her sırayı sağdan sola okuyun. İki ilmeğin üzerindeki siyah üçgen, ikisinin de örüldüğü alttaki ilmeği gösterir.',
};

export const level: Booklet['level'] = {
  title: 'Çalışmanın düzeyi',
  intermediate: 'Orta: yinelenen sıralar; ince iplik, ince tığ',
  complex: 'Zor: boncuk boncuk izlenen bir resim; ince iplik, ince tığ',
};
