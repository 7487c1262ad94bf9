import type { WorktableWords } from '../index.js';

/** An empty chart to colour by hand, and its photo read back. */
export const coloured: WorktableWords['coloured'] = {
  title: '手で色を塗る',
  how: 'このパネルの空の編み図を印刷し、色鉛筆やペンで塗ってから、その写真を読み取ります。',
  saved: (name) => `${name}を保存しました。100 %で印刷して塗り、写真を持って戻ってください。`,
  which: '塗った編み図',
  whichHow: '区画と段の数は、紙の上のほうにあります。',
  blank: ({ title, wedges, rounds }) => `${title}：${wedges}区画、${rounds}段`,
  openBlank: '別の空の編み図を開く',
  colours: '色の数（最大）',
  photo: 'その写真',
  photoHow:
    '紙の全体を、平らに置き、均一な明るさで、四隅の印も入れて撮ります。写真をここにドロップ、または：',
  choose: '写真を選ぶ',
  drop: '放すと写真を読み取ります',
  goOn: ({ name, n, of }) => `${name}の続き（${of}のうち${n}）`,
  reading: '塗った編み図を読み取っています…',
  stop: '止める',
  noCorners:
    '四隅の丸い印が見つかりません。紙の全体を平らに、くっきりと、四つの印がすべて入るように撮り、上で正しい編み図が選ばれているか確かめてください。',
  notColoured:
    '塗ったマスが見つかりません。上で正しい編み図が選ばれているか、マスがむらなく塗れているか確かめてください。',
  blankTaken: 'それは空の編み図そのもので、今それを選びました。あとはその写真が必要です。',
  uneven:
    '紙に影があり、ほかにも読み違えたマスがあるかもしれません。パネルを見直すか、均一な明るさで撮り直してください。',
  many: 'はっきりしないマスがとても多くあります。正しい編み図が選ばれていたか確かめてください。',
  count: ({ n, of }) => `${of}のうち${n}`,
  place: ({ round, wedge, place }) => `${round}段目、区画${wedge}、その中の${place}目め`,
  reasons: {
    between: '2つのビーズの間の色です。',
    uneven: '2色になっています。',
    unlike: '紙のほかのどの色とも違います。',
    partly: '一部だけ塗られています。',
    outside: '写真の外にあります。',
  },
  patch: 'マスのまわりの写真。マスの輪郭を描いてあります',
  ask: 'どれですか？',
  asRead: 'こう読みました',
  white: '白いまま',
  other: '別のビーズ',
  rest: '残りは読み取りのままにする',
  keysHow: (n) => `キー：1から${n}で選び、左矢印で戻ります。`,
  done: 'すべてのマスが決まりました',
  counts: ({ coloured, white }) => `塗ったマス：${coloured}。白いマス：${white}。`,
  whiteAsk: '白いマスは',
  whiteOpen: 'まだ未定',
  whiteHow: '未定の目は筆で置けます。',
  lay: '机に置く',
  laid: (title) => `「${title}」を机に置きました。元に戻すと、前にあったものが帰ってきます。`,
  steps: {
    read: '塗った編み図の読み取り',
  },
};
