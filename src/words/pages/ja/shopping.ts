import type { PageWords } from '../index.js';
import { amountsIn } from '../amounts.js';
import { numbersIn } from '../numbers.js';
import { frame } from './frame.js';

const { count, fixed, short } = numbersIn('ja');

const { tenths, metres, cm } = amountsIn('ja');
const range = (f: readonly [number, number], digits: number): string =>
  `${short(f[0], digits)}〜${short(f[1], digits)}`;

/** Steel hooks for lace are called so up to 1.75 mm (number 0), the thicker ones by the general word. */
const hook = (mostMm: number): string => (mostMm <= 1.75 ? 'レース針' : 'かぎ針');

/** Things to have for a purse: thread, tools, frame, lining, and the usual cautions. */
export const shopping: PageWords['shopping'] = {
  beadReserveSaid: (f) =>
    f.percent === 0
      ? '予備なし：割れたビーズや形の悪いビーズの分は入っていません。'
      : `予備は${short(f.percent, 2)}%で、どのビーズも30個以上です${f.batch ? '（がま口全部の分をまとめて1回で計算）' : ''}。`,
  noBeads: 'ビーズはまだ決まっていません。',
  crochetThread: (f) =>
    `${f.name ?? `レース糸（ビーズに合う色${f.mostMm === undefined ? '' : `、太さ${short(f.mostMm, 2)} mmまで`}）`}：${metres(f.mm)}${f.grams === undefined ? '' : `、約${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} g`}`,
  threadSum: (f) =>
    `1目${short(f.perStitchMm, 1)} mmで${count(f.stitches)}目に${tenths(f.netMm / 1000)} m。${f.reservePercent === 0 ? '' : `予備${short(f.reservePercent, 1)}%で${tenths(f.reserveMm / 1000)} m増、`}糸端${short(f.tailMm / 10, 1)} cmが${count(f.tails)}本で${tenths(f.tailsMm / 1000)} m増。`,
  lengths: (f) =>
    `ビーズは、通すとそのうち${fixed(f.strungMm / 1000, 2)} mを占めます（糸${count(f.lengths)}本）。`,
  thickness: (f) =>
    `${f.size}のビーズの穴（ふつう${short(f.holeMm, 2)} mm）に通る糸は太さ${short(f.singleMostMm, 2)} mmまで、針穴で折り返して二重で通すなら${short(f.doubledMostMm, 2)} mmまで（約${short(f.doubledMostTex, 0)} tex、1 gで約${short(1000 / f.doubledMostTex, 0)} m）です。`,
  thicknessGiven: (f) => {
    const start = `お手持ちの糸の太さは${short(f.diameterMm, 2)} mm、${f.size}のビーズの穴はふつう${short(f.holeMm, 2)} mmです：`;
    if (!f.single) return `${start}糸が太すぎます！もっと細い糸か、もっと大きいビーズにします。`;
    return f.doubled
      ? `${start}通ります。針穴で折り返して二重にしても通ります。`
      : `${start}一重なら通りますが、針穴で折り返した二重では通りません。糸の端を固めて通すか、細い糸の輪に引っかけて通します。`;
  },
  sewingThread: (f) =>
    `丈夫な縫い糸（ナイロンまたはポリエステル、70〜135 texまたは2〜6本より）：${metres(f.mm)}`,
  cord: (f) => `口金用の接着剤と、溝に詰める紙ひも：${cm(f.mm)}`,
  hook: (f) =>
    f.range === undefined
      ? 'レース針：試し編みに合うもの'
      : `${hook(f.range[1])} ${range(f.range, 2)} mm（${f.size ?? 'このビーズ'}の場合）：試し編みで決めます`,
  needle: (f) =>
    f.range === undefined
      ? 'ビーズ針：お手持ちのビーズに通るもの'
      : `ビーズ針 太さ${range(f.range, 2)} mm：すべてのビーズに通ること`,
  sewingNeedle: (f) =>
    f.panels === 2
      ? '縫い針とまち針（縫い合わせ、口金、内布用）'
      : '縫い針とまち針（糸端の始末と内布用）',
  frame: (f) => {
    const kind = f.kind === undefined ? '' : `、${frame.kinds[f.kind]}`;
    const fixing = { sewn: '、縫い付けるもの', glued: '、接着するもの' };
    const wide =
      f.range === undefined
        ? `幅${short(f.widthMm, 1)} mm`
        : `幅 約${short(f.widthMm, 0)} mm（${range(f.range, 0)} mmなら使えます）`;
    return `がま口の口金${count(f.pieces)}個${kind}${f.fixing ? fixing[f.fixing] : ''}、${wide}`;
  },
  lining: (f) =>
    `内布 ${f.widthCm} x ${f.heightCm} cm（幅${f.clothWidthCm} cmの布から、裁ち寸法より2 cm多く）：${f.pieceWidthCm} x ${f.pieceHeightCm} cmを${count(f.pieces)}枚（縫い代${short(f.allowanceMm, 1)} mmを含む）`,
  crochetInstead: (f) =>
    `内布の代わりに、かぎ針で編むこともできます。同じパネル2枚を、ビーズを入れずにもう一度編みます（糸は約${metres(f.mm)}）。パネルと同じように縫い合わせて中に入れ、縁を口金に沿ってがま口の縁に縫い付けます。`,
  crochetedLining: (f) => `編む内布用、ビーズなしのパネル${count(f.pieces)}枚：糸${metres(f.mm)}`,
  frameThread: (f) => `口金を縫い付ける透明ナイロン糸：${metres(f.mm)}`,
  spools: (f) =>
    `1玉（1巻）${short(f.metres, 1)} mを${count(f.spools)}個${f.cost === undefined ? '' : `、合計${fixed(f.cost, 2)}`}`,
  ownHook: (f) => `${hook(f.mm)} ${short(f.mm, 2)} mm：この編み図の針`,
  marker: '段の始めの印にする別の色の糸：1段ごとに上へ移します',
  mat: 'ビーズマットと、今の行に印を付けるふせん',
  pencil: '内布用のやわらかい鉛筆またはチャコ',
  seal: 'ライター（合成繊維の糸端だけ）またはほつれ止め液',
  glue: '結び目と糸端用の透明な布用接着剤',
  liningThread: '内布の色の縫い糸',
  scissors: '糸と布を切る小さなよく切れるはさみ',
  samples: 'コードは店の番号ではなく、当方の見本色です。色と仕上げを見て選んでください。',
  braid: (f) => `口金の内側の縫い目を隠すブレード（好みで）：${cm(f.mm)}`,
  care: [
    'ビーズは小さな部品で、3歳未満の子どもがのどに詰まらせるおそれがあります。ビーズ、針、はさみ、でき上がったがま口は、小さな子どもの手の届かない所に置きます。がま口はおもちゃではありません。',
    '間違えたビーズを割るとき：保護めがねをかけ、ビーズに布をかぶせます。縫い針とかぎ針は、作業の前とあとに数えます。',
    '糸端を熱で止めるのは合成繊維だけにし、溶剤系の接着剤の近くでは決して行いません。接着するときは換気します。',
    '金属の口金にはニッケルが含まれていることがあります。30分ごとに目と手を休め、痛みがあればやめます。',
    '以上は一般的な注意で、法律上の助言ではありません。販売するときは、ご自身と買い手の住む所の規則を調べます。',
  ],
};
