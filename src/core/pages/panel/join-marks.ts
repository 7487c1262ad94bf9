import { panelJoins, panelLengths } from '../../thread/lengths.js';
import { stitchesBefore } from '../../panel/shape.js';
import type { PanelView } from './panel-view.js';
import type { StartColumn } from './start-column.js';
import type { PanelSheet } from './sheet.js';
import type { Polyline } from '../surface/surface.js';

/**
 * A diamond on the border before each stitch with which a new length begins, as long as that
 * border: x, y pairs on the page, the corner that points with the work first. Where the number of a
 * round stands on the border, the diamond lies beneath it, and its ends stand out above and below.
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
    const [a, b] = [number ? 1.15 * number.digitMm : 0.27 * w, 0.46 * h];
    const x = number?.x ?? centreX + scale * centres[2 * s] - 0.5 * onX * w;
    const y = number?.y ?? centreY + scale * centres[2 * s + 1] - 0.5 * onY * w;
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
