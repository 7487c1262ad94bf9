import type { Bead, BeadOfStitch } from '../bead.js';
import { lab65ToHex } from '../colour/lab.js';
import { blankPage } from '../draw/blank-page.js';
import type { BlankPage } from '../draw/blank-page.js';
import { RondureError } from '../errors.js';
import { panelFootprints } from '../geometry/footprints.js';
import { panelGeometry } from '../geometry/panel.js';
import { letterBeads, roundStrings } from '../lettering.js';
import { letters } from '../pattern/schema.js';
import type { Pattern } from '../pattern/schema.js';
import type { Picture } from '../picture.js';
import { median, sampleCells } from './cell-samples.js';
import { findPage } from './corner-marks.js';
import { groupColours } from './groups.js';
import { isClear, judge, mostlyPaper } from './judge.js';
import type { DoubtReason } from './judge.js';
import { pageLight } from './page-light.js';
import { paperWhite } from './paper-white.js';
import type { PageLight, PageWhite } from './paper-white.js';
import { litUnevenly } from './uneven.js';

/** The start mark is black: no lighter than this share of the paper, however blurred. */
const mostStartLight = 0.5;

/** Everything a coloured blank chart is read with. */
export interface ReadingWish {
  picture: Picture;
  /** How to name the picture in an error. */
  pictureName: string;
  /** The blank chart's pattern: its shape and start count, not what its stitches carry. */
  blank: Pattern;
  title: string;
  beads: readonly Bead[];
  /** Most colours, 1 to 24. */
  colours: number;
  /** What uncoloured cells become: a palette index, `bare`, or `undecided`. */
  unpainted: number;
}

/** A stitch to look at again; round and stitch count from 1, in working order. */
export interface Doubt {
  readonly round: number;
  readonly stitch: number;
  /** Letter, `.` or `_`. */
  readonly mark: string;
  readonly reason: DoubtReason;
  /** Letter of the other bead in question. */
  readonly other?: string;
}

/** One bead colour as it was read. */
export interface ReadGroup {
  readonly letter: string;
  readonly id: string;
  readonly name: string;
  readonly stitches: number;
  /** What the cells look like on paper, #rrggbb, and its CIEDE2000 from the bead. */
  readonly readHex: string;
  readonly difference: number;
  /** Id of a bead that is nearly as near. */
  readonly next?: string;
}

/** What was read: counts of stitches, the colours found, and the stitches to look at again. */
export interface ReadingReport {
  stitches: number;
  painted: number;
  unpainted: number;
  groups: ReadGroup[];
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
  const { picture, pictureName: name, blank } = wish;
  const { startDegrees, name: panelName } = blank.panels[0];
  const geometry = panelGeometry(blank.shape, { startDegrees });
  const footprints = panelFootprints(geometry);
  const page = blankPage(geometry);
  const found = findPage(picture, page);
  if ('found' in found) {
    throw new RondureError('corner-marks-not-found', { name, found: found.found });
  }
  const light = pageLight(picture, found.view);
  const white = paperWhite(page, light);
  if (!startIsSeen(page, light, white)) {
    throw new RondureError('corner-marks-not-found', { name, found: 4 });
  }
  const cells = sampleCells(geometry, footprints, page, light, white);
  const clear = cells.filter(isClear);
  if (clear.length === 0) throw new RondureError('blank-not-coloured', { name });

  const palette = Float64Array.from(wish.beads.flatMap(({ lab }) => [...lab]));
  const groups = groupColours(
    clear.map(({ colour }) => colour),
    palette,
    // A bead for the uncoloured cells needs a letter too.
    Math.min(wish.colours, wish.unpainted >= 0 ? letters.length - 1 : letters.length),
  );
  const usualEven = median(clear.map(({ even }) => even));
  const judged = cells.map((cell) => judge(cell, groups, wish.unpainted, usualEven));
  const beadOf: BeadOfStitch = Int16Array.from(judged, ({ bead }) => bead);
  const lettered = letterBeads(wish.beads, beadOf);
  const letterOfBead = new Map(lettered.order.map((bead, n) => [bead, lettered.beads[n].letter]));

  const doubts: Doubt[] = [];
  for (let round = 1, s = 0; round <= blank.shape.rounds; round++) {
    for (let stitch = 1; stitch <= blank.shape.wedges * round; stitch++, s++) {
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
  const pattern: Pattern = {
    format: 'rondure-pattern',
    version: 1,
    title: wish.title,
    shape: blank.shape,
    beads: lettered.beads,
    panels: [{ name: panelName, startDegrees, rounds: roundStrings(geometry, lettered.letterOf) }],
    ...(blank.swatch && { swatch: blank.swatch }),
    ...(blank.thread && { thread: blank.thread }),
  };
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
    litUnevenly: litUnevenly(page, light, white),
  };
  return { pattern, report };
}

/** Whether the black start mark lies where it should: spots on a table may look like corners. */
function startIsSeen(page: BlankPage, light: PageLight, white: PageWhite): boolean {
  const { triangle } = page.marks;
  const x = page.view.centreX + (triangle[0] + triangle[2] + triangle[4]) / 3;
  const y = page.view.centreY + (triangle[1] + triangle[3] + triangle[5]) / 3;
  const seen = light(x, y);
  return seen !== undefined && seen[1] < mostStartLight * white(x, y)[1];
}
