import type { PageWords } from '../index.js';
import { shapeCounts } from './chart.js';

/** What stands on an empty chart to colour by hand. */
export const blank: PageWords['blank'] = {
  shapeLine: (f) => [...shapeCounts(f), `${f.paper}に印刷`].join('  ·  '),
  how: 'ビーズ1個につき1マスを、むらなく塗ります。ビーズの色ごとに1色を使います。四隅の丸い印は汚さないでください。塗り終えたら紙をスキャンするか、平らに置き、均一な明るさで全体を撮影します。',
};
