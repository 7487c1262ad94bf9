import type { FaceWord, HandWord } from '../english/chart.js';
import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed } = numbersIn('zh');

const clockwise = (direction: 1 | -1): string => (direction === 1 ? '顺时针' : '逆时针');
const hand = (which: HandWord): string => (which === 'right' ? '右手' : '左手');
// M: 背向钩编者 (away from the worker), 朝向钩编者 (toward the worker)
const face = (beadsFace: FaceWord): string =>
  beadsFace === 'away' ? '珠子背向钩编者' : '珠子朝向钩编者';
const place = { first: '第一针', middle: '中间一针', last: '最后一针' };

/** What stands on charts. */
export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title}：${f.panel}`),
  // L: 分区 or 扇形区?
  wedgesTitle: (f) =>
    f.panel === undefined ? `${f.title}：逐个分区` : `${f.title}：${f.panel}，逐个分区`,
  shapeLine: (f) =>
    [
      `${count(f.wedges)}个分区`,
      `${count(f.rounds)}圈`,
      `${count(f.stitches)}针`,
      `${count(f.beads)}颗珠子`,
      `直径${fixed(f.acrossMm, 1)} mm`,
    ].join('  ·  '),
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
    number: '圈号，写在该圈的第一针上。',
    five: '5的倍数圈：圈号为深色，外侧为粗线。',
    startLine: '起始线：每一圈都从这里开始。',
  },
  bare: '空针，不带珠子',
  undecided: '未定',
  wedge: (f) => `分区${f.wedge}`,
  wedgeWay: (f) => (f.direction === 1 ? '每一行都从左向右读' : '每一行都从右向左读'),
  pageOf: (f) => `第${f.page}页，共${f.pages}页`,
};
