import type { PageWords } from '../index.js';
import { looksIn } from '../looks.js';

/** What beads look like: M throughout, for shops differ in their words for finishes. */
export const beadLooks: PageWords['beadLooks'] = looksIn({
  families: {
    white: '白',
    grey: '灰色',
    black: '黒',
    pink: 'ピンク',
    red: '赤',
    orange: 'オレンジ',
    brown: '茶色',
    beige: 'ベージュ',
    yellow: '黄色',
    'yellow-green': '黄緑',
    green: '緑',
    'blue-green': '青緑',
    blue: '青',
    purple: '紫',
  },
  toned: {
    dark: (family) => `濃い${family}`,
    light: (family) => `薄い${family}`,
    greyish: (family) => `くすんだ${family}`,
  },
  own: { blue: { dark: '紺', light: '水色' } },
  finishes: {
    matt: 'マット',
    'silver-lined': '銀引き',
    lined: '中染め',
    metallic: 'メタリック',
    rainbow: 'オーロラ',
    pearl: 'パール',
    lustre: 'ラスター',
    transparent: '透明',
    opaque: '不透明',
  },
  comma: '、',
});
