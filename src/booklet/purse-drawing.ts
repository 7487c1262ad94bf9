import { finishedEdge } from '../core/panel/edge.js';
import type { PanelGeometry } from '../core/panel/geometry.js';
import type { HangingPanel } from '../core/purse/hanging.js';
import type { Surface } from '../core/pages/surface/surface.js';
import { drawWorkedBeads } from './worked-beads.js';
import type { WorkedBeads } from './worked-beads.js';

const metal = '#8b877d';
const metalDark = '#4f4c46';
const metalLight = '#d9d5ca';

/** A rail and its clasp, millimetres of the real thing (common practice, no source). */
const railMm = 4.2;
const ballMm = 4.6;
const claspMm = 11;

/** How far the clasp reaches above the rim, millimetres of the real thing. */
export const claspReachMm = railMm + claspMm;

/** Half the width of a worked panel, millimetres. */
export function panelReach(geometry: PanelGeometry): number {
  const edge = finishedEdge(geometry);
  let reach = 0;
  for (let p = 0; p < edge.length; p += 2)
    reach = Math.max(reach, Math.hypot(edge[p], edge[p + 1]));
  return reach;
}

/**
 * A closed purse seen from one side: the panel as it hangs, and over its rim the rail of its frame from
 * hinge to hinge with the two balls of the clasp, all at one scale.
 *
 * @param at the middle between the hinges on the page, and how many millimetres there are to one
 */
export function drawPurse(
  surface: Surface,
  beads: WorkedBeads,
  hanging: HangingPanel,
  at: { x: number; y: number; scale: number },
): void {
  const { scale } = at;
  drawWorkedBeads(surface, { ...beads, place: hanging.place }, at);
  const rail = hanging.rail.flatMap(([x, y]) => [at.x + scale * x, at.y + scale * y]);
  const wide = scale * railMm;
  const along = (stroke: string, share: number, lift = 0) =>
    surface.strokePath([rail.map((value, p) => (p % 2 === 0 ? value : value - lift * wide))], {
      stroke,
      widthMm: share * wide,
    });
  along(metalDark, 1);
  along(metal, 0.82);
  along(metalLight, 0.16, 0.16);
  const ends = [
    [rail[0], rail[1]],
    [rail.at(-2)!, rail.at(-1)!],
  ];
  const outline = { stroke: metalDark, widthMm: 0.2 };
  for (const [x, y] of ends) {
    surface.circle(x, y, 0.72 * wide, { fill: metal, outline });
    surface.circle(x, y, 0.22 * wide, { fill: metalDark });
  }
  // The clasp stands where the rail is highest: two balls that snap past one another.
  let top = 0;
  for (let p = 0; p < rail.length; p += 2) if (rail[p + 1] < rail[top + 1]) top = p;
  const [x, y] = [at.x, Math.min(rail[top + 1], at.y)];
  for (const side of [-1, 1]) {
    const [bx, by] = [x + side * 0.42 * scale * ballMm, y - 0.62 * scale * claspMm];
    surface.strokePath([[x - side * 0.3 * scale * ballMm, y, bx, by]], {
      stroke: metalDark,
      widthMm: 0.34 * scale * ballMm,
    });
    surface.circle(bx, by, 0.5 * scale * ballMm, { fill: metal, outline });
    surface.circle(bx - 0.14 * scale * ballMm, by - 0.16 * scale * ballMm, 0.13 * scale * ballMm, {
      fill: metalLight,
    });
  }
}
