import type { FaceWord, HandWord } from '../english/chart.js';
import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, sizeMm } = numbersIn('ja');

const clockwise = (direction: 1 | -1): string => (direction === 1 ? '時計回り' : '反時計回り');
const hand = (which: HandWord): string => (which === 'right' ? '右手編み' : '左手編み');
// M: 向こう側 (away from the worker), 手前側 (toward the worker)
const face = (beadsFace: FaceWord): string =>
  beadsFace === 'away' ? 'ビーズは編む人の向こう側' : 'ビーズは編む人の手前側';
const place = { first: '最初', middle: '中央', last: '最後' };

/** How many wedges, rounds and stitches a panel has. */
export const shapeCounts = (f: { wedges: number; rounds: number; stitches: number }): string[] => [
  `${count(f.wedges)}区画`,
  `${count(f.rounds)}段`,
  `${count(f.stitches)}目`,
];

/** What stands on charts. */
export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title}：${f.panel}`),
  // L: 区画 or セクション?
  wedgesTitle: (f) =>
    f.panel === undefined ? `${f.title}：区画ごとの図` : `${f.title}：${f.panel}、区画ごとの図`,
  shapeLine: (f) =>
    [...shapeCounts(f), `ビーズ${count(f.beads)}個`, `直径${sizeMm(f.across, 1)} mm`].join('  ·  '),
  workLine: (f) =>
    [
      `${hand(f.hand)}、${face(f.beadsFace)}`,
      `増し目は各区画の${place[f.increase]}の目`,
      // L: ずれ (lean)
      `ずれ${f.lean}目`,
      f.construction === 'spiral' ? 'らせん状に編む' : '段ごとに閉じて編む',
    ].join('  ·  '),
  start: '始め',
  direction: '編む方向',
  faceNote: (f) =>
    `これはビーズ面で、がま口の外側になります。この面では${clockwise(f.direction)}に編み進みます（${hand(f.hand)}、${face(f.beadsFace)}）。`,
  workerNote: (f) =>
    f.beadsFace === 'away'
      ? `編んでいるときに見えるのは反対の面で、そこでは${clockwise(f.direction === 1 ? -1 : 1)}に編み進みます。`
      : 'ビーズが手前側に出るので、編んでいるときに見えるのもこの面です。',
  construction: {
    spiral: 'らせん：段を閉じずに、そのまま次の段へ続けて編みます。',
    joined: '段ごとに閉じる：各段を引き抜き編みで閉じます。引き抜き編みは図にありません。',
  },
  marks: {
    pair: '増し目：同じ目に2目編み入れます。',
    number: '段の番号。その段の最初の目の手前にあります。',
    tick: '縁の目盛り：最終段の最初の目から数えて10目ごと。',
    five: '5段ごと：番号は濃い字、その外側は太い線。',
    startLine: '始めの線：どの段もここから始まります。',
    join: '糸つぎ：この目から次の糸で編みます。',
  },
  larger: '大きな文字は、区画ごとの wedges.svg と、PDFの拡大した紙にあります。',
  bare: 'ビーズなしの目',
  undecided: '未定の目',
  wedge: (f) => `区画${f.wedge}`,
  wedgeWay: (f) =>
    f.direction === 1 ? 'どの行も左から右へ読みます' : 'どの行も右から左へ読みます',
  pageOf: (f) => `${f.pages}ページ中${f.page}ページ目`,
};
