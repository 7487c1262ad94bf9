import type { PatternBead } from '../../beads/bead.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import type { Pattern } from '../../pattern/pattern.js';
import { lettersInWorkingOrder } from '../../pattern/stitches.js';
import type { Picture } from '../../picture/picture.js';
import { renderWorked } from './worked.js';

/** A panel of a pattern with its beads, as worked. */
export function paintedPanel(
  pattern: Pick<Pattern, 'beads' | 'panels'>,
  panel: number,
  geometry: PanelGeometry,
  widthPx: number,
): Picture {
  const named = new Map(pattern.beads.map((bead) => [bead.letter, bead]));
  const marks = Array.from(lettersInWorkingOrder(pattern.panels[panel]));
  return paintedBeads(
    geometry,
    marks.map((mark) => named.get(mark)),
    widthPx,
  );
}

/**
 * Beads on a panel, as worked.
 *
 * @param beads of each stitch in working order; undefined where it is bare or not decided
 */
export function paintedBeads(
  geometry: PanelGeometry,
  beads: readonly (PatternBead | undefined)[],
  widthPx: number,
): Picture {
  return renderWorked({
    geometry,
    hexOf: (s) => beads[s]?.hex,
    finishOf: (s) => beads[s]?.finish,
    widthPx,
  });
}
