import { drawText } from '../../core/draw/text.js';
import type { TextStyle } from '../../core/draw/text.js';
import { perGramOf } from '../../core/texts/materials.js';
import { runPieces } from '../../core/texts/lines.js';
import { joinText, metresOf, strungRounds, strungText } from '../../core/texts/stringing.js';
import { panelJoins, panelLengths } from '../../core/thread/lengths.js';
import type { Length } from '../../core/thread/lengths.js';
import { sides } from '../../words/pages/pairs.js';
import type { Flow } from '../flow.js';
import { accent, filled, lineMm } from '../look.js';
import type { Look } from '../look.js';
import { partName, whereOf } from './facts.js';
import type { BookletFacts } from './facts.js';

const gapMm = 8;
const boxMm = ({ body }: Look): number => 0.76 * body.sizeMm;
const indentMm = (look: Look): number => boxMm(look) + 2.6;

/** One line of a column: the head of a round, or runs with a box to tick. */
type Line =
  | {
      /** `also`: the same in the second language, below it. */
      readonly kind: 'round' | 'also';
      readonly text: string;
      readonly total: string;
      readonly ruled: boolean;
    }
  | { readonly kind: 'runs'; readonly text: string };

/** The stringing list of one panel, each length from a page of its own. */
export function addStringing(flow: Flow, facts: BookletFacts, panel: number): void {
  const { pattern, words } = facts;
  const { stringing: part } = words.booklet.parts;
  const say = words.booklet.stringing;
  const all = panelLengths(pattern, panel);
  const lengths = all.filter(({ beads }) => beads !== '');
  const name = partName(facts, part, panel);
  if (lengths.length === 0) {
    flow.part({ heading: name, where: whereOf(facts, part, panel) });
    flow.paragraph(say.nothing);
    return;
  }
  const joins = new Map(panelJoins(pattern, panel, all).map((join) => [join.length, join]));
  for (const length of lengths) {
    const of = { length: length.number, lengths: all.length };
    const heading = all.length === 1 ? name : words.lists.aside(name, words.booklet.length(of));
    const bookmark = all.length === 1 ? { name } : { name: words.booklet.length(of), group: name };
    flow.part({ heading, where: whereOf(facts, part, panel, of), bookmark });
    const rounds = strungRounds(pattern.shape, pattern.panels[panel], length);
    const join = joins.get(length.number);
    const about = [
      say.rounds({ first: rounds.at(-1)!.round, last: rounds[0].round }),
      weightText(facts, length),
      ...(join ? [joinText(join, words)] : []),
    ];
    flow.paragraph(about.join(' '));
    flow.paragraph(`${say.first} ${flow.look.large ? say.tickOne : say.tick}`);
    drawColumns(flow, linesOfLength(flow, facts, panel, length));
  }
}

/** Beads, grams (where they are known of every bead), metres. */
function weightText(facts: BookletFacts, length: Length): string {
  const { pattern, words } = facts;
  const say = words.booklet.stringing;
  const grams = gramsOf(facts, length.beads);
  const rest = { beads: length.beads.length, ...metresOf(pattern, length) };
  return grams === undefined
    ? say.noWeight(rest)
    : `${say.weight({ ...rest, grams })} ${say.weigh}`;
}

/** What beads weigh; undefined where it is not known of every one. */
function gramsOf({ pattern }: BookletFacts, letters: string): number | undefined {
  const perGram = new Map(pattern.beads.map((bead) => [bead.letter, perGramOf(bead)]));
  let grams: number | undefined = 0;
  for (const letter of letters) {
    const per = perGram.get(letter);
    grams = plus(grams, per === undefined ? undefined : 1 / per);
  }
  return grams;
}

const plus = (one: number | undefined, other: number | undefined): number | undefined =>
  one === undefined || other === undefined ? undefined : one + other;

/** Two columns, or one in large print. */
const columnMm = ({ look, wide }: Flow): number => (look.large ? wide : (wide - gapMm) / 2);

