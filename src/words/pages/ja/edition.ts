import type { PageWords } from '../index.js';

/** How one booklet of a pattern differs from another. */
export const edition: PageWords['booklet']['edition'] = {
  grey: '白黒印刷用',
  large: '大きな文字',
  left: '左手編み用',
  right: '右手編み用',
  mirrored:
    'この版は、編み図の元の手とは反対の手で編む人のためのものです。段、表、個数は同じで、絵柄は左右が逆（鏡像）になります。絵柄の中の文字や数字も左右が逆になるので、文字や数字があるときは、この手のために作った編み図が必要です。',
  fills:
    '色を使わない版では、ビーズごとに灰色の濃さが違います。ビーズの種類が多いときは、文字の横に印も付きます：2本の棒、4つの点、または印なし。色は名前でわかります。',
};

/** What stands for pictures where the booklet is read aloud. */
export const alt: PageWords['booklet']['alt'] = {
  panel: (f) => `編み上がったパネルの絵、ビーズの面：${f.panel}`,
  chart: 'パネルの編み図。段ごとの表が同じ内容を文字で示し、文字の意味は材料の表にあります。',
  lining: '内布の実物大型紙、印付き。',
};
