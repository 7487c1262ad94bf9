import { RondureError } from '../errors.js';

/**
 * The widest bounds of what can be believed, over the diameter of a bead (common practice, no
 * source, and made wide): outside them a number was misread or belongs to another option.
 */
export const leastOf = { stitch: 0.45, threadPerBead: 3, beadLength: 0.3 } as const;
export const mostOf = { stitch: 3, threadPerBead: 40, beadLength: 2.5 } as const;

/** A range that can be believed, and what it was worked out from. */
export interface MeasureRange {
  least: number;
  most: number;
  unit: 'mm' | 'stitches';
  beadMm: number;
  rounds?: number;
  stitches?: number;
}

/** @throws RondureError `measurement-impossible` */
export function requireMeasure(option: string, got: number, range: MeasureRange): void {
  if (got >= range.least && got <= range.most) return;
  throw new RondureError('measurement-impossible', { option, got, ...range });
}
