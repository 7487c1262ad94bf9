import type { PageWords } from '../index.js';
import { amountsIn } from '../amounts.js';
import { numbersIn } from '../numbers.js';
import { frame } from './frame.js';

const { count, fixed, short } = numbersIn('zh');

const { tenths, metres, cm } = amountsIn('zh');
const range = (f: readonly [number, number], digits: number): string =>
  `${short(f[0], digits)}至${short(f[1], digits)}`;

/** Things to have for a purse: thread, tools, frame, lining, and the usual cautions. */
export const shopping: PageWords['shopping'] = {
  beadReserveSaid: (f) =>
    f.percent === 0
      ? '没有备用量：破损和不规整的珠子没有计入。'
      : `备用量为${short(f.percent, 2)}%，每种至少30颗${f.batch ? '，所有口金包合在一起计算一次' : ''}。`,
  noBeads: '还没有确定珠子。',
  crochetThread: (f) =>
    `${f.name ?? '钩编线'}：${metres(f.mm)}${f.grams === undefined ? '' : `，约${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} g`}`,
  threadSum: (f) =>
    `${count(f.stitches)}针，每针${short(f.perStitchMm, 1)} mm，用线${tenths(f.netMm / 1000)} m；${f.reservePercent === 0 ? '' : `备用量${short(f.reservePercent, 1)}%，加${tenths(f.reserveMm / 1000)} m；`}${count(f.tails)}段线尾，每段${short(f.tailMm / 10, 1)} cm，加${tenths(f.tailsMm / 1000)} m。`,
  lengths: (f) => `穿好的珠子占其中${fixed(f.strungMm / 1000, 2)} m，共${count(f.lengths)}段线。`,
  thickness: (f) =>
    `珠子（${f.size}）的孔通常为${short(f.holeMm, 2)} mm，能穿过最粗${short(f.singleMostMm, 2)} mm的线；线在针眼处对折时，最粗${short(f.doubledMostMm, 2)} mm（约${short(f.doubledMostTex, 0)} tex）。`,
  thicknessGiven: (f) => {
    const start = `您的线粗${short(f.diameterMm, 2)} mm，珠子（${f.size}）的孔通常为${short(f.holeMm, 2)} mm：`;
    if (!f.single) return `${start}线太粗！请用更细的线或更大的珠子。`;
    return f.doubled
      ? `${start}能穿过，在针眼处对折也能穿过。`
      : `${start}单股能穿过，在针眼处对折则不能。请把线头弄硬后穿珠，或用细线做一个圈来引线。`;
  },
  sewingThread: (f) => `结实的缝线，尼龙或涤纶，70至135 tex，或2至6股：${metres(f.mm)}`,
  cord: (f) => `粘口金的胶水，以及塞口金槽的纸绳：${cm(f.mm)}`,
  hook: (f) =>
    f.range === undefined
      ? '钩针：由试片决定'
      : `钩针，${range(f.range, 2)} mm，用于${f.size ?? '这些珠子'}：由试片决定`,
  needle: (f) =>
    f.range === undefined
      ? '串珠针，能穿过您的珠子'
      : `串珠针，粗${range(f.range, 2)} mm：必须能穿过每颗珠子`,
  sewingNeedle: (f) => (f.panels === 2 ? '缝针，用于缝合、口金和里布' : '缝针，用于藏线头和里布'),
  frame: (f) => {
    const kind = f.kind === undefined ? '' : `，${frame.kinds[f.kind]}`;
    const fixing = { sewn: '，缝合式', glued: '，胶粘式' };
    const wide =
      f.range === undefined
        ? `宽${short(f.widthMm, 1)} mm`
        : `宽约${short(f.widthMm, 0)} mm（${range(f.range, 0)} mm可用）`;
    return `口金${count(f.pieces)}个${kind}${f.fixing ? fixing[f.fixing] : ''}，${wide}`;
  },
  lining: (f) =>
    `里布，${f.widthCm} x ${f.heightCm} cm：${count(f.pieces)}片，每片${f.pieceWidthCm} x ${f.pieceHeightCm} cm，含缝份${short(f.allowanceMm, 1)} mm`,
  braid: (f) => `遮盖口金内侧缝线的织带（可选）：${cm(f.mm)}`,
  care: [
    '每颗珠子都是小零件，三岁以下儿童可能因此窒息：珠子、针和做好的口金包都要放在幼儿够不到的地方。口金包不是玩具。',
    '夹碎钩错的珠子时：戴护目镜，用布盖住珠子。缝针和钩针在使用前后都要清点。',
    '只有化纤线头才可以用热封口，绝不要靠近溶剂型胶水；上胶时要通风。',
    '金属口金可能含镍。每半小时让眼睛和手休息一下；感到疼痛就停下。',
    '以上是一般注意事项，不是法律意见：如果出售，请查阅您和买家所在地的规定。',
  ],
};
