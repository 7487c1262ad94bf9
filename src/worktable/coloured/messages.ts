import type { Bead } from '../../core/beads/bead.js';
import type { CellPatch } from '../../core/blank/cell-patch.js';
import type { DoubtReason } from '../../core/blank/judge.js';
import type { ReadingReport } from '../../core/blank/read-blank.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { Picture } from '../../core/picture/picture.js';
import type { Failure } from '../engine/failure.js';

/** To the worker: a photo to be read, or a cell of it to be shown. */
export type ReadAsk =
  | {
      readonly what: 'read';
      readonly picture: Picture;
      readonly name: string;
      /** Charts that it may be of, the likeliest first. */
      readonly blanks: readonly Pattern[];
      readonly beads: readonly Bead[];
      readonly colours: number;
    }
  | { readonly what: 'patch'; readonly stitch: number; readonly sidePx: number };

/** A cell that the maker is asked about. */
export interface Doubtful {
  /** In working order, from 0. */
  readonly stitch: number;
  readonly round: number;
  /** Wedge, and place in its row, from 1. */
  readonly wedge: number;
  readonly place: number;
  readonly reason: DoubtReason;
  /** What it was read as: a palette index, or `undecided`. */
  readonly read: number;
  /** Palette indices, the likeliest first. */
  readonly likely: readonly number[];
}

/** A coloured page as it was read, before the maker has settled what is doubtful. */
export interface PageRead {
  /** Place in `blanks` of the chart that it is of. */
  readonly blank: number;
  /** Palette index of each stitch, or `undecided` where its cell is white. */
  readonly beadOf: Int16Array;
  /** Palette indices of the beads found, most used first. */
  readonly found: readonly number[];
  readonly doubtful: readonly Doubtful[];
  /** Whether so many cells are doubtful that it may be of another chart. */
  readonly unlikely: boolean;
  readonly report: ReadingReport;
}

export type ReadAnswer =
  | { readonly what: 'read'; readonly read: PageRead }
  | { readonly what: 'patch'; readonly stitch: number; readonly patch: CellPatch }
  | { readonly what: 'failed'; readonly error: Failure };
