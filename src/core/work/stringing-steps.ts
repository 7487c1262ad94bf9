import { perGramOf } from '../beads/amounts.js';
import { strungRounds } from '../thread/strung-rounds.js';
import type { Strung } from '../thread/strung-rounds.js';
import { beadLengths, panelLengths } from '../thread/lengths.js';
import type { Length } from '../thread/lengths.js';
import { lengthThread } from '../thread/need.js';

/** A run of more beads than this is strung in tens, as in the printed list (common practice, no source). */
export const longRun = 20;

/** One length as it is strung, the first bead first. */
export interface StringPlan {
  readonly length: Length;
  /** How many lengths the panel has. */
  readonly lengths: number;
  /** Letters, first strung first. */
  readonly beads: string;
  /** What is strung in one go, in order; cut where a colour, a round or a ten of a long run ends. */
  readonly steps: readonly StringStep[];
  /** Thread that working the length takes, with reserve and tails, millimetres; an estimate. */
  readonly threadMm: number;
}

/** Some equal beads that go on the thread at once. */
export interface StringStep {
  readonly letter: string;
  /** Beads on the thread before and after it. */
  readonly from: number;
  readonly to: number;
  /** The run of this colour that it is part of, in beads of the length. */
  readonly runFrom: number;
  readonly runTo: number;
  /** The round, from 1, that these beads will be worked in. */
  readonly round: number;
  /** Whether the beads of that round, as far as they go on this length, are all strung after it. */
  readonly endsRound: boolean;
}

/** The lengths of a panel, in the order in which they are worked, each as it is strung. */
export function stringPlans(pattern: Strung, panel: number): StringPlan[] {
  const lengths = panelLengths(pattern, panel);
  return lengths.map((length) => {
    const lines = strungRounds(pattern.shape, pattern.panels[panel], length);
    return {
      length,
      lengths: lengths.length,
      beads: lines.map(({ beads }) => beads).join(''),
      steps: lines.flatMap(({ round, beads, total }) =>
        stepsOf(beads, total - beads.length, round),
      ),
      threadMm: lengthThread(pattern, length).totalMm,
    };
  });
}

function stepsOf(beads: string, start: number, round: number): StringStep[] {
  const steps: StringStep[] = [];
  for (let at = 0; at < beads.length;) {
    let end = at + 1;
    while (beads[end] === beads[at]) end++;
    const pieces = end - at > longRun ? 10 : end - at;
    for (let from = at; from < end; from += pieces) {
      const to = Math.min(end, from + pieces);
      steps.push({
        letter: beads[at],
        ...{ from: start + from, to: start + to, runFrom: start + at, runTo: start + end },
        round,
        endsRound: to === beads.length,
      });
    }
    at = end;
  }
  return steps;
}

/** The step to string when so many beads are on the thread; it may be begun. Undefined: all are. */
export function stepAt({ steps }: StringPlan, strung: number): StringStep | undefined {
  return steps.find(({ to }) => to > strung);
}

/** Beads on the thread before the step that brought it to where it stands. */
export function strungBefore({ steps }: StringPlan, strung: number): number {
  return steps.filter(({ from }) => from < strung).at(-1)?.from ?? 0;
}

/** What so many beads of a length come to: for the ruler and the scale. */
export interface ThreadStands {
  readonly beads: number;
  /** On the thread, millimetres; an estimate unless a bead was measured. */
  readonly mm: number;
  /** Undefined where the beads a gram of one of them are not known. */
  readonly grams: number | undefined;
}

/** How far the thread is strung. */
export function threadStands(
  pattern: Pick<Strung, 'beads' | 'thread'>,
  { beads }: StringPlan,
  strung: number,
): ThreadStands {
  const takes = beadLengths(pattern.beads, pattern.thread);
  const perGram = new Map(pattern.beads.map((bead) => [bead.letter, perGramOf(bead)]));
  let [mm, grams] = [0, 0];
  for (const letter of beads.slice(0, strung)) {
    mm += takes.get(letter) ?? 0;
    grams += 1 / (perGram.get(letter) ?? NaN);
  }
  return { beads: strung, mm, grams: Number.isNaN(grams) ? undefined : grams };
}
