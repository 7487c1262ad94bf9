import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { many, short, sizeMm } = numbersIn('pl');
const clockwise = (direction: 1 | -1): string =>
  direction === 1 ? 'zgodnie z ruchem wskazówek zegara' : 'przeciwnie do ruchu wskazówek zegara';
const face = (beadsFace: 'away' | 'toward'): string =>
  beadsFace === 'away'
    ? 'koraliki po stronie odwróconej od osoby szydełkującej'
    : 'koraliki po stronie zwróconej do osoby szydełkującej';
const hand = (one: 'right' | 'left'): string => (one === 'right' ? 'prawa ręka' : 'lewa ręka');

/** How many wedges, rounds and stitches a panel has. */
export const shapeCounts = (f: { wedges: number; rounds: number; stitches: number }): string[] => [
  // M: klin.
  many(f.wedges, { one: 'klin', few: 'kliny', many: 'klinów', other: 'klina' }),
  many(f.rounds, {
    one: 'okrążenie',
    few: 'okrążenia',
    many: 'okrążeń',
    other: 'okrążenia',
  }),
  many(f.stitches, { one: 'oczko', few: 'oczka', many: 'oczek', other: 'oczka' }),
];

/** What stands on charts. */
export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title}: ${f.panel}`),
  wedgesTitle: (f) =>
    f.panel === undefined ? `${f.title}: klin po klinie` : `${f.title}: ${f.panel}, klin po klinie`,
  shapeLine: (f) =>
    [
      ...shapeCounts(f),
      many(f.beads, { one: 'koralik', few: 'koraliki', many: 'koralików', other: 'koralika' }),
      `szerokość ${sizeMm(f.across, 1)} mm`,
    ].join('  ·  '),
  workLine: (f) =>
    [
      `${f.hand === 'right' ? 'Prawa' : 'Lewa'} ręka, ${f.beadsFace === 'away' ? 'koraliki za robótką' : 'koraliki przed robótką'}`,
      {
        first: 'dodawanie w pierwszym oczku klina',
        middle: 'dodawanie w środkowym oczku klina',
        last: 'dodawanie w ostatnim oczku klina',
      }[f.increase],
      // L: przesunięcie, how far a stitch sits behind the one below.
      `przesunięcie ${short(f.lean, 3)} oczka`,
      f.construction === 'spiral' ? 'okrążenia spiralą' : 'okrążenia zamykane',
    ].join('  ·  '),
  start: 'początek',
  direction: 'kierunek pracy',
  faceNote: (f) =>
    `To jest strona z koralikami, zewnętrzna strona portmonetki. Tu okrążenia biegną ${clockwise(f.direction)} (${hand(f.hand)}, ${face(f.beadsFace)}).`,
  workerNote: (f) =>
    f.beadsFace === 'away'
      ? `Podczas szydełkowania widać drugą stronę; tam okrążenia biegną ${clockwise(f.direction === 1 ? -1 : 1)}.`
      : 'Podczas szydełkowania widać tę samą stronę, bo koraliki leżą po stronie zwróconej do osoby szydełkującej.',
  construction: {
    spiral: 'Spirala: każde okrążenie przechodzi w następne bez zamykania.',
    joined:
      'Okrążenia zamykane: każde okrążenie zamyka się oczkiem zamykającym, którego nie narysowano.',
  },
  marks: {
    pair: 'Dodawanie: dwa oczka wbite w to samo oczko.',
    number: 'Numer okrążenia, przed jego pierwszym oczkiem.',
    tick: 'Kreski na brzegu: co 10. oczko ostatniego okrążenia, licząc od pierwszego.',
    five: 'Co 5. okrążenie: ciemny numer, na zewnątrz gruba linia.',
    startLine: 'Linia początku: tu zaczyna się każde okrążenie.',
    join: 'Łączenie: od tego oczka zaczyna się nowy odcinek nici.',
  },
  larger: 'Większe litery: klin po klinie w wedges.svg i na powiększonych arkuszach wzoru w PDF.',
  bare: 'Oczko puste, bez koralika',
  undecided: 'Jeszcze nieustalone',
  wedge: (f) => `Klin ${f.wedge}`,
  wedgeWay: (f) =>
    f.direction === 1
      ? 'Każdy rząd czytać od lewej do prawej'
      : 'Każdy rząd czytać od prawej do lewej',
  pageOf: (f) => `strona ${f.page} z ${f.pages}`,
};
