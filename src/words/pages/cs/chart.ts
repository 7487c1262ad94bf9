import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { many, short, sizeMm } = numbersIn('cs');
const clockwise = (direction: 1 | -1): string =>
  direction === 1 ? 'po směru hodinových ručiček' : 'proti směru hodinových ručiček';
const face = (beadsFace: 'away' | 'toward'): string =>
  beadsFace === 'away' ? 'korálky směrem od vás' : 'korálky směrem k vám';
const hand = (one: 'right' | 'left'): string => (one === 'right' ? 'pravá ruka' : 'levá ruka');

/** How many wedges, rounds and stitches a panel has. */
export const shapeCounts = (f: { wedges: number; rounds: number; stitches: number }): string[] => [
  // M: klín or díl.
  many(f.wedges, { one: 'klín', few: 'klíny', other: 'klínů' }),
  // M: kolo or řada.
  many(f.rounds, { one: 'kolo', few: 'kola', other: 'kol' }),
  many(f.stitches, { one: 'očko', few: 'očka', other: 'oček' }),
];

/** What stands on charts. */
export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title}: ${f.panel}`),
  wedgesTitle: (f) =>
    f.panel === undefined ? `${f.title}: klín po klínu` : `${f.title}: ${f.panel}, klín po klínu`,
  shapeLine: (f) =>
    [
      ...shapeCounts(f),
      many(f.beads, { one: 'korálek', few: 'korálky', other: 'korálků' }),
      `šířka ${sizeMm(f.across, 1)} mm`,
    ].join('  ·  '),
  workLine: (f) =>
    [
      `${f.hand === 'right' ? 'Pravá' : 'Levá'} ruka, ${face(f.beadsFace)}`,
      {
        first: 'přidání v prvním očku klínu',
        middle: 'přidání v prostředním očku klínu',
        last: 'přidání v posledním očku klínu',
      }[f.increase],
      // L: posun, how far a stitch sits behind the one below.
      `posun ${short(f.lean, 3)} očka`,
      f.construction === 'spiral' ? 've spirále' : 'uzavíraná kola',
    ].join('  ·  '),
  start: 'začátek',
  direction: 'směr práce',
  faceNote: (f) =>
    `Toto je strana s korálky, vnější strana peněženky. Tady práce běží ${clockwise(f.direction)} (${hand(f.hand)}, ${face(f.beadsFace)}).`,
  workerNote: (f) =>
    f.beadsFace === 'away'
      ? `Při háčkování vidíte druhou stranu, kde práce běží ${clockwise(f.direction === 1 ? -1 : 1)}.`
      : 'Při háčkování vidíte právě tuto stranu, protože korálky leží směrem k vám.',
  construction: {
    spiral: 'Spirála: každé kolo přechází bez uzavření do dalšího.',
    joined: 'Uzavíraná kola: každé kolo se uzavře pevným očkem, které není nakresleno.',
  },
  marks: {
    pair: 'Přidání: dvě očka z jednoho.',
    number: 'Číslo kola, před jeho prvním očkem.',
    tick: 'Čárky na okraji: každé 10. očko posledního kola, počítáno od prvního.',
    five: 'Každé 5. kolo: tmavé číslo, vně tlustá čára.',
    startLine: 'Čára začátku: tady začíná každé kolo.',
    join: 'Napojení: tímto očkem začíná nový úsek nitě.',
  },
  larger: 'Větší písmena: po klínech ve wedges.svg a na zvětšených listech návodu v PDF.',
  bare: 'Holé očko, bez korálku',
  undecided: 'Ještě nerozhodnuto',
  wedge: (f) => `Klín ${f.wedge}`,
  wedgeWay: (f) =>
    f.direction === 1 ? 'Každý řádek čtěte zleva doprava' : 'Každý řádek čtěte zprava doleva',
  pageOf: (f) => `strana ${f.page} z ${f.pages}`,
};
