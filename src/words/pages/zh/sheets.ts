import type { PageWords } from '../index.js';

type Booklet = PageWords['booklet'];

/** An enlarged chart on several sheets. */
export const enlarged: Booklet['enlarged'] = {
  part: '放大图解',
  sheet: (f) => `第${f.sheet}张，共${f.sheets}张`,
  how: '小图标明这一张所在的位置。点线以外的部分在相邻的那一张上也有；三角形标明那一张的号码。字母的图例在整张图解上，也在材料页上。',
};

/** One wedge, where all are alike. */
export const wedgeChart: Booklet['wedgeChart'] = {
  part: '分区图解',
  alike: (f) => `${f.wedges}个分区全部相同，这是其中一个：每一行在它所属的圈里钩${f.wedges}次。`,
  how: (f) =>
    f.direction === 1
      ? '珠面，边缘朝上。第1行是尖端，位于钩片中心。每一行都从左向右读。两针上的黑色三角形指向下方的一针，这两针都钩在那一针里。'
      : '珠面，边缘朝上。第1行是尖端，位于钩片中心。每一行都从右向左读。两针上的黑色三角形指向下方的一针，这两针都钩在那一针里。',
};

/** How demanding the project is (not the person who works it). */
export const level: Booklet['level'] = {
  title: '作品难度',
  intermediate: '中等：各圈有重复；细线，细钩针',
  complex: '复杂：一幅图案，须逐颗珠子照图钩；细线，细钩针',
};
