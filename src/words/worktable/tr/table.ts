import type { WorktableWords } from '../index.js';

/** What stands on the table whatever step is open. */
export const table: WorktableWords['table'] = {
  untitled: 'Adsız panel',
  titleLabel: 'İşin adı',
  way: 'Resimden cüzdana giden yol',
  mat: 'Mat',
  matEmpty: 'Resim gelir gelmez boncuklar buraya dizilir.',
  heap: (n) => `${n} boncuk`,
  heapHint: 'boncuk; nerede olduklarını göster',
  matSum: ({ colours, beads }) => `${colours} renk, ${beads} boncuk`,
  panel: 'Panel, boncuk yüzü yukarıda',
  panelLabel: ({ rounds, wedges, mm }) =>
    `Yuvarlak panel: ${rounds} sıra, ${wedges} dilim, genişlik yaklaşık ${mm} mm`,
  panelSize: ({ rounds, cm }) => `${rounds} sıra · ${cm} cm`,
  working: 'Boncuklar seçiliyor …',
  stitch: ({ round, stitch, letter, name }) =>
    `${round}. sıra, ${stitch}. ilmek: ${letter}, ${name}`,
  bareStitch: ({ round, stitch }) => `${round}. sıra, ${stitch}. ilmek: boncuksuz`,
  thread: 'İplik',
  threadLabel: ({ n }) => `dizme düzeninde ${n} boncuk; ok tuşları boyunca ilerler`,
  length: ({ n, beads, m }) => `${n}. dizi: ${beads} boncuk, ${m} m`,
  lengthMark: (n) => `${n}. dizi`,
  roundMark: (r) => `${r}. sıra`,
  mirrored: 'örerken gördüğünüz gibi: sol ile sağ yer değiştirir',
  byRound: 'Yazıyla panel, sıra sıra',
  roundLine: ({ r, runs }) => `${r}. sıra: ${runs}`,
  run: ({ n, letter, name }) => `${n} ${letter} (${name})`,
  bareRun: (n) => `${n} boncuksuz`,
  undone: (what) => `Geri alındı: ${what}`,
  redone: (what) => `Yeniden yapıldı: ${what}`,
  saved: (file) => `Kaydedildi: ${file}`,
  close: 'Kapat',
  keys: 'Tuşlar',
  keysIntro: 'Hepsi klavyeyle de yapılabilir.',
  more: 'Daha fazla',
};
