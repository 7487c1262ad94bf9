import { panelJoins, panelLengths } from '../../thread/lengths.js';
import { stitchesBefore } from '../../panel/shape.js';
import { pillPerDigit } from './cells.js';
import type { PanelView } from './panel-view.js';
import type { StartColumn } from './start-column.js';
import type { PanelSheet } from './sheet.js';
import type { Polyline } from '../surface/surface.js';

/**
 * A diamond on the border before each stitch with which a new length begins: x, y pairs on the
 * page, the corner that points with the work first. Where the number of a round stands on that
 * border, the diamond is a smaller one that hangs on the number, on the side of the centre.
 */
export function joinMarks(
  { pattern, panel, geometry }: PanelSheet,
  { numbers }: Pick<StartColumn, 'numbers'>,
  { scale, centreX, centreY }: PanelView,
): Polyline[] {
  const { shape, centres, tilts, direction } = geometry;
  const lengths = panelLengths(pattern, panel);
  return panelJoins(pattern, panel, lengths).map(({ round, stitch }) => {
    const s = stitchesBefore(shape, round) + stitch;
    const [outX, outY] = [Math.sin(tilts[s]), -Math.cos(tilts[s])];
    const [onX, onY] = [-outY * direction, outX * direction];
    const [w, h] = [scale * shape.stitchWidthMm, scale * shape.roundHeightMm];
    const number = stitch === 0 ? numbers.find((one) => one.round === round) : undefined;
    const [a, b] = number ? [0.22 * w, 0.17 * h] : [0.27 * w, 0.27 * h];
    let x = centreX + scale * centres[2 * s] - 0.5 * onX * w;
    let y = centreY + scale * centres[2 * s + 1] - 0.5 * onY * w;
    if (number) {
      const down = (pillPerDigit * number.digitMm) / 2 + b + 0.1;
      [x, y] = [number.x - outX * down, number.y - outY * down];
    }
    return [
      ...[x + onX * a, y + onY * a, x + outX * b, y + outY * b],
      ...[x - onX * a, y - onY * a, x - outX * b, y - outY * b],
    ];
  });
}

/** Whether a panel is worked from more than one length. */
export function hasJoins({ pattern, panel }: Pick<PanelSheet, 'pattern' | 'panel'>): boolean {
  return panelJoins(pattern, panel, panelLengths(pattern, panel)).length > 0;
}
