import type { WorktableWords } from '../index.js';

/** The step Brush: beads laid by hand. */
export const brush: WorktableWords['brush'] = {
  step: 'Fırça',
  inHand: 'Fırçada',
  take: 'Al',
  none: 'Boncuk yok',
  others: (n) => `Öteki boncuklarım: ${n}`,
  lays: 'Koyduğu',
  also: 'Şunu da yapar',
  how: {
    bead: 'Panelin üzerinde çizin: dokunduğunuz her ilmek boncuğu alır.',
    line: 'Bir ilmekten ötekine çekin: boncuklardan düz bir çizgi.',
    ring: 'Bir ilmeğe dokunun: bütün sırası boncuğu alır. Birkaç sıra için sıralar boyunca çekin.',
    wedge: 'Bir ilmeğe dokunun: bütün dilimi boncuğu alır.',
    patch: 'Tek renkli bir yamaya dokunun: hepsi boncuğu alır.',
    away: 'Elle konanların üzerinden geçin: o ilmekler yine resmin verdiği gibi olur.',
    replace: 'Bir boncuğa dokunun: nerede olursa olsun yerine fırçadaki konur.',
    move: 'Bir parçanın çevresine ilmek çizin ya da bir yamaya dokunun; sonra yeni yerine çekin.',
    pick: 'Almak için paneldeki bir boncuğa dokunun. Matın üzerindeki öbek de aynısını yapar.',
  },
  laid: 'Elle konanlar',
  laidNone: 'Henüz yok.',
  laidCount: (n) => `İlmek: ${n}.`,
  laidWait: ({ n, wedges }) => `Kondukları ${wedges} dilimi bekleyenler: ${n}.`,
  laidOutside: (n) => `Kenarın dışında, daha çok sıra bekleyenler: ${n}.`,
  laidHow:
    'Resmi yeniden yerleştirdiğinizde ya da başka boncuk seçtiğinizde yerlerinde kalırlar. Başka dilim sayısında ya da daha az sıranın dışında yerleri yoktur: beklerler, geri almak onları getirir.',
  noLetter: 'Zaten 24 renk var, yenisi için harf kalmadı. Önce iki öbeği birleştirin.',
  heapHint: 'boncuk; al',
  keysHow:
    'Klavyeyle: oklar sıra boyunca ve sıradan sıraya gider, boşluk fırçayı kullanır, virgül ve nokta boncuğu değiştirir. Shift ile oklar giderken fırçayı kullanır.',
  place: ({ round, stitch, wedge, bead }) =>
    `${round}. sıra, ${stitch}. ilmek, ${wedge}. dilim: ${bead}`,
  placeByHand: ({ round, stitch, wedge, bead }) =>
    `${round}. sıra, ${stitch}. ilmek, ${wedge}. dilim: ${bead}, elle`,
  steps: {
    bead: 'boncuk koyma',
    line: 'çizgi koyma',
    ring: 'halka koyma',
    wedge: 'dilim koyma',
    patch: 'yamayı doldurma',
    away: 'boncuk kaldırma',
    move: 'parça taşıma',
    replace: 'bir boncuğun yerine başkası',
    all: 'elle konan her şeyi kaldırma',
  },
};
