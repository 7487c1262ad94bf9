import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order:
    'Korálky navlékejte v pořadí tohoto seznamu, shora dolů a v každém řádku zleva: jako první jde na nit kolo úplně na vnějším okraji. Poslední korálek na niti se uháčkuje jako první.',
  reading:
    'Čtení: 3A jsou tři korálky A. Část v kulatých závorkách, za kterou stojí x 3, se navlékne 3krát. Vpředu stojí korálky kola a součet na niti, když je jeho řádek navlečený: počítejte na konci každého řádku.',
  bare: 'Holá očka korálek nepotřebují a v tomto seznamu nejsou.',
  join: (f) =>
    f.atRoundEnd
      ? `Tento úsek napojte na začátku kola ${f.round}, na straně s korálky asi na ${f.hour}. hodině.`
      : `Tento úsek napojte před očkem ${f.stitch} kola ${f.round}, na straně s korálky asi na ${f.hour}. hodině.`,
};
