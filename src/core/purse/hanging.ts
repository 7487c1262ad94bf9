import { apart, goneAlong } from '../lines.js';
import type { Spot } from '../lines.js';
import type { PanelGeometry } from '../panel/geometry.js';
import type { Frame } from './frame/measures.js';
import { bellyLine, railLine } from './frame/outline.js';
import { planFrame, stretchIn } from './frame/plan.js';
import type { FramePlan } from './frame/plan.js';
import { normalised, rimOf } from './frame/rim.js';

/** One panel as it hangs in its frame, seen on the bead face; millimetres, y down, hinges on y = 0. */
export interface HangingPanel {
  readonly plan: FramePlan;
  /** From the left hinge over the top to the right one. */
  readonly rail: readonly Spot[];
  /** From the right hinge along the seam to the left one. */
  readonly belly: readonly Spot[];
  /** Where a place on the flat panel comes to lie. */
  place(xMm: number, yMm: number): Spot;
}

/** Places round the rim at which it is measured. */
const samples = 720;

/**
 * How a panel hangs in its frame: its rim lies along the rail between the hinges and along the seam
 * below them, each as long as it is; what is inside follows from a middle outward. A drawing to
 * look at: cloth and thread fall as they will.
 *
 * @throws RondureError those of `planFrame`
 */
export function hangPanel(frame: Frame, geometry: PanelGeometry): HangingPanel {
  const plan = planFrame(frame, geometry);
  const { direction } = geometry;
  const rail = railLine(frame);
  const hinges = apart(rail[0], rail[rail.length - 1]);
  const belly = bellyLine(hinges, plan.seam.lengthMm);
  const rim = rimOf(geometry);
  const { first, last } = stretchIn(frame, geometry)!;
  const away = (mm: number) => mm - rim.lengthMm * Math.round(mm / rim.lengthMm);
  /** Millimetres clockwise from 12 o'clock to both hinges. */
  const ends = [rim.borderMm(first), rim.borderMm(last + 1)].map(
    (mm) => direction * away(mm - rim.topMm),
  );
  const [left, right] = [Math.min(...ends), Math.max(...ends)];
  const along = { rail: lineAt(rail), belly: lineAt(belly) };
  const all = [...rail, ...belly.slice(1, -1)];
  const middle = centreOf(all);
  const radii = new Float64Array(samples + 1);
  const angles = new Float64Array(samples + 1);
  const outline: Spot[] = [];
  const line = rim.line(0, rim.stitches);
  const edge = edgeAt(line);
  for (let k = 0; k <= samples; k++) {
    const t = (k / samples - 0.5) * rim.lengthMm;
    angles[k] = direction * (rim.angleAt(rim.topMm + direction * t) - rim.topAngle);
    // The step of a spiral is drawn out along the rim: under the metal nobody sees it.
    radii[k] = edge(angles[k]);
    if (t >= left && t <= right) outline.push(along.rail((t - left) / (right - left)));
    else {
      const beyond = t > right ? t - right : t - right + rim.lengthMm;
      outline.push(along.belly(beyond / (rim.lengthMm - right + left)));
    }
  }
  const even = evened(radii);
  return {
    plan,
    rail,
    belly,
    place(xMm, yMm) {
      const angle = Math.atan2(xMm, -yMm);
      const at = sampleAt(angles, angle);
      const low = Math.min(samples - 1, Math.floor(at));
      const share = at - low;
      const radius = even[low] + share * (even[low + 1] - even[low]);
      const out = Math.hypot(xMm, yMm) / radius;
      const [ax, ay] = outline[low];
      const [bx, by] = outline[low + 1];
      return [
        middle[0] + out * (ax + share * (bx - ax) - middle[0]),
        middle[1] + out * (ay + share * (by - ay) - middle[1]),
      ];
    },
  };
}

/** Means over the samples around, once round. */
function evened(radii: Float64Array): Float64Array {
  const around = 14;
  return radii.map((_, k) => {
    let sum = 0;
    for (let d = -around; d <= around; d++) sum += radii[(k + d + samples) % samples];
    return sum / (2 * around + 1);
  });
}

/** The place of an angle among ascending ones that go once round. */
function sampleAt(angles: Float64Array, angle: number): number {
  let wanted = angle;
  while (wanted < angles[0]) wanted += 2 * Math.PI;
  while (wanted > angles[0] + 2 * Math.PI) wanted -= 2 * Math.PI;
  let [low, high] = [0, angles.length - 1];
  while (high - low > 1) {
    const half = (low + high) >> 1;
    if (angles[half] <= wanted) low = half;
    else high = half;
  }
  const span = angles[high] - angles[low];
  return span > 0 ? low + Math.min(1, (wanted - angles[low]) / span) : low;
}

/** Distance of the rim from the centre at a face angle. */
function edgeAt(line: readonly number[]): (angle: number) => number {
  const spots = Array.from({ length: line.length / 2 }, (_, p) => ({
    angle: Math.atan2(line[2 * p], -line[2 * p + 1]),
    far: Math.hypot(line[2 * p], line[2 * p + 1]),
  })).sort((one, other) => one.angle - other.angle);
  return (angle) => {
    const wanted = normalised(angle);
    let [low, high] = [0, spots.length - 1];
    while (high - low > 1) {
      const half = (low + high) >> 1;
      if (spots[half].angle <= wanted) low = half;
      else high = half;
    }
    return Math.abs(spots[low].angle - wanted) < Math.abs(spots[high].angle - wanted)
      ? spots[low].far
      : spots[high].far;
  };
}

/** A line by the share of its length, 0 to 1. */
function lineAt(line: readonly Spot[]): (share: number) => Spot {
  const { far, at } = goneAlong(line);
  return (share) => at(share * far[far.length - 1]);
}

/** Centre of the area inside a closed line. */
function centreOf(line: readonly Spot[]): Spot {
  let [area, x, y] = [0, 0, 0];
  line.forEach(([ax, ay], n) => {
    const [bx, by] = line[(n + 1) % line.length];
    const cross = ax * by - bx * ay;
    area += cross;
    x += (ax + bx) * cross;
    y += (ay + by) * cross;
  });
  return [x / (3 * area), y / (3 * area)];
}
