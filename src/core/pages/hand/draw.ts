import type { Surface } from '../surface/surface.js';
import type { HandDrawing, HandFacts } from './facts.js';
import type { Spot } from '../../lines.js';
import { Pen } from './pen.js';

/** Draws one picture of a drawing with its top left corner at a spot, in its own size or to a scale. */
export function drawHand(
  surface: Surface,
  drawing: HandDrawing,
  facts: HandFacts,
  frame: number,
  at: Spot = [0, 0],
  scale = 1,
): void {
  const { fonts, tints, shape } = facts;
  const mirror = shape.hand === 'left' && !drawing.ofPurse;
  const pen = new Pen(surface, { fonts, tints, mirror, widthMm: drawing.widthMm, at, scale });
  surface.beginGroup(`${drawing.name}-${frame + 1}`);
  drawing.frames[frame](pen, facts);
  surface.endGroup();
}
