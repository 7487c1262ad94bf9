import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count } = numbersIn('ja');

/** The order of the work, and what stands on its pages. */
export const work: PageWords['booklet']['work'] = {
  contents: '目次',
  glance: '作業の流れ',
  steps: {
    gather: 'ビーズ、糸、用具をそろえる',
    swatch: '試し編みをして測る',
    string: (f) => (f.lengths === 1 ? 'ビーズを通す' : `糸${f.length}本目にビーズを通す`),
    rounds: (f) =>
      f.first === f.last ? `${f.first}段目を編む` : `${f.first}〜${f.last}段目を編む`,
    again: '同じパネルをもう一枚編む',
    seam: 'パネルを縫い合わせる',
    frame: '口金に付ける',
    lining: '内布を付ける',
  },
  print: '印刷の前に',
  printText: (f) =>
    `倍率100 %、拡大縮小なしで印刷します。この正方形の一辺は${f.side}でなければなりません。違うときは、この冊子の実寸の図はどれも正しくありません。プリンターを100 %または「実際のサイズ」にして、もう一度印刷します。`,
  stop: 'ここで止める',
  seePage: (f) => `${f.page}ページをご覧ください。`,
  part: 'ビーズを通して編む',
  heads: { string: '通すビーズ', total: '累計', grams: 'g', count: 'ビーズ' },
  tick: (f) =>
    `どの行にも${f.brackets ? '、かっこの中のどの繰り返しにも' : ''}四角があります。そのビーズを糸に通したら印を付けます。同じビーズが20個を超えるときは十個ずつに分けてあります。行の終わりの累計は、この糸のそこまでのビーズの数です。`,
  twoBoxes: '四角が2つ並ぶ所は、パネル1枚ごとに1つ使います。',
  roundsTick:
    '細い縦線が区画を分けます。段を編み終えたら四角に印を付けます。累計は、そこまでに編んだすべてのビーズの数です。',
  mixed: (f) =>
    `${count(f.beads)}/${count(f.stitches)}は、${count(f.stitches)}目にビーズ${count(f.beads)}個という意味です。残りはビーズなしの目です。`,
  round: (round) => `${round}段`,
  working: {
    part: '編むときに見える編み図',
    note: (f) =>
      `編んでいるときに見る面を、手に持った向きで示しています。始めが上にあり、かぎ針から離れて${f.hand === 'right' ? '左' : '右'}へ編み進みます。${f.mirrored ? 'ビーズは裏側にあるので、絵は仕上がりと左右が逆になります。' : ''}`,
    wedges: '丸の中の数字は、編む方向に数えた区画の番号です。',
    hook: 'かぎ針',
    use: '編むときは「編むときに見える編み図」に従い、編み上がったパネルはビーズ面の編み図と見比べます。',
  },
  sector: {
    name: (f) => (f.from === f.to ? `区画${f.from}` : `区画${f.from}〜${f.to}`),
    how: '両わきの薄いビーズは隣の区画のものです。数字は各段の最初の目の手前にあります。',
  },
  time: (f) => `時間：${f.time}`,
  rights: {
    title: '権利',
    none: 'この冊子には作者もライセンスも書かれていません。入手先の人からほかに何をしてよいか聞くまでは、自分だけで使います。',
    authorOnly: (f) =>
      `作者は${f.author}で、ライセンスの記載はありません。人に渡す前、または作った物を売る前に尋ねます。`,
    contact: '訂正',
    contactText: (f) => `間違いや分かりにくい所があれば、次へ書いてください：${f.contact}`,
  },
  yours: {
    title: 'わたしのがま口',
    madeFor: '贈る相手',
    begun: '始めた日',
    finished: '仕上げた日',
    swatch: 'わたしの試し編み',
    bead: 'ビーズ',
    thread: '糸',
    hook: 'かぎ針',
    after: (f) => `${f.rounds}段での幅`,
    notes: 'メモ',
  },
  alt: {
    square: '印刷を測るための正方形。',
    photo: '仕上がり品の写真。',
    purse: (f) => `口金に付けて閉じたがま口の図：${f.panel}`,
    working:
      '編むときに見えるパネルの編み図。段ごとの表が同じ内容を文字で示し、文字の意味は材料の表にあります。',
    sector: (f) => `拡大した編み図、${f.wedges}。段ごとの表が同じ内容を文字で示します。`,
  },
  listing: {
    size: '大きさ',
    level: '難しさ',
    beads: 'ビーズ',
    tools: 'ほかに必要な物',
    file: 'ファイルの内容',
    fileText: (f) =>
      `PDF一点、${f.pages}ページ、${f.paper}、${f.languages}。検索も読み上げもできます。どのビーズにも文字が付いているので、色を見分ける必要はありません。`,
    digital: 'ダウンロードして印刷する編み図です。ビーズと用具は含まれません。',
  },
};
