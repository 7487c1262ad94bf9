import { acrossRounds, alongRound } from '../../../core/brush/places.js';
import { focusOn, focusPanel } from '../../actions/focus.js';
import type { Spot } from '../../panel/hand.js';
import { look, shownPanel, view } from '../../store/store.js';
import { brushAlong, brushing, brushMm, sizeTold } from './mind.js';

/** The brush by keyboard: its place is the stitch that is lit up. */
const here = (): number => {
  const { litStitch } = view.peek();
  return litStitch < (shownPanel.peek()?.geometry.count ?? 0) ? litStitch : -1;
};

function spotOf(s: number): Spot {
  const { centres } = shownPanel.peek()!.geometry;
  return { xMm: centres[2 * s], yMm: centres[2 * s + 1], stitch: s };
}

/** The stitch that an arrow leads to: along the round as it is worked, or to the next round. */
function stitchTo(s: number, key: string): number {
  const { shape } = shownPanel.peek()!.geometry;
  if (s < 0) return 0;
  if (key.endsWith('Up')) return acrossRounds(shape, s, 'out');
  if (key.endsWith('Down')) return acrossRounds(shape, s, 'in');
  return alongRound(shape, s, key.endsWith('Right') ? 1 : -1);
}

/** Moves the brush by one stitch, the way that an arrow key points. */
export function moveBrush(key = 'ArrowRight'): void {
  if (!shownPanel.peek()) return;
  focusPanel();
  sizeTold.value = false;
  look({ litStitch: stitchTo(here(), key), litBead: undefined });
}

/** Brushes from stitch to stitch. */
export function brushOn(key = 'ArrowRight'): void {
  const from = here();
  moveBrush(key);
  if (from >= 0) brushAlong([spotOf(from), spotOf(here())]);
}

/** Brushes where it is. */
export function brushHere(): void {
  if (here() < 0) return moveBrush();
  focusPanel();
  sizeTold.value = false;
  brushAlong([spotOf(here())]);
}

export const brushRadii = { least: 1, most: 20, step: 0.5 } as const;

/** Makes it larger or smaller, and says how large it is. */
export function sizeBrush(byMm: number): void {
  const { least, most } = brushRadii;
  brushMm.value = Math.min(most, Math.max(least, brushMm.peek() + byMm));
  sizeTold.value = true;
}

/** Puts it away; the keyboard is again where it was taken up. */
export function putBrushAway(): void {
  const was = brushing.peek();
  brushing.value = undefined;
  if (document.activeElement?.matches('.panel .ground')) focusOn(`.card [data-action="${was}"]`);
}
