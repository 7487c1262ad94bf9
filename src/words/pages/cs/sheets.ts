import type { PageWords } from '../index.js';

type Booklet = PageWords['booklet'];

export const enlarged: Booklet['enlarged'] = {
  part: 'Zvětšené schéma',
  sheet: (f) => `list ${f.sheet} z ${f.sheets}`,
  how: 'Plánek ukazuje, kde tento list leží. Co je za tečkovanou čárou, stojí i na sousedním listu; trojúhelník udává jeho číslo. Písmena jsou vysvětlena u celého schématu a u materiálu.',
};

export const wedgeChart: Booklet['wedgeChart'] = {
  part: 'Schéma klínu',
  alike: (f) =>
    `Všechny klíny (${f.wedges}) jsou stejné a toto je jeden z nich: každý řádek uháčkujte v jeho kole ${f.wedges}krát.`,
  how: (f) =>
    f.direction === 1
      ? 'Strana s korálky, okraj nahoře. Řádek 1 je špička, uprostřed dílu. Každý řádek čtěte zleva doprava. Černý trojúhelník na dvou očkách ukazuje na očko pod nimi, do kterého se obě uháčkují.'
      : 'Strana s korálky, okraj nahoře. Řádek 1 je špička, uprostřed dílu. Každý řádek čtěte zprava doleva. Černý trojúhelník na dvou očkách ukazuje na očko pod nimi, do kterého se obě uháčkují.',
};

export const level: Booklet['level'] = {
  title: 'Náročnost',
  intermediate: 'Střední: kola, která se opakují; jemná nit, tenký háček',
  complex: 'Náročné: obrázek háčkovaný korálek po korálku; jemná nit, tenký háček',
};
