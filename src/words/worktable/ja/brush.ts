import type { WorktableWords } from '../index.js';

/** The step Brush: beads laid by hand. */
export const brush: WorktableWords['brush'] = {
  step: '筆',
  inHand: '筆にあるビーズ',
  take: '取る',
  none: 'ビーズなし',
  others: (n) => `ほかの手持ちビーズ：${n}`,
  lays: '置くもの',
  also: 'ほかにできること',
  how: {
    bead: 'パネルをなぞると、触れた目がそのビーズになります。',
    line: '目から目へ引くと、ビーズのまっすぐな線になります。',
    ring: '目に触れると、その段がすべてそのビーズになります。段をまたいで引くと何段も変わります。',
    wedge: '目に触れると、その区画がすべてそのビーズになります。',
    patch: '同じ色のかたまりに触れると、すべてそのビーズになります。',
    away: '手で置いた所をなぞると、その目は絵が決めたとおりに戻ります。',
    replace: 'ビーズに触れると、どこにあってもすべて筆のビーズに替わります。',
    move: '部分を輪で囲むか、かたまりに触れ、それから新しい場所へ引きます。',
    pick: 'パネルのビーズに触れると拾えます。マットの山でも同じです。',
  },
  laid: '手で置いたもの',
  laidNone: 'まだありません。',
  laidCount: (n) => `目：${n}。`,
  laidWait: ({ n, wedges }) => `置いたときの${wedges}区画を待っています：${n}。`,
  laidOutside: (n) => `縁の外で、段が増えるのを待っています：${n}。`,
  laidHow:
    '絵を置き直しても、別のビーズを選んでも、その場所に残ります。区画の数が変わったり、減らした段の外になったりすると場所がなくなります。そのまま待ち、元に戻すと帰ってきます。',
  noLetter: 'もう24色あり、新しい色に使える文字がありません。先に2つの山をいっしょにしてください。',
  heapHint: 'ビーズ。取る',
  keysHow:
    'キーボードでは、矢印で段に沿って、また段から段へ進み、スペースで筆を使い、コンマとピリオドでビーズを替えます。Shiftを押すと、矢印は進みながら筆を使います。',
  place: ({ round, stitch, wedge, bead }) => `${round}段目の${stitch}目め、区画${wedge}：${bead}`,
  placeByHand: ({ round, stitch, wedge, bead }) =>
    `${round}段目の${stitch}目め、区画${wedge}：${bead}、手で`,
  steps: {
    bead: 'ビーズを置く',
    line: '線を置く',
    ring: '輪を置く',
    wedge: '区画を置く',
    patch: 'かたまりを埋める',
    away: 'ビーズを外す',
    move: '部分を動かす',
    replace: '別のビーズに替える',
    all: '手で置いたものをすべて外す',
  },
};
