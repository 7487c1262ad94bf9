/** A closed ring: x, y pairs, the last joined to the first. Positive area = clockwise on the page. */
export type Ring = Float64Array;

/** Signed area by the shoelace formula, in the square of the ring's unit; y points down. */
export function ringArea(ring: Ring): number {
  let twice = 0;
  const n = ring.length;
  for (let p = 0; p < n; p += 2) {
    const q = (p + 2) % n;
    twice += ring[p] * ring[q + 1] - ring[q] * ring[p + 1];
  }
  return twice / 2;
}

/** The same ring the other way round. */
export function reversedRing(ring: Ring): Ring {
  const out = new Float64Array(ring.length);
  for (let p = 0; p < ring.length; p += 2) {
    out[p] = ring[ring.length - 2 - p];
    out[p + 1] = ring[ring.length - 1 - p];
  }
  return out;
}

/**
 * Sutherland–Hodgman: the part of any ring inside a convex one. Where a subject that is not convex
 * falls into several parts they stay joined by edges without area.
 *
 * @param subject any ring
 * @param convex a convex ring of positive area
 */
export function clipToConvex(subject: Ring, convex: Ring): Ring {
  let from: ArrayLike<number> = subject;
  const n = convex.length;
  for (let e = 0; e < n && from.length > 0; e += 2) {
    const ax = convex[e];
    const ay = convex[e + 1];
    const ex = convex[(e + 2) % n] - ax;
    const ey = convex[(e + 3) % n] - ay;
    const to: number[] = [];
    let px = from[from.length - 2];
    let py = from[from.length - 1];
    let before = ex * (py - ay) - ey * (px - ax);
    for (let p = 0; p < from.length; p += 2) {
      const x = from[p];
      const y = from[p + 1];
      const side = ex * (y - ay) - ey * (x - ax);
      if (before < 0 !== side < 0) {
        const t = before / (before - side);
        to.push(px + t * (x - px), py + t * (y - py));
      }
      if (side >= 0) to.push(x, y);
      px = x;
      py = y;
      before = side;
    }
    from = to;
  }
  return new Float64Array(from);
}

/** Whether a point lies inside a ring, by the even-odd rule. */
export function insideRing(ring: Ring, x: number, y: number): boolean {
  let inside = false;
  const n = ring.length;
  for (let p = 0, q = n - 2; p < n; q = p, p += 2) {
    const above = ring[p + 1] > y;
    if (above !== ring[q + 1] > y) {
      const t = (y - ring[p + 1]) / (ring[q + 1] - ring[p + 1]);
      if (x < ring[p] + t * (ring[q] - ring[p])) inside = !inside;
    }
  }
  return inside;
}
