import type { WorktableWords } from '../index.js';

/** The step Purse: both sides in their frame. */
export const purse: WorktableWords['purse'] = {
  step: 'がま口',
  label: '下がった姿のがま口と、横に硬貨と定規',
  back: '裏',
  backHow: 'がま口の下で「裏」を選び、それから「絵」の段階へ。裏の絵は別に置けます。',
  plain: 'または全面を1種類のビーズで',
  frame: '口金',
  width: '幅',
  height: '高さ',
  corner: '角の半径',
  hinges: 'ちょうつがいの間',
  channel: 'みぞの深さ',
  holes: '穴から穴まで',
  bare: 'ビーズなしの段',
  mm: 'mm',
  frameHow: '縁が入る所で測ります。横幅と、ちょうつがいを結ぶ線から上まで。',
  fixing: '取りつけ方',
  fits: (n) => `もう合っています。この口金に${n}段です。`,
  fitNow: ({ before, after }) => `パネルが口金に合いました。段数：${before} → ${after}。`,
  sits: 'おさまり方',
  worn: ({ panel, frame }) => `パネルは幅${panel} mm、口金の幅は${frame} mmです。`,
  inFrame: ({ n, round, bare }) =>
    `口金に入る目：${round}段目の${n}目。その下のビーズなしの段：${bare}。`,
  hingesAt: ({ left, right }) => `ちょうつがいは左が${left}目、右が${right}目の間に来ます。`,
  seam: ({ n, mm }) => `下で縫い合わせる所：${n}目、${mm} mm。`,
  holesHow: ({ spaces, stitches, more }) =>
    `穴の間はおよそ${spaces}か所：それぞれ${stitches}目、そのうち${more}か所は1目多く。`,
  lining: '内布',
  liningHow: ({ cut, seam }) =>
    `布は幅${cut} mmに裁ち、縫い線は${seam} mmです。型紙は冊子にあります。`,
  size: '実物大',
  cardHow: '画面に銀行カードを当て、枠が同じ大きさになるまで引きます。この画面で有効です。',
  cardBox: '銀行カードの大きさ',
  steps: {
    frame: '口金',
    back: 'がま口の裏',
    fit: 'パネルを口金に合わせる',
  },
};
