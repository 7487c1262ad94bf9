import { sizedShape } from './panel/across.js';
import type { SizedWish } from './panel/across.js';
import type { Shape } from './panel/shape.js';
import type { Frame } from './purse/frame/measures.js';
import { roundsForFrame } from './purse/frame/plan.js';

/**
 * The whole shape of a wish; its rounds as `sizedShape` has them, or those of the frame where
 * neither rounds nor a size are wished.
 *
 * @throws RondureError those of `sizedShape` and of `roundsForFrame`
 */
export function shapeFor(
  wish: SizedWish,
  acrossMm?: number,
  frame?: Frame,
  startDegrees?: number,
): Shape {
  const shape = sizedShape(wish, acrossMm);
  if (!frame || wish.rounds !== undefined || acrossMm !== undefined) return shape;
  return { ...shape, rounds: roundsForFrame(frame, shape, startDegrees) };
}
