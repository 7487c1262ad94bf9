import { layPanel } from '../../core/panel/lay.js';
import { hangPanel } from '../../core/purse/hanging.js';
import type { HangingPanel } from '../../core/purse/hanging.js';
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
  const hanging = frame && hangPanel(frame, geometry);
  const reach = panelReach(geometry);
  const box = hanging ? boxOf(hanging) : { left: -reach, top: -reach, right: reach, bottom: reach };
  const above = frame ? claspReachMm : 0;
  const [wide, high] = [space.right - space.left, space.bottom - space.top];
  const scale = Math.min(
    wide / (box.right - box.left + (frame ? 6 : 0)),
    high / (box.bottom - box.top + above),
  );
  const at = {
    x: (space.left + space.right - scale * (box.left + box.right)) / 2,
    y: (space.top + space.bottom + scale * (above - box.top - box.bottom)) / 2,
    scale,
  };
  if (hanging) drawPurse(surface, beads, hanging, at);
  else drawWorkedBeads(surface, beads, at);
}

/** How far a panel reaches as it hangs, millimetres from the middle between the hinges. */
function boxOf({ rail, belly }: HangingPanel): Space {
  const all = [...rail, ...belly];
  return {
    left: Math.min(...all.map(([x]) => x)),
    top: Math.min(...all.map(([, y]) => y)),
    right: Math.max(...all.map(([x]) => x)),
    bottom: Math.max(...all.map(([, y]) => y)),
  };
}
