/** A part of a subject smaller than this share of it may be a speck … */
const speckShare = 0.002;
/** … unless all specks together are more than this share. */
const specksShare = 0.005;

/**
 * The convex hull of the set cells of a reduced picture (monotone chain: A. M. Andrew, Information
 * Processing Letters 9(5), 1979), from their outer corners.
 *
 * @param found 1 for each cell that counts; rows from the top
 * @param size of the mask, cells
 * @param picture its size, pixels
 * @returns x, y pairs in the picture's pixels; undefined when no cell is set
 */
export function hullOf(
  found: Uint8Array,
  size: { width: number; height: number },
  picture: { width: number; height: number },
): Float64Array | undefined {
  const { width, height } = size;
  const mask = withoutSpecks(found, width);
  const corners: [number, number][] = [];
  for (let y = 0; y < height; y++) {
    let [first, last] = [-1, -1];
    for (let x = 0; x < width; x++) {
      if (!mask[y * width + x]) continue;
      if (first < 0) first = x;
      last = x;
    }
    if (first < 0) continue;
    corners.push([first, y], [first, y + 1], [last + 1, y], [last + 1, y + 1]);
  }
  if (corners.length === 0) return undefined;
  corners.sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  const half = (points: readonly [number, number][]): [number, number][] => {
    const chain: [number, number][] = [];
    for (const point of points) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, point) <= 0) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  const ring = [...half(corners), ...half(corners.reverse())];
  const [across, down] = [picture.width / width, picture.height / height];
  return Float64Array.from(ring.flatMap(([x, y]) => [x * across, y * down]));
}

/** Positive where three points turn left (y up). */
function turn(p: [number, number], q: [number, number], r: [number, number]): number {
  return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
}

/** The cells that share a side with one. */
function around(p: number, width: number, count: number): number[] {
  const x = p % width;
  const near: number[] = [];
  if (x > 0) near.push(p - 1);
  if (x + 1 < width) near.push(p + 1);
  if (p >= width) near.push(p - width);
  if (p + width < count) near.push(p + width);
  return near;
}

/** Without parts that are too small to be meant, so that no speck far off makes the subject small. */
function withoutSpecks(mask: Uint8Array, width: number): Uint8Array {
  const met = new Uint8Array(mask.length);
  const parts: number[][] = [];
  let all = 0;
  for (let first = 0; first < mask.length; first++) {
    if (!mask[first] || met[first]) continue;
    const part = [first];
    met[first] = 1;
    for (const p of part) {
      for (const q of around(p, width, mask.length)) {
        if (!mask[q] || met[q]) continue;
        met[q] = 1;
        part.push(q);
      }
    }
    parts.push(part);
    all += part.length;
  }
  const specks = parts.filter((part) => part.length < speckShare * all);
  const together = specks.reduce((sum, part) => sum + part.length, 0);
  if (together > specksShare * all) return mask;
  const kept = mask.slice();
  for (const part of specks) for (const p of part) kept[p] = 0;
  return kept;
}
