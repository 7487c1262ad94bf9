import type { WorktableWords } from '../index.js';

/** The step Pages. */
export const pages: WorktableWords['pages'] = {
  step: '页面',
  intro: '钩针旁边需要的一切：图解、穿珠表、购物清单。',
  bookletHow: '可以打印或放在平板上看的PDF。',
  zipHow: '一个zip，含小册子、图解、所有清单和图解文件本身。',
  making: '正在画页面…',
  waiting: '还在选珠子…',
  pages: (n) => `${n}页`,
  pageOf: ({ n, of }) => `第${n}页，共${of}页`,
  how: '怎么打印',
  language: '语言',
  second: '旁边的第二种语言',
  none: '无',
  paper: '纸张',
  papers: {
    a4: 'A4',
    letter: 'Letter',
  },
  author: '作者',
  licence: '买家可以怎么用',
  date: '日期',
  contact: '勘误寄往何处',
  time: '制作需要多久',
  lists: '清单',
  listsHow: '每份都与保存的一样。',
  list: {
    'rounds.txt': '逐圈表',
    'stringing.txt': '穿珠表',
    'shopping.txt': '购物清单',
    'chart.svg': '图解',
  },
  pieces: '几个口金包',
  printHow: '按100%（实际大小）打印。',
  steps: {
    how: '怎么打印',
  },
};
