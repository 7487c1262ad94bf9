import type { PageWords } from '../index.js';
import { shapeCounts } from './chart.js';

/** What stands on an empty chart to colour by hand. */
export const blank: PageWords['blank'] = {
  shapeLine: (f) => [...shapeCounts(f), `${f.paper} kâğıda basın`].join('  ·  '),
  how: 'Her boncuk için bir gözü iyice kapatarak boyayın; her boncuk rengi için tek bir kalem kullanın. Köşelerdeki dört yuvarlak işareti temiz bırakın, sonra sayfayı tarayın ya da tamamının fotoğrafını çekin: düz dururken, eşit ışıkta.',
};
