import { signal } from '@preact/signals';
import type { Swatch } from '../../../core/swatch/swatch.js';

/** What is asked of the swatch; an empty field is not measured. */
export interface SwatchForm {
  readonly rounds: number;
  readonly lies: Swatch['lies'];
  readonly acrossMm?: number | undefined;
  readonly rimStitches?: number | undefined;
  readonly rimMm?: number | undefined;
  readonly turnDegrees?: number | undefined;
  readonly turnWay: 'with' | 'against';
  readonly threadMm?: number | undefined;
  readonly threadStitches?: number | undefined;
  readonly fiftyBeadsMm?: number | undefined;
}

export const firstForm: SwatchForm = { rounds: 10, lies: 'flat', turnWay: 'against' };

/** Rounds of the swatch that is being measured, or is to be. */
export const swatchRounds = signal(firstForm.rounds);
