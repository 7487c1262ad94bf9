import { distanceOf, turnOf } from '../panel/geometry.js';
import { spokeAt } from '../panel/spoke.js';
import { turnsInWedges } from '../panel/turn.js';
import { flatHeightPerWidth } from '../panel/shape.js';
import type { SwatchWorked } from './swatch.js';

/** How a swatch was worked and leans; its round height is 1. */
export type UnitPanel = Pick<
  SwatchWorked,
  'wedges' | 'rounds' | 'increase' | 'outline' | 'construction'
> & { lean: number };

/** A place on the panel before start and direction: angle with the work in radians, distance in rounds. */
export interface UnitPlace {
  angle: number;
  distance: number;
}

/** Where stitches of a panel with rounds of height 1 lie; the same formula as `panelGeometry`. */
export function unitPlaces(panel: UnitPanel): (r: number, i: number) => UnitPlace {
  const turns = turnsInWedges(panel);
  const { wedges } = panel;
  return (r, i) => {
    const u = (i + 0.5) / (wedges * r);
    const rho = distanceOf({ construction: panel.construction, roundHeightMm: 1 }, r, u);
    const spoke = spokeAt(panel, u, rho);
    const angle = spoke.angle + (turnOf(panel, turns, r, u) * 2 * Math.PI) / wedges;
    return { angle, distance: spoke.distance };
  };
}

/** The same in x (with the work) and y (toward the start mark). */
function unitPoint({ angle, distance }: UnitPlace): [number, number] {
  return [distance * Math.sin(angle), distance * Math.cos(angle)];
}

/**
 * The greatest distance between two bead middles, in round heights. Beads taken as discs, callipers
 * over their outer edges show this times the round height, and one bead diameter more.
 */
export function widestMiddles(panel: UnitPanel): number {
  const place = unitPlaces(panel);
  const rim = Array.from({ length: panel.wedges * panel.rounds }, (_, i) => place(panel.rounds, i));
  const out = Math.max(...rim.map(({ distance }) => distance));
  const onRim = widestOf(rim);
  // Two points farther apart than the rim's widest must both lie so far from the centre. In the
  // round before the last some may: where the last begins, and at corners that turn much.
  const inner: UnitPlace[] = [];
  for (let r = panel.rounds - 1; r >= 1; r--) {
    for (let i = 0; i < panel.wedges * r; i++) {
      const one = place(r, i);
      if (one.distance > onRim - out) inner.push(one);
    }
  }
  return inner.length === 0 ? onRim : widestOf([...rim, ...inner]);
}

function widestOf(places: readonly UnitPlace[]): number {
  const points = places.flatMap(unitPoint);
  let widest = 0;
  for (let p = 0; p < points.length; p += 2) {
    for (let q = p + 2; q < points.length; q += 2) {
      const [dx, dy] = [points[p] - points[q], points[p + 1] - points[q + 1]];
      widest = Math.max(widest, dx * dx + dy * dy);
    }
  }
  return Math.sqrt(widest);
}

/** The wedge (1 to N) across whose middle the rim is measured: the one opposite the start mark. */
export function rimWedge(wedges: number): number {
  return Math.floor(wedges / 2) + 1;
}

/**
 * Stitches of the rim in the middle of wedge `rimWedge`, from bead middle to bead middle: how wide
 * one is there on average, over the stitch width of the shape. About 1; exactly 1 along the side
 * of a joined polygon.
 *
 * @param stitches steps along the rim, not always whole; at most N·R - 1
 */
export function rimShare(panel: UnitPanel, stitches: number): number {
  const place = unitPlaces(panel);
  const { wedges, rounds, outline } = panel;
  const inRound = wedges * rounds;
  const middle = (rimWedge(wedges) - 0.5) * rounds;
  const from = Math.min(Math.max(middle - stitches / 2 - 0.5, 0), inRound - 1 - stitches);
  const to = from + stitches;
  let length = 0;
  for (let i = Math.floor(from); i < Math.min(to, inRound - 1); i++) {
    const [x, y] = unitPoint(place(rounds, i));
    const [nextX, nextY] = unitPoint(place(rounds, i + 1));
    const share = Math.min(to, i + 1) - Math.max(from, i);
    length += Math.max(0, share) * Math.hypot(nextX - x, nextY - y);
  }
  return (length * flatHeightPerWidth(wedges, outline)) / stitches;
}

/** Face angle of the first stitch of a wedge (1 to N) in round r, with the work, degrees. */
export function markedDegrees(panel: UnitPanel, r: number, wedge: number): number {
  return (unitPlaces(panel)(r, (wedge - 1) * r).angle * 180) / Math.PI;
}

/** How far the first stitch of a wedge turns between two rounds, with the work, degrees. */
export function markedTurn(panel: UnitPanel, wedge: number, from: number, to: number): number {
  return markedDegrees(panel, to, wedge) - markedDegrees(panel, from, wedge);
}

/** The lean that turns the marked stitch as far as was measured: turn is linear in lean. */
export function leanOfTurn(
  worked: Omit<UnitPanel, 'lean'>,
  wedge: number,
  from: number,
  to: number,
  degrees: number,
): number {
  const still = markedTurn({ ...worked, lean: 0 }, wedge, from, to);
  const leaned = markedTurn({ ...worked, lean: 1 }, wedge, from, to);
  return (degrees - still) / (leaned - still);
}
