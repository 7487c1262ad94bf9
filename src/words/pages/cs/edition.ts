import type { PageWords } from '../index.js';

/** How one booklet of a pattern differs from another. */
export const edition: PageWords['booklet']['edition'] = {
  grey: 'pro černobílý tisk',
  large: 'velké písmo',
  left: 'pro levou ruku',
  right: 'pro pravou ruku',
  mirrored:
    'Toto vydání je pro jinou ruku, než pro kterou byl návod vytvořen: kola, seznamy a počty jsou stejné a obrázek vyjde zrcadlově. Písmena a číslice by v něm byly obráceně; pro ně je potřeba návod vytvořený pro tuto ruku.',
  fills:
    'Bez barev má každý korálek svou šedou, a je-li druhů korálků mnoho, také značku vedle písmene: dvě čárky, čtyři tečky, nebo nic. Barvu udávají názvy.',
};

/** What stands for pictures where the booklet is read aloud. */
export const alt: PageWords['booklet']['alt'] = {
  panel: (f) => `Obrázek uháčkovaného dílu, strana s korálky: ${f.panel}`,
  chart: 'Schéma dílu. Seznam kol říká totéž slovy a u materiálu jsou vysvětlena písmena.',
  lining: 'Střih podšívky ve skutečné velikosti, se značkami.',
};
