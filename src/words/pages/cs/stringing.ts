import type { PageWords } from '../index.js';

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order:
    'Korálky navlékejte v pořadí seznamu navlékání, shora dolů a v každém řádku zleva: jako první jde na nit kolo úplně na vnějším okraji. Poslední korálek na niti se uháčkuje jako první.',
  reading:
    'Čtení: 3A jsou tři korálky A. Část v kulatých závorkách, za kterou stojí x 3, se navlékne 3krát. U každého kola stojí jeho korálky a součet na niti, když je jeho řádek navlečený: počítejte na konci každého řádku.',
  bare: 'Holá očka korálek nepotřebují a v seznamu navlékání nejsou.',
  onBall:
    'Navlékejte na nit z klubka, s jejím koncem v jehle na korálky, a nit neustřihněte, dokud není úsek uháčkovaný.',
  stop: (f) =>
    `Přestaňte v ${f.atRoundEnd ? `posledním očku kola ${f.round}` : `očku ${f.stitch} kola ${f.round}`}, před posledním protažením nitě. Smyčky zajistěte značkovačem, nit ustřihněte na ${f.tailCm} cm, navlékněte úsek ${f.next} a napojte ho v tomto očku, na straně s korálky asi na ${f.hour}. hodině.`,
};
