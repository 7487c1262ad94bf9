import type { WorktableWords } from '../index.js';

/** The step Work: stringing and crocheting beside the bead mat. */
export const work: WorktableWords['work'] = {
  step: 'Çalışma',
  intro:
    'Ekranı boncuk matının yanına dayayın. Her seferinde tek bir şey gösterir ve nerede kaldığınızı boncuğu boncuğuna hatırlar.',
  waiting: 'Boncuklar hâlâ seçiliyor …',
  changed: 'Panel, siz başladıktan sonra değiştirildi. Hâlâ başladığınız paneli örüyorsunuz.',
  which: 'Hangisi',
  copies: 'Her birinden kaç tane',
  panel: 'Panel',
  sides: { front: 'Ön', back: 'Arka' },
  panelOf: (f) => `${f.name}, ${f.n} / ${f.of}`,
  strung: (f) => `Dizilen boncuk: ${f.done} / ${f.all}`,
  worked: (f) => `Örülen ilmek: ${f.done} / ${f.all}`,
  length: (f) => `dizi ${f.n} / ${f.of}`,
  stringRound: (f) => `${f.r}. sıra · boncuk ${f.done} / ${f.all}`,
  then: (run) => `sonra ${run}`,
  thenDone: 'bunlar sonuncular',
  notStrung: (n) => `Bu sayfaya göre bu diziden henüz ipliğe geçmeyen boncuk: ${n}. Önce dizilir.`,
  strungByList: 'Hepsi iplikte',
  tapStrung: 'İpliğe geçince herhangi bir yere dokunun',
  stands: (f) =>
    `İplikte: ${f.beads} boncuk, ${f.metres} m${f.grams === undefined ? '' : `, ${f.grams} g`}`,
  lengthDone: (f) =>
    f.of === '1'
      ? `Boncukların hepsi dizildi: ${f.beads}`
      : `Dizi ${f.n} / ${f.of} hazır: ${f.beads} boncuk`,
  lengthDoneHow:
    'En son dizilen boncuk ilk önce örülür. Boncukları iplik boyunca itin ve ipliği yumakta bırakın.',
  stringLength: (f) => `Dizi ${f.n} / ${f.of} için boncuk diz`,
  inHand: 'Örgü elinizde durduğu gibi, şimdiki ilmek tığın yanında',
  roundOf: (f) => `Sıra ${f.r} / ${f.of}`,
  inRound: (f) => `dilim ${f.wedge} · ilmek ${f.stitch} / ${f.of}`,
  allWorked: (n) => `ilmeklerin hepsi: ${n}`,
  begin: (wedges) => `Bir halkayla başlayın ve 1. sıranın ${wedges} ilmeğini içine örün.`,
  roundDone: (f) =>
    `${f.r}. sıra bitti: ${f.stitches} ilmek, ${f.beads} boncuk, toplam ${f.all} boncuk.`,
  moveMarker: 'İşaretleyiciyi sonraki sıranın ilk ilmeğine takın.',
  closeRound:
    'Sırayı bir kaydırma ilmekle kapatın ve yükselmek için bir zincir çekin; ikisi de boncuksuz.',
  joinHere: (length) => `Durun: ${length}. diziyi burada ekleyin.`,
  bothInOne: 'ikisi de aynı ilmeğe',
  bare: 'boncuksuz',
  open: 'kararsız',
  tapWorked: 'Örülünce dokunun',
  coming: 'İplikten gelecek boncuklar',
  pace: 'Her seferinde ne kadar',
  panelDone: 'Panel bitti',
  endSpiral:
    'Basamağı yumuşatmak için boncuksuz iki üç kaydırma ilmek yapın, ipliği 20 cm bırakarak kesin ve içinden çekin.',
  endJoined: 'Sırayı bir kaydırma ilmekle kapatın, ipliği 20 cm bırakarak kesin ve içinden çekin.',
  voiceless: 'Bu cihazda sayfanın dili için ses yok.',
  cannot: {
    stayAwake: 'Bu tarayıcı ekranı açık tutamıyor: cihazın ayarlarında kapanma süresini uzatın.',
    speak: 'Bu tarayıcı sesli okuyamıyor.',
    listen: 'Bu tarayıcı dinleyemiyor: dokunmak ya da boşluk tuşu ilerletir.',
  },
  heard: { next: ['ileri', 'sonraki', 'evet'], back: ['geri', 'yanlış'] },
  listens:
    '“İleri” ve “geri” sözlerini dinliyor. Bazı tarayıcılar duyduklarını anlamak için üreticilerine gönderir; bu sayfa hiçbir şey göndermez.',
  deaf: 'Tarayıcı şimdi dinleyemiyor: izin verilmedi ya da bunun için ağ gerekiyor.',
};
