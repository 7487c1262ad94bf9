import type { Picture } from '../picture.js';

/** One pull of a round brush over a picture; lengths in pixels of the picture. */
export interface BrushPull {
  /** x and y of each point, one after the other. */
  readonly points: readonly number[];
  readonly radius: number;
  /** Whether it wipes off what was painted before. */
  readonly wipes?: boolean | undefined;
}

/** A mask is painted this large at most; beads are far larger than its pixels. */
const longerSidePx = 512;

/**
 * What is painted white over a black ground, in the proportions of a picture.
 *
 * @param before the mask of the same pulls as far as they had come, which spares painting them again
 */
export function paintedMask(
  pulls: readonly BrushPull[],
  { width, height }: Pick<Picture, 'width' | 'height'>,
  before?: { readonly pulls: readonly BrushPull[]; readonly picture: Picture },
): Picture {
  const scale = Math.min(1, longerSidePx / Math.max(width, height));
  const [w, h] = [width, height].map((side) => Math.max(1, Math.round(side * scale)));
  const from = before && goesOn(before.pulls, pulls) ? before : undefined;
  const data = from ? new Uint8Array(from.picture.data) : blackOf(w * h);
  const first = from ? Math.max(0, from.pulls.length - 1) : 0;
  for (let n = first; n < pulls.length; n++) {
    const { points, radius, wipes } = pulls[n];
    const known = from && n === first ? (from.pulls[n]?.points.length ?? 0) : 0;
    const r = Math.max(0.5, radius * scale);
    for (let p = Math.max(0, known - 2); p < points.length; p += 2) {
      const q = Math.max(0, p - 2);
      const line = [points[q], points[q + 1], points[p], points[p + 1]].map((one) => one * scale);
      paintLine(data, w, h, line, r, wipes ? 0 : 255);
    }
  }
  return { width: w, height: h, data };
}

/** Whether the later pulls are the earlier ones, the last of which may have become longer. */
function goesOn(earlier: readonly BrushPull[], later: readonly BrushPull[]): boolean {
  const last = earlier.length - 1;
  if (last < 0 || later.length < earlier.length) return false;
  for (let n = 0; n < last; n++) if (earlier[n] !== later[n]) return false;
  const [one, other] = [earlier[last], later[last]];
  return (
    one.radius === other.radius &&
    one.wipes === other.wipes &&
    one.points.every((value, n) => value === other.points[n])
  );
}

function blackOf(pixels: number): Uint8Array {
  const data = new Uint8Array(4 * pixels);
  for (let p = 3; p < data.length; p += 4) data[p] = 255;
  return data;
}

function paintLine(
  data: Uint8Array,
  width: number,
  height: number,
  [x1, y1, x2, y2]: readonly number[],
  radius: number,
  value: number,
): void {
  const [dx, dy] = [x2 - x1, y2 - y1];
  const length2 = dx * dx + dy * dy;
  const top = Math.max(0, Math.floor(Math.min(y1, y2) - radius));
  const bottom = Math.min(height - 1, Math.ceil(Math.max(y1, y2) + radius));
  const left = Math.max(0, Math.floor(Math.min(x1, x2) - radius));
  const right = Math.min(width - 1, Math.ceil(Math.max(x1, x2) + radius));
  for (let y = top; y <= bottom; y++) {
    for (let x = left; x <= right; x++) {
      const [px, py] = [x + 0.5 - x1, y + 0.5 - y1];
      const t = length2 === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / length2));
      const [ax, ay] = [px - t * dx, py - t * dy];
      if (ax * ax + ay * ay > radius * radius) continue;
      const at = 4 * (y * width + x);
      data[at] = data[at + 1] = data[at + 2] = value;
    }
  }
}