function linesOfLength(flow: Flow, facts: BookletFacts, panel: number, length: Length): Line[] {
  const { pattern, words } = facts;
  const say = words.booklet.stringing;
  const of = pattern.panels[panel];
  let grams: number | undefined = 0;
  return strungRounds(pattern.shape, of, length).flatMap(({ round, marks, beads, total }) => {
    const part = marks.length < of.rounds[round - 1].length;
    grams = plus(grams, gramsOf(facts, beads));
    const body = runPieces(strungText(marks, round));
    const runs = filled(body, flow.look.body, columnMm(flow) - indentMm(flow.look));
    const said = sides(say.round({ round, beads: beads.length, part }));
    const totals = sides(grams === undefined ? say.total(total) : say.totalGrams({ total, grams }));
    return [
      ...said.map((text, side) => ({
        kind: side === 0 ? ('round' as const) : ('also' as const),
        text,
        total: totals[side] ?? totals[0],
        ruled: side === said.length - 1,
      })),
      ...runs.map((text) => ({ kind: 'runs' as const, text })),
    ];
  });
}

const roundGapMm = 1.4;
/** Rounds of no more lines of runs are not broken. */
const mostWhole = 6;

/** Down the left column, then the right one, then on to the next page. */
function drawColumns(flow: Flow, lines: readonly Line[]): void {
  const { look } = flow;
  const head = { ...look.small, face: look.fonts.bold, ink: accent };
  const step = lineMm(look.body) + 0.5;
  const wide = columnMm(flow);
  const heightFrom = (n: number) =>
    lines.slice(n).reduce((sum, { kind }) => sum + step + (kind === 'round' ? roundGapMm : 0), 0);
  /** Where columns end: where the rest has room on the page, both are about as long. */
  const endOf = (top: number, n: number) =>
    look.large
      ? look.bottom
      : Math.min(look.bottom, top + heightFrom(n) / 2 + 3 * step + roundGapMm);
  let top = flow.y;
  let end = endOf(top, 0);
  let column = 0;
  lines.forEach((line, n) => {
    // Short rounds stay whole; the head of a long one stays with its first runs.
    const rest = lines.slice(n + 1).findIndex(({ kind }) => kind === 'round');
    const runs = rest < 0 ? lines.length - n - 1 : rest;
    const also = lines[n + 1]?.kind === 'also' ? 1 : 0;
    const held = runs <= mostWhole + also ? runs : 1 + also;
    const starts = line.kind === 'round';
    const needed = starts ? (1 + held) * step + roundGapMm : step;
    if (flow.y + needed > (starts && column === 0 ? end : look.bottom) + 1e-6) {
      if (column === 0 && !look.large) column = 1;
      else {
        flow.next();
        top = flow.y;
        end = endOf(top, n);
        column = 0;
      }
      flow.y = top;
    }
    if (line.kind === 'round' && flow.y > top) flow.y += roundGapMm;
    drawLine(flow, line, head, look.left + column * (wide + gapMm), flow.y + 0.76 * step);
    flow.y += step;
  });
}

/** One line of a column, its baseline at `base`. */
function drawLine(flow: Flow, line: Line, head: TextStyle, left: number, base: number): void {
  const { body } = flow.look;
  const right = left + columnMm(flow);
  if (line.kind !== 'runs') {
    flow.draw((surface) => {
      drawText(surface, `${line.text} `, head, left, base);
      drawText(surface, line.total, head, right, base, 'end');
    }, flow.section.add('P'));
    if (!line.ruled) return;
    flow.draw((surface) => {
      const rule = [[left, base + 1.3, right, base + 1.3]];
      surface.strokePath(rule, { stroke: '#b9c6ca', widthMm: 0.2 });
    });
    return;
  }
  flow.draw((surface) => {
    const side = boxMm(flow.look);
    const [top, end] = [base - side + 0.15, left + side];
    const box = [left, top, end, top, end, top + side, left, top + side];
    surface.strokePath([box], { stroke: '#4a4a4a', widthMm: 0.25, closed: true });
  });
  flow.draw(
    (surface) => drawText(surface, line.text, body, left + indentMm(flow.look), base),
    flow.section.add('P'),
  );
}
