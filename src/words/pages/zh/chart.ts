import type { FaceWord, HandWord } from '../english/chart.js';
import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, sizeMm } = numbersIn('zh');

const clockwise = (direction: 1 | -1): string => (direction === 1 ? '顺时针' : '逆时针');
const hand = (which: HandWord): string => (which === 'right' ? '右手' : '左手');
// M: 背向钩编者 (away from the worker), 朝向钩编者 (toward the worker)
const face = (beadsFace: FaceWord): string =>
  beadsFace === 'away' ? '珠子背向钩编者' : '珠子朝向钩编者';
const place = { first: '第一针', middle: '中间一针', last: '最后一针' };

/** How many wedges, rounds and stitches a panel has. */
export const shapeCounts = (f: { wedges: number; rounds: number; stitches: number }): string[] => [
  `${count(f.wedges)}个分区`,
  `${count(f.rounds)}圈`,
  `${count(f.stitches)}针`,
];

/** What stands on charts. */
export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title}：${f.panel}`),
  // L: 分区 or 扇形区?
  wedgesTitle: (f) =>
    f.panel === undefined ? `${f.title}：逐个分区` : `${f.title}：${f.panel}，逐个分区`,
  shapeLine: (f) =>
    [...shapeCounts(f), `${count(f.beads)}颗珠子`, `直径${sizeMm(f.across, 1)} mm`].join('  ·  '),
  workLine: (f) =>
    [
      `${hand(f.hand)}钩，${face(f.beadsFace)}`,
      `在每个分区的${place[f.increase]}加针`,
      // L: 偏移 (lean)
      `偏移${f.lean}针`,
      f.construction === 'spiral' ? '螺旋钩' : '每圈闭合',
    ].join('  ·  '),
  start: '起点',
  direction: '钩编方向',
  faceNote: (f) =>
    `这是珠面，也就是口金包的外面。在这一面上，钩编方向是${clockwise(f.direction)}（${hand(f.hand)}钩，${face(f.beadsFace)}）。`,
  workerNote: (f) =>
    f.beadsFace === 'away'
      ? `钩的时候看到的是另一面，那一面上的钩编方向是${clockwise(f.direction === 1 ? -1 : 1)}。`
      : '珠子朝向钩编者，所以钩的时候看到的也是这一面。',
  construction: {
    spiral: '螺旋钩：一圈接着一圈连续钩，不闭合。',
    joined: '每圈闭合：每圈用引拔针闭合，图上不画引拔针。',
  },
  marks: {
    pair: '加针：在同一针里钩两针。',
    number: '圈号，写在该圈第一针之前。',
    tick: '边缘的刻度：最后一圈从第一针数起，每10针一个。',
    five: '每逢5的倍数的圈：圈号为深色，外侧为粗线。',
    startLine: '起始线：每一圈都从这里开始。',
    join: '接线：从这一针起用新的一段线。',
  },
  larger: '更大的字母：按分区见 wedges.svg，也见PDF图解的放大页。',
  bare: '空针，不带珠子',
  undecided: '未定',
  wedge: (f) => `分区${f.wedge}`,
  wedgeWay: (f) => (f.direction === 1 ? '每一行都从左向右读' : '每一行都从右向左读'),
  pageOf: (f) => `第${f.page}页，共${f.pages}页`,
};
