import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { hands } from './hands.js';
import { turn } from './chart.js';

const { short } = numbersIn('tr');

export const rounds: PageWords['rounds'] = {
  begin: (f) =>
    `Başlangıç: sihirli halka yapın ya da 3–4 zinciri kaydırma ilmekle kapatıp halka yapın; sonra bir zincir çekin. Zincirlerde ve kaydırma ilmekte boncuk yoktur ve bunlar sayılmaz (yaygın uygulama, kaynak yok). 1. sıranın ${f.wedges} ilmeğini halkanın içine örün, her ilmeğe kendi boncuğunu koyun. Sihirli halkayı ipliği çekerek sıkın; ortada küçük bir delik kalır. Sonra saklamak için ${f.tailCm} cm iplik ucu bırakın.`,
  stitch: (f) =>
    [
      f.way === 'slip'
        ? 'İlmek: kaydırma ilmek, her ilmekte bir boncukla.'
        : 'İlmek: sık iğne, her ilmekte bir boncukla.',
      ...(f.drawn ? [] : hands[f.way === 'slip' ? 'slip-stitch' : 'stitch'].steps(f)),
      f.lean === 0.5
        ? // M: the two strands on top of a stitch.
          `Böyle her ilmek genellikle alttaki ilmeğe göre yaklaşık yarım ilmek geride kalır (kayma ${short(0.5, 2)} ilmek). İlmeğin üst iplikleri ortasının üstünde durmaz; bu yüzden ortadan kenara giden ilmek sıraları eğik gider, şema bunu hesaba katar.`
        : `Bu tarif ${short(f.lean, 3)} ilmek kaymaya göre hesaplanmıştır: kayma, her ilmeğin alttaki ilmeğe göre ne kadar geride kaldığıdır.`,
      f.measured
        ? 'Deneme parçasında böyle ölçüldü: aynı tığ, iplik ve boncuklarla örün.'
        : 'Herkesin eli başkadır: başlamadan önce kaymayı bir deneme parçasında ölçün.',
      'Örgüyü hiçbir zaman çevirmeyin.',
    ].join(' '),
  direction: (f) =>
    [
      `Sıra listesi ${f.hand === 'right' ? 'sağ elle' : 'sol elle'} örmek içindir; boncuklar ${f.beadsFace === 'away' ? 'arkada, size bakmayan yüzdedir' : 'önde, size bakan yüzdedir'}.`,
      `Şemanın gösterdiği ve cüzdanın dışı olan boncuklu yüzde örgü ${turn(f.clockwise)} ilerler.`,
      f.beadsFace === 'away'
        ? `Siz öbür yüzü görürsünüz; orada ${turn(!f.clockwise)} ilerler.`
        : 'Örerken siz de aynı yüzü görürsünüz.',
      'Öbür elle örülen panel, bunun ayna görüntüsü olur.',
    ].join(' '),
  marker:
    'İşaret: sıranın ilk ilmeğine bir ilmek işaretleyici takın ve her sıranın başında yukarı taşıyın.',
  increases: (example) =>
    `Artırmalar: köşeli ayraç içindeki iki harf, ${example}, alttaki sıranın tek bir ilmeğine örülen iki ilmektir; önce ilk yazılan, sonra ikinci yazılan harf örülür. İlk sıradan sonraki her sıranın her diliminde böyle bir çift vardır.`,
  reading:
    'Okuma: 3A, A boncuğuyla üç ilmektir. Arkasında x 3 olan ayraç içi 3 kez örülür. Her sıranın yanında ilmek ve boncuk sayısı ile o sıranın sonuna kadar örülen toplam boncuk yazar: her sıra bitince sayın.',
  bare: '“2 boş”, boncuksuz iki ilmektir.',
  spiral: 'Sıralar spiral olarak sürer ve kapatılmaz.',
  joined:
    'Her sırayı, ilk ilmeğine bir kaydırma ilmek yaparak kapatın ve yükselmek için bir zincir çekin. Sonraki sıranın ilk ilmeği yine o ilk ilmeğe örülür. Kaydırma ilmeklerde ve yükselme zincirlerinde boncuk yoktur ve bunlar sayılmaz.',
  end: {
    spiral: (f) =>
      `Son sıranın son ilmeğinden sonra basamağı yumuşatmak için iki üç kaydırma ilmek yapın; bunlarda boncuk yoktur ve sayılmazlar. İpliği ${f.tailCm} cm bırakarak kesin ve tığda kalan ilmeğin içinden çekin.`,
    joined: (f) =>
      `En sonda ipliği ${f.tailCm} cm bırakarak kesin ve tığda kalan ilmeğin içinden çekin.`,
  },
};
