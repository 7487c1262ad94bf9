import type { PageWords } from '../index.js';

type Booklet = PageWords['booklet'];

export const enlarged: Booklet['enlarged'] = {
  part: 'Schemat powiększony',
  sheet: (f) => `arkusz ${f.sheet} z ${f.sheets}`,
  how: 'Plan pokazuje, gdzie leży ten arkusz. To, co jest za kropkowaną linią, jest też na sąsiednim arkuszu; trójkąt podaje jego numer. Litery są objaśnione na całym schemacie i w materiałach.',
};

export const wedgeChart: Booklet['wedgeChart'] = {
  part: 'Schemat klina',
  alike: (f) =>
    `Każdy z ${f.wedges} klinów jest taki sam, a to jeden z nich: każdy rząd przerobić w jego okrążeniu ${f.wedges} razy.`,
  how: (f) =>
    f.direction === 1
      ? 'Strona z koralikami, brzeg u góry. Rząd 1 to szpic, na środku panelu. Każdy rząd czytać od lewej do prawej. Czarny trójkąt na dwóch oczkach wskazuje oczko poniżej, w które wbija się oba.'
      : 'Strona z koralikami, brzeg u góry. Rząd 1 to szpic, na środku panelu. Każdy rząd czytać od prawej do lewej. Czarny trójkąt na dwóch oczkach wskazuje oczko poniżej, w które wbija się oba.',
};

export const level: Booklet['level'] = {
  title: 'Poziom projektu',
  intermediate: 'Średni: okrążenia, które się powtarzają; cienka nić, cienkie szydełko',
  complex: 'Złożony: obrazek robiony koralik po koraliku; cienka nić, cienkie szydełko',
};
