import { bareMark, undecidedMark } from './marks.js';
import type { Panel, Pattern } from './pattern.js';
import type { PatternBead } from '../beads/bead.js';

/** What every stitch of a panel carries, in working order: a letter, `.` or `_` each. */
export function lettersInWorkingOrder(panel: Pick<Panel, 'rounds'>): string {
  return panel.rounds.join('');
}

/** The beads of a panel in working order: its letters without bare and undecided stitches. */
export function beadsInWorkingOrder(panel: Pick<Panel, 'rounds'>): string {
  return beadsOnly(lettersInWorkingOrder(panel));
}

/** The letters of some stitches, without bare and undecided ones. */
export function beadsOnly(marks: string): string {
  return marks.replaceAll(bareMark, '').replaceAll(undecidedMark, '');
}

/**
 * The beads that a panel's key names, in the order of the pattern: all but those that only the
 * other panel has.
 */
export function beadsOfPanel(
  pattern: Pick<Pattern, 'beads' | 'panels'>,
  panelIndex: number,
): PatternBead[] {
  const own = new Set(beadsInWorkingOrder(pattern.panels[panelIndex]));
  const all = beadCounts(pattern);
  return pattern.beads.filter(({ letter }) => own.has(letter) || all.get(letter) === 0);
}

/** How often each letter of the pattern is worked, over all its panels, in the order of its beads. */
export function beadCounts(pattern: Pick<Pattern, 'beads' | 'panels'>): Map<string, number> {
  const counts = new Map(pattern.beads.map((bead) => [bead.letter, 0]));
  for (const panel of pattern.panels) {
    for (const letter of beadsInWorkingOrder(panel)) {
      counts.set(letter, (counts.get(letter) ?? 0) + 1);
    }
  }
  return counts;
}

/** The marks from last to first: working order becomes the order of stringing, and back. */
export function backwards(marks: string): string {
  return Array.from(marks).reverse().join('');
}

/** How often the colour changes from one bead to the next along the thread of a panel. */
export function colourChanges(pattern: Pick<Pattern, 'panels'>, panelIndex = 0): number {
  const beads = beadsInWorkingOrder(pattern.panels[panelIndex]);
  let changes = 0;
  for (let b = 1; b < beads.length; b++) if (beads[b] !== beads[b - 1]) changes++;
  return changes;
}
