import { plainBead } from '../../core/beads/bead.js';
import { letters } from '../../core/pattern/marks.js';
import type { Shape } from '../../core/panel/shape.js';
import type { Place } from '../../core/picture/sampling/place.js';
import { countsOf, laysOf } from '../store/chart.js';
import type { Chart } from '../store/chart.js';
import { chart } from '../store/store.js';
import kept from './kept-chart.json' with { type: 'json' };
import { ourPalette } from './sample.js';

/** What is chosen for our sample, as it was worked out once: a test compares. */
export interface KeptSample {
  readonly shape: Shape;
  readonly startDegrees: number;
  readonly place: Place;
  /** Ids of its beads, in the order of their letters. */
  readonly beads: readonly string[];
  /** The letter of each stitch in working order, or `.` for a bare one. */
  readonly stitches: string;
}

let shown: Chart | undefined;

/** Shows our sample's chart where none lies there yet: nobody waits for what is known. */
export function showKeptChart(): void {
  if (chart.peek()) return;
  const { shape, startDegrees, place, beads: ids, stitches } = kept as KeptSample;
  const palette = ourPalette().beads;
  const beads = ids.map((id, n) => ({
    letter: letters[n],
    ...plainBead(palette.find((bead) => bead.id === id)!),
  }));
  const beadOf = Int16Array.from(stitches, (letter) => letters.indexOf(letter));
  const panels = laysOf(shape, [startDegrees]).map((lay) => ({ ...lay, place, beadOf }));
  shown = { shape, panels, beads, counts: countsOf(beads.length, panels), settled: undefined };
  chart.value = shown;
}

/** Whether a chart is that one. */
export const isKeptChart = (one: Chart | undefined): boolean => one !== undefined && one === shown;
