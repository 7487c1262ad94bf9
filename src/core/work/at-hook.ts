import { workingGeometry } from '../panel/working-face.js';
import type { PanelGeometry } from '../panel/geometry.js';
import type { Shape } from '../panel/shape.js';

/**
 * The panel as its maker sees it, and how to turn it, clockwise, so that a stitch lies at the hook:
 * on top, at 12 o'clock, with the outer edge up. A right-hander's work then runs on to the left of
 * it, away from the hook in the right hand, and a left-hander's to the right.
 *
 * @param stitch of the panel, from 0 in working order
 */
export function atHook(
  shape: Shape,
  stitch: number,
): { readonly geometry: PanelGeometry; readonly degrees: number } {
  const geometry = workingGeometry({ shape });
  const s = Math.min(Math.max(0, stitch), geometry.count - 1);
  const [x, y] = [geometry.centres[2 * s], geometry.centres[2 * s + 1]];
  return { geometry, degrees: (-Math.atan2(x, -y) * 180) / Math.PI };
}
