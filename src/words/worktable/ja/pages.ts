import type { WorktableWords } from '../index.js';

/** The step Pages. */
export const pages: WorktableWords['pages'] = {
  step: 'ページ',
  intro: 'かぎ針のそばに要るもの全部：編み図、ビーズを通す順番、買い物の一覧。',
  bookletHow: '印刷するか、タブレットで見るPDF。',
  zipHow: '冊子、編み図、すべての一覧、編み図のデータを1つのzipに。',
  making: 'ページを描いています…',
  waiting: 'ビーズを選んでいます…',
  pages: (n) => `${n}ページ`,
  pageOf: ({ n, of }) => `${of}ページ中${n}ページ`,
  how: '印刷のしかた',
  language: '言語',
  second: '並べる2つ目の言語',
  none: 'なし',
  paper: '用紙',
  papers: {
    a4: 'A4',
    letter: 'レター',
  },
  author: '作者',
  licence: '買った人ができること',
  date: '日付',
  contact: '訂正の連絡先',
  time: '制作にかかる時間',
  lists: '一覧',
  listsHow: '保存されるとおりに見えます。',
  list: {
    'rounds.txt': '段',
    'stringing.txt': 'ビーズを通す順番',
    'shopping.txt': '買い物の一覧',
    'chart.svg': '編み図',
  },
  pieces: 'がま口の数',
  printHow: '100%（実際のサイズ）で印刷します。',
  steps: {
    how: '印刷のしかた',
  },
};
