import { inkOn } from '../../core/colour/contrast.js';
import { drawCellMarks } from '../../core/pages/panel/grey-fills.js';
import type { Surface } from '../../core/pages/surface/surface.js';
import { greysOf } from '../facts.js';
import type { BookletFacts } from '../facts.js';

/** Draws a patch in the colour of a bead, hatched where there is no colour; x and y are its middle. */
export type DrawChip = (
  surface: Surface,
  letter: string,
  at: { x: number; y: number; sizeMm: number },
) => void;

/** Patches of a pattern's beads as the edition has them. */
export function chipsOf(facts: BookletFacts): DrawChip {
  const greys = greysOf(facts);
  const hexes = new Map(facts.pattern.beads.map(({ letter, hex }) => [letter, hex]));
  return (surface, letter, { x, y, sizeMm }) => {
    const grey = greys?.get(letter);
    const fill = grey?.hex ?? hexes.get(letter)!;
    const half = sizeMm / 2;
    const ring = [x - half, y - half, x + half, y - half, x + half, y + half, x - half, y + half];
    const outline = { stroke: '#555555', widthMm: 0.15, closed: true };
    surface.fillPath([ring], { fill, outline });
    if (grey) {
      const mark = { mark: grey.mark, ink: inkOn(fill) };
      drawCellMarks(surface, mark, [{ x, y, tilt: 0 }], sizeMm);
    }
  };
}
