import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many, sizeMm } = numbersIn('pl');

/** Before the work begins: swatch, hand, how to read, signs. */
export const before: PageWords['booklet']['before'] = {
  swatch: 'Najpierw zrobić próbkę',
  swatchText: (f) =>
    `Zrobić w jednym kolorze 10 okrążeń próbki, która ma ${many(f.wedges, { one: 'klin', few: 'kliny', many: 'klinów', other: 'klina' })}, z własnych koralików i nici, własnym szydełkiem. Potrzeba na to ${count(f.beads)} koralików; początek, oczko i dodawanie pokazują rysunki w tej części. Rozłożyć próbkę płasko. Ten wzór zakłada oczka o szerokości ${fixed(f.widthMm, 2)} mm i okrążenia o wysokości ${fixed(f.heightMm, 2)} mm: po 5 okrążeniach próbka ma około ${sizeMm(f.five, 0)} mm szerokości, po 10 okrążeniach około ${sizeMm(f.ten, 0)} mm. Jeśli jest większa, wziąć cieńsze szydełko; jeśli mniejsza, grubsze. Jeśli wygina się w miseczkę, oczka są za wąskie na swoją wysokość; jeśli faluje, są za szerokie.`,
  hand: 'Która ręka i która strona',
  start: 'Jak zacząć i jak robić dalej',
  read: 'Jak czytać listę okrążeń',
  string: 'Jak nawlekać',
  signs: 'Znaki i skróty',
  sign: 'Znak',
  meaning: 'Znaczenie',
  table: (second) => [
    ['Okr. 7', 'okrążenie 7, licząc od środka'],
    ['A, B', 'koraliki: litery jak w tabeli materiałów i na schemacie'],
    ['3A', 'trzy oczka z koralikiem A; na liście nawlekania trzy koraliki A'],
    [`[A ${second}]`, 'dwa oczka wbite w to samo oczko poprzedniego okrążenia: dodawanie'],
    ['( ) x 7', 'to, co w nawiasie, 7 razy'],
    ['puste', 'oczko bez koralika'],
    ['psł.', 'półsłupek (w terminach USA single crochet)'],
  ],
  smallChart: (f) =>
    `Schemat ma tyle oczek, że na tym papierze jego litery są małe. Czytać w powiększeniu na ekranie albo zlecić wydruk strony ze schematem na ${f.paper}. Lista okrążeń mówi to samo słowami.`,
};
