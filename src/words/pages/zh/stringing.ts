import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order: '按本表的顺序穿珠：从上往下，每行从左往右。最外面的一圈最先穿。最后穿上的珠子最先钩。',
  reading:
    '读法：3A 表示三颗珠子A。圆括号后面有 x 3 的部分穿3次。行首写着这一圈的珠子数，以及穿完这一行时线上的珠子总数：每穿完一行就数一次。',
  bare: '空针不用珠子，所以不在本表里。',
  join: (f) =>
    f.atRoundEnd
      ? `在第${f.round}圈开始处接线，大约在珠面的${f.hour}点钟方向。`
      : `在第${f.round}圈第${f.stitch}针之前接线，大约在珠面的${f.hour}点钟方向。`,
};
