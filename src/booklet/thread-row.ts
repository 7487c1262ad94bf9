import { backwards, beadsOnly } from '../core/pattern/stitches.js';
import type { Surface } from '../core/pages/surface/surface.js';
import { panelLengths } from '../core/thread/lengths.js';
import { greysOf } from './facts.js';
import type { BookletFacts } from './facts.js';

const beadMm = 2.3;

/**
 * Fills of the beads at the beginning of a pattern's stringing list, the first one strung first: as
 * many as lie on a thread of this length.
 */
export function threadBeads(facts: BookletFacts, wideMm: number): string[] {
  const { pattern } = facts;
  const greys = greysOf(facts);
  const hexes = new Map(
    pattern.beads.map(({ letter, hex }) => [letter, greys?.get(letter)?.hex ?? hex]),
  );
  const [first] = panelLengths(pattern, 0);
  const { fromStitch, toStitch } = first;
  const marks = pattern.panels[0].rounds.join('').slice(fromStitch, toStitch);
  const room = Math.floor(wideMm / beadMm);
  return Array.from(backwards(beadsOnly(marks)).slice(0, room), (letter) => hexes.get(letter)!);
}

/** The first beads of a thread in a row, and the rest of it bare. */
export function drawThreadRow(
  surface: Surface,
  beads: readonly string[],
  { left, right, y }: { left: number; right: number; y: number },
): void {
  surface.strokePath([[left, y, right, y]], { stroke: '#767676', widthMm: 0.2 });
  beads.forEach((fill, n) => {
    const x = left + (n + 0.5) * beadMm;
    const outline = { stroke: '#555555', widthMm: 0.1 };
    surface.circle(x, y, 0.47 * beadMm, { fill, outline });
  });
}
