import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order:
    'ビーズはこの表の順に、上の行から下へ、どの行も左から右へ通します。いちばん外側の段を最初に通します。最後に通したビーズを最初に編みます。',
  reading:
    '読み方：3A は、ビーズAが3個です。丸かっこのあとに x 3 とある部分は、3回通します。行の頭にあるのは、その段のビーズの数と、その行を通し終えたときに糸にあるビーズの合計です。1行通し終えるごとに数えます。',
  bare: 'ビーズなしの目にはビーズがいらないので、この表にはありません。',
  join: (f) =>
    f.atRoundEnd
      ? `${f.round}段目の始めで糸をつなぎます。ビーズ面で見て、およそ${f.hour}時の位置です。`
      : `${f.round}段目の${f.stitch}目めの前で糸をつなぎます。ビーズ面で見て、およそ${f.hour}時の位置です。`,
};
