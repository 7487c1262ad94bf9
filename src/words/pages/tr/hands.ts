import type { PageWords } from '../index.js';

/** The questions and steps beside the drawings of the handwork. */
export const hands: PageWords['hands'] = {
  ring: {
    ask: 'Nasıl başlanır?',
    steps: (f) => [
      `(1) İpliği halka biçiminde koyun, ${f.tailCm} cm uç bırakın.`,
      '(2) Tığı halkanın içine batırın ve boncuklara giden ipliği tığa alın. (3) Bir ilmek olarak çekip çıkarın ve bir zincir çekin; bu sayılmaz.',
      `1. sıranın ${f.wedges} ilmeğini halkanın çevresine örün. (4) İplik ucunu çekin: halka sıkışır, ortada küçük bir delik kalır. 3–4 zincirden bir halka da olur.`,
    ],
  },
  'bead-side': {
    ask: 'Boncuklar hangi yüzde kalır?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? 'Boncuklar örgünün arkasında kalır: siz boncuksuz yüze bakarsınız.'
        : 'Boncuklar örgünün önünde, sizin tarafınızda kalır: siz boncuklara bakarsınız.',
    ],
  },
  stitch: {
    ask: 'Bir ilmek nasıl örülür?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? `(1) Tığı sonraki ilmeğin ${f.way === 'both-loops' ? 'üst kenarındaki iki ipliğin de' : 'yalnız arka ipliğinin'} altından, önden arkaya batırın.`
        : `(1) İpliği örgünün önünde, kendi tarafınızda tutun. Tığı sonraki ilmeğin ${f.way === 'both-loops' ? 'üst kenarındaki iki ipliğin de' : 'yalnız ön ipliğinin'} altından, arkadan kendinize doğru batırın.`,
      '(2) İpliği tığa dolayın. (3) İlmeğin içinden çekin: tığda iki ilmek olur.',
      '(4) Sonraki boncuğu örgünün dibine kaydırın.',
      '(5) Boncuğun ötesinde ipliği tığa dolayın. (6) İki ilmeğin içinden çekin.',
      f.beadsFace === 'away'
        ? 'İlmek bitti: boncuğu arkada duruyor.'
        : 'İlmek bitti: boncuğu önde duruyor.',
    ],
  },
  'slip-stitch': {
    ask: 'Bir ilmek nasıl örülür?',
    steps: (f) => [
      `(1) ${
        f.beadsFace === 'away'
          ? 'Tığı, alttaki sonraki ilmeğin boncuğunu tutan ipliğin altından, önden arkaya batırın.'
          : 'İpliği örgünün önünde, kendi tarafınızda tutun. Tığı, alttaki sonraki ilmeğin boncuğunu tutan ipliğin altından, arkadan kendinize doğru batırın.'
      } (2) O boncuğu örülmüş tarafa yatırın.`,
      '(3) Sonraki boncuğu örgünün dibine kaydırın.',
      '(4) Boncuğun ötesinde ipliği tığa dolayın. (5) İlmeğin ve tığdaki ilmeğin içinden bir kerede çekin.',
    ],
  },
  increase: {
    ask: 'Köşeli ayraç içindeki iki harf ne demek?',
    steps: () => [
      'Alttaki sıranın tek bir ilmeğine iki ilmek örülür: önce (1), sonra (2), her biri kendi boncuğuyla.',
    ],
  },
  'round-run': {
    ask: 'Sıralar nasıl ilerler?',
    steps: (f) => [
      f.construction === 'spiral'
        ? 'Spiral olarak: her sıra bir sonrakine geçer. Örerken böyle görürsünüz; siyah nokta sıranın ilk ilmeğidir.'
        : 'Halka halka: her sıra, sonraki başlamadan kapatılır. Örerken böyle görürsünüz; siyah nokta sıranın ilk ilmeğidir.',
    ],
  },
  marker: {
    ask: 'Sıra nerede başlar?',
    steps: () => [
      '(1) İşaretli ilmeğe örer örmez işaretleyiciyi yukarıya, az önce ördüğünüz ilmeğe taşıyın.',
    ],
  },
  'round-end': {
    ask: 'Sıra nasıl kapatılır?',
    steps: () => [
      '(1) Tığı sıranın ilk ilmeğine batırın ve ipliği tığa alın. (2) İlmeğin ve tığdaki ilmeğin içinden çekin: bu bir kaydırma ilmektir, boncuksuzdur.',
      '(3) Yükselmek için boncuksuz bir zincir çekin. (4) Sonraki sıranın ilk ilmeğini yine o ilk ilmeğe örün.',
    ],
  },
  'new-length': {
    ask: 'Sonraki dizi nasıl eklenir?',
    steps: (f) => [
      `(1) Eski dizinin son ilmeğinde, boncuğu örgünün dibine gelince, ${f.tailCm} cm uç bırakarak tığa yeni ipliği dolayın. (2) Tığdaki her şeyin içinden çekin.`,
      '(3) İki ucu kenar boyunca yatırın ve sonraki 5–10 ilmeği bunların üstüne örün; artanı sonra saklayın.',
    ],
  },
  'last-stitches': {
    ask: 'Son sıra nasıl bitirilir?',
    steps: (f) => [
      `(1, 2, 3) Basamaktan aşağı iki üç boncuksuz kaydırma ilmek yapın. (4) İpliği ${f.tailCm} cm bırakarak kesin ve tığda kalan ilmeğin içinden çekin.`,
    ],
  },
  seam: {
    ask: 'Hangi ilmekler birbirine dikilir?',
    steps: (f) => [
      `İki panelin son sıraları ve ilmeklerinin numaraları; dışta: ${f.front}; içte: ${f.back}. Her çizgi karşılaşan iki ilmeği birleştirir. Beyaz ilmekler burs için açık kalır.`,
    ],
  },
  'seam-stitch': {
    ask: 'Nasıl dikilir?',
    steps: () => [
      '(1) İğneyi her panelden birer ilmeğin iki ipliğinin de altından, hep aynı taraftan geçirin ve çift çift ilerleyin.',
    ],
  },
  frame: {
    ask: 'Bursa nereden başlanır?',
    steps: (f) => [
      `(1) Ortadan başlayıp bir menteşeye gidin; sonra yine ortadan başlayıp öbürüne gidin. ${f.bare ? 'Bursa boncuksuz ilmekler gelir.' : 'Bursa panelin kenarı gelir.'}`,
    ],
  },
  'frame-edge': {
    ask: 'Kenar bursta nasıl durur?',
    steps: (f) => [
      f.fixing === 'sewn'
        ? '(1) İçeriden, kenarın içinden geçip bir delik atlayarak sonraki delikten çıkın. (2) Atlanan delikten geri girin: delik delik geri dikiş.'
        : '(1) Kanala yapıştırıcı sürün. (2) Astarı dikilmiş panel kenarını içine itin. (3) Yanına kâğıt ip bastırın.',
    ],
  },
  lining: {
    ask: 'Astar nasıl takılır?',
    steps: (f) => [
      '(1) Yüz yüze koyup bir menteşe işaretinden alttan dolanarak öbürüne dikin.',
      '(2) Çevirmeyin, tersi dışta kalsın; açık kenarı dışarıya kıvırın.',
      '(3) Cüzdanın içine itin.',
      f.fixing === 'sewn'
        ? '(4) İçeride kıvrılmış kenarı deliklerin altından panelin kenarına dikin.'
        : '(4) İçeride kıvrılmış kenarı panelin kenarına dikin.',
    ],
  },
  braid: {
    ask: 'Bursun dikişi nasıl örtülür?',
    steps: () => [
      'En son, isterseniz: cüzdanın içinde şeridin yarısını her yana bursun dikişi boyunca koyun, uçlarını menteşelerde 10 mm içe kıvırın. (1) İğneyi şeridin altından geçirerek iki kenarını astara ve panele dikin.',
    ],
  },
};
