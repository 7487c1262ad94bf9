import type { PanelGeometry } from './geometry.js';
import { layPanel } from './lay.js';
import type { Lay } from './lay.js';
import type { Shape } from './shape.js';
import { remembered } from '../remember.js';

/**
 * A panel as its worker sees it: the working face, turned so that the rim's step (joined: the start
 * line) lies at 12 o'clock, where the hook is. With beads toward the worker that is the bead face;
 * with beads away it is the other one, the bead face's mirror image. A right-hander's work always
 * runs anticlockwise on it, and a left-hander's clockwise.
 */
export function workingGeometry({ shape }: Pick<PanelGeometry, 'shape'>): PanelGeometry {
  return workingLay(shape).geometry;
}

/** The same with its footprints; laid out once for a shape. */
export const workingLay = (shape: Shape): Lay => layPanel(workingShape(shape));

const workingShape = remembered((shape: Shape): Shape => ({ ...shape, beadsFace: 'toward' }));
