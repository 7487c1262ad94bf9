import type { FaultWords } from './english.js';

export const tr: FaultWords = {
  shape: (f) =>
    `Panelin bu ölçüsü ${f.least} ile ${f.most} arasında olabilir: Panel adımında değiştirin.`,
  corners:
    'Köşeli bir panelde artırma her dilimin ilk ya da son ilmeğinde olmalı: bunu seçin ya da kenarı yuvarlak alın.',
  notOurs: (f) =>
    `${f.name} içinde sağlam bir Rondure deseni yok: başka bir kopyasını açın ya da deseni resimden yeniden yapın.`,
  notOursAt: (f) =>
    `${f.name} sağlam bir Rondure deseni değil (yer: ${f.place}): başka bir kopyasını açın ya da deseni resimden yeniden yapın.`,
  tooNew: (f) =>
    `${f.name} daha yeni bir Rondure ile yazılmış: bu sayfayı yeniden yükleyip dosyayı tekrar açın.`,
  noLetter: (f) =>
    `Bir desende en çok ${f.most} boncuk rengi olur ve burada hepsi var: önce ikisini birleştirin.`,
  beadsTyped: (f) => `“${f.got}” boncuk olarak okunamıyor: 3A 2B 1A gibi diziler yazın.`,
  beadsNone: 'Boncuk verilmemiş: 3A 2B 1A gibi diziler yazın.',
  beadsMany: (f) =>
    `${f.most} boncuktan fazlası verilmiş, bir panele bu kadarı sığmaz: sayıları denetleyin.`,
  measured: (f) =>
    `Ölçülerden biri doğru olamaz: bu boncuklarla ${f.least} ile ${f.most} arasındadır. Yeniden ölçün; sıraları, dilimleri ve boncuk boyunu denetleyin.`,
  turn: 'İşaretli ilmek, ilmeklerin yatabileceğinden fazla kaymış olur: yönünü denetleyin ve her sırada aynı dilimin ilk ilmeğini işaretleyin.',
  pointsFew:
    'Noktalar ilmeklerin nasıl döndüğünü göstermiyor: son sırada ve daha içteki bir sırada bir dilimin ilk ilmeğini gösterin.',
  pointsLine: 'Noktalar panelin nasıl durduğunu belirlemiyor: kenardakileri çepeçevre dağıtın.',
  pointsLean:
    'Bu noktalara göre ilmekler yatabileceğinden fazla yatardı: her birinin sırasını ve dilimini, fotoğrafın boncuklu yüzü gösterdiğini denetleyin.',
  nothingMeasured: 'Henüz bir şey ölçülmedi: en az bir ölçüyü doldurun.',
  across: (f) =>
    `Bu ilmekle bir panel ${f.least} ile ${f.most} mm arasında olabilir (2–80 sıra): başka bir boy ya da başka boncuk seçin.`,
  nothingToBead:
    'Resim panele ulaşmadığı için hiçbir ilmekte boncuk olmazdı: resmi panelin altına çekin ya da çevresi için bir boncuk seçin.',
  stock: (f) =>
    `Kavanozlarda bu panel için ${f.missing} boncuk eksik: daha çok renge izin verin ya da paneli küçültün.`,
  stockBuy: (f) =>
    `Kavanozlarda bu panel için ${f.missing} boncuk eksik: ${f.beads} tane ${f.name} alın ya da paneli küçültün.`,
  stockPlain: (f) =>
    `Düz arka yüz ${f.needed} tane ${f.name} ister, kavanoz ise ${f.most} verebilir: arka için başka bir boncuk seçin ya da panelleri küçültün.`,
  colour: (f) => `“${f.got}” bir renk değil: altı karakterle yazın, örneğin d9b36a.`,
  noBeadLeft: 'Seçilecek boncuk kalmadı: daha azını dışarıda bırakın.',
  keptMany: (f) =>
    `Kullanılması gereken boncuk: ${f.kept}; izin verilen renk: ${f.most}. Daha çok renge izin verin ya da daha az boncuk tutun.`,
  letterMissing: (f) =>
    `Sayfaların yazısında “${f.character}” yok: başlıktan ve boncuk adlarından çıkarın.`,
  size: (f) =>
    `“${f.got}” boncuk boyu bilinmiyor: ${f.known} boylarından birini kullanın ya da her boncuğun çapını verin.`,
  paletteEmpty: (f) =>
    `${f.name} içinde boncuk yok: bir sütun adları satırı ve her boncuk için en azından rengini veren bir satır gerekir.`,
  paletteColumn: (f) =>
    `${f.name} içinde renk sütunu yok: bir sütuna hex adını verin, renkler #d9b36a gibi olsun.`,
  paletteNoTable: (f) => `${f.name} düz bir tablo değil: açıp CSV olarak kaydedin.`,
  paletteUnread: (f) => `${f.name} okunamıyor: onu yazan programda yeniden kaydedin.`,
  paletteLong: (f) =>
    `${f.name} çok uzun (en çok ${f.most}): kullanabileceğiniz boncukları bırakın.`,
  paletteSize: (f) =>
    `${f.name} içinde ${f.size} boyunda boncuk yok, ${f.found} var: bu boylardan birini seçin.`,
  paletteRow: (f) =>
    `${f.name}, satır ${f.line}: “${f.got}” orada kullanılamaz. Düzeltip dosyayı yeniden açın.`,
  paletteTwice: (f) =>
    `${f.name}, satır ${f.line}: satır ${f.first} içindeki “${f.id}” kimliği yineleniyor. Her boncuğa kendi kimliğini verin.`,
  jarsNone: (f) =>
    `${f.name} fotoğrafında beyaz kâğıt üzerinde boncuk görünmüyor: yığınları beyaz kâğıda aralıklı koyun, eşit ışıkta üstten çekin.`,
  jarsGrid: (f) =>
    `${f.name} fotoğrafındaki boncuklar ${f.columns} taneli ${f.rows} dizide durmuyor: iki sayıyı da denetleyin, yığınlar arasında bir parmak kâğıt bırakın.`,
  fileEmpty: (f) => `${f.name} boş: yeniden kopyalayın ya da indirin.`,
  fileBig: (f) => `${f.name} çok büyük, en çok ${f.most} MB okunur: daha küçük bir kopya kaydedin.`,
  format: (f) =>
    `${f.name} burada okunan bir resim değil: JPEG ya da PNG olarak kaydedip onu açın.`,
  damaged: (f) =>
    `${f.name} eksik ya da bozuk: yeniden kopyalayın ya da indirin, ya da bir resim programında açıp kaydedin.`,
  pixels: (f) =>
    `${f.name} ${f.width} × ${f.height} piksel, en çok ${f.most} milyon okunur: daha küçük bir kopya kaydedin; kenar başına 2000 bol bol yeter.`,
  invisible: (f) =>
    `${f.name} tümüyle saydam, hiçbir şey görünmüyor: katmanları açık olarak kaydedin.`,
  drawing: (f) =>
    `${f.name} çizilemeyecek kadar ağır: bir çizim programında PNG olarak kaydedip onu açın.`,
  marks: (f) =>
    `Şemanın dört yuvarlak köşe işareti ${f.name} fotoğrafında bulunamıyor: bütün sayfayı düz ve net çekin, dört işaret de temiz ve görünür olsun.`,
  uncoloured: (f) =>
    `${f.name} fotoğrafında şemanın hiçbir gözü boyanmamış: doğru fotoğraf olup olmadığına bakın.`,
  frameReach: (f) =>
    `Bu genişlikte çerçeveye hiçbir panel uymaz: bu ilmekle ${f.least} ile ${f.most} mm arasında olabilir.`,
  frameWide: (f) =>
    `Çerçeve ${f.rounds} sıralık bir panel için çok geniş: ${f.from} ile ${f.to} arası sıra alın.`,
  frameRail: (f) =>
    `Çerçevenin rayı ${f.rounds} sıralık bir panel için çok uzun: çerçevenin enini ve boyunu denetleyin ya da daha çok sıra alın.`,
  lining: (f) => `Astarın bu ölçüsüne yer yok: ${f.least} ile ${f.most} mm arasında olabilir.`,
  undo: 'Bu boncuklarla olmaz: son adımı geri alıp başka türlü deneyin.',
};
