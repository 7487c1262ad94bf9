import type { Spot } from '../../lines.js';

/** How far a line may run beside the one that it stands for: a third of a printer's dot at 600 an inch. */
const strayMm = 0.014;

/**
 * A line through fewer of its spots, nowhere further off than `strayMm` (Douglas and Peucker,
 * Algorithms for the reduction of the number of points, 1973). Its ends stay.
 */
export function fewer(line: readonly Spot[]): Spot[] {
  const kept = new Uint8Array(line.length);
  const open: [number, number][] = [[0, line.length - 1]];
  kept[0] = 1;
  kept[line.length - 1] = 1;
  while (open.length > 0) {
    const [from, to] = open.pop()!;
    const far = furthest(line, from, to);
    if (far === undefined) continue;
    kept[far] = 1;
    open.push([from, far], [far, to]);
  }
  return line.filter((_, n) => kept[n] === 1);
}

/** The spot between two others that lies furthest off the line between them, where it is too far. */
function furthest(line: readonly Spot[], from: number, to: number): number | undefined {
  const [ax, ay] = line[from];
  const [dx, dy] = [line[to][0] - ax, line[to][1] - ay];
  const long2 = dx * dx + dy * dy;
  let most = strayMm * strayMm;
  let at: number | undefined;
  for (let n = from + 1; n < to; n++) {
    const [x, y] = [line[n][0] - ax, line[n][1] - ay];
    // Beyond an end, the way to the end counts: the line may turn back on itself.
    const share = long2 > 0 ? Math.min(1, Math.max(0, (x * dx + y * dy) / long2)) : 0;
    const [ox, oy] = [x - share * dx, y - share * dy];
    const off2 = ox * ox + oy * oy;
    if (off2 > most) [most, at] = [off2, n];
  }
  return at;
}
