import type { StitchSpan } from '../english/frame.js';
import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { short } = numbersIn('zh');

/** `第1至30针和第111至140针`. */
export const runsText = (runs: readonly StitchSpan[]): string =>
  runs.length === 0
    ? '无'
    : runs.map(({ from, to }) => (from === to ? `第${from}针` : `第${from}至${to}针`)).join('和');

const kinds = { 'half-round': '半圆形', squared: '方形', oval: '椭圆形' };
const fixings = { sewn: '缝合', glued: '胶粘' };

/** Which stitches lie in the frame. */
export const frame: PageWords['frame'] = {
  kinds,
  // M: 铰链 (hinge)
  paragraph: (f) =>
    `口金（${kinds[f.kind]}，宽${short(f.widthMm, 1)} mm，${fixings[f.fixing]}）：装入口金的是第${f.round}圈的这些针：${runsText(f.runs)}。它们在12点钟方向两侧的长度相同。从珠面看，左边的铰链在第${f.left.inFrame}针和第${f.left.inSeam}针之间，右边的铰链在第${f.right.inFrame}针和第${f.right.inSeam}针之间；再往下是两片之间的缝合。${
      f.bare.length === 0
        ? '没有为口金留空针。'
        : `留作空针、不带珠子钩的是：${f.bare.map(({ round, runs }) => `第${round}圈的${runsText(runs)}`).join('；')}。`
    }`,
  spread: (f) =>
    `每片钩片上，把装入口金的针（${f.stitches}针）沿口金均匀分布，口金从铰链到铰链长${short(f.railMm, 1)} mm${f.holes ? `；孔距按${short(f.holes.spacingMm, 1)} mm算，每两孔之间约${short(f.holes.perSpace, 1)}针，请数一数自己口金的孔` : ''}。${
      Math.abs(f.longerPercent) < 0.05
        ? ''
        : f.longerPercent > 0
          ? `边缘比口金长${short(Math.abs(f.longerPercent), 1)}%：均匀缩缝。`
          : `边缘比口金短${short(Math.abs(f.longerPercent), 1)}%：均匀拉伸。`
    }`,
  word: '口金',
  mark: '两个圆点（铰链）之间的边缘装入口金。',
};
