import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count } = numbersIn('zh');

/** The order of the work, and what stands on its pages. */
export const work: PageWords['booklet']['work'] = {
  contents: '目录',
  glance: '制作步骤一览',
  steps: {
    gather: '备齐珠子、线和工具',
    swatch: '钩一块试片并测量',
    string: (f) => (f.lengths === 1 ? '穿珠' : `穿第${f.length}段线的珠子`),
    rounds: (f) => (f.first === f.last ? `钩第${f.first}圈` : `钩第${f.first}至${f.last}圈`),
    again: '再钩一片同样的钩片',
    seam: '缝合钩片',
    frame: '装上口金',
    lining: '缝上里布',
  },
  print: '打印之前',
  printText: (f) =>
    `按100 %打印，不要缩放。这个正方形的每条边必须是${f.side}。如果不是，本册中所有按实际大小画的图都不准：把打印机设为100 %或“实际大小”，重新打印。`,
  stop: '停',
  seePage: (f) => `见第${f.page}页。`,
  part: '穿珠和钩编',
  heads: { string: '要穿的珠子', total: '累计', grams: '克', count: '珠子' },
  tick: (f) =>
    `每一行${f.brackets ? '以及括号内容的每一次重复' : ''}都有一个方框：珠子穿到线上之后就打勾。同色珠超过20颗时按十颗一组分开。行末的累计是这段线到此为止的珠数。`,
  twoBoxes: '两个并排的方框，每片钩片用一个。',
  roundsTick: '细竖线分开各个分区。钩完一圈就在方框里打勾；累计是到此为止钩进的全部珠数。',
  mixed: (f) =>
    `${count(f.beads)}/${count(f.stitches)}表示${count(f.stitches)}针中有${count(f.beads)}颗珠子，其余是空针。`,
  round: (round) => `第${round}圈`,
  working: {
    part: '钩编时看到的图解',
    note: (f) =>
      `这是钩的时候看到的那一面，并转到拿在手里的方向：起点在上方，钩编向${f.hand === 'right' ? '左' : '右'}进行，离开钩针。${f.mirrored ? '珠子在背面，所以图案与成品左右相反。' : ''}`,
    wedges: '圆圈里的数字按钩编方向给分区编号。',
    hook: '钩针',
    use: '钩的时候看“钩编时看到的图解”；钩好的钩片与珠面图解对照。',
  },
  sector: {
    name: (f) => (f.from === f.to ? `分区${f.from}` : `分区${f.from}至${f.to}`),
    how: '两侧颜色浅的珠子属于相邻分区。数字写在每圈第一针之前。',
  },
  time: (f) => `用时：${f.time}`,
  rights: {
    title: '权利',
    none: '本册没有注明作者和许可。在给您本册的人说明还可以怎样使用之前，请只供自己使用。',
    authorOnly: (f) => `图解作者是${f.author}，没有注明许可。传给别人或出售成品之前，请先询问。`,
    contact: '更正',
    contactText: (f) => `发现错误，或有不清楚的地方？请写信给：${f.contact}`,
  },
  yours: {
    title: '我的口金包',
    madeFor: '为谁制作',
    begun: '开始',
    finished: '完成',
    swatch: '我的试片',
    bead: '珠子',
    thread: '线',
    hook: '钩针',
    after: (f) => `${f.rounds}圈后的宽度`,
    notes: '笔记',
  },
  alt: {
    square: '用来检查打印的正方形。',
    photo: '成品照片。',
    purse: (f) => `装在口金上合拢的口金包的图：${f.panel}`,
    working: '钩编时看到的钩片图解。逐圈表用文字说明同样的内容，字母的含义见材料表。',
    sector: (f) => `放大图解，${f.wedges}。逐圈表用文字说明同样的内容。`,
  },
  listing: {
    size: '尺寸',
    level: '难度',
    beads: '珠子',
    tools: '另需',
    file: '文件内容',
    fileText: (f) =>
      `一个PDF，${f.pages}页，${f.paper}，${f.languages}。可以搜索，也可以朗读；每种珠子都有字母，不需要分辨颜色。`,
    digital: '这是供下载和打印的图解，不含珠子和工具。',
  },
};
