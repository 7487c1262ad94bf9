import type { StitchSpan } from '../english/frame.js';
import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { short } = numbersIn('ja');

/** `1〜30目めと111〜140目め`. */
export const runsText = (runs: readonly StitchSpan[]): string =>
  runs.length === 0
    ? 'なし'
    : runs.map(({ from, to }) => (from === to ? `${from}目め` : `${from}〜${to}目め`)).join('と');

const kinds = { 'half-round': '半円形', squared: '角形', oval: '楕円形' };
const fixings = { sewn: '縫い付け', glued: '接着' };

/** Which stitches lie in the frame. */
export const frame: PageWords['frame'] = {
  kinds,
  // M: 蝶番 (hinge)
  paragraph: (f) =>
    `口金（${kinds[f.kind]}、幅${short(f.widthMm, 1)} mm、${fixings[f.fixing]}）：口金に入るのは、${f.round}段目のこれらの目です：${runsText(f.runs)}。12時の位置から左右に同じ長さです。ビーズ面で見て、左の蝶番は${f.left.inFrame}目めと${f.left.inSeam}目めの間、右の蝶番は${f.right.inFrame}目めと${f.right.inSeam}目めの間に来ます。その下は、パネルどうしの縫い目です。${
      f.bare.length === 0
        ? '口金のためにビーズなしで編む目はありません。'
        : `これらの目は、ビーズを入れずに編みます：${f.bare.map(({ round, runs }) => `${round}段目の${runsText(runs)}`).join('、')}。`
    }`,
  spread: (f) =>
    `どちらのパネルも、口金に入る目（${f.stitches}目）を口金の長さ（蝶番から蝶番まで${short(f.railMm, 1)} mm）に均等に割り振ります${f.holes ? `。穴の間隔が${short(f.holes.spacingMm, 1)} mmなら、1間隔に約${short(f.holes.perSpace, 1)}目です。お手持ちの口金の穴を数えます` : ''}。${
      Math.abs(f.longerPercent) < 0.05
        ? ''
        : f.longerPercent > 0
          ? `縁は口金より${short(Math.abs(f.longerPercent), 1)}%長いので、均等にいせ込みます。`
          : `縁は口金より${short(Math.abs(f.longerPercent), 1)}%短いので、均等に伸ばします。`
    }`,
  word: '口金',
  mark: '2つの点（蝶番）の間の縁が口金に入ります。',
};
