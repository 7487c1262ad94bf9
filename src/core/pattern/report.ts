import type { Warning } from '../errors.js';
import { warning } from '../errors.js';
import { frameWarnings } from '../purse/frame/plan.js';
import { acrossMm } from '../panel/edge.js';
import { layPanel } from '../panel/lay.js';
import { mistakenWarnings } from '../beads/mistaken.js';
import { shapeWarnings, stitchCount } from '../panel/shape.js';
import type { Pattern } from './pattern.js';
import {
  beadCounts,
  beadsInWorkingOrder,
  colourChanges,
  lettersInWorkingOrder,
} from './stitches.js';

/** What can be told of one panel. */
export interface PanelFacts {
  /** Name of the panel. */
  name: string;
  /** N·R(R+1)/2. */
  stitches: number;
  /** Stitches that carry a bead. */
  beads: number;
  /** Colour changes along its thread. */
  colourChanges: number;
}

/**
 * What can be told of a pattern alone, without the picture that it was made from. Stitches and
 * beads are those of the first panel; `panels` has them for each.
 */
export interface PatternReport {
  /** Rounds R of a panel: 2 to 80. */
  rounds: number;
  /** Stitches of all panels. */
  stitches: number;
  /** Stitches of all panels that carry a bead. */
  beads: number;
  /** Beads that at least one stitch carries. */
  colours: number;
  /** Size of a finished panel. */
  acrossMm: number;
  /** In the order of the pattern's panels. */
  panels: PanelFacts[];
  /** What the maker should know about the pattern. */
  warnings: Warning[];
}

/** Counts every panel. */
export function panelFacts(pattern: Pick<Pattern, 'panels'>): PanelFacts[] {
  return pattern.panels.map((panel, index) => ({
    name: panel.name,
    stitches: lettersInWorkingOrder(panel).length,
    beads: beadsInWorkingOrder(panel).length,
    colourChanges: colourChanges(pattern, index),
  }));
}

/** Counts the panels, and warns of beads that no stitch carries and of stitches that do not fit. */
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
    warnings.push(...frameWarnings(pattern.frame, layPanel(shape, { startDegrees }).geometry));
  }
  for (const { letter, name } of unused) warnings.push(warning('bead-unused', { letter, name }));
  warnings.push(...mistakenWarnings(beads.filter(({ letter }) => counts.get(letter) !== 0)));
  return {
    rounds: shape.rounds,
    stitches: stitchCount(shape),
    beads: beadsInWorkingOrder(pattern.panels[0]).length,
    panels: panelFacts(pattern),
    colours: beads.length - unused.length,
    acrossMm: acrossMm(shape),
    warnings,
  };
}
