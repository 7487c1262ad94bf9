import { saidNow } from '../../fault.js';
import { computed } from '@preact/signals';
import { hangPanel } from '../../../core/purse/hanging.js';
import type { HangingPanel } from '../../../core/purse/hanging.js';
import { reachMm } from '../../panel/scene.js';
import type { ChartPanel } from '../../store/chart.js';
import { chart, piece } from '../../store/store.js';

/** A panel as the step shows it: in its frame, or flat where there is none that suits. */
export interface Hung {
  readonly panel: ChartPanel;
  readonly hanging: HangingPanel | undefined;
  /** Around it with its frame, millimetres. */
  readonly box: { left: number; top: number; right: number; bottom: number };
}

/** Millimetres that a frame and its clasp stand out. */
const aboveMm = 13;

/** The panels as they hang; and what keeps them from it. */
export const hung = computed((): { sides: readonly Hung[]; trouble: string | undefined } => {
  const made = chart.value;
  const { frame } = piece.value.wish;
  if (!made) return { sides: [], trouble: undefined };
  try {
    const sides = made.panels.map((panel): Hung => {
      const hanging = frame && hangPanel(frame, panel.geometry);
      return { panel, hanging, box: boxOf(panel, hanging) };
    });
    return { sides, trouble: undefined };
  } catch (error) {
    const trouble = saidNow(error);
    const sides = made.panels.map((panel): Hung => ({
      panel,
      hanging: undefined,
      box: boxOf(panel, undefined),
    }));
    return { sides, trouble };
  }
});

function boxOf({ geometry }: ChartPanel, hanging: HangingPanel | undefined): Hung['box'] {
  if (!hanging) {
    const reach = reachMm(geometry.shape);
    return { left: -reach, top: -reach, right: reach, bottom: reach };
  }
  const spots = [...hanging.rail, ...hanging.belly];
  const xs = spots.map(([x]) => x);
  const ys = spots.map(([, y]) => y);
  return {
    left: Math.min(...xs) - 4,
    top: Math.min(...ys) - aboveMm,
    right: Math.max(...xs) + 4,
    bottom: Math.max(...ys) + 1,
  };
}
