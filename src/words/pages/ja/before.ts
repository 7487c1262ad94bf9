import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, sizeMm } = numbersIn('ja');

/** Before the work begins: swatch, hand, how to read, signs. */
export const before: PageWords['booklet']['before'] = {
  swatch: 'まず試し編みをする',
  swatchText: (f) =>
    `使うビーズ、糸、かぎ針で、${f.wedges}区画を1色で10段編みます。ビーズは${count(f.beads)}個使います。編み始め、編み目、増し目は、この章の図にあります。編んだら平らに置きます。この編み図は、1目の幅${fixed(f.widthMm, 2)} mm、1段の高さ${fixed(f.heightMm, 2)} mmとして作ってあります。試し編みの直径は、5段で約${sizeMm(f.five, 0)} mm、10段で約${sizeMm(f.ten, 0)} mmになります。これより大きければ細いかぎ針に、小さければ太いかぎ針に替えます。おわん形に反るときは、目の幅が高さに対して狭すぎます。縁が波打つときは、広すぎます。`,
  hand: '編む手と編み地の面',
  start: '編み始めと編み進め方',
  read: '段ごとの表の読み方',
  string: 'ビーズの通し方',
  signs: '記号と略語',
  sign: '記号',
  meaning: '意味',
  table: (second) => [
    ['7段', '中心から数えて7段目'],
    ['A, B', 'ビーズ：文字は材料表および編み図と同じ'],
    ['3A', 'ビーズAを入れて3目。通す順番の表ではビーズAを3個'],
    [`[A ${second}]`, '前段の同じ1目に2目編み入れる：増し目'],
    ['( ) x 7', 'かっこの中を7回'],
    ['なし', 'ビーズを入れない目'],
    ['細', '細編み（こまあみ）'],
  ],
  smallChart: (f) =>
    `この編み図は目数が多いので、この用紙では文字が小さくなります。画面で拡大して読むか、そのページを${f.paper}の用紙に印刷してもらいます。段ごとの表には、同じ内容が言葉で書いてあります。`,
};
