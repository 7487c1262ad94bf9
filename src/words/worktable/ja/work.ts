import type { WorktableWords } from '../index.js';

/** The step Work: stringing and crocheting beside the bead mat. */
export const work: WorktableWords['work'] = {
  step: '作業',
  intro:
    '画面をビーズマットの横に立てかけます。一度に一つのことだけを示し、どのビーズまで進んだかを覚えています。',
  waiting: 'ビーズを選んでいます…',
  changed: '作り始めたあとにパネルが変更されました。今は、始めたときのパネルを作っています。',
  which: 'どのパネル',
  copies: 'それぞれ何枚',
  panel: 'パネル',
  sides: { front: '前', back: '後ろ' },
  panelOf: (f) => `${f.name}、${f.of}枚のうち${f.n}枚目`,
  strung: (f) => `ビーズ${f.all}個のうち${f.done}個を通しました`,
  worked: (f) => `${f.all}目のうち${f.done}目を編みました`,
  length: (f) => `糸${f.of}本のうち${f.n}本目`,
  stringRound: (f) => `${f.r}段目 · ${f.all}個のうち${f.done}個`,
  then: (run) => `次は ${run}`,
  thenDone: 'これで最後です',
  notStrung: (n) =>
    `このページの記録では、この糸にまだ${n}個通していません。先にビーズを通します。`,
  strungByList: 'もう全部通してあります',
  tapStrung: '糸に通したら、どこでもタップします',
  stands: (f) =>
    `糸の上：ビーズ${f.beads}個、${f.metres} m${f.grams === undefined ? '' : `、${f.grams} g`}`,
  lengthDone: (f) =>
    f.of === '1'
      ? `ビーズ${f.beads}個をすべて通しました`
      : `糸${f.of}本のうち${f.n}本目に通し終えました：ビーズ${f.beads}個`,
  lengthDoneHow:
    '最後に通したビーズを最初に編みます。ビーズを糸の先へ送り、糸は玉につけたままにします。',
  stringLength: (f) => `糸${f.of}本のうち${f.n}本目に通す`,
  inHand: '手に持ったままの向きの編み地。今の目がかぎ針のところにあります',
  roundOf: (f) => `${f.of}段のうち${f.r}段目`,
  inRound: (f) => `区画${f.wedge} · ${f.of}目のうち${f.stitch}目め`,
  allWorked: (n) => `全部で${n}目`,
  begin: (wedges) => `輪を作り、その中に1段目の${wedges}目を編み入れます。`,
  roundDone: (f) =>
    `${f.r}段目が終わりました：${f.stitches}目、ビーズ${f.beads}個、合計${f.all}個。`,
  moveMarker: 'マーカーを次の段の最初の目に付け替えます。',
  closeRound:
    '引き抜き編みで段を閉じ、立ち上がりのくさり編みを1目編みます。どちらもビーズなしです。',
  joinHere: (length) => `止まってください：ここで糸${length}本目をつなぎます。`,
  bothInOne: '2目とも同じ1目に',
  bare: 'ビーズなし',
  open: '未定',
  tapWorked: '編んだらタップします',
  coming: '糸から来る次のビーズ',
  pace: '一度に進む量',
  panelDone: 'パネルができました',
  endSpiral:
    'ビーズなしの引き抜き編みを2〜3目して段差をなだらかにし、糸を20 cm残して切り、引き抜きます。',
  endJoined: '引き抜き編みで段を閉じ、糸を20 cm残して切り、引き抜きます。',
  voiceless: 'この端末には、ページの言語の声がありません。',
  cannot: {
    stayAwake:
      'このブラウザーは画面をつけたままにできません。端末の設定で、消えるまでの時間を長くしてください。',
    speak: 'このブラウザーは読み上げができません。',
    listen: 'このブラウザーは聞き取りができません。タップかスペースキーで進みます。',
  },
  heard: { next: ['次', 'つぎ', 'はい'], back: ['戻る', 'もどる'] },
  listens:
    '「次」と「戻る」を聞いています。聞いた声を理解するために製造元へ送るブラウザもあります。このページは何も送りません。',
  deaf: '今はブラウザが聞き取れません。許可されていないか、ネットワークが必要です。',
};
