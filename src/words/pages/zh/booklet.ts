import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';
import { work } from './work.js';

const { count, fixed, sizeInches, sizeMm } = numbersIn('zh');

/** What stands on the pages of a booklet that no other file says. */
export const booklet: PageWords['booklet'] = {
  // L-M: 串珠钩编 or 钩珠?
  subject: '圆形串珠钩编片的图解',
  kind: '圆形串珠钩编图解',
  size: (f) => `成品直径约${sizeMm(f.across, 0)} mm（${sizeInches(f.across)}英寸）`,
  sizeFrom: {
    swatch: '根据作者的试片',
    model: '估计值，钩过试片后才准确',
  },
  amounts: (f) =>
    [
      f.panels === 1 ? '1片钩片（钩两次）' : `${count(f.panels)}片钩片`,
      `${count(f.rounds)}圈`,
      lists.beads(f.beads),
      `${count(f.colours)}种颜色`,
    ].join('  ·  '),
  by: (author) => `作者：${author}`,

  panelNames: { front: '前片', back: '后片' },
  pageOf: (f) => `${f.page} / ${f.pages}`,
  panel: (f) => `钩片“${f.panel}”`,
  length: (f) => `第${f.length}段线，共${f.lengths}段`,
  continued: (heading) => `${heading}（续）`,
  parts: {
    cover: '封面',
    materials: '材料和工具',
    before: '开始之前',
    chart: '图解',
    rounds: '逐圈钩法',
    stringing: '穿珠表',
    making: '组装',
    lining: '里布纸样',
    cautions: '注意事项',
    last: '关于本图解',
  },
  ofPanel: (f) => `${f.part}：${f.panel}`,

  materials: {
    beads: '珠子',
    columns: {
      bead: '字母',
      name: '名称',
      id: '编号',
      charted: (panels) => (panels === 1 ? '图解中的数量' : '两张图解中的数量'),
      reserve: '一个口金包，含备用量',
      grams: '需备克数',
    },
    total: '全部珠子',
    unknownGrams: '–',
    onePanel: '图解是一片钩片。一个口金包需要两片：含备用量的数量是前片和相同的后片合计的数量。',
    twoPanels: '一个口金包需要两片钩片，本图解两片都有。',
    thread: '线',
    estimate: '每针用线因人而异：在线上标出1 m，把它钩完，数一数针数，买线之前先修正这个数字。',
    ownFigure: '每针用线是作者自己的数字。',
    tools: '工具、口金、里布',
  },

  before,

  rounds: {
    round: '圈',
    work: '钩法',
    stitches: '针数',
    beads: '珠子',
    total: '珠子累计',
    how: '每钩完一圈就数一次：最后一列写着到这一圈结束时已钩入多少颗珠子。',
  },

  stringing: {
    round: (f) =>
      f.part
        ? `${lists.round(f.round)}，一部分：${lists.beads(f.beads)}`
        : `${lists.round(f.round)}：${lists.beads(f.beads)}`,
    total: (total) => `累计 ${lists.number(total)}`,
    totalGrams: (f) => `累计 ${lists.number(f.total)} · ${fixed(f.grams, 1)} g`,
    tickOne: '每行从左往右读。一行穿到线上之后，在方框里打勾，每到累计数就数一次。',
    weigh:
      '累计数旁边的克数是到此为止已穿珠子的重量：开始之前先称线，再减去线的重量。秤必须能显示0.1 g；同一瓶里的珠子也有差别，所以以数出的颗数为准。',
    tick: '先从上往下读左栏，再读右栏；每行从左往右。一行穿到线上之后，在方框里打勾，每到累计数就数一次。',
    weight: (f) =>
      `总共${lists.beads(f.beads)}；穿好后不含线约重${fixed(f.grams, 1)} g，长约${fixed(f.metres, 2)} m。钩完这些珠子约需线${fixed(f.threadM, 1)} m，含线尾和备用量。`,
    noWeight: (f) =>
      `总共${lists.beads(f.beads)}，穿好后长约${fixed(f.metres, 2)} m。钩完这些珠子约需线${fixed(f.threadM, 1)} m，含线尾和备用量。`,
    rounds: (f) =>
      f.first === f.last ? `用于第${f.first}圈。` : `用于第${f.first}至${f.last}圈。`,
    first: '本表的第一颗珠子最先穿到线上，最后钩。',
    nothing: '还没有确定珠子，所以没有要穿的。',
  },

  work,

  making,
  enlarged,
  wedgeChart,
  level,
  edition,
  alt,

  last: {
    title: '标题',
    author: '作者',
    date: '本版日期',
    licence: '许可',
    noLicence: '没有注明。把图解传给别人或出售成品之前，请先询问作者。',
    version: '版本',
    versionText: (f) => `用 Rondure ${f.program} 制作，图解格式 ${f.format}`,
    figures: '关于数字',
    figuresText:
      '珠子数量是准确的。克数、线长、尺寸和工具在钩试片之前都是估计值；所说的“通常”是常见做法或凭记忆，没有公开出处。',
    read: '朗读',
    readText:
      '本册中的所有表都是文字，可以搜索、复制和朗读。每种珠子都有一个字母，所以不必靠颜色区分。',
  },
};
