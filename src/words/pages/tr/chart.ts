import type { FaceWord, HandWord } from '../english/chart.js';
import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, short, sizeMm } = numbersIn('tr');

/** Which way the work runs, before a verb. */
export const turn = (clockwise: boolean): string =>
  clockwise ? 'saat yönünde' : 'saat yönünün tersine';
const hand = (which: HandWord): string => (which === 'right' ? 'sağ el' : 'sol el');
const face = (beadsFace: FaceWord): string =>
  beadsFace === 'away'
    ? 'boncuklar arkada, size bakmayan yüzde'
    : 'boncuklar önde, size bakan yüzde';
const increased = { first: 'ilk ilmeğinde', middle: 'ortadaki ilmeğinde', last: 'son ilmeğinde' };

/** How many wedges, rounds and stitches a panel has. */
export const shapeCounts = (f: { wedges: number; rounds: number; stitches: number }): string[] => [
  // M: dilim, a wedge.
  `${count(f.wedges)} dilim`,
  `${count(f.rounds)} sıra`,
  `${count(f.stitches)} ilmek`,
];

export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title}: ${f.panel}`),
  wedgesTitle: (f) =>
    f.panel === undefined ? `${f.title}: dilim dilim` : `${f.title}: ${f.panel}, dilim dilim`,
  shapeLine: (f) =>
    [...shapeCounts(f), `${count(f.beads)} boncuk`, `çap ${sizeMm(f.across, 1)} mm`].join('  ·  '),
  // One line of the chart: the notes below it say which face that is.
  workLine: (f) =>
    [
      `${f.hand === 'right' ? 'Sağ el' : 'Sol el'}, ${f.beadsFace === 'away' ? 'boncuklar arkada' : 'boncuklar önde'}`,
      `artırma her dilimin ${increased[f.increase]}`,
      // M: kayma, how far a stitch sits behind the one below.
      `kayma ${short(f.lean, 3)} ilmek`,
      f.construction === 'spiral' ? 'spiral örülür' : 'sıralar kapatılır',
    ].join('  ·  '),
  start: 'başlangıç',
  direction: 'bu yöne örün',
  faceNote: (f) =>
    `Bu, boncuklu yüzdür: cüzdanın dışı. Bu yüzde örgü ${turn(f.direction === 1)} ilerler (${hand(f.hand)}, ${face(f.beadsFace)}).`,
  workerNote: (f) =>
    f.beadsFace === 'away'
      ? `Örerken öbür yüzü görürsünüz; o yüzde örgü ${turn(f.direction !== 1)} ilerler.`
      : 'Örerken siz de bu yüzü görürsünüz, çünkü boncuklar öndedir, size bakar.',
  construction: {
    spiral: 'Spiral: her sıra, kapatılmadan bir sonrakine geçer.',
    joined: 'Kapatılan sıralar: her sıra, şemada çizilmeyen bir kaydırma ilmekle kapatılır.',
  },
  marks: {
    pair: 'Artırma: aynı ilmeğe iki ilmek.',
    number: 'Sıra numarası, sıranın ilk ilmeğinden önce.',
    tick: 'Kenardaki çentikler: son sıranın ilk ilmeğinden sayılarak her 10. ilmek.',
    five: 'Her 5 sırada bir: koyu numara, sıranın dışında kalın çizgi.',
    startLine: 'Başlangıç çizgisi: her sıranın başladığı yer.',
    join: 'Ekleme: bu ilmekle yeni bir iplik dizisi başlar.',
  },
  larger:
    'Daha büyük harfler: dilim dilim wedges.svg dosyasında ve PDF tarifin büyütülmüş yapraklarında.',
  bare: 'Boş ilmek, boncuksuz',
  undecided: 'Henüz belirlenmedi',
  wedge: (f) => `Dilim ${f.wedge}`,
  wedgeWay: (f) =>
    f.direction === 1 ? 'Her sırayı soldan sağa okuyun' : 'Her sırayı sağdan sola okuyun',
  pageOf: (f) => `sayfa ${f.page} / ${f.pages}`,
};
