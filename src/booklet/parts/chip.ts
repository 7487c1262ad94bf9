import { inkOn } from '../../core/colour/contrast.js';
import { drawCellMarks } from '../../core/pages/panel/grey-fills.js';
import type { Surface } from '../../core/pages/surface/surface.js';
import { greysOf } from '../facts.js';
import type { BookletFacts } from '../facts.js';

/**
 * Draws a bead in its colour, hatched where there is no colour; x and y are its middle. It is round:
 * what is square is a box to tick.
 */
export type DrawChip = (
  surface: Surface,
  letter: string,
  at: { x: number; y: number; sizeMm: number },
) => void;

/** The beads of a pattern as the edition has them. */
export function chipsOf(facts: BookletFacts): DrawChip {
  const greys = greysOf(facts);
  const hexes = new Map(facts.pattern.beads.map(({ letter, hex }) => [letter, hex]));
  return (surface, letter, { x, y, sizeMm }) => {
    const grey = greys?.get(letter);
    const fill = grey?.hex ?? hexes.get(letter)!;
    surface.circle(x, y, 0.54 * sizeMm, { fill, outline: { stroke: '#555555', widthMm: 0.15 } });
    if (grey) {
      const mark = { mark: grey.mark, ink: inkOn(fill) };
      drawCellMarks(surface, mark, [{ x, y, tilt: 0 }], sizeMm);
    }
  };
}
