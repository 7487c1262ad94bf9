import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';
import { work } from './work.js';

const { count, fixed, sizeInches, sizeMm } = numbersIn('tr');

export const booklet: PageWords['booklet'] = {
  // M: boncuklu tığ işi.
  subject: 'Boncuklu tığ işi yuvarlak panel tarifi',
  kind: 'Boncuklu tığ işi yuvarlak panel tarifi',
  size: (f) => `Bitince çapı yaklaşık ${sizeMm(f.across, 0)} mm (${sizeInches(f.across)} inç)`,
  sizeFrom: {
    swatch: 'tarifi hazırlayanın deneme parçasına göre',
    model: 'siz deneme parçası örene kadar bir tahmin',
  },
  amounts: (f) =>
    [
      f.panels === 1 ? '1 panel, iki kez örülür' : `${count(f.panels)} panel`,
      `${count(f.rounds)} sıra`,
      lists.beads(f.beads),
      `${count(f.colours)} renk`,
    ].join('  ·  '),
  by: (author) => `Hazırlayan: ${author}`,

  panelNames: { front: 'ön taraf', back: 'arka taraf' },
  pageOf: (f) => `${f.page} / ${f.pages}`,
  panel: (f) => `“${f.panel}” paneli`,
  // M: dizi, a length of thread with its beads.
  length: (f) => `dizi ${f.length} / ${f.lengths}`,
  continued: (heading) => `${heading}, devamı`,
  parts: {
    cover: 'Kapak',
    materials: 'Malzemeler ve araçlar',
    before: 'Başlamadan önce',
    chart: 'Şema',
    rounds: 'Sıra sıra yapılışı',
    // M: without «sıra», which means row and order.
    stringing: 'Boncuk dizme listesi',
    making: 'Birleştirme',
    lining: 'Astar kalıbı',
    cautions: 'Dikkat edilecekler',
    last: 'Bu tarif hakkında',
  },
  ofPanel: (f) => `${f.part}: ${f.panel}`,

  materials: {
    beads: 'Boncuklar',
    columns: {
      // Narrow: the letter on a patch of the bead's colour stands below.
      bead: 'Harf',
      name: 'Ad',
      id: 'Kod',
      charted: (panels) => (panels === 1 ? 'Şemada' : 'İki şemada'),
      reserve: 'Bir cüzdan için, yedekle',
      grams: 'Gereken gram',
    },
    total: 'Bütün boncuklar',
    unknownGrams: '–',
    onePanel:
      'Şema tek bir paneldir. Bir cüzdanda iki panel vardır: yedekli sayılar bir ön ve ona eşit bir arka panel içindir.',
    twoPanels: 'Bir cüzdanda iki panel vardır; bu tarifte ikisi de var.',
    thread: 'İplik',
    estimate:
      'Bir ilmeğin harcadığı iplik elden ele değişir: ipliğin bir metresini işaretleyip örün, ilmekleri sayın ve satın almadan önce bu sayıyı düzeltin.',
    ownFigure: 'Bir ilmeğin harcadığı iplik, tarifi hazırlayanın kendi ölçüsüdür.',
    tools: 'Araçlar, burs, astar',
  },

  before,

  rounds: {
    round: 'Sıra',
    work: 'Örülecek',
    stitches: 'İlmek',
    beads: 'Boncuk',
    total: 'Toplam boncuk',
    how: 'Her sıra bitince sayın: son sütun, o sıranın sonuna kadar kaç boncuk örüldüğünü söyler.',
  },

  stringing: {
    round: (f) =>
      f.part
        ? `${lists.round(f.round)}, kısmi: ${lists.beads(f.beads)}`
        : `${lists.round(f.round)}: ${lists.beads(f.beads)}`,
    total: (total) => `toplam ${lists.number(total)}`,
    totalGrams: (f) => `toplam ${lists.number(f.total)} · ${fixed(f.grams, 1)} g`,
    weigh:
      'Toplamın yanındaki gram, o ana kadar dizilen boncukların ağırlığıdır: başlamadan önce ipliği tartın ve ağırlığını çıkarın. Terazi gramın onda birini göstermelidir; bir kavanozdaki boncuklar birbirinden farklıdır, bu yüzden sayıya güvenin.',
    tickOne:
      'Her satırda soldan sağa. Satırı ipliğe dizilince kutusunu işaretleyin ve her toplamda sayın.',
    tick: 'Önce sol sütun yukarıdan aşağıya, sonra sağ sütun; her satırda soldan sağa. Satırı ipliğe dizilince kutusunu işaretleyin ve her toplamda sayın.',
    weight: (f) =>
      `Toplam ${lists.beads(f.beads)}; dizilince ipliksiz ağırlığı yaklaşık ${fixed(f.grams, 1)} g, uzunluğu yaklaşık ${fixed(f.metres, 2)} m. Örmek için, uçlar ve yedek dahil, yaklaşık ${fixed(f.threadM, 1)} m iplik gider.`,
    noWeight: (f) =>
      `Toplam ${lists.beads(f.beads)}; dizilince uzunluğu yaklaşık ${fixed(f.metres, 2)} m. Örmek için, uçlar ve yedek dahil, yaklaşık ${fixed(f.threadM, 1)} m iplik gider.`,
    rounds: (f) =>
      f.first === f.last
        ? `${f.first}. sıra için.`
        : `${f.first}. sıradan ${f.last}. sıraya kadar (ikisi de dahil).`,
    first: 'Bu listenin ilk boncuğu ipliğe ilk dizilir ve son örülür.',
    nothing: 'Henüz hiçbir boncuk belirlenmedi, bu yüzden dizilecek bir şey yok.',
  },

  work,

  making,
  enlarged,
  wedgeChart,
  level,
  edition,
  alt,

  last: {
    title: 'Başlık',
    author: 'Hazırlayan',
    date: 'Bu baskının tarihi',
    licence: 'Lisans',
    noLicence:
      'Belirtilmemiş. Tarifi başkasına vermeden ya da yaptığınızı satmadan önce hazırlayana sorun.',
    version: 'Sürüm',
    versionText: (f) => `Rondure ${f.program} ile yapıldı, tarif biçimi ${f.format}`,
    figures: 'Sayılar',
    figuresText:
      'Boncuk sayıları kesindir. Gramlar, iplik uzunlukları, boyutlar ve araçlar, bir deneme parçası örülene kadar tahmindir; “genellikle” denen şeyler yaygın uygulama ya da akılda kalan bilgidir, yayımlanmış kaynağı yoktur.',
    read: 'Sesli okutmak için',
    readText:
      'Bu kitapçıktaki bütün listeler aranabilen, kopyalanabilen ve sesli okunabilen metindir. Her boncuğun bir harfi vardır, bu yüzden renkleri ayırt etmek gerekmez.',
  },
};
