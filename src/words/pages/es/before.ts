import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, sizeMm } = numbersIn('es');

export const before: PageWords['booklet']['before'] = {
  swatch: 'Tejer primero una muestra',
  swatchText: (f) =>
    `Tejer 10 vueltas de ${f.wedges} sectores en un solo color con los mismos abalorios, el mismo hilo y el mismo ganchillo que se van a usar. Son ${count(f.beads)} abalorios; los dibujos de esta parte muestran el comienzo, el punto y el aumento. Poner la muestra bien plana. Este patrón se basa en puntos de ${fixed(f.widthMm, 2)} mm de ancho y vueltas de ${fixed(f.heightMm, 2)} mm de alto: después de 5 vueltas la muestra mide unos ${sizeMm(f.five, 0)} mm de diámetro; después de 10 vueltas, unos ${sizeMm(f.ten, 0)} mm. Si sale más grande, usar un ganchillo más fino; si sale más pequeña, uno más grueso. Si se ahueca como un cuenco, los puntos son demasiado estrechos para su altura; si se ondula, son demasiado anchos.`,
  hand: 'Con qué mano y por qué cara',
  start: 'Cómo empezar y seguir',
  read: 'Cómo leer la lista de vueltas',
  string: 'Cómo ensartar',
  signs: 'Signos y abreviaturas',
  sign: 'Signo',
  meaning: 'Significado',
  table: (second) => [
    ['V7', 'vuelta 7, contada desde el centro'],
    // H: abalorio in Spain, mostacilla or chaquira in Latin America.
    [
      'A, B',
      'los abalorios (en Latinoamérica, mostacillas o chaquiras): letras como en la tabla de materiales y en el esquema',
    ],
    ['3A', 'tres puntos con el abalorio A; en la lista de ensartado, tres abalorios A'],
    [`[A ${second}]`, 'dos puntos tejidos en un mismo punto de abajo: un aumento'],
    ['( ) x 7', 'lo que está entre paréntesis, 7 veces'],
    ['sin', 'un punto sin abalorio'],
    ['pb', 'punto bajo; en parte de Latinoamérica, medio punto (mp)'],
    // M: punto raso; punto deslizado or punto pasado in Latin America.
  ],
  smallChart: (f) =>
    `El esquema tiene tantos puntos que sus letras salen pequeñas en este papel. Leerlo ampliado en una pantalla o encargar la impresión de esa página en ${f.paper}. La lista de vueltas dice lo mismo con palabras.`,
};
