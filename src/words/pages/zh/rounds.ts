import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { hands } from './hands.js';

const { short } = numbersIn('zh');

const clockwise = (is: boolean): string => (is ? '顺时针' : '逆时针');

/** How to work a panel, and what a line of its list of rounds means. */
export const rounds: PageWords['rounds'] = {
  begin: (f) =>
    `起针：做一个环形起针，或钩3至4针锁针，用引拔针连成环；再钩一针锁针。锁针和引拔针不带珠子，也不计数（常见做法，无出处）。在环里钩第1圈的${f.wedges}针，每针各带一颗珠子。环形起针要拉紧，中心会留下一个小孔。留${f.tailCm} cm线尾，以后藏线用。`,
  stitch: (f) =>
    `针法：${f.way === 'slip' ? '引拔针' : '短针'}，每针带一颗珠子。${f.drawn ? '' : hands[f.way === 'slip' ? 'slip-stitch' : 'stitch'].steps(f).join('')}${
      f.lean === 0.5
        ? `这样，每针通常比下面一针朝钩编的反方向偏约半针（偏移${short(0.5, 2)}针）。因为针目顶部的两根线不在针目正上方，从中心到边缘的针目线是斜的；图解已把它算在内。`
        : `本图解按偏移${short(f.lean, 3)}针计算：偏移就是每针比下面一针朝钩编的反方向偏多少。`
    }${
      f.measured
        ? '这是在试片上量出的数值：请用同样的钩针、线和珠子。'
        : '各人手法不同：开始之前，请先在试片上量出偏移。'
    }钩的过程中绝不翻面。`,
  direction: (f) =>
    `逐圈表适用于${f.hand === 'right' ? '右手' : '左手'}钩、珠子${
      f.beadsFace === 'away' ? '背向钩编者' : '朝向钩编者'
    }的情况。在珠面上（图解画的就是这一面，也是口金包的外面），钩编方向是${clockwise(f.clockwise)}。${
      f.beadsFace === 'away'
        ? `钩的时候看到的是另一面，那一面上的方向是${clockwise(!f.clockwise)}。`
        : '钩的时候看到的也是这一面。'
    }换另一只手钩，钩片会成为左右相反的镜像。`,
  marker: '记号：在每圈的第一针挂一个记号扣，每圈开始时往上移。',
  increases: (example) =>
    `加针：方括号里的两个字母 ${example} 表示在上一圈的同一针里钩两针，按书写的先后顺序钩。从第2圈起，每圈的每个分区里都有一处。`,
  reading:
    '读法：3A 表示三针，每针带一颗珠子A。圆括号后面有 x 3 的部分钩3次。每一圈都注明这一圈的针数和珠子数，以及到这一圈结束时已钩入的珠子总数：每钩完一圈就数一次。',
  bare: '2 空 表示两针不带珠子。',
  spiral: '各圈螺旋相连，不闭合。',
  joined:
    '每圈结束时，在本圈第一针上钩引拔针闭合，再钩一针锁针作为立针。下一圈的第一针就钩在这同一个第一针里。引拔针和立针的锁针不带珠子，也不计数。',
  end: {
    spiral: (f) =>
      `最后一圈的最后一针之后，钩两三针引拔针，使台阶平顺；这些引拔针不带珠子，也不计数。留${f.tailCm} cm剪断线，把线从最后一个线圈中拉出。`,
    joined: (f) => `最后留${f.tailCm} cm剪断线，把线从最后一个线圈中拉出。`,
  },
};
