import type { WorktableWords } from '../index.js';

/** The step Brush: beads laid by hand. */
export const brush: WorktableWords['brush'] = {
  step: '笔刷',
  inHand: '笔上的珠子',
  take: '拿起',
  none: '无珠',
  others: (n) => `我的其他珠子：${n}`,
  lays: '它摆',
  also: '它还可以',
  how: {
    bead: '在钩片上画：碰到的每一针都换成这种珠子。',
    line: '从一针拉到另一针：一条笔直的珠线。',
    ring: '点一针：整圈换成这种珠子。跨圈拉动可换几圈。',
    wedge: '点一针：整个分区换成这种珠子。',
    patch: '点一块同色的珠子：整块换成这种珠子。',
    away: '在手工摆的珠子上划过：这些针恢复成图片给的样子。',
    replace: '点一颗珠子：凡是这种珠子，都换成笔上的珠子。',
    move: '画个圈围住一部分，或点一个色块；再把它拉到新位置。',
    pick: '点钩片上的珠子把它拿起。点珠子垫上的一堆也一样。',
  },
  laid: '手工摆的',
  laidNone: '还没有。',
  laidCount: (n) => `针数：${n}。`,
  laidWait: ({ n, wedges }) => `等待摆放时的${wedges}个分区：${n}。`,
  laidOutside: (n) => `在边缘之外，等待更多圈：${n}。`,
  laidHow:
    '重新摆放图片或选用其他珠子时，它们留在原处。换了分区数，或在减少后的圈数之外，它们没有位置：会等着，撤销就回来。',
  noLetter: '已经有24种颜色，没有字母留给新颜色。请先合并两堆。',
  heapHint: '珠子；拿起',
  keysHow:
    '用键盘：方向键沿圈移动和逐圈移动，空格用笔，逗号和句号换珠子。按住Shift时，方向键边走边用笔。',
  place: ({ round, stitch, wedge, bead }) => `第${round}圈第${stitch}针，第${wedge}分区：${bead}`,
  placeByHand: ({ round, stitch, wedge, bead }) =>
    `第${round}圈第${stitch}针，第${wedge}分区：${bead}，手工`,
  steps: {
    bead: '摆珠子',
    line: '摆线条',
    ring: '摆一圈',
    wedge: '摆分区',
    patch: '填色块',
    away: '取下珠子',
    move: '移动一部分',
    replace: '用一种珠子换另一种',
    all: '取下所有手工摆的',
  },
};
