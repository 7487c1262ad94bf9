import type { WorktableWords } from '../index.js';

/** The step Purse: both sides in their frame. */
export const purse: WorktableWords['purse'] = {
  step: 'Cüzdan',
  label: 'Asılı hâliyle cüzdan, yanında madeni para ve cetvel',
  back: 'Arka yüz',
  backHow: 'Cüzdanın altında Arka’yı, sonra Resim adımını seçin: arkanın resmi ayrı yerleşir.',
  plain: 'Ya da hepsi tek boncuk',
  frame: 'Çerçeve',
  width: 'Genişlik',
  height: 'Yükseklik',
  corner: 'Köşe yarıçapı',
  hinges: 'Menteşeler arası',
  channel: 'Oluğun derinliği',
  holes: 'Delikten deliğe',
  bare: 'Boncuksuz sıralar',
  mm: 'mm',
  frameHow: 'Kenarın duracağı yerde ölçün: enine ve menteşeler arasındaki çizgiden tepeye.',
  fixing: 'Nasıl tutturulur',
  fits: (n) => `Zaten uyuyor: bu çerçevede ${n} sıra var.`,
  fitNow: ({ before, after }) => `Panel artık çerçeveye uyuyor. Sıra: ${before} → ${after}.`,
  sits: 'Nasıl durur',
  worn: ({ panel, frame }) =>
    `Panel ${frame} mm genişliğindeki çerçevede ${panel} mm genişliğinde asılır.`,
  inFrame: ({ n, round, bare }) =>
    `Çerçevede: ${round}. sıranın ${n} ilmeği. Altında boncuksuz sıra: ${bare}.`,
  hingesAt: ({ left, right }) =>
    `Menteşeler solda ${left}, sağda ${right} ilmekleri arasına gelir.`,
  seam: ({ n, mm }) => `Altta dikilen: ${n} ilmek, ${mm} mm.`,
  holesHow: ({ spaces, stitches, more }) =>
    `Delikler arasında yaklaşık ${spaces} aralık: her birinde ${stitches} ilmek, ${more} tanesinde bir fazla.`,
  lining: 'Astar',
  liningHow: ({ cut, seam }) =>
    `Kumaşı ${cut} mm genişliğinde kesin; dikişi ${seam} mm’de geçer. Kalıp kitapçıktadır.`,
  size: 'Gerçek boy',
  cardHow:
    'Ekrana bir banka kartı tutun ve kutu aynı büyüklükte olana dek çekin. Bu ekran için geçerlidir.',
  cardBox: 'banka kartı büyüklüğünde',
  steps: {
    frame: 'cüzdan çerçevesi',
    back: 'cüzdanın arkası',
    fit: 'paneli çerçeveye uydurma',
  },
};
