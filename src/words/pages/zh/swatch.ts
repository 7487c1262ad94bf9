import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, short } = numbersIn('zh');

/** What stands on the guide to a swatch. */
export const swatch: PageWords['swatch'] = {
  guide: {
    title: '量一量自己的针',
    describe: '怎样钩试片、怎样量，附放试片用的转角量盘；按100%打印。',
    intro:
      '每双手钩出的针都不一样。钩一小块试片，就知道自己的针有多高、多宽、偏多少，让图解和成品尺寸合自己的手。',
    steps: (f) => [
      {
        head: '钩。',
        text: `在线团的线上穿${count(f.beads)}颗同色的珠子（${f.size}），用钩包的线和钩针钩${f.wedges}个分区、${f.rounds}圈，每针一颗珠子（最后一张纸说明针怎样钩），在每个分区的${{ first: '第一', middle: '中间一', last: '最后一' }[f.increase]}针加针，${f.construction === 'spiral' ? '螺旋钩' : '每圈闭合'}，${f.hand === 'right' ? '右手' : '左手'}拿钩针。钩完第${f.fromRound}圈，在离钩针1 m处的线上做记号。`,
      },
      {
        head: '做记号。',
        text: `在第${f.fromRound}圈和第${f.toRound}圈，用显眼的线在分区${f.markedWedge}的第一针${f.markedWedge === 1 ? '（这一圈的第一针）' : ''}上套一个小圈。`,
      },
      {
        head: '看。',
        text: '打湿，用手抚平，晾干。平吗？如果像碗一样拱起，或边缘起波浪，就写下来，并跳过第4步。',
      },
      { head: '宽。', text: '最宽处，量到珠子外缘，用卡尺，或夹在两块直立的木块之间量。' },
      {
        head: '沿边缘。',
        text: `在分区${f.rimWedge}的中间，沿最后一圈珠子的中心放50 mm长的线，从珠子中心到珠子中心数针数。半针也算。`,
      },
      {
        head: '转角。',
        text: `珠子朝上放在量盘上，孔对准十字，第${f.fromRound}圈做记号的针对准0线。把尺子从十字放到第${f.toRound}圈做记号的针上：读出度数，以及是顺着还是逆着钩编方向。`,
      },
      { head: '线。', text: `从第${f.fromRound}圈结束，到记号来到钩针处，这1 m线钩了多少针？` },
      { head: '珠子。', text: '穿50颗珠子，推紧，量这一排的长度。' },
    ],
    write: '写下来',
    blanks: (f) => [
      '平、碗形或波浪',
      '宽，mm',
      '50 mm边缘上的针数',
      `转角，第${f.fromRound}至${f.toRound}圈，度`,
      '顺着还是逆着方向',
      '1 m线的针数',
      '50颗珠子，mm',
      '针法1至3（最后一张）',
    ],
    then: '然后把这些数字和第1步的做法一起，填到制作图解的程序里：“钩片”的“我的针”。',
    stitchTitle: '针法',
    stitchIntro:
      '选钩包时要用的那一种，不要换：线、钩针、钩在哪根线下和手，决定尺寸。一种针法的试片说明不了别的针法。把它的编号写在第一张纸上。',
    ways: {
      'both-loops': '短针，钩在两根线之下',
      'bead-side-loop': '同样的针，只钩在珠子那一侧的一根线之下',
      slip: '引拔针',
    },
    gaugeTitle: '转角量盘',
    gaugeAlt:
      '圆形的度数盘，上方是0，下方是180，分顺着和逆着钩编方向；中间有圈和分区，用来放试片。',
    round: (r) => `第${r}圈`,
    lean: (lean) => `偏移${short(lean, 2)}`,
    with: '顺着钩编方向',
    against: '逆着钩编方向',
    scale: '按100%（实际大小）打印，关闭缩放。量一量正方形：误差超过半毫米，就不缩放再打印一次。',
    read: `灰色：通常的针的圈和分区，用来把试片放在正中。刻度之外：偏移为0、${short(0.25, 2)}和${short(0.5, 1)}针时，做记号的针所在的位置。`,
  },
};
