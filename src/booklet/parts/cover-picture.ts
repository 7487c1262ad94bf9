import { layPanel } from '../../core/panel/lay.js';
import type { Surface } from '../../core/pages/surface/surface.js';
import { lettersInWorkingOrder } from '../../core/pattern/stitches.js';
import { claspReachMm, drawPurse, panelReach } from '../purse-drawing.js';
import { drawWorkedBeads } from '../worked-beads.js';
import { greysOf } from '../facts.js';
import type { BookletFacts } from '../facts.js';

/** A place for a picture, millimetres. */
export interface Space {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** One panel as it will look, in its frame where the pattern has one, as large as the space allows. */
export function drawFinished(
  surface: Surface,
  facts: BookletFacts,
  panel: number,
  space: Space,
): void {
  const { pattern } = facts;
  const { shape, frame } = pattern;
  const { startDegrees } = pattern.panels[panel];
  const { geometry } = layPanel(shape, { startDegrees });
  const marks = lettersInWorkingOrder(pattern.panels[panel]);
  const greys = greysOf(facts);
  const hexes = new Map(
    pattern.beads.map(({ letter, hex }) => [letter, greys?.get(letter)?.hex ?? hex]),
  );
  const beads = { geometry, hexOf: (s: number) => hexes.get(marks[s]) };
  const reach = panelReach(geometry);
  const above = frame ? claspReachMm : 0;
  const [wide, high] = [space.right - space.left, space.bottom - space.top];
  const scale = Math.min(wide / (2 * reach + (frame ? 6 : 0)), high / (2 * reach + above));
  const at = {
    x: (space.left + space.right) / 2,
    y: (space.top + space.bottom + scale * above) / 2,
    radiusMm: scale * reach,
  };
  if (frame) drawPurse(surface, beads, frame, at);
  else drawWorkedBeads(surface, beads, at);
}
