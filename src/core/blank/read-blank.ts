import type { BeadOfStitch } from '../beads/bead.js';
import { lab65ToHex } from '../colour/lab.js';
import type { Pattern } from '../pattern/pattern.js';
import { colouredPattern } from './coloured-pattern.js';
import { mostlyPaper } from './judge.js';
import type { DoubtReason } from './judge.js';
import { readCells } from './read-cells.js';
import type { CellReading } from './read-cells.js';
import type { ReadingWish } from './reading-wish.js';

export type { ReadingWish } from './reading-wish.js';

/** A stitch to look at again; round and stitch count from 1, in working order. */
export interface Doubt {
  /** Round of the cell, from 1. */
  readonly round: number;
  /** Its stitch in that round, from 1. */
  readonly stitch: number;
  /** Letter, `.` or `_`. */
  readonly mark: string;
  /** Why it is in doubt. */
  readonly reason: DoubtReason;
  /** Letter of the other bead in question. */
  readonly other?: string;
}

/** One bead colour as it was read. */
export interface ReadGroup {
  /** Letter of its bead in the pattern. */
  readonly letter: string;
  /** Id of its bead. */
  readonly id: string;
  /** Name of its bead. */
  readonly name: string;
  /** Cells that were read as this bead. */
  readonly stitches: number;
  /** What the cells look like on paper, #rrggbb, and its CIEDE2000 from the bead. */
  readonly readHex: string;
  /** CIEDE2000 of `readHex` and the bead. */
  readonly difference: number;
  /** Id of a bead that is nearly as near. */
  readonly next?: string;
}

/** What was read: counts of stitches, the colours found, and the stitches to look at again. */
export interface ReadingReport {
  /** Cells of the chart: N·R(R+1)/2. */
  stitches: number;
  /** Cells that are coloured. */
  painted: number;
  /** Cells that are not. */
  unpainted: number;
  /** What was read, a group for each bead. */
  groups: ReadGroup[];
  /** Cells that should be looked at. */
  doubts: Doubt[];
  /** A shadow, or light so uneven that cells may be misread without being doubted. */
  litUnevenly: boolean;
}

/** An uncoloured cell with a round's number in it shows at least this much paper (by trial). */
const numberedPaper = 0.8;

/**
 * Reads a blank chart that was coloured by hand, from a scan or an oblique photograph.
 *
 * @throws RondureError `corner-marks-not-found`, `blank-not-coloured`
 */
export function readBlank(wish: ReadingWish): { pattern: Pattern; report: ReadingReport } {
  return reported(wish, readCells(wish));
}

/** The pattern of a page that was read, and what there is to say of it. */
export function reported(
  wish: ReadingWish,
  { geometry, cells, groups, judged, litUnevenly }: CellReading,
): { pattern: Pattern; report: ReadingReport } {
  const { shape } = wish.blank;
  const beadOf: BeadOfStitch = Int16Array.from(judged, ({ bead }) => bead);
  const { pattern, lettered } = colouredPattern(wish, beadOf);
  const letterOfBead = new Map(lettered.order.map((bead, n) => [bead, lettered.beads[n].letter]));

  const doubts: Doubt[] = [];
  for (let round = 1, s = 0; round <= shape.rounds; round++) {
    for (let stitch = 1; stitch <= shape.wedges * round; stitch++, s++) {
      const { doubt: reason, other } = judged[s];
      if (!reason) continue;
      // The round's number is printed in its first cell.
      if (stitch === 1 && reason === 'partly' && (cells[s]?.paper ?? 0) > numberedPaper) continue;
      const letter = other === undefined ? undefined : letterOfBead.get(other);
      const mark = lettered.letterOf(s);
      doubts.push({ round, stitch, mark, reason, ...(letter && { other: letter }) });
    }
  }
  const painted = cells.filter((cell) => cell && cell.paper <= mostlyPaper).length;
  const report: ReadingReport = {
    stitches: geometry.count,
    painted,
    unpainted: geometry.count - painted,
    groups: lettered.order.map((bead, n): ReadGroup => {
      // Several crayons may stand for one bead: the one nearest to it speaks for all.
      const own = groups.filter((group) => group.bead === bead);
      const group = own.sort((p, q) => p.difference - q.difference)[0];
      const { letter, id, name: beadName, hex } = lettered.beads[n];
      return {
        letter,
        id,
        name: beadName,
        stitches: beadOf.reduce((sum, one) => sum + (one === bead ? 1 : 0), 0),
        readHex: group ? lab65ToHex(...group.colour) : hex,
        difference: group ? Math.round(group.difference * 100) / 100 : 0,
        ...(group?.next !== undefined && { next: wish.beads[group.next].id }),
      };
    }),
    doubts,
    litUnevenly,
  };
  return { pattern, report };
}
