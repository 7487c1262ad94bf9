import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { fixed, short, sizeMm } = numbersIn('zh');

const tenth = (mm: number) => fixed(mm, 1);
const percent = (share: number) => `${short(100 * share, 1)}%`;

/** What stands on the cutting template of a lining. */
export const lining: PageWords['lining'] = {
  title: (f) => (f.panel === undefined ? `里布：${f.title}` : `里布：${f.title}，${f.panel}`),
  size: (f) =>
    `最宽处：裁剪线${tenth(f.cutMm)} mm，缝合线${tenth(f.seamMm)} mm（四周缝份${short(f.allowanceMm, 1)} mm，${f.easeMm === 0 ? '无松量' : `比钩片窄${short(f.easeMm, 1)} mm`}）。`,
  measured: (f) =>
    `按您量得的${tenth(f.measuredMm)} mm的钩片制作（计算值为${sizeMm(f.model, 1)} mm）。`,
  estimate: (f) =>
    `估计值：${sizeMm(f.model, 1)} mm是计算得出的钩片尺寸，不是用尺量的。请量钩好的钩片的最宽处，从珠子边缘量到珠子边缘，相差多少就裁大或裁小多少。`,
  cutTwo: '裁2片（每片钩片一片）：这一面朝上放在布的反面，箭头顺着布纹。实线：裁剪。虚线：缝合。',
  cutOne:
    '为这片钩片裁1片；另一片钩片有自己的纸样。这一面朝上放在布的反面，箭头顺着布纹。实线：裁剪。虚线：缝合。',
  sew: (f) =>
    f.gapMm > 0
      ? `正面相对，从一个铰链记号绕过底部缝到另一个，在两条短线之间留${short(f.gapMm, 1)} mm不缝，作为返口。`
      : '正面相对，从一个铰链记号绕过底部缝到另一个。',
  put: '不用翻面：照原样放进包里，布的反面贴着钩片，这样里面露出的是布的正面。',
  fold: (f) =>
    `把铰链记号以上的开口边沿虚线向反面折${short(f.allowanceMm, 1)} mm，再把折边沿着口金缝在钩片的边缘上，位置在孔的下方，或在槽的边缘内侧。`,
  close:
    '如果留了返口，先把里布和钩片正面相对，沿口金缝合；从返口翻到正面，把返口的边向里折，用细密的针脚手工缝合。',
  hinges: (f) =>
    ({
      asked: `铰链记号（圆点）：按您的要求，边缘的${percent(f.share)}装入口金。`,
      frame: `铰链记号（圆点）：按图解的口金，边缘的${Math.round(100 * f.share)}%装入口金。`,
      usual: `铰链记号（圆点）：估计边缘的${percent(f.share)}装入口金${f.marked ? '（常见做法，无出处）' : ''}：请按您的口金末端的位置做记号。`,
    })[f.from],
  spiral: '边缘上螺旋的台阶略去不画：轮廓是位于台阶一半高度的闭合圆。',
  print: '按100%（实际大小）打印，关闭缩放。量一量两个正方形：有一个误差超过0.5 mm，就不要裁剪。',
  caution:
    '注意：珠针和缝针在使用前后都要清点，并且和剪刀、珠子一起放在幼儿够不到的地方。只有合成纤维布的毛边才可以用火封边，绝不要靠近胶水；上胶时要通风。以居住地或销售地的规定为准。',
  sheets: (f) =>
    f.rows * f.columns === 1
      ? '纸样在下一张纸上。'
      : `纸样在后面的${f.rows * f.columns}张纸上，高${f.rows}张，宽${f.columns}张。相邻的纸有重叠：把其中一张沿点线剪开，放在另一张上，十字对准十字，用胶带粘好。`,
  sheet: (f) =>
    f.rows * f.columns === 1
      ? '纸样'
      : `第${f.row}行（共${f.rows}行），第${f.column}列（共${f.columns}列）`,
  marks: {
    pieces: (f) => `裁${f.pieces}片`,
    cut: (f) => `裁剪线 ${tenth(f.mm)} mm`,
    seam: (f) => `缝合线 ${tenth(f.mm)} mm`,
    estimate: '估计值',
    grain: '布纹',
    top: '上方正中',
    hinge: '铰链',
    gap: (f) => `留${short(f.mm, 1)} mm不缝`,
  },
  check: {
    mm: '50 mm',
    inch: '2英寸',
    cm: 'cm',
    in: 'in',
  },
};
