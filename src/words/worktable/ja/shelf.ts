import type { WorktableWords } from '../index.js';

/** The shelf of pieces, and how they are kept. */
export const shelf: WorktableWords['shelf'] = {
  title: '棚',
  intro: '作品は、1手ごとに、この端末のこのブラウザーに保管されます。',
  empty: 'まだ何もありません。最初の絵で、作品が棚に並びます。',
  onTable: '机の上',
  removed: '棚から下ろしたもの',
  removedHow: '片付けるまでは戻せます。',
  open: (title) => `${title}を机に出す`,
  take: (title) => `${title}を棚から下ろす`,
  back: (title) => `${title}を棚に戻す`,
  takeShort: '下ろす',
  backShort: '戻す',
  takenOff: (title) => `${title}を棚から下ろしました。`,
  putBack: (title) => `${title}を棚に戻しました。`,
  waits: (title) => `${title}は棚にあります。`,
  copyOf: (title) => `${title}、もう1つ`,
  copied: 'もう一方の画面の作品はそのままです。ここでの続きは別の作品になります。',
  when: (date) => `最後に編集：${date}`,
  elsewhere: 'この作品は別の画面で開いています。',
  refused:
    'このブラウザーは何も保管しません。プライベートウィンドウかもしれません。閉じる前に、作品をファイルに保存してください。',
  full: 'この端末には空きがありません。最後の手順は机の上にありますが、保管されていません。いま作品をファイルに保存してください。',
  edition: 'このページの新しい版があります。作品はそのままです。',
  fileDamaged: (file) => `${file}：一部が欠けているか壊れているため、この作品は開けません。`,
  fileNewer: (file) =>
    `${file}：この作品は、このページの新しい版で作られています。ページを開き直すか、古いファイルをもらってください。`,
  forClass: '教室用',
  classHow:
    '印を付けた作品それぞれの編み図と編み方を、1つのPDFにします。名前ごとに新しい紙から始まり、名前がなければ1回だけ入ります。',
  classNames: '名前（1行に1人）',
  classSave: '1つのPDFで保存',
};
