import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, sizeMm } = numbersIn('zh');

/** Before the work begins: swatch, hand, how to read, signs. */
export const before: PageWords['booklet']['before'] = {
  swatch: '先钩一块试片',
  swatchText: (f) =>
    `用您自己的珠子、线和钩针，以一种颜色钩${f.wedges}个分区、10圈。需要${count(f.beads)}颗珠子；起针、一针怎样钩、怎样加针，见本部分的图。钩好后放平。本图解按每针宽${fixed(f.widthMm, 2)} mm、每圈高${fixed(f.heightMm, 2)} mm计算：5圈之后试片直径约${sizeMm(f.five, 0)} mm，10圈之后约${sizeMm(f.ten, 0)} mm。如果您的试片偏大，换细一些的钩针；偏小，换粗一些的。如果试片拱成碗形，说明针的宽度相对于高度太窄；如果边缘起波浪，说明太宽。`,
  hand: '用哪只手，哪一面',
  start: '怎样开始，怎样往下钩',
  read: '怎样读逐圈表',
  string: '怎样穿珠',
  signs: '符号和缩写',
  sign: '符号',
  meaning: '含义',
  table: (second) => [
    ['R7', '第7圈，从中心数起'],
    ['A, B', '珠子：字母与材料表和图解中的相同'],
    ['3A', '三针，每针带一颗珠子A；在穿珠表中是三颗珠子A'],
    [`[A ${second}]`, '在下方的同一针里钩两针：加针'],
    ['( ) x 7', '括号里的内容，7次'],
    ['空', '不带珠子的一针'],
    // X is the usual sign of the stitch; it must not be taken for the x of "x 7".
    ['X', '短针（不是表示次数的 x）'],
  ],
  smallChart: (f) =>
    `图解的针数很多，在这种纸上字母很小。请在屏幕上放大来读，或者请人把那一页打印在${f.paper}纸上。逐圈表用文字写明同样的内容。`,
};
