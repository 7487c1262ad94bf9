import { Charting } from './charting.js';
import type { PanelReport } from './made.js';
import type { Pattern } from './pattern/pattern.js';
import { drain } from './steps.js';
import type { PanelWish } from './wish.js';

export type { MadePanel, PanelReport } from './made.js';
export type { BackWish, PanelWish } from './wish.js';

/**
 * The main job: a picture and a palette in, a whole pattern out. Pure: the same pixels give the
 * same bytes in every engine. `examples/` holds whole programs around it.
 *
 * @throws RondureError `shape-impossible`, `across-out-of-reach`, `polygon-needs-end-increase`,
 *   `nothing-to-bead`, those of `chooseBeads`, and with a frame those of `planFrame` and
 *   `roundsForFrame`
 */
export function makePattern(wish: PanelWish): { pattern: Pattern; report: PanelReport } {
  return drain(new Charting(wish).settle());
}
