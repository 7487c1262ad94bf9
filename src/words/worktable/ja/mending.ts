import type { WorktableWords } from '../index.js';

/** Help while working: where one is, what is wrong, notes, time, and a colour that runs out. */
export const mending: WorktableWords['mending'] = {
  findTitle: '今どこ？',
  findHow: '次に糸から来るビーズを、かぎ針に近いものから順にタップします。',
  findNone: 'その並びはどこにもありません。最後にタップしたビーズを確かめてください。',
  findMore: (n) => `当てはまる場所は${n}か所です。次のビーズをタップします。`,
  found: (f) => `次は${f.round}段目の${f.stitch}目め、区画${f.wedge}です。`,
  foundSlips: (n) => `そこで一覧と違うビーズ：${n}個。`,
  goThere: 'そこから続ける',
  jumped: (f) => `${f.round}段目の${f.stitch}目めからここへ移りました。`,
  checkTitle: '合っていますか',
  checkHow: (after) =>
    after === '0'
      ? '糸はこう見えるはずです。最初に通したビーズが先頭です。'
      : `確かめた${after}個のあと、糸はこう見えるはずです。`,
  checkRight: '同じに見えます',
  readStrung: (after) =>
    after === '0'
      ? '違うときは、実際に通っているビーズを、最初に通したものから順にタップします。'
      : `違うときは、${after}個目のあとから、実際に通っているビーズを順にタップします。`,
  wrongTitle: '何か違う',
  readComing: '実際に糸から来るビーズを、かぎ針に近いものから順にタップします。',
  agree: (n) => `一覧のとおり：${n}個。`,
  tooMany: 'その部分の糸ではないか、反対の端から読まれています。',
  notHere: 'このビーズはここのものではありません。別の場所かもしれません。',
  slip: {
    missing: (f) =>
      `${f.after}個のあと：${f.wanted} が足りません（${f.round}段目、${f.stitch}目め）`,
    extra: (f) => `${f.after}個のあと：${f.got} が余分です（${f.round}段目、${f.stitch}目めの前）`,
    other: (f) =>
      `${f.after}個のあと：${f.wanted} のところに ${f.got}（${f.round}段目、${f.stitch}目め）`,
    swap: (f) =>
      `${f.after}個のあと：${f.got} の順が逆です。正しくは ${f.wanted}（${f.round}段目、${f.stitch}目め）`,
  },
  ways: {
    missing: '足りないとき：その目はビーズなしで編み、あとで細い針と同じ糸でビーズを縫い付けます。',
    extra:
      '余分なとき：その番が来たら、平ペンチでビーズを割ります。保護めがねをかけ、ビーズとペンチに布をかぶせ、破片を拾い、糸が切れていないか指で確かめます。',
    other:
      '色が違うとき：その番が来たら違うビーズを割り、その目はビーズなしで編み、あとで正しいビーズを縫い付けます。',
    swap: '順が逆のとき：色違い2個として直すか、目立たなければそのまま編みます。',
  },
  broken:
    '割れたガラスは糸や肌を切り、目に飛び込みます。保護めがねなしでは決して行わないでください。',
  takeOff: (after) => `${after}個目より後ろを全部外しました`,
  mendLater: 'そのままにして、編むときに直す',
  noteThem: '目に書き留める',
  here: {
    sewOn: (letter) => `ここは ${letter} がありません。ビーズなしで編み、あとで縫い付けます。`,
    extra: (letters) => `先に糸から外します：${letters}。`,
  },
  ten: '10個ずつ',
  takeBack: '一つ取り消す',
  typeThem: 'または入力します（例：3A 2B）',
  addTyped: '加える',
  typedWrong: (letters) => `数字と次の文字だけです：${letters}`,
  tapped: (n) => `入力したビーズ：${n}個`,
  notes: 'メモ',
  noteAt: (f) => `${f.round}段目の${f.stitch}目めのメモ`,
  noteHow: '編み地の目をタップすると、そこにメモを留められます。',
  noteLine: (f) => `${f.round}段目の${f.stitch}目め：${f.text}`,
  sewOnLine: (f) => `${f.round}段目の${f.stitch}目め：${f.letter}（${f.name}）を縫い付けます。`,
  sewn: '縫い付けました',
  takeAway: '取り除く',
  sewOnTitle: '縫い付けるビーズ',
  timeTitle: '時間と費用',
  time: (f) => `${f.h}時間${f.min}分`,
  timeHow: 'タップからタップまでを数えます。2分を超える休みは数えません。',
  hourly: '1時間の値段',
  cost: { beads: 'ビーズ', thread: '糸', time: '時間', sum: '合計', unknown: '値段がわかりません' },
  costHow: '各パネル1枚ずつの分、ビーズの値段と同じお金で。',
  outTitle: '色が足りなくなる',
  outHow: '通し終えた分はそのままです。ある段から別のビーズに替わり、一覧もすべて変わります。',
  outWhich: 'どの色',
  outFrom: '何段目から',
  outPanels: 'どのパネル',
  outAll: 'すべて',
  outNeeds: (n) => `そこから要るビーズ：${n}個`,
  outInJar: (n) => `びんの中：${n}個`,
  outNone: 'その段からあとにこの色は出てきません。',
  outDone: (f) => `${f.round}段目から ${f.from} の代わりに ${f.to} を使います。`,
  practice: '練習用のパネル',
  practiceHow:
    '自分の目とビーズで編む、練習用の4段です。増し目の2目はどれも専用の色、各段の最初の目も専用の色です。「ページ」で専用の冊子を作れます。',
  steps: { runsOut: '足りない色の代わりのビーズ' },
};
