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
    `${f.name ?? `钩编线（颜色与珠子相配${f.mostMm === undefined ? '' : `，最粗${short(f.mostMm, 2)} mm`}）`}：${metres(f.mm)}${f.grams === undefined ? '' : `，约${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} g`}`,
  threadSum: (f) =>
    `${count(f.stitches)}针，每针${short(f.perStitchMm, 1)} mm，用线${tenths(f.netMm / 1000)} m；${f.reservePercent === 0 ? '' : `备用量${short(f.reservePercent, 1)}%，加${tenths(f.reserveMm / 1000)} m；`}${count(f.tails)}段线尾，每段${short(f.tailMm / 10, 1)} cm，加${tenths(f.tailsMm / 1000)} m。`,
  lengths: (f) => `穿好的珠子占其中${fixed(f.strungMm / 1000, 2)} m，共${count(f.lengths)}段线。`,
  thickness: (f) =>
    `珠子（${f.size}）的孔通常为${short(f.holeMm, 2)} mm，能穿过最粗${short(f.singleMostMm, 2)} mm的线；线在针眼处对折时，最粗${short(f.doubledMostMm, 2)} mm（约${short(f.doubledMostTex, 0)} tex，1 g约${short(1000 / f.doubledMostTex, 0)} m）。`,
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
  sewingNeedle: (f) =>
    f.panels === 2 ? '缝针和珠针，用于缝合、口金和里布' : '缝针和珠针，用于藏线头和里布',
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
    `里布，${f.widthCm} x ${f.heightCm} cm（用宽${f.clothWidthCm} cm的布，比裁片多2 cm）：${count(f.pieces)}片，每片${f.pieceWidthCm} x ${f.pieceHeightCm} cm，含缝份${short(f.allowanceMm, 1)} mm`,
  crochetInstead: (f) =>
    `里布也可以用钩针钩：同样的两片钩片再钩一次，不加珠子，约需线${metres(f.mm)}。像钩片一样缝合，放进包里，再把边沿着口金缝在包的边缘上。`,
  crochetedLining: (f) => `钩编里布用，不加珠子的钩片${count(f.pieces)}片：线${metres(f.mm)}`,
  frameThread: (f) => `缝口金用的透明尼龙线：${metres(f.mm)}`,
  spools: (f) =>
    `${short(f.metres, 1)} m的线团或线轴${count(f.spools)}个${f.cost === undefined ? '' : `，共${fixed(f.cost, 2)}`}`,
  ownHook: (f) => `钩针，${short(f.mm, 2)} mm：本图解使用的钩针`,
  marker: '标记每圈起点的别色线一小段：每钩一圈往上移一次',
  mat: '珠子垫，以及标记当前行的便利贴',
  pencil: '画里布用的软铅笔或划粉',
  seal: '打火机（只用于合成纤维线头）或防脱线液',
  glue: '固定线结和线头的透明布用胶',
  liningThread: '与里布同色的缝线',
  scissors: '剪线和剪布用的锋利小剪刀',
  samples: '编号不是商店的货号，而是我们自己的样色：请按颜色和表面效果购买。',
  braid: (f) => `遮盖口金内侧缝线的织带（可选）：${cm(f.mm)}`,
  care: [
    '每颗珠子都是小零件，三岁以下儿童可能因此窒息：珠子、针、剪刀和做好的口金包都要放在幼儿够不到的地方。口金包不是玩具。',
    '夹碎钩错的珠子时：戴护目镜，用布盖住珠子。缝针和钩针在使用前后都要清点。',
    '只有合成纤维线头才可以用热封口，绝不要靠近溶剂型胶水；上胶时要通风。',
    '金属口金可能含镍。每半小时让眼睛和手休息一下；感到疼痛就停下。',
    '以上是一般注意事项，不是法律意见：如果出售，请查阅您和买家所在地的规定。',
  ],
};
