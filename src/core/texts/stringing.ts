import type { Words } from '../../words/index.js';
import { bareMark, undecidedMark } from '../pattern/schema.js';
import type { Panel, Pattern } from '../pattern/schema.js';
import { beadsOnly, lettersInWorkingOrder } from '../pattern/stitches.js';
import { csvText } from './csv.js';
import { listLine, wrapped } from './lines.js';
import { headingText } from './rounds.js';
import { expandRuns, folded, runsOf, wedgesOf } from './runs.js';
import type { Run } from './runs.js';

/** Beads on one thread above which it tangles and wears (common practice, no source). */
const mostOnOneThread = 2000;

/** Columns of stringing.csv. */
export const stringingColumns = ['length', 'order', 'round', 'letter', 'count', 'total'] as const;

/** The beads of one round as they go on the thread. */
export interface StrungRound {
  readonly round: number;
  /** Letters, first bead strung first: the reverse of working order. */
  readonly beads: string;
  /** Beads on the thread when this round is strung. */
  readonly total: number;
}

/** The stringing order of a panel: last round first, reversed; rounds without beads left out. */
export function strungRounds(panel: Pick<Panel, 'rounds'>): StrungRound[] {
  const strung: StrungRound[] = [];
  let total = 0;
  for (let r = panel.rounds.length; r >= 1; r--) {
    const beads = Array.from(beadsOnly(panel.rounds[r - 1]))
      .reverse()
      .join('');
    total += beads.length;
    if (beads) strung.push({ round: r, beads, total });
  }
  return strung;
}

/**
 * stringing.csv: what goes on the thread, first bead strung first, a row a run, runs cut at the
 * ends of rounds. `order` is the row within the length and `total` the beads strung so far in it;
 * for now one length holds the panel.
 */
export function stringingCsv(pattern: Pick<Pattern, 'panels'>, panelIndex: number): string {
  const rows: (string | number)[][] = [];
  for (const { round, beads, total } of strungRounds(pattern.panels[panelIndex])) {
    let soFar = total - beads.length;
    for (const { letter, count } of runsOf(beads)) {
      soFar += count;
      rows.push([1, rows.length + 1, round, letter, count, soFar]);
    }
  }
  return csvText(stringingColumns, rows);
}

/** The letters that stringing.csv stands for, first bead strung first. */
export function expandStringing(csv: string): string {
  const [header, ...rows] = csv.trimEnd().split('\n');
  const columns = header.split(',');
  const letterAt = columns.indexOf('letter');
  const countAt = columns.indexOf('count');
  const runs = rows.map((row): Run => {
    const cells = row.split(',');
    return { letter: cells[letterAt], count: Number(cells[countAt]) };
  });
  return expandRuns(runs);
}

/** stringing.txt: how to string, then one line a round, the last round first. */
export function stringingText(pattern: Pattern, panelIndex: number, words: Words): string {
  const { shape } = pattern;
  const panel = pattern.panels[panelIndex];
  const strung = strungRounds(panel);
  const say = words.stringing;
  const marks = lettersInWorkingOrder(panel);
  const open = marks.split(undecidedMark).length - 1;
  const total = strung.at(-1)?.total ?? 0;
  const beads = words.lists.beads(total);
  const paragraphs = [
    say.order({
      lastRound: strung[0]?.round ?? shape.rounds,
      firstRound: strung.at(-1)?.round ?? 1,
    }),
    say.reading,
    total > mostOnOneThread ? say.tooLong(beads) : say.lengthNote(beads),
    ...(marks.includes(bareMark) ? [say.bare] : []),
    ...(open > 0 ? [words.lists.openLeft(open)] : []),
  ];
  const lines = strung.map(({ round, beads: letters, total }) => {
    const count = letters.length === 1 ? '1 bead' : `${letters.length} beads`;
    const head = `R${round} (${count}, total ${total}):`;
    return listLine(head, strungText(panel.rounds[round - 1], round));
  });
  const header = [
    headingText(pattern, panelIndex, say.title, words),
    ...paragraphs.map((paragraph) => wrapped(paragraph)),
  ].join('\n\n');
  return `${header}\n\n${lines.join('\n')}\n`;
}

/** The runs of a round, reversed; folded by wedges where all are equal and that is shorter. */
function strungText(marks: string, r: number): string {
  const reversed = Array.from(marks).reverse().join('');
  const say = (part: string) =>
    runsOf(beadsOnly(part))
      .map(({ letter, count }) => `${count}${letter}`)
      .join(' ');
  const plain = say(reversed);
  const [first, ...rest] = folded(wedgesOf(reversed, r));
  if (rest.length > 0 || first.times === 1) return plain;
  const short = `(${say(first.item)}) x ${first.times}`;
  return short.length < plain.length ? short : plain;
}
