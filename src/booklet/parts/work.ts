import { stopText } from '../../core/pages/lists/joins.js';
import { metresOf } from '../../core/pages/lists/stringing.js';
import { strungRounds } from '../../core/thread/strung-rounds.js';
import { panelJoins, panelLengths } from '../../core/thread/lengths.js';
import { tailCmOf } from '../../core/thread/need.js';
import { roundOfStitch, stitchesBefore, stitchesInRound } from '../../core/panel/shape.js';
import type { Length } from '../../core/thread/lengths.js';
import type { Flow } from '../flow.js';
import { handMark } from './hands.js';
import { partName, whereOf } from '../facts.js';
import type { BookletFacts } from '../facts.js';
import { addRounds } from './rounds.js';
import type { RoundPiece } from './rounds.js';
import { drawStop, stopMm } from './stop.js';
import { addStringing } from './stringing.js';
import { gramsOf } from './weight.js';

/** One length and the rounds that are worked from it, the first and last of them perhaps in part. */
export interface Stretch {
  readonly length: Length;
  readonly first: number;
  readonly last: number;
  readonly pieces: readonly RoundPiece[];
}

/** The lengths of a panel with the rounds that are worked from each, in the order of the work. */
export function stretchesOf({ pattern }: BookletFacts, panel: number): Stretch[] {
  const { shape } = pattern;
  return panelLengths(pattern, panel).map((length) => {
    const { fromStitch, toStitch } = length;
    const first = roundOfStitch(shape, fromStitch);
    const last = roundOfStitch(shape, Math.max(fromStitch, toStitch - 1));
    const pieces = Array.from({ length: last - first + 1 }, (_, n): RoundPiece => {
      const round = first + n;
      const before = stitchesBefore(shape, round);
      return {
        round,
        from: Math.max(0, fromStitch - before),
        to: Math.min(stitchesInRound(shape, round), toStitch - before),
      };
    });
    return { length, first, last, pieces };
  });
}

/** What is called `string-0-1` and `rounds-0-1` for `Flow.pageOf`. */
export const workMark = (what: 'string' | 'rounds', panel: number, length: number): string =>
  `${what}-${panel}-${length}`;

/** One panel in the order of the work: string a length, work its rounds, stop, string the next. */
export function addWork(flow: Flow, facts: BookletFacts, panel: number): void {
  const { pattern, words } = facts;
  const say = words.booklet.work;
  const heading = partName(facts, say.part, panel);
  const stretches = stretchesOf(facts, panel);
  const lengths = stretches.length;
  const joins = new Map(
    panelJoins(
      pattern,
      panel,
      stretches.map(({ length }) => length),
    ).map((join) => [join.length, join]),
  );
  const whereIn = (length: number) =>
    whereOf(facts, say.part, panel, lengths === 1 ? undefined : { length, lengths });
  flow.part({ heading, where: whereIn(1), mark: `work-${panel}` });
  /** The question that a drawing answers, and its page. */
  const shownOn = (name: 'new-length' | 'last-stitches'): string | undefined => {
    const page = flow.pageOf(handMark(name));
    return page === undefined ? undefined : `${words.hands[name].ask} ${say.seePage({ page })}`;
  };
  /** What is to be done before a length is worked, where one was worked before it. */
  const stopBefore = (length: number): string | undefined => {
    const join = joins.get(length);
    if (!join) return undefined;
    return `${stopText(join, pattern, words)} ${shownOn('new-length') ?? ''}`.trimEnd();
  };
  let total = 0;
  for (const { length, first, last, pieces } of stretches) {
    const { number } = length;
    const named = say.steps.string({ length: number, lengths });
    const stop = stopBefore(number);
    if (stop !== undefined) drawStop(flow, say.stop, stop);
    flow.where(whereIn(number));
    const before = flow.pages.length;
    if (length.beads === '') flow.titled(named, [words.booklet.stringing.nothing]);
    else {
      const strung = strungRounds(pattern.shape, pattern.panels[panel], length);
      const range = { first: strung.at(-1)!.round, last: strung[0].round };
      const about = [`${words.booklet.stringing.rounds(range)} ${weightText(facts, length)}`];
      const mark = workMark('string', panel, number);
      addStringing(flow, facts, panel, length, { heading: named, about, mark });
    }
    // A page on which one length ends and the next begins names neither.
    const begun = flow.pageOf(workMark('string', panel, number)) ?? before;
    if (number > 1 && begun === before)
      flow.pages[before - 1].where = whereOf(facts, say.part, panel);
    const heading = say.steps.rounds({ first, last });
    const mark = workMark('rounds', panel, number);
    const next = stopBefore(number + 1);
    // To be read before the last row is worked out to its end: it stands right below it.
    const endMm = next === undefined ? 0 : stopMm(flow, say.stop, next);
    total = addRounds(flow, facts, { panel, pieces, total, heading, mark, endMm });
  }
  const tailCm = tailCmOf(pattern.thread);
  flow.paragraph(
    shownOn('last-stitches') ?? words.rounds.end[pattern.shape.construction]({ tailCm }),
  );
}

/** Beads, grams (where they are known of every bead), metres. */
function weightText(facts: BookletFacts, length: Length): string {
  const { pattern, words } = facts;
  const say = words.booklet.stringing;
  const grams = gramsOf(facts, length.beads);
  const rest = { beads: length.beads.length, ...metresOf(pattern, length) };
  return grams === undefined ? say.noWeight(rest) : say.weight({ ...rest, grams });
}
