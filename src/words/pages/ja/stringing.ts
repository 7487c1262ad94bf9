import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order:
    'ビーズは、通す順番の表のとおりに、上の行から下へ、どの行も左から右へ通します。いちばん外側の段を最初に通します。最後に通したビーズを最初に編みます。',
  reading:
    '読み方：3A は、ビーズAが3個です。丸かっこのあとに x 3 とある部分は、3回通します。各段には、その段のビーズの数と、その行を通し終えたときに糸にあるビーズの合計が書いてあります。1行通し終えるごとに数えます。',
  bare: 'ビーズなしの目にはビーズがいらないので、通す順番の表にはありません。',
  onBall: '糸玉の糸端をビーズ針に通してビーズを通し、その1本分を編み終わるまで糸を切りません。',
  stop: (f) =>
    `${f.atRoundEnd ? `${f.round}段目の最後の目` : `${f.round}段目の${f.stitch}目め`}で、最後に引き抜く前に止めます。ループをマーカーで留め、糸を${f.tailCm} cm残して切り、${f.next}本目の糸にビーズを通し、この目でつなぎます。ビーズ面で見て、およそ${f.hour}時の位置です。`,
};
