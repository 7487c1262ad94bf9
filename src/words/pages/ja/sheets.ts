import type { PageWords } from '../index.js';

type Booklet = PageWords['booklet'];

/** An enlarged chart on several sheets. */
export const enlarged: Booklet['enlarged'] = {
  part: '拡大編み図',
  sheet: (f) => `${f.sheets}枚中${f.sheet}枚目`,
  how: '小さな全体図は、この紙の位置を示します。点線より外の部分は隣の紙にもあり、三角がその紙の番号を示します。文字の凡例は、全体の編み図と材料のページにあります。',
};

/** One wedge, where all are alike. */
export const wedgeChart: Booklet['wedgeChart'] = {
  part: '区画の編み図',
  alike: (f) =>
    `${f.wedges}区画はすべて同じで、これはその1つです。どの行も、その段で${f.wedges}回編みます。`,
  how: (f) =>
    f.direction === 1
      ? 'ビーズ面で、縁が上です。1行目は先端で、パネルの中心にあります。どの行も左から右へ読みます。2目にかかる黒い三角は、その2目を編み入れる下の1目を指します。'
      : 'ビーズ面で、縁が上です。1行目は先端で、パネルの中心にあります。どの行も右から左へ読みます。2目にかかる黒い三角は、その2目を編み入れる下の1目を指します。',
};

/** How demanding the project is (not the person who works it). */
export const level: Booklet['level'] = {
  title: '作品の難易度',
  intermediate: '中級：同じ模様をくり返す段。細い糸、細いかぎ針',
  complex: '上級：ビーズを1個ずつ追って編む絵柄。細い糸、細いかぎ針',
};
