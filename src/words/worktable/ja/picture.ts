import type { WorktableWords } from '../index.js';

/** The step Picture. */
export const picture: WorktableWords['picture'] = {
  step: '絵',
  invite: '自分の絵をパネルにのせる',
  inviteHow: 'どこにでもドロップ、貼り付け、または：',
  drop: '放すと絵がパネルにのります',
  yours: 'あなたの絵',
  sampleNote: 'これは見本です。何でも試してみてください。',
  local: '絵はこの端末に残ります。どこにも送りません。',
  moveHow:
    'パネルの下の絵をドラッグします。ホイールか2本の指で大きさを変え、丸いつまみで回します。',
  size: '大きさ',
  sizeUnit: '%',
  turned: '回転',
  turnedUnit: '°',
  across: '右へ',
  down: '下へ',
  mm: 'mm',
  lies: '置き方',
  liesHow: {
    subject:
      '無地の背景にあるものが、縁の内側に入るいちばん大きな大きさになります。見分けられないときは、絵がパネルいっぱいになります。',
    fill: '絵がパネル全体をおおい、縁からはみ出る所は切れます。',
    fit: '長い辺がパネルの端から端まで届きます。角は切れ、長い辺のわきに背景が見えます。',
    inside: 'どこも切れません。絵のまわりに背景が見えます。',
  },
  kind: '絵の種類',
  kindHow: '線画では濃い線がビーズを取り、写真ではどのビーズも中間の色になります。',
  kindDecided: ({ art }) => (art === 'photo' ? '写真として扱いました。' : '線画として扱いました。'),
  around: 'まわりと後ろ',
  groundAuto: '合う色',
  cutOutHow: '無地の背景を取り除き、主題を地のビーズの上に置きます。',
  white: '白',
  bare: 'ビーズなし',
  aroundHow: '絵の外側や、絵が透けている所に見える色です。',
  mind: '失いたくないところ',
  mindHow: 'パネルの上で目やくちばしを筆でなぞると、そこのビーズをより丁寧に選びます。',
  mindSize: '筆',
  mindKeys:
    'キーボードでは、矢印で筆が段に沿って、また段から段へ動き、スペースでなぞり、コンマとピリオドで筆を小さく、大きくします。Shiftを押すと、矢印は動きながらなぞります。Escで筆を置きます。',
  mindThere: ({ place }) => `${place}（なぞり済み）`,
  opening: '絵を開いています…',
  noPicture:
    'この編み図には絵が付いていません。ビーズはそのままです。新しい絵をのせるには、絵を開いてください。',
  steps: {
    move: '絵の移動',
    size: '絵の大きさ',
    turn: '絵の回転',
    place: '絵の置き方',
    open: '絵を開く',
    art: '絵の種類',
    background: '背景',
    mind: '失いたくないところをなぞる',
  },
};
