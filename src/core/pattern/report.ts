import type { Warning } from '../errors.js';
import { warning } from '../errors.js';
import { frameWarnings } from '../frame/plan.js';
import { acrossMm } from '../geometry/edge.js';
import { panelGeometry } from '../geometry/panel.js';
import { mistakenWarnings } from '../mistaken.js';
import { shapeWarnings, stitchCount } from '../shape.js';
import type { Pattern } from './schema.js';
import { beadCounts, beadsInWorkingOrder } from './stitches.js';

/** What can be told of a pattern alone, without the picture that it was made from. */
export interface PatternReport {
  rounds: number;
  stitches: number;
  beads: number;
  /** Beads that at least one stitch carries. */
  colours: number;
  acrossMm: number;
  warnings: Warning[];
}

/** Counts the first panel, and warns of beads that no stitch carries and of stitches that do not fit. */
export function patternReport(pattern: Pattern): PatternReport {
  const { shape, beads } = pattern;
  const counts = beadCounts(pattern);
  const unused = beads.filter(({ letter }) => counts.get(letter) === 0);
  const diameters = beads.flatMap(({ diameterMm }) => diameterMm ?? []).sort((a, b) => a - b);
  const middle: number | undefined = diameters[(diameters.length - 1) >> 1];
  // A stitch is never smaller than a bead of no size.
  const warnings = shapeWarnings(shape, middle ?? 0);
  if (pattern.frame) {
    const { startDegrees } = pattern.panels[0];
    warnings.push(...frameWarnings(pattern.frame, panelGeometry(shape, { startDegrees })));
  }
  for (const { letter, name } of unused) warnings.push(warning('bead-unused', { letter, name }));
  warnings.push(...mistakenWarnings(beads.filter(({ letter }) => counts.get(letter) !== 0)));
  return {
    rounds: shape.rounds,
    stitches: stitchCount(shape),
    beads: beadsInWorkingOrder(pattern.panels[0]).length,
    colours: beads.length - unused.length,
    acrossMm: acrossMm(shape),
    warnings,
  };
}
