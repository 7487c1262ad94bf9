import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order:
    'Korálky navlékat v pořadí tohoto seznamu, shora dolů a v každém řádku zleva: první jde na nit nejvzdálenější vnější kolo. Poslední korálek na niti se uháčkuje jako první.',
  reading:
    'Čtení: 3A jsou tři korálky A. Část v kulatých závorkách, za kterou stojí x 3, se navlékne 3krát. Vpředu stojí korálky kola a součet na niti, když je jeho řádek navlečený: počítat na konci každého řádku.',
  bare: 'Holá očka korálek nepotřebují a v tomto seznamu nejsou.',
  join: (f) =>
    f.atRoundEnd
      ? `Tento úsek napojit na začátku kola ${f.round}, na straně s korálky asi na ${f.hour}. hodině.`
      : `Tento úsek napojit před očkem ${f.stitch} kola ${f.round}, na straně s korálky asi na ${f.hour}. hodině.`,
};
