import type { HowKept } from './beads/how-kept.js';
import type { Warning } from './errors.js';
import type { PanelFacts } from './pattern/report.js';
import type { CutOff } from './picture/cut-off.js';
import type { StockReport } from './beads/stock/report.js';

/** One panel of the result, with what only a panel with a picture has. */
export interface MadePanel extends PanelFacts {
  /** Mean CIEDE2000 of the picture and the beads; undefined for a panel without a picture. */
  meanDifference?: number;
  /** The largest of them. */
  worstDifference?: number;
  /** How its picture was taken: mean colours, or outlines kept. */
  art?: 'photo' | 'drawing';
  /** Whether `art` was decided here, not asked for. */
  artDecided?: boolean;
  /** Shares, 0 to 1, of what is the picture's own, not its ground, that do not show. */
  cutOff?: CutOff;
  /** How well its beads keep what its picture shows. */
  kept?: HowKept;
  /** Where a place by the subject was wished: how the picture was laid. */
  laid?: 'subject' | 'fit' | 'fill' | 'inside';
  /** The bead chosen for the ground of a cut-out, when it is not white or the lightest one. */
  ground?: { id: string; name: string };
}

/**
 * What a maker wants to know of the result, besides the pattern itself. Stitches, beads, differences
 * and art are those of the first panel, the front; `panels` has them for each. Colours, stock and
 * warnings are for all panels together.
 */
export interface PanelReport {
  /** Rounds R of a panel: 2 to 80. */
  rounds: number;
  /** N·R(R+1)/2. */
  stitches: number;
  /** Stitches that carry a bead. */
  beads: number;
  /** Bead colours used. */
  colours: number;
  /** The largest number of colours that was allowed. */
  mostColours: number;
  /** Size of the finished panel, millimetres. */
  acrossMm: number;
  /**
   * Mean and largest CIEDE2000 of a stitch's colour in the picture and its bead, after tidying or
   * dithering; `choice.objective` is before.
   */
  meanDifference: number;
  /** The largest CIEDE2000 of a stitch's colour in the picture and its bead. */
  worstDifference: number;
  /** Steps that the proof of the choice took. */
  proofSteps: number;
  /** How the picture was taken: mean colours, or outlines kept. */
  art: 'photo' | 'drawing';
  /** Whether `art` was decided here, not asked for. */
  artDecided: boolean;
  /** In the order of the pattern's panels. */
  panels: MadePanel[];
  /** What the maker should know about the result. */
  warnings: Warning[];
  /** With `useStock`: what is taken from the jars. */
  stock?: StockReport;
}
