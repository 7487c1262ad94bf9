import type { WorktableWords } from '../index.js';

/** Help while working: where one is, what is wrong, notes, time, and a colour that runs out. */
export const mending: WorktableWords['mending'] = {
  findTitle: 'Neredeyim?',
  findHow: 'İplikten şimdi gelecek boncuklara dokunun, önce tığa en yakın olana.',
  findNone: 'Hiçbir yerde böyle gelmezler. En son dokunduğunuza bakın.',
  findMore: (n) => `Uyan yer sayısı: ${n}. Sonraki boncuğa dokunun.`,
  found: (f) => `Sırada ${f.round}. sıranın ${f.stitch}. ilmeği var, dilim ${f.wedge}.`,
  foundSlips: (n) => `Orada listeden farklı boncuk: ${n}.`,
  goThere: 'Oradan devam et',
  jumped: (f) => `Buraya ${f.round}. sıranın ${f.stitch}. ilmeğinden geldiniz.`,
  checkTitle: 'Doğru mu?',
  checkHow: (after) =>
    after === '0'
      ? 'İpliğiniz böyle görünmeli, ilk dizilen boncuk başta.'
      : `Denetlediğiniz ${after} boncuktan sonra ipliğiniz böyle görünmeli.`,
  checkRight: 'Benimki aynı',
  readStrung: (after) =>
    after === '0'
      ? 'Değilse gerçekte ne varsa ona dokunun, ilk dizilen boncuktan başlayın.'
      : `Değilse gerçekte ne varsa ona dokunun, ${after}. boncuğun arkasından başlayın.`,
  wrongTitle: 'Bir yanlışlık var',
  readComing: 'Boncuklara iplikten gerçekte geldikleri gibi dokunun, önce tığa en yakın olana.',
  agree: (n) => `Listedeki gibi: ${n} boncuk.`,
  tooMany: 'Bu, o iplik parçası değil ya da öbür ucundan okundu.',
  notHere: 'Bu boncuklar buraya ait değil. Belki başka bir yerdesiniz.',
  slip: {
    missing: (f) =>
      `${f.after} boncuktan sonra: ${f.wanted} eksik (${f.round}. sıra, ${f.stitch}. ilmek)`,
    extra: (f) =>
      `${f.after} boncuktan sonra: ${f.got} fazla (${f.round}. sıra, ${f.stitch}. ilmekten önce)`,
    other: (f) =>
      `${f.after} boncuktan sonra: ${f.wanted} yerine ${f.got} (${f.round}. sıra, ${f.stitch}. ilmek)`,
    swap: (f) =>
      `${f.after} boncuktan sonra: ${f.got} yanlış sırada, doğrusu ${f.wanted} (${f.round}. sıra, ${f.stitch}. ilmek)`,
  },
  ways: {
    missing: 'Eksik: o ilmeği boncuksuz örün, boncuğu sonra ince bir iğne ve aynı iplikle dikin.',
    extra:
      'Fazla: sırası gelince boncuğu yassı penseyle kırın. Koruyucu gözlük takın, boncukla pensenin üzerine bez tutun, kırıkları toplayın ve iplikte kesik var mı parmağınızla yoklayın.',
    other:
      'Yanlış renk: sırası gelince yanlış boncuğu kırın, ilmeği boncuksuz örün ve doğrusunu sonra dikin.',
    swap: 'Yanlış sıra: iki yanlış renk gibi davranın ya da kimse görmeyecekse olduğu gibi örün.',
  },
  broken: 'Kırık cam ipliği ve deriyi keser, göze sıçrar: koruyucu gözlüksüz asla yapmayın.',
  takeOff: (after) => `${after}. boncuğun arkasındakilerin hepsini çıkardım`,
  mendLater: 'Kalsın, örerken düzelt',
  noteThem: 'İlmeklerine not et',
  here: {
    sewOn: (letter) => `Burada ${letter} eksik: ilmeği boncuksuz örün, boncuğu sonra dikin.`,
    extra: (letters) => `Önce iplikten çıkarın: ${letters}.`,
  },
  ten: 'Onar onar',
  takeBack: 'Geri al',
  typeThem: 'Ya da yazın, örneğin 3A 2B',
  addTyped: 'Ekle',
  typedWrong: (letters) => `Yalnız sayılar ve şu harfler: ${letters}`,
  tapped: (n) => `Söylenen boncuk: ${n}`,
  notes: 'Notlar',
  noteAt: (f) => `${f.round}. sıranın ${f.stitch}. ilmeğindeki not`,
  noteHow: 'Not iliştirmek için örgünün bir ilmeğine dokunun.',
  noteLine: (f) => `${f.round}. sıra, ${f.stitch}. ilmek: ${f.text}`,
  sewOnLine: (f) => `${f.round}. sıra, ${f.stitch}. ilmek: ${f.letter} dikilecek, ${f.name}.`,
  sewn: 'Dikildi',
  takeAway: 'Kaldır',
  sewOnTitle: 'Dikilecek boncuklar',
  timeTitle: 'Süre ve maliyet',
  time: (f) => `${f.h} sa ${f.min} dk`,
  timeHow: 'Süre dokunuştan dokunuşa sayılır; iki dakikadan uzun ara sayılmaz.',
  hourly: 'Bir saatin değeri',
  cost: {
    beads: 'Boncuk',
    thread: 'İplik',
    time: 'Süre',
    sum: 'Toplam',
    unknown: 'fiyat bilinmiyor',
  },
  costHow: 'Her panelden bir tane için, boncuk fiyatlarının parasıyla.',
  outTitle: 'Bir renk bitiyor',
  outHow:
    'Dizilmiş olan kalır. Bir sıradan sonra yerine başka boncuk gelir ve bütün listeler uyar.',
  outWhich: 'Hangi renk',
  outFrom: 'Hangi sıradan',
  outPanels: 'Hangi panelde',
  outAll: 'Hepsinde',
  outNeeds: (n) => `Oradan sonra gereken boncuk: ${n}`,
  outInJar: (n) => `kavanozda: ${n}`,
  outNone: 'O sıradan sonra bu renk artık örülmüyor.',
  outDone: (f) => `${f.round}. sıradan sonra ${f.from} yerine ${f.to} var.`,
  practice: 'Alıştırma parçası',
  practiceHow:
    'Öğrenmek için dört sıra, kendi ilmeğiniz ve boncuklarınızla: her artırmanın iki ilmeği kendi renginde, her sıranın ilk ilmeği de öyle. Sayfalar onun için ayrı bir kitapçık yapar.',
  steps: { runsOut: 'biten boncuğun yerine başkası' },
};
