import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count } = numbersIn('tr');

/** The order of the work, and what stands on its pages. */
export const work: PageWords['booklet']['work'] = {
  contents: 'İçindekiler',
  glance: 'Bir bakışta yapılışı',
  steps: {
    gather: 'Boncukları, ipliği ve araçları hazırlayın',
    swatch: 'Bir deneme parçası örün ve ölçün',
    string: (f) => (f.lengths === 1 ? 'Boncukları dizin' : `${f.length}. diziyi dizin`),
    rounds: (f) =>
      f.first === f.last
        ? `${f.first}. sırayı örün`
        : `${f.first}. sıradan ${f.last}. sıraya kadar örün`,
    again: 'Aynı paneli bir kez daha örün',
    seam: 'Panelleri birbirine dikin',
    frame: 'Cüzdanı bursa takın',
    lining: 'Astarını dikin',
  },
  print: 'Yazdırmadan önce',
  printText: (f) =>
    `%100 ölçekte, sayfaya sığdırmadan yazdırın. Bu karenin her kenarı ${f.side} olmalıdır. Değilse bu kitapçıkta gerçek boyutta çizilen hiçbir şey doğru değildir: yazıcıyı %100 ya da “gerçek boyut” olarak ayarlayıp yeniden yazdırın.`,
  stop: 'Durun',
  seePage: (f) => `${f.page}. sayfaya bakın.`,
  part: 'Dizme ve örme',
  heads: { string: 'Dizilecek boncuklar', total: 'Toplam', grams: 'g', count: 'Boncuk' },
  tick: (f) =>
    `Her satırın${f.brackets ? ' ve parantez içindeki bölümün her tekrarının' : ''} bir kutusu vardır: boncukları ipliğe dizilince işaretleyin. 20’den çok aynı boncuk onarlı bölünmüştür. Satırın sonundaki toplam, bu dizinin oraya kadarki boncuklarını sayar.`,
  twoBoxes: 'Yan yana iki kutudan her biri bir panel içindir.',
  roundsTick:
    'İnce dikey çizgi dilimleri ayırır. Sıra bitince kutusunu işaretleyin; toplamı o ana kadar örülen bütün boncuklardır.',
  mixed: (f) =>
    `${count(f.beads)}/${count(f.stitches)}: ${count(f.stitches)} ilmekte ${count(f.beads)} boncuk; kalanlar boştur.`,
  round: (round) => `Sıra ${round}`,
  working: {
    part: 'Örerken gördüğünüz şema',
    note: (f) =>
      `Bu, örerken baktığınız yüzdür; elinizde durduğu gibi çevrilmiştir: başlangıç yukarıdadır ve örgü ${f.hand === 'right' ? 'sola' : 'sağa'}, tığdan uzağa ilerler.${f.mirrored ? ' Boncuklar arkadadır, bu yüzden resim bitmiş cüzdandakinin tersidir.' : ''}`,
    wedges: 'Halka içindeki sayılar dilimleri örgü yönünde sayar.',
    hook: 'tığ',
    use: 'Örerken, örerken gördüğünüz şemayı izleyin; bitmiş paneli boncuklu yüzün şemasıyla karşılaştırın.',
  },
  sector: {
    name: (f) => (f.from === f.to ? `dilim ${f.from}` : `dilim ${f.from}–${f.to}`),
    how: 'Kenarlardaki soluk boncuklar komşu dilimlerindir. Sayılar her sıranın ilk ilmeğinin önündedir.',
  },
  time: (f) => `Süre: ${f.time}`,
  rights: {
    title: 'Haklar',
    none: 'Bu kitapçıkta hazırlayan da lisans da belirtilmemiş. Kimden aldıysanız o size başka ne yapabileceğinizi söyleyene kadar yalnız kendiniz için kullanın.',
    authorOnly: (f) =>
      `Tarifi hazırlayan: ${f.author}; lisans belirtilmemiş. Başkasına vermeden ya da yaptığınızı satmadan önce sorun.`,
    contact: 'Düzeltmeler',
    contactText: (f) =>
      `Bir yanlış mı buldunuz ya da bir şey anlaşılmıyor mu? Yazın: ${f.contact}.`,
  },
  yours: {
    title: 'Cüzdanım',
    madeFor: 'Kimin için',
    begun: 'Başlandı',
    finished: 'Bitti',
    swatch: 'Deneme parçam',
    bead: 'Boncuklar',
    thread: 'İplik',
    hook: 'Tığ',
    after: (f) => `${f.rounds} sıradan sonraki genişlik`,
    notes: 'Notlar',
  },
  alt: {
    square: 'Baskıyı ölçmek için bir kare.',
    photo: 'Bitmiş işin fotoğrafı.',
    purse: (f) => `Bursa takılı kapalı cüzdanın çizimi: ${f.panel}.`,
    working:
      'Panelin örerken gördüğünüz şeması. Sıralar listesi aynı şeyi yazıyla anlatır, harflerin karşılığı malzemelerdedir.',
    sector: (f) => `Büyütülmüş şema, ${f.wedges}. Sıralar listesi aynı şeyi yazıyla anlatır.`,
  },
  listing: {
    size: 'Boyut',
    level: 'Düzey',
    beads: 'Boncuklar',
    tools: 'Ayrıca gerekenler',
    file: 'Dosyanın içinde',
    fileText: (f) =>
      `Bir PDF, ${f.pages} sayfa, ${f.paper}, ${f.languages}. İçinde arama yapılabilir, sesli okutulabilir; her boncuğun bir harfi vardır, renkleri ayırt etmek gerekmez.`,
    digital: 'Bu, indirip yazdırılacak bir tariftir. Boncuklar ve araçlar içinde değildir.',
  },
};
