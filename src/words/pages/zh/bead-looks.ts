import type { PageWords } from '../index.js';
import { looksIn } from '../looks.js';

/** What beads look like: M throughout, for shops differ in their words for finishes. */
export const beadLooks: PageWords['beadLooks'] = looksIn({
  families: {
    white: '白色',
    grey: '灰色',
    black: '黑色',
    pink: '粉色',
    red: '红色',
    orange: '橙色',
    brown: '棕色',
    beige: '米色',
    yellow: '黄色',
    'yellow-green': '黄绿色',
    green: '绿色',
    'blue-green': '蓝绿色',
    blue: '蓝色',
    purple: '紫色',
  },
  toned: {
    dark: (family) => `深${family}`,
    light: (family) => `浅${family}`,
    greyish: (family) => `灰${family}`,
  },
  finishes: {
    matt: '哑光',
    'silver-lined': '银衬',
    lined: '彩衬',
    metallic: '金属色',
    rainbow: '幻彩',
    pearl: '珍珠光',
    lustre: '上光',
    transparent: '透明',
    opaque: '不透明',
  },
  comma: '，',
});
