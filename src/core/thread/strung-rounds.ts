import { stitchesBefore } from '../panel/shape.js';
import type { Shape } from '../panel/shape.js';
import type { Panel, Pattern } from '../pattern/pattern.js';
import { backwards, beadsOnly } from '../pattern/stitches.js';
import type { Length } from './lengths.js';

/** What a stringing list is made from. */
export type Strung = Pick<Pattern, 'shape' | 'beads' | 'panels' | 'thread'>;

/** The beads of one round, or of the part of it on one length, as they go on the thread. */
export interface StrungRound {
  readonly round: number;
  /** What the stitches carry, in working order; bare and undecided ones too. */
  readonly marks: string;
  /** Letters, first bead strung first: the reverse of working order. */
  readonly beads: string;
  /** Beads on the length when this line is strung. */
  readonly total: number;
}

/** The stringing order of one length: last round first, reversed; lines without beads left out. */
export function strungRounds(
  shape: Pick<Shape, 'wedges' | 'rounds'>,
  panel: Pick<Panel, 'rounds'>,
  { fromStitch, toStitch }: Pick<Length, 'fromStitch' | 'toStitch'>,
): StrungRound[] {
  const strung: StrungRound[] = [];
  let total = 0;
  for (let r = panel.rounds.length; r >= 1; r--) {
    const first = stitchesBefore(shape, r);
    const [from, to] = [Math.max(0, fromStitch - first), Math.max(0, toStitch - first)];
    const marks = panel.rounds[r - 1].slice(from, to);
    const beads = backwards(beadsOnly(marks));
    total += beads.length;
    if (beads) strung.push({ round: r, marks, beads, total });
  }
  return strung;
}
