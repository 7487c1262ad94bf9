import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, form, sizeMm } = numbersIn('cs');

/** Before the work begins: swatch, hand, how to read, signs. */
export const before: PageWords['booklet']['before'] = {
  swatch: 'Nejdřív uháčkujte vzorek',
  swatchText: (f) =>
    `Uháčkujte jednou barvou 10 kol o ${f.wedges} ${form(f.wedges, { one: 'klínu', other: 'klínech' })} ze svých korálků a své nitě svým háčkem. Je k tomu potřeba ${count(f.beads)} korálků; začátek, očko a přidání ukazují obrázky této části. Vzorek položte naplocho. Tento návod počítá s očky širokými ${fixed(f.widthMm, 2)} mm a koly vysokými ${fixed(f.heightMm, 2)} mm: po 5 kolech měří vzorek na šířku asi ${sizeMm(f.five, 0)} mm, po 10 kolech asi ${sizeMm(f.ten, 0)} mm. Je-li váš větší, vezměte tenčí háček; je-li menší, silnější. Když se prohýbá do misky, jsou očka na svou výšku příliš úzká; když se vlní, jsou příliš široká.`,
  hand: 'Která ruka a která strana',
  start: 'Jak začít a jak pokračovat',
  read: 'Jak číst seznam kol',
  string: 'Jak navlékat',
  signs: 'Značky a zkratky',
  sign: 'Značka',
  meaning: 'Význam',
  table: (second) => [
    ['K7', 'kolo 7, počítáno od středu'],
    ['A, B', 'korálky: písmena jako v tabulce materiálu a ve schématu'],
    ['3A', 'tři očka s korálkem A; v seznamu navlékání tři korálky A'],
    [`[A ${second}]`, 'dvě očka uháčkovaná do jednoho a téhož očka pod nimi: přidání'],
    ['( ) x 7', 'co stojí v závorkách, 7krát'],
    ['holé', 'očko bez korálku'],
    ['KS', 'krátký sloupek'],
  ],
  smallChart: (f) =>
    `Schéma má tolik oček, že jsou jeho písmena na tomto papíru malá. Čtěte ho zvětšené na obrazovce, nebo si tuto stranu nechte vytisknout na papír ${f.paper}. Seznam kol říká totéž slovy.`,
};
