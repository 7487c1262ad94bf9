import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { fixed, short, sizeMm } = numbersIn('ja');

const tenth = (mm: number) => fixed(mm, 1);
const percent = (share: number) => `${short(100 * share, 1)}%`;

/** What stands on the cutting template of a lining. */
export const lining: PageWords['lining'] = {
  title: (f) => (f.panel === undefined ? `内布：${f.title}` : `内布：${f.title}、${f.panel}`),
  size: (f) =>
    `いちばん広い所：裁ち線${tenth(f.cutMm)} mm、縫い線${tenth(f.seamMm)} mm（縫い代は周囲${short(f.allowanceMm, 1)} mm、${f.easeMm === 0 ? 'ゆとりなし' : `パネルより${short(f.easeMm, 1)} mm狭く`}）。`,
  measured: (f) =>
    `測った寸法${tenth(f.measuredMm)} mmのパネルに合わせています（計算では${sizeMm(f.model, 1)} mm）。`,
  estimate: (f) =>
    `推定値：${sizeMm(f.model, 1)} mmは計算で出したパネルの大きさで、定規で測った値ではありません。編み上がったパネルのいちばん広い所を、ビーズの端から端まで測り、違う分だけ大きく、または小さく裁ちます。`,
  cutTwo:
    '2枚裁ちます（パネル1枚に1枚ずつ）。布の裏に、この面を上にして置き、矢印を布目に合わせます。実線：裁つ。破線：縫う。',
  cutOne:
    'このパネル用に1枚裁ちます。もう1枚のパネルには別の型紙があります。布の裏に、この面を上にして置き、矢印を布目に合わせます。実線：裁つ。破線：縫う。',
  sew: (f) =>
    f.gapMm > 0
      ? `中表に合わせ、片方の蝶番の印から底を回ってもう片方の印まで縫います。短い線の印の間は、返し口として${short(f.gapMm, 1)} mm縫い残します。`
      : '中表に合わせ、片方の蝶番の印から底を回ってもう片方の印まで縫います。',
  put: '表に返さず、そのまま、布の裏をパネル側にして中に入れます。こうすると、内側に布の表が見えます。',
  fold: (f) =>
    `蝶番の印より上のあいた縁を、破線に沿って裏側へ${short(f.allowanceMm, 1)} mm折り、折り山を口金に沿ってパネルの縁に縫い付けます。位置は、口金の穴の下、または溝の縁の内側です。`,
  close:
    '返し口をあけた場合は、先に内布とパネルを中表にして口金に沿って縫い合わせます。返し口から表に返し、返し口の縁を内側に折り、細かい針目で手でとじます。',
  hinges: (f) =>
    ({
      asked: `蝶番の印（点）：ご指定どおり、縁の${percent(f.share)}が口金に入ります。`,
      frame: `蝶番の印（点）：編み図の口金に合わせて、縁の${Math.round(100 * f.share)}%が口金に入ります。`,
      usual: `蝶番の印（点）：推定で、縁の${percent(f.share)}が口金に入ります${f.marked ? '（一般的な方法、出典なし）' : ''}。お手持ちの口金の端の位置に印を付けます。`,
    })[f.from],
  spiral: '縁のらせんの段差は省いてあります。輪郭は、段差の半分の高さで閉じた輪です。',
  print:
    '拡大縮小を切り、100%（実寸）で印刷します。2つの正方形を両方とも測り、どちらかが0.5 mmを超えて違うときは裁ちません。',
  caution:
    '注意：まち針と縫い針は、作業の前とあとに数えます。針、はさみ、ビーズは、小さな子どもの手の届かない所に置きます。ほつれる布端を火で止めるのは合成繊維の布だけにし、接着剤の近くでは決して行いません。接着するときは換気します。お住まいの地域や販売先の規則を優先します。',
  sheets: (f) =>
    f.rows * f.columns === 1
      ? '型紙は次の1枚にあります。'
      : `型紙は次の${f.rows * f.columns}枚にあります（縦${f.rows}枚、横${f.columns}枚）。紙どうしは端が重なります。隣り合う2枚の一方を点線で切り、十字が十字に重なるように、もう一方にのせてテープで貼ります。`,
  sheet: (f) =>
    f.rows * f.columns === 1
      ? '型紙'
      : `縦${f.rows}枚中${f.row}枚目、横${f.columns}枚中${f.column}枚目`,
  marks: {
    pieces: (f) => `${f.pieces}枚裁つ`,
    cut: (f) => `裁ち線 ${tenth(f.mm)} mm`,
    seam: (f) => `縫い線 ${tenth(f.mm)} mm`,
    estimate: '推定値',
    grain: '布目',
    top: '上の中央',
    hinge: '蝶番',
    gap: (f) => `返し口 ${short(f.mm, 1)} mm`,
  },
  check: {
    mm: '50 mm',
    inch: '2インチ',
    cm: 'cm',
    in: 'in',
  },
};
