import type { Pair } from '../english/sewing.js';
import type { PageWords } from '../index.js';
import { runsText } from './frame.js';

/** How the two panels of a purse are sewn together, by count. */
export const sewing: PageWords['sewing'] = {
  lay: (f) =>
    `パネル「${f.back}」をビーズ面を下にして置き、その上にパネル「${f.front}」をビーズ面を上にして重ねます。絵柄は2枚とも上下を正しく置き、ビーズが両方の外側に来るようにします。2枚とも同じ手で編んであります。「${f.front}」の側から見ると、「${f.back}」の段は逆回りです。`,
  count: (f) =>
    `縁は目を数えて縫い合わせます。最終段の${f.round}段目は、どちらのパネルも${f.stitches}目です。両方のパネルの最終段の最初の目に印を付け、そこから編んだ方向に数えます。`,
  meet: (f) =>
    `「${f.front}」の1目めと「${f.back}」の${f.stitches}目め、「${f.front}」の2目めと「${f.back}」の${f.stitches - 1}目めが合い、以下同じように続きます。2つの番号を足すと、いつも${f.stitches + 1}です。`,
  meetShifted: (f) =>
    `「${f.front}」の${f.stitch}目めと「${f.back}」の${f.meets}目めが合います。そこから「${f.front}」は番号を増やす方へ、「${f.back}」は番号を減らす方へ数えます。`,
  spiral:
    'らせん編みでは、最終段の終わりが始めより1段外側にあり、2枚のパネルの段差は逆の方向に上がります。そのため、縁どうしは最大で1段分ずれ、段差のそばがいちばん大きくずれます。目分量で縫わず、必ず数えて縫い、縫い目で2枚の縁を引き寄せます。最終段のあとの引き抜き編みは数えません。',
  joined: '縁は全周でぴったり重なります。最終段を閉じる引き抜き編みは数えません。',
  opening: (f) =>
    `上は口金のためにあけておきます。ふつうは縁の半分より少し短く、その中央が12時の位置です${f.marked ? '（一般的な方法、出典なし）' : ''}。口金の片方の蝶番から下へ、6時の位置を通って、もう片方の蝶番まで縫い上げます。どちらの蝶番も、5〜10 mm下で縫い止めます。`,
  openingOfFrame: (f) => {
    const open = f.told
      ? '上は口金のためにあけておきます。'
      : `上は口金のためにあけておきます。口金に入るのは、最終段のこれらの目です。「${f.front}」：${runsText(f.frontInFrame)}。「${f.back}」：${runsText(f.backInFrame)}。`;
    if (!f.first || !f.last) return open;
    const pair = (one: Pair) =>
      `「${f.front}」の${one.front}目めと「${f.back}」の${one.back}目めの組`;
    const eased =
      f.halves === 0
        ? ''
        : `縫い目と口金の間に残る${f.halves}組は縫いません。2枚の縁の上がり方が違うため、片方の目だけが口金に入ります。もう片方の目は蝶番の所でいせ込みます。`;
    return `${open}縫い合わせるのは${f.pairs}組です。${pair(f.first)}から、6時の位置を通って、${pair(f.last)}まで縫います。${eased}`;
  },
  work: 'まず下の表の組をまち針か糸で留めます。6時の位置を最初に、そのあとで残りを留めます。それから、目と目を合わせ、どちらの目も頭の2本をすくって縫います。糸は編み糸か、丈夫なナイロン糸またはポリエステル糸で、縫う長さの約3倍を用意します。',
  care: (fixing) =>
    `注意：縫い針とまち針は、作業の前とあとに数えます。針とビーズは、小さな子どもの手の届かない所に置きます。${
      fixing === undefined ? '' : '口金にはニッケルが含まれていることがあり、かぶれる人がいます。'
    }${
      fixing === 'glued'
        ? '接着は、換気した部屋で、火と子どもから離れて行い、接着剤の表示を読みます。'
        : ''
    }目と手をこまめに休めます。お住まいの地域や販売先の規則を優先します。`,
  columns: (f) => ['時計の位置', f.front, f.back],
  row: (f) => [
    `${f.frontHour}時（「${f.backName}」では${f.backHour}時）`,
    String(f.front),
    String(f.back),
  ],
};
