import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order: '按穿珠表的顺序穿珠：从上往下，每行从左往右。最外面的一圈最先穿。最后穿上的珠子最先钩。',
  reading:
    '读法：3A 表示三颗珠子A。圆括号后面有 x 3 的部分穿3次。每一圈都注明这一圈的珠子数，以及穿完这一行时线上的珠子总数：每穿完一行就数一次。',
  bare: '空针不用珠子，所以不在穿珠表里。',
  onBall: '把线团的线头穿入串珠针来穿珠，这一段钩完之前不剪线。',
  stop: (f) =>
    `钩到第${f.round}圈的${f.atRoundEnd ? '最后一针' : `第${f.stitch}针`}，在最后一次钩出线之前停下。用记号扣固定钩针上的线圈，留${f.tailCm} cm剪断线，穿第${f.next}段的珠子，在这一针接上，大约在珠面的${f.hour}点钟方向。`,
};
