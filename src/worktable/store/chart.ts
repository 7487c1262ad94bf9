import type { BeadOfStitch, PatternBead } from '../../core/beads/bead.js';
import { panelFootprints } from '../../core/panel/footprints.js';
import type { Footprints } from '../../core/panel/footprints.js';
import { panelGeometry } from '../../core/panel/geometry.js';
import type { PanelGeometry } from '../../core/panel/geometry.js';
import type { PanelReport } from '../../core/make.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { Place } from '../../core/picture/sampling/place.js';
import type { Shape } from '../../core/panel/shape.js';

/** One panel as it is shown. */
export interface ChartPanel {
  readonly geometry: PanelGeometry;
  readonly footprints: Footprints;
  /** Index into `Chart.beads` of each stitch, `bare` or `undecided`. */
  readonly beadOf: BeadOfStitch;
  /** How its picture lies on it. */
  readonly place?: Place | undefined;
}

/** What the worker made of the piece. */
export interface Chart {
  readonly shape: Shape;
  readonly panels: readonly ChartPanel[];
  /** Most used first, with their letters. */
  readonly beads: readonly PatternBead[];
  /** Stitches of each bead, over all panels. */
  readonly counts: readonly number[];
  /** The whole pattern once the choice has settled; undefined while it follows a gesture. */
  readonly settled: { readonly pattern: Pattern; readonly report?: PanelReport } | undefined;
}

let lastLays = new Map<string, Pick<ChartPanel, 'geometry' | 'footprints'>>();

/** The lay of panels, kept as long as the shape stays. */
export function laysOf(shape: Shape, starts: readonly number[]) {
  const kept = new Map<string, Pick<ChartPanel, 'geometry' | 'footprints'>>();
  const lays = starts.map((startDegrees) => {
    const key = JSON.stringify([shape, startDegrees]);
    let lay = lastLays.get(key) ?? kept.get(key);
    if (!lay) {
      const geometry = panelGeometry(shape, { startDegrees });
      lay = { geometry, footprints: panelFootprints(geometry) };
    }
    kept.set(key, lay);
    return lay;
  });
  lastLays = kept;
  return lays;
}

/** How many stitches each bead has. */
export function countsOf(beads: number, panels: readonly { beadOf: BeadOfStitch }[]): number[] {
  const counts = new Array<number>(beads).fill(0);
  for (const { beadOf } of panels) for (const index of beadOf) if (index >= 0) counts[index]++;
  return counts;
}
