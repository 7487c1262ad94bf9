import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { fixed, short, sizeMm } = numbersIn('tr');
/** 95 as 95,0: sizes to cut by are said to a tenth. */
const tenth = (mm: number) => fixed(mm, 1);
const percent = (share: number) => `%${short(100 * share, 1)}`;

export const lining: PageWords['lining'] = {
  title: (f) => (f.panel === undefined ? `Astar: ${f.title}` : `Astar: ${f.title}, ${f.panel}`),
  size: (f) =>
    `En geniş yerde: kesim çizgisi ${tenth(f.cutMm)} mm, dikiş çizgisi ${tenth(f.seamMm)} mm (çepeçevre dikiş payı ${short(f.allowanceMm, 1)} mm, ${f.easeMm === 0 ? 'bolluk payı yok' : `panelden ${short(f.easeMm, 1)} mm dar`}).`,
  measured: (f) =>
    `Ölçtüğünüz gibi ${tenth(f.measuredMm)} mm’lik bir panel için (hesaba göre ${sizeMm(f.model, 1)} mm).`,
  estimate: (f) =>
    `TAHMİN: ${sizeMm(f.model, 1)} mm, panelin cetvelle ölçülen değil, hesaplanan büyüklüğüdür. Bitmiş paneli en geniş yerinden, boncukların dış kenarından ölçün ve aradaki fark kadar büyük ya da küçük kesin.`,
  cutTwo:
    '2 adet kesin (her panel için bir tane): bu yüz yukarıda, kumaşın tersi üzerinde, ok kumaşın boy ipliği yönünde. Sürekli çizgi: kesim. Kesik kesik çizgi: dikiş.',
  cutOne:
    'Bu panel için 1 adet kesin; öbür panelin ayrı yaprağı var. Bu yüz yukarıda, kumaşın tersi üzerinde, ok kumaşın boy ipliği yönünde. Sürekli çizgi: kesim. Kesik kesik çizgi: dikiş.',
  sew: (f) =>
    f.gapMm > 0
      ? `Kumaşları yüz yüze koyun, bir menteşe işaretinden alttan dolanarak öbürüne kadar dikin ve çevirmek için kısa çizgilerin arasında ${short(f.gapMm, 1)} mm açık bırakın.`
      : 'Kumaşları yüz yüze koyun, bir menteşe işaretinden alttan dolanarak öbürüne kadar dikin.',
  put: 'Çevirmeyin: olduğu gibi, tersi panellere gelecek biçimde cüzdanın içine yerleştirin; içeride kumaşın yüzü görünür.',
  fold: (f) =>
    `Menteşe işaretlerinin üstünde kalan açık kenarı kesik kesik çizgiden ${short(f.allowanceMm, 1)} mm tersine katlayın ve katı burs boyunca panelin kenarına, deliklerin altından ya da kanal ağzının iç tarafından dikin.`,
  close:
    'Açıklık bırakılırsa astar ve paneller önce burs boyunca yüz yüze dikilir; cüzdanı açıklıktan çevirin, açıklığın kenarlarını içe katlayın ve elde küçük dikişlerle kapatın.',
  hinges: (f) =>
    ({
      asked: `Menteşe işaretleri (noktalar): bursun içinde kalan, sizin belirttiğiniz gibi kenarın ${percent(f.share)} kadarıdır.`,
      frame: `Menteşe işaretleri (noktalar): bursun içinde kalan, tarifteki bursa göre kenarın %${Math.round(100 * f.share)} kadarıdır.`,
      usual: `Menteşe işaretleri (noktalar): bir tahmin, bursun içinde kalan kenarın ${percent(f.share)} kadarıdır${f.marked ? ' (yaygın uygulama, kaynak yok)' : ''}: kendi bursunuzun bittiği yeri işaretleyin.`,
    })[f.from],
  spiral:
    'Spiralin kenardaki basamağı hesaba katılmadı: dış çizgi, basamağın yarı yüksekliğindeki kapalı halkadır.',
  print:
    '%100 ölçekte yazdırın, sığdırma kapalı olsun. İki kareyi de ölçün: biri 0,5 mm’den fazla yanlışsa kesmeyin.',
  caution:
    'Dikkat: toplu iğneleri ve iğneleri işten önce ve sonra sayın; onları, makası ve boncukları küçük çocuklardan uzak tutun. Atan kenarları yalnızca sentetik kumaşta alevle kapatın, asla yapıştırıcının yanında yapmayın; yapıştırırken odayı havalandırın. Yaşadığınız ya da satış yaptığınız yerin kuralları önce gelir.',
  sheets: (f) =>
    f.rows * f.columns === 1
      ? 'Parça sonraki yapraktadır.'
      : `Parça sonraki ${f.rows * f.columns} yapraktadır: boyuna ${f.rows}, enine ${f.columns} yaprak. Yapraklar üst üste biner: komşu iki yapraktan birini noktalı çizgiden kesin, artılar artıların üzerine gelecek biçimde öbürünün üstüne koyun ve bantla birleştirin.`,
  sheet: (f) =>
    f.rows * f.columns === 1
      ? 'Parça'
      : `Satır ${f.row} / ${f.rows}, sütun ${f.column} / ${f.columns}`,
  marks: {
    pieces: (f) => `${f.pieces} adet`,
    cut: (f) => `kesim ${tenth(f.mm)} mm`,
    seam: (f) => `dikiş ${tenth(f.mm)} mm`,
    estimate: 'tahmin',
    // H: «düz boy ipliği» in full.
    grain: 'boy ipliği',
    top: 'üst orta',
    // Narrow, beside the arrow: short for menteşe.
    hinge: 'ment.',
    gap: (f) => `${short(f.mm, 1)} mm açık`,
  },
  check: {
    mm: '50 mm',
    inch: '2 inç',
    cm: 'cm',
    in: 'inç',
  },
};
