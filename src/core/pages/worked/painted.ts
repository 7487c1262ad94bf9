import type { PatternBead } from '../../beads/bead.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import type { Pattern } from '../../pattern/pattern.js';
import { lettersInWorkingOrder } from '../../pattern/stitches.js';
import type { Picture } from '../../picture/picture.js';
import { renderAlike } from './worked.js';

/** The bead of each stitch of a panel in working order; undefined where it is bare or not decided. */
export type BeadsOfStitches = readonly (PatternBead | undefined)[];

/** A panel of a pattern with its beads, as worked. */
export function paintedPanel(
  pattern: Pick<Pattern, 'beads' | 'panels'>,
  panel: number,
  geometry: PanelGeometry,
  widthPx: number,
): Picture {
  return paintedBeads(geometry, [beadsOfPanel(pattern, panel)], widthPx)[0];
}

/** The beads of a panel. */
export function beadsOfPanel(
  { beads, panels }: Pick<Pattern, 'beads' | 'panels'>,
  panel: number,
): BeadsOfStitches {
  const named = new Map(beads.map((bead) => [bead.letter, bead]));
  return Array.from(lettersInWorkingOrder(panels[panel]), (mark) => named.get(mark));
}

/** Panels of one geometry that differ in their beads, as worked. */
export function paintedBeads(
  geometry: PanelGeometry,
  panels: readonly BeadsOfStitches[],
  widthPx: number,
): Picture[] {
  const looks = panels.map((beads) => ({
    hexOf: (s: number) => beads[s]?.hex,
    finishOf: (s: number) => beads[s]?.finish,
  }));
  return renderAlike({ geometry, widthPx }, looks);
}
