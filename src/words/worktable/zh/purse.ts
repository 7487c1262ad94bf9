import type { WorktableWords } from '../index.js';

/** The step Purse: both sides in their frame. */
export const purse: WorktableWords['purse'] = {
  step: '零钱包',
  label: '挂着的零钱包，旁边有硬币和尺子',
  back: '背面',
  backHow: '在零钱包下面选“背面”，再到“图片”一步：背面的图片单独摆放。',
  plain: '或者整面一种珠子',
  frame: '口金',
  width: '宽度',
  height: '高度',
  corner: '圆角半径',
  hinges: '合页之间',
  channel: '槽深',
  holes: '孔到孔',
  bare: '无珠的圈',
  mm: 'mm',
  frameHow: '在边缘要放的地方量：横向，以及从合页连线到顶端。',
  fixing: '怎样固定',
  sits: '放得怎样',
  worn: ({ panel, frame }) => `钩片宽${panel} mm，口金宽${frame} mm。`,
  inFrame: ({ n, round, bare }) => `口金里：第${round}圈的${n}针。下面无珠的圈：${bare}。`,
  hingesAt: ({ left, right }) => `合页在左边${left}针之间、右边${right}针之间。`,
  seam: ({ n, mm }) => `下面缝合：${n}针，${mm} mm。`,
  holesHow: ({ spaces, stitches, more }) =>
    `孔间约${spaces}处：每处${stitches}针，其中${more}处多一针。`,
  lining: '里布',
  liningHow: ({ cut, seam }) => `布裁成宽${cut} mm；缝线在${seam} mm处。样板在册子里。`,
  size: '实际大小',
  cardHow: '把银行卡贴在屏幕上，拉动到方框一样大。只对这个屏幕有效。',
  cardBox: '和银行卡一样大',
  steps: {
    frame: '口金',
    back: '零钱包背面',
    fit: '让钩片合口金',
  },
};
