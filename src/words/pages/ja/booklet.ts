import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';
import { work } from './work.js';

const { count, fixed, sizeInches, sizeMm } = numbersIn('ja');

/** What stands on the pages of a booklet that no other file says. */
export const booklet: PageWords['booklet'] = {
  subject: '丸いビーズ編みパネルの編み図',
  kind: '丸いビーズ編みの編み図',
  size: (f) => `でき上がりの直径 約${sizeMm(f.across, 0)} mm（${sizeInches(f.across)}インチ）`,
  sizeFrom: {
    swatch: '作者の試し編みによる',
    model: '推定値（試し編みをするまで）',
  },
  amounts: (f) =>
    [
      f.panels === 1 ? 'パネル1枚（同じものを2枚編む）' : `パネル${count(f.panels)}枚`,
      `${count(f.rounds)}段`,
      lists.beads(f.beads),
      `${count(f.colours)}色`,
    ].join('  ·  '),
  by: (author) => `作者：${author}`,

  panelNames: { front: '前側', back: '後ろ側' },
  pageOf: (f) => `${f.page} / ${f.pages}`,
  panel: (f) => `パネル「${f.panel}」`,
  length: (f) => `糸${f.length}本目（全${f.lengths}本）`,
  continued: (heading) => `${heading}（続き）`,
  parts: {
    cover: '表紙',
    materials: '材料と用具',
    before: '始める前に',
    chart: '編み図',
    rounds: '段ごとの編み方',
    stringing: 'ビーズを通す順番',
    making: '仕立て方',
    lining: '内布の型紙',
    cautions: '注意',
    last: 'この編み図について',
  },
  ofPanel: (f) => `${f.part}：${f.panel}`,

  materials: {
    beads: 'ビーズ',
    columns: {
      bead: '文字',
      name: '名前',
      id: '品番',
      charted: (panels) => (panels === 1 ? '編み図の個数' : '編み図2枚の個数'),
      reserve: 'がま口1個分（予備込み）',
      grams: '用意する量（g）',
    },
    total: 'ビーズ合計',
    unknownGrams: '–',
    onePanel:
      '編み図はパネル1枚分です。がま口にはパネルが2枚いります。予備込みの個数は、前側と、それと同じ後ろ側の2枚分です。',
    twoPanels: 'がま口にはパネルが2枚いります。この編み図には2枚ともあります。',
    thread: '糸',
    estimate:
      '1目に使う糸の長さは、編む人の手加減によって違います。糸の1 mに印を付けて編み、目数を数え、買う前にこの数字を直します。',
    ownFigure: '1目に使う糸の長さは、作者自身の数字です。',
    tools: '用具、口金、内布',
  },

  before,

  rounds: {
    round: '段',
    work: '編み方',
    stitches: '目数',
    beads: 'ビーズ',
    total: 'ビーズ累計',
    how: '1段編んだら数えます。最後の列は、その段の終わりまでに編み入れたビーズの数です。',
  },

  stringing: {
    round: (f) =>
      f.part
        ? `${lists.round(f.round)}の一部：${lists.beads(f.beads)}`
        : `${lists.round(f.round)}：${lists.beads(f.beads)}`,
    total: (total) => `累計 ${lists.number(total)}`,
    totalGrams: (f) => `累計 ${lists.number(f.total)} · ${fixed(f.grams, 1)} g`,
    tickOne: 'どの行も左から読みます。1行分を糸に通したら四角に印を付け、累計のたびに数えます。',
    weigh:
      '累計の横のグラム数は、そこまでに通したビーズの重さです。始める前に糸の重さを量り、その分を引きます。0.1 g単位で量れるはかりが必要です。同じ容器のビーズでも重さはまちまちなので、数えた個数を優先します。',
    tick: '左の列を上から下へ、次に右の列へ進み、どの行も左から読みます。1行分を糸に通したら四角に印を付け、累計のたびに数えます。',
    weight: (f) =>
      `全部で${lists.beads(f.beads)}。糸に通すと、重さは糸を除いて約${fixed(f.grams, 1)} g、長さは約${fixed(f.metres, 2)} mです。編むのに使う糸は、糸端と予備を含めて約${fixed(f.threadM, 1)} mです。`,
    noWeight: (f) =>
      `全部で${lists.beads(f.beads)}。糸に通すと約${fixed(f.metres, 2)} mです。編むのに使う糸は、糸端と予備を含めて約${fixed(f.threadM, 1)} mです。`,
    rounds: (f) => (f.first === f.last ? `${f.first}段目用。` : `${f.first}〜${f.last}段目用。`),
    first: 'この表の最初のビーズを最初に糸に通し、最後に編みます。',
    nothing: 'ビーズがまだ決まっていないので、通すものはありません。',
  },

  work,

  making,
  enlarged,
  wedgeChart,
  level,
  edition,
  alt,

  last: {
    title: '題名',
    author: '作者',
    date: 'この版の日付',
    licence: 'ライセンス',
    noLicence: '記載がありません。編み図を人に渡す前、または作った物を売る前に、作者に尋ねます。',
    version: 'バージョン',
    versionText: (f) => `Rondure ${f.program}で作成、編み図形式 ${f.format}`,
    figures: '数字について',
    figuresText:
      'ビーズの個数は正確です。g数、糸の長さ、大きさ、用具は、試し編みをするまでは推定値です。「ふつう」とあるものは、一般的な方法または記憶による数字で、公表された出典はありません。',
    read: '読み上げるには',
    readText:
      'この冊子の表はすべて文字なので、検索、コピー、読み上げができます。どのビーズにも文字が付いているので、色を見分ける必要はありません。',
  },
};
