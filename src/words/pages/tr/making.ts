import type { PageWords } from '../index.js';

export const making: PageWords['booklet']['making'] = {
  panels: 'Paneller',
  two: 'İki paneli de, her birini kendi şeması ve listesiyle örün. Boncuklarınız ve ipliğiniz dayanırsa, nemli olarak bir bezin altında düz yatırıp kurumaya bırakın. Sonra en geniş yerlerini boncukların dış kenarından dış kenarına ölçüp yazın: astar bu ölçüye göre kesilir.',
  one: 'Aynı paneli, aynı şema ve listeyle bir kez daha örün: bir cüzdanda iki eş panel vardır. Boncuklarınız ve ipliğiniz dayanırsa, nemli olarak bir bezin altında düz yatırıp kurumaya bırakın. Sonra en geniş yerlerini boncukların dış kenarından dış kenarına ölçüp yazın: astar bu ölçüye göre kesilir.',
  ends: 'İplik uçları: halkanın, eklerin ve son sıranın uçlarını iğneyle, boncuksuz yüzde beş altı ilmekten geçirin, iki üç ilmekten geri dönün ve kesin.',
  wrong: 'Yanlış boncuk varsa',
  wrongText:
    'Hemen fark ettiyseniz o boncuğa kadar sökün. Sonradan fark ettiyseniz yanlış boncuğu kırın (koruyucu gözlük takın, üzerine bez örtün) ve doğrusunu ince iğneyle, aynı iplikle dikin; eksik boncukta da öyle yapın.',
  seam: 'Dikiş',
  oneSeam: (f) =>
    `Panelleri üst üste koyun; iki dış yüzde de boncuk olsun, iki resim de dik dursun. Her panelde son sıranın ilk ilmeğini işaretleyin; saat 12 hizasını saat 12 hizasına, saat 6 hizasını saat 6 hizasına, sonra aradaki yerleri iğneleyin. Üst tarafı burs için açık bırakın${f.framed ? '' : ', genellikle kenarın yarısından biraz azını'}. Dikişin yaklaşık üç katı uzunlukta, sağlam naylon ya da polyester iplikle, ilmek ilmek ve ilmeklerin iki ipliğinin de altından geçerek, bir menteşeden aşağıya, saat 6 hizasından geçip öbür menteşeye kadar dikin${f.framed ? '.' : '; her menteşenin 5–10 mm altında bitirin.'}`,
  pairs: 'Son sıranın birleşen ilmekleri',
  frame: 'Burs',
  frameText:
    'Her iki yanda bursun ve açık kenarın ortasını bulup ortayı ortaya iğneleyin. Ortadan dışarıya, iki menteşeye doğru dikin; delikli bursta her delikten geçin. Kanallı burs, üreticisinin söylediği gibi, önce bir yanı, sonra öbür yanı yapıştırılır ve kâğıt iple doldurulur.',
  frameEase: 'Burs boyunca yedirilen bolluk genellikle en çok %10 olur.',
  lining: 'Astar',
  liningText:
    'Bu kitapçıktaki astar kalıbı gerçek boyuttadır. Kesmeden önce bitmiş panelinizi ölçün ve dikiş çizgisini aradaki fark kadar geniş ya da dar çizin.',
  liningShown:
    'Bu kitapçıktaki astar kalıbı gerçek boyuttadır ve astarın nasıl takıldığını adım adım gösterir.',
  noTemplate:
    'Astar kalıbı bu büyüklükteki panele uymaz: bitmiş paneli kumaşın üzerine koyun, çevresini çizin ve dikiş için 5 mm ekleyin.',
  washing: 'Yıkama ve bakım',
  washingText:
    'Cüzdanı yıkamak yerine nemli bezle silin: boyalı ve kaplamalı boncukların rengi yıkamada ve kuru temizlemede gidebilir, metal burs paslanabilir.',
};
