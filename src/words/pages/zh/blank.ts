import type { PageWords } from '../index.js';
import { shapeCounts } from './chart.js';

/** What stands on an empty chart to colour by hand. */
export const blank: PageWords['blank'] = {
  shapeLine: (f) => [...shapeCounts(f), `用${f.paper}纸打印`].join('  ·  '),
  how: '每颗珠子涂一格，涂满；每种珠子颜色只用一种颜色。四角的圆形标记保持干净，然后扫描整页，或者把纸放平，在均匀的光线下拍下整页。',
};
