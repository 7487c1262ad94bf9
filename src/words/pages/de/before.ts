import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, sizeMm } = numbersIn('de');

/** Before the work begins: swatch, hand, how to read, signs. */
export const before: PageWords['booklet']['before'] = {
  swatch: 'Zuerst eine Probe häkeln',
  swatchText: (f) =>
    `Mit den eigenen Perlen, dem eigenen Garn und der eigenen Nadel 10 Runden mit ${f.wedges} Segmenten in einer Farbe häkeln. Das sind ${count(f.beads)} Perlen; Anfang, Masche und Zunahme zeigen die Zeichnungen dieses Teils. Die Probe flach hinlegen. Diese Anleitung rechnet mit ${fixed(f.widthMm, 2)} mm breiten Maschen und ${fixed(f.heightMm, 2)} mm hohen Runden: Nach 5 Runden ist die Probe etwa ${sizeMm(f.five, 0)} mm breit, nach 10 Runden etwa ${sizeMm(f.ten, 0)} mm. Ist sie größer, eine dünnere Nadel nehmen; ist sie kleiner, eine dickere. Wölbt sie sich zur Schale, sind die Maschen für ihre Höhe zu schmal; wellt sie sich, sind sie zu breit.`,
  hand: 'Welche Hand und welche Seite',
  start: 'Wie man beginnt und weiterhäkelt',
  read: 'Wie die Rundenliste zu lesen ist',
  string: 'Wie man auffädelt',
  signs: 'Zeichen und Abkürzungen',
  sign: 'Zeichen',
  meaning: 'Bedeutung',
  table: (second) => [
    ['Rd 7', '7. Runde, von der Mitte aus gezählt'],
    ['A, B', 'die Perlen: Buchstaben wie in der Materialtabelle und im Zählplan'],
    ['3A', 'drei Maschen mit Perle A; in der Auffädelliste drei Perlen A'],
    [`[A ${second}]`, 'zwei Maschen, in ein und dieselbe Masche darunter gehäkelt: eine Zunahme'],
    ['( ) x 7', 'was in den Klammern steht, 7-mal'],
    ['leer', 'eine Masche ohne Perle'],
    ['fM', 'feste Masche'],
  ],
  smallChart: (f) =>
    `Der Zählplan hat so viele Maschen, dass seine Buchstaben auf diesem Papier klein sind. Am Bildschirm vergrößert lesen oder die Seite des Zählplans auf ${f.paper} drucken lassen. Die Rundenliste sagt dasselbe in Worten.`,
};
