import type { WorktableWords } from '../index.js';

/** Help while working: where one is, what is wrong, notes, time, and a colour that runs out. */
export const mending: WorktableWords['mending'] = {
  findTitle: '我在哪里？',
  findHow: '按顺序点接下来从线上来的珠子，先点离钩针最近的那颗。',
  findNone: '没有任何地方是这样排的。请看看您最后点的那颗。',
  findMore: (n) => `有${n}处符合。请点下一颗珠子。`,
  found: (f) => `接下来是第${f.round}圈第${f.stitch}针，在分区${f.wedge}。`,
  foundSlips: (n) => `那里与清单不同的珠子：${n}颗。`,
  goThere: '从那里继续',
  jumped: (f) => `您从第${f.round}圈第${f.stitch}针来到这里。`,
  checkTitle: '对不对？',
  checkHow: (after) =>
    after === '0'
      ? '您的线应当是这样，最先穿的珠子在最前。'
      : `在您检查过的${after}颗珠子之后，线应当是这样。`,
  checkRight: '我的一样',
  readStrung: (after) =>
    after === '0'
      ? '如果不一样，请按实际点出线上的珠子，从最先穿的开始。'
      : `如果不一样，请从第${after}颗珠子之后开始，按实际点出线上的珠子。`,
  wrongTitle: '有点不对',
  readComing: '按珠子实际从线上来的顺序点，先点离钩针最近的那颗。',
  agree: (n) => `与清单相同：${n}颗珠子。`,
  tooMany: '这不是那一截线，或者是从另一头读的。',
  notHere: '这些珠子不属于这里。也许您在别处。',
  slip: {
    missing: (f) => `第${f.after}颗珠子之后：缺 ${f.wanted}（第${f.round}圈第${f.stitch}针）`,
    extra: (f) => `第${f.after}颗珠子之后：多 ${f.got}（第${f.round}圈第${f.stitch}针之前）`,
    other: (f) =>
      `第${f.after}颗珠子之后：应为 ${f.wanted}，却是 ${f.got}（第${f.round}圈第${f.stitch}针）`,
    swap: (f) =>
      `第${f.after}颗珠子之后：${f.got} 次序颠倒，应为 ${f.wanted}（第${f.round}圈第${f.stitch}针）`,
  },
  ways: {
    missing: '缺珠：那一针不带珠子钩，以后用细针和同样的线把珠子缝上。',
    extra:
      '多珠：钩到时用平嘴钳把珠子夹碎。戴护目镜，用布盖住珠子和钳子，捡起碎片，并摸一摸线有没有被割伤。',
    other: '颜色不对：钩到时夹碎错的珠子，那一针不带珠子钩，以后把对的缝上。',
    swap: '次序颠倒：当作两颗颜色不对的珠子处理；如果没人看得出来，也可以照样钩。',
  },
  broken: '碎玻璃会割伤线和皮肤，也会溅入眼睛：绝不可不戴护目镜。',
  takeOff: (after) => `第${after}颗珠子之后的我都取下了`,
  mendLater: '先留着，钩到时再修',
  noteThem: '记在相应的针上',
  here: {
    sewOn: (letter) => `这里缺 ${letter}：这一针不带珠子钩，以后再缝上。`,
    extra: (letters) => `先从线上取下：${letters}。`,
  },
  ten: '一次十颗',
  takeBack: '退一颗',
  typeThem: '或者输入，例如 3A 2B',
  addTyped: '加上',
  typedWrong: (letters) => `只能用数字和这些字母：${letters}`,
  tapped: (n) => `已点珠子：${n}颗`,
  notes: '备注',
  noteAt: (f) => `第${f.round}圈第${f.stitch}针的备注`,
  noteHow: '点织物上的一针，就可以在那里别上备注。',
  noteLine: (f) => `第${f.round}圈第${f.stitch}针：${f.text}`,
  sewOnLine: (f) => `第${f.round}圈第${f.stitch}针：缝上 ${f.letter}，${f.name}。`,
  sewn: '已缝上',
  takeAway: '去掉',
  sewOnTitle: '要缝上的珠子',
  timeTitle: '时间和成本',
  time: (f) => `${f.h}小时${f.min}分`,
  timeHow: '从一次点按到下一次点按计时；超过两分钟的停顿不计。',
  hourly: '一小时值多少',
  cost: { beads: '珠子', thread: '线', time: '时间', sum: '合计', unknown: '价格未知' },
  costHow: '每种钩片各一片，用珠子价格的货币。',
  outTitle: '一种颜色不够了',
  outHow: '已穿的不变。从某一圈起换用另一种珠子，所有清单随之改变。',
  outWhich: '哪种颜色',
  outFrom: '从第几圈起',
  outPanels: '哪一片',
  outAll: '全部',
  outNeeds: (n) => `从那里起需要的珠子：${n}颗`,
  outInJar: (n) => `瓶中有：${n}颗`,
  outNone: '从那一圈起不再用到这种颜色。',
  outDone: (f) => `从第${f.round}圈起用 ${f.to} 代替 ${f.from}。`,
  practice: '练习片',
  practiceHow:
    '用您自己的针法和珠子练习的四圈：每处加针的两针有自己的颜色，每圈的第一针也有自己的颜色。“页面”会为它单独做一本册子。',
  steps: { runsOut: '不够时换用的珠子' },
};
