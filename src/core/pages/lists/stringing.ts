import type { Words } from '../../../words/index.js';
import { bareMark, undecidedMark } from '../../pattern/marks.js';
import type { Panel, Pattern } from '../../pattern/pattern.js';
import { backwards, beadsOnly, lettersInWorkingOrder } from '../../pattern/stitches.js';
import { panelJoins, panelLengths } from '../../thread/lengths.js';
import { strungRounds } from '../../thread/strung-rounds.js';
import type { Strung } from '../../thread/strung-rounds.js';
import type { Length } from '../../thread/lengths.js';
import { lengthThread } from '../../thread/need.js';
import { csvText } from '../../csv.js';
import { joiningText, joinText } from './joins.js';
import { listLine, wrapped } from './lines.js';
import { headingText } from './rounds.js';
import { expandRuns, folded, runsOf, wedgesOf } from './runs.js';
import type { Run } from './runs.js';

/** Columns of stringing.csv. */
export const stringingColumns = ['length', 'order', 'round', 'letter', 'count', 'total'] as const;

/**
 * stringing.csv: what goes on the thread, first bead strung first, a row a run, runs cut at the
 * ends of rounds. The lengths stand in the order in which they are worked, each reversed inside
 * itself. `order` is the row within the length and `total` the beads strung so far in it.
 */
export function stringingCsv(pattern: Strung, panelIndex: number): string {
  const rows: (string | number)[][] = [];
  for (const length of panelLengths(pattern, panelIndex)) {
    let order = 0;
    for (const line of strungRounds(pattern.shape, pattern.panels[panelIndex], length)) {
      let soFar = line.total - line.beads.length;
      for (const { letter, count } of runsOf(line.beads)) {
        soFar += count;
        rows.push([length.number, ++order, line.round, letter, count, soFar]);
      }
    }
  }
  return csvText(stringingColumns, rows);
}

/**
 * The letters that stringing.csv stands for, as if all lengths were one: the last length first,
 * and so the reverse of working order.
 */
export function expandStringing(csv: string): string {
  const [header, ...rows] = csv.trimEnd().split('\n');
  const columns = header.split(',');
  const lengthAt = columns.indexOf('length');
  const letterAt = columns.indexOf('letter');
  const countAt = columns.indexOf('count');
  const runsOfLength = new Map<string, Run[]>();
  for (const row of rows) {
    const cells = row.split(',');
    const runs = runsOfLength.get(cells[lengthAt]) ?? [];
    runs.push({ letter: cells[letterAt], count: Number(cells[countAt]) });
    runsOfLength.set(cells[lengthAt], runs);
  }
  return [...runsOfLength.values()].reverse().map(expandRuns).join('');
}

/** stringing.txt: how to string, then the lengths, each one line a round, the last round first. */
export function stringingText(pattern: Pattern, panelIndex: number, words: Words): string {
  const panel = pattern.panels[panelIndex];
  const lengths = panelLengths(pattern, panelIndex);
  const say = words.stringing;
  const marks = lettersInWorkingOrder(panel);
  const open = marks.split(undecidedMark).length - 1;
  const beads = words.lists.beads(beadsOnly(marks).length);
  const several = lengths.length > 1;
  const paragraphs = [
    say.order,
    say.reading,
    several
      ? say.severalLengths({ beads, lengths: lengths.length })
      : say.lengthNote({ beads, ...metresOf(pattern, lengths[0]) }),
    say.onBall,
    ...(several ? [joiningText(pattern, words)] : []),
    ...(marks.includes(bareMark) ? [say.bare] : []),
    ...(open > 0 ? [words.lists.openLeft(open)] : []),
    say.care,
  ];
  const joins = new Map(
    (several ? panelJoins(pattern, panelIndex, lengths) : []).map((join) => [join.length, join]),
  );
  const header = [
    headingText(pattern, panelIndex, say.title, words),
    ...paragraphs.map((paragraph) => wrapped(paragraph)),
  ].join('\n\n');
  const parts = lengths.map((length) => {
    const lines = linesOf(pattern, panel, length, words);
    if (!several) return lines.join('\n');
    const strung = strungRounds(pattern.shape, panel, length);
    const facts = {
      number: length.number,
      lengths: lengths.length,
      beads: words.lists.beads(length.beads.length),
      ...metresOf(pattern, length),
      lastRound: strung[0]?.round ?? 0,
      firstRound: strung.at(-1)?.round ?? 0,
    };
    const join = joins.get(length.number);
    const head = join ? `${say.length(facts)} ${joinText(join, words)}` : say.length(facts);
    return `${wrapped(head)}\n\n${lines.join('\n')}`;
  });
  return `${[header, ...parts].join('\n\n')}\n`;
}

/** Metres of strung beads on a length, and of thread that working it takes; both estimates. */
export function metresOf(pattern: Pattern, length: Length): { metres: number; threadM: number } {
  return {
    metres: length.strungMm / 1000,
    threadM: Math.ceil(lengthThread(pattern, length).totalMm / 100 - 1e-6) / 10,
  };
}

function linesOf(pattern: Pattern, panel: Panel, length: Length, words: Words): string[] {
  return strungRounds(pattern.shape, panel, length).map(({ round, marks, beads, total }) => {
    const whole = marks.length === panel.rounds[round - 1].length;
    const part = whole ? '' : `${words.stringing.part}, `;
    const count = words.lists.beads(beads.length).replace(',', '');
    const head = `R${round} (${part}${count}, total ${total}):`;
    return listLine(head, strungText(marks, round));
  });
}

/** The runs of a round, reversed; folded by wedges where all are equal and that is shorter. */
export function strungText(marks: string, r: number): string {
  const reversed = backwards(marks);
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
