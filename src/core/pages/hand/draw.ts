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
  const mirror = facts.shape.hand === 'left' && !drawing.ofPurse;
  surface.beginGroup(`${drawing.name}-${frame + 1}`);
  penOf(drawing, facts, frame).put({ surface, mirror, widthMm: drawing.widthMm, at, scale });
  surface.endGroup();
}

/** What was drawn before: a booklet measures a drawing, tries it in other sizes and then puts it down. */
const drawn = new WeakMap<
  HandFacts,
  { pens: Map<string, Pen>; outlines: Map<string, readonly Spot[]> }
>();

function penOf(drawing: HandDrawing, facts: HandFacts, frame: number): Pen {
  let known = drawn.get(facts);
  if (!known) drawn.set(facts, (known = { pens: new Map(), outlines: new Map() }));
  const { pens, outlines } = known;
  const key = `${drawing.name} ${frame}`;
  let pen = pens.get(key);
  if (!pen) {
    pens.set(key, (pen = new Pen(facts.tints, facts.fonts, outlines)));
    drawing.frames[frame](pen, facts);
  }
  return pen;
}
