/** Which pixels rings cover, and how much of each: filled anew by every call. */
export interface Coverage {
  /** Number of entries that hold; what lies behind them is left over from earlier calls. */
  count: number;
  /** Pixel number, y·width + x, ascending. */
  pixel: Int32Array;
  /** Covered area of that pixel, 0 to 1. */
  area: Float64Array;
  /** Area of the rings, pixels, and of their part inside the picture. */
  total: number;
  inside: number;
}

/**
 * Makes `coverRings(rings, width, height)`: the exact area of every pixel of a picture of width ×
 * height that lies inside rings. Signed areas add, so that a hole is a ring the other way round.
 *
 * Each edge adds, to the pixels it crosses and for all pixels to its right, the area between them:
 * one running sum over a row then gives coverage. The technique of font rasterisers, for instance
 * R. Levien, "Inside the fastest font renderer in the world" (2016). The result and its arrays are
 * reused by the next call.
 *
 * @returns rings: x, y pairs in pixels, pixel (0, 0) covering 0 to 1
 */
export function makeCoverage(): (
  rings: readonly Float64Array[],
  width: number,
  height: number,
) => Coverage {
  let sums = new Float64Array(0);
  const found: Coverage = {
    count: 0,
    pixel: new Int32Array(0),
    area: new Float64Array(0),
    total: 0,
    inside: 0,
  };
  let left = 0;
  let top = 0;
  let columns = 0;
  let rows = 0;

  return (rings, width, height) => {
    found.count = 0;
    found.total = 0;
    found.inside = 0;
    for (const ring of rings) found.total += signedArea(ring);
    const sign = found.total < 0 ? -1 : 1;
    found.total *= sign;
    if (!bounds(rings, width, height)) return found;
    const stride = columns + 2;
    if (sums.length < stride * rows) sums = new Float64Array(2 * stride * rows);
    else sums.fill(0, 0, stride * rows);
    for (const ring of rings) {
      const n = ring.length;
      let x = ring[n - 2] - left;
      let y = ring[n - 1] - top;
      for (let p = 0; p < n; p += 2) {
        const toX = ring[p] - left;
        const toY = ring[p + 1] - top;
        // Coverage lies to the right of an edge that runs up the page.
        if (toY > y) addEdge(x, y, toX, toY, -sign);
        else if (toY < y) addEdge(toX, toY, x, y, sign);
        x = toX;
        y = toY;
      }
    }
    harvest(width);
    return found;
  };

  /** The pixels the rings can touch; false when there are none. */
  function bounds(rings: readonly Float64Array[], width: number, height: number): boolean {
    let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
    for (const ring of rings) {
      for (let p = 0; p < ring.length; p += 2) {
        if (ring[p] < x0) x0 = ring[p];
        if (ring[p] > x1) x1 = ring[p];
        if (ring[p + 1] < y0) y0 = ring[p + 1];
        if (ring[p + 1] > y1) y1 = ring[p + 1];
      }
    }
    left = Math.max(0, Math.floor(x0));
    top = Math.max(0, Math.floor(y0));
    columns = Math.min(width, Math.ceil(x1)) - left;
    rows = Math.min(height, Math.ceil(y1)) - top;
    return columns > 0 && rows > 0;
  }

  /** An edge running down the page, cut to the rows and to the columns. */
  function addEdge(ax: number, ay: number, bx: number, by: number, sign: number): void {
    const slope = (bx - ax) / (by - ay);
    if (ay < 0) {
      ax -= ay * slope;
      ay = 0;
    }
    if (by > rows) {
      bx -= (by - rows) * slope;
      by = rows;
    }
    if (by <= ay) return;
    // What lies left of the window counts for all of its columns, what lies right for none.
    let [leftX, leftY, rightX, rightY] = ax <= bx ? [ax, ay, bx, by] : [bx, by, ax, ay];
    if (rightX <= 0) return addPiece(0, ay, 0, by, sign);
    if (leftX >= columns) return;
    if (leftX < 0) {
      const y = leftY - leftX / slope;
      addPiece(0, Math.min(leftY, y), 0, Math.max(leftY, y), sign);
      [leftX, leftY] = [0, y];
    }
    if (rightX > columns) {
      rightY -= (rightX - columns) / slope;
      rightX = columns;
    }
    if (leftY <= rightY) addPiece(leftX, leftY, rightX, rightY, sign);
    else addPiece(rightX, rightY, leftX, leftY, sign);
  }

  /** An edge running down inside the window, row by row. */
  function addPiece(ax: number, ay: number, bx: number, by: number, sign: number): void {
    if (!(by > ay)) return;
    const slope = (bx - ax) / (by - ay);
    const last = Math.min(rows - 1, Math.ceil(by) - 1);
    let x = ax;
    let y = ay;
    for (let row = Math.min(rows - 1, Math.floor(ay)); row <= last; row++) {
      const toY = row === last ? by : row + 1;
      const toX = row === last ? bx : within(ax + (toY - ay) * slope);
      addInRow(row * (columns + 2), x, toX, sign * (toY - y));
      x = toX;
      y = toY;
    }
  }

  function within(x: number): number {
    return x < 0 ? 0 : x > columns ? columns : x;
  }

  /** An edge inside one row that falls by `fall`. */
  function addInRow(at: number, ax: number, bx: number, fall: number): void {
    const x0 = ax < bx ? ax : bx;
    const x1 = ax < bx ? bx : ax;
    const first = Math.floor(x0);
    if (x1 <= first + 1) {
      const right = (x0 + x1) / 2 - first;
      sums[at + first] += fall * (1 - right);
      sums[at + first + 1] += fall * right;
      return;
    }
    const perColumn = fall / (x1 - x0);
    for (let column = first; column < x1; column++) {
      const from = x0 > column ? x0 : column;
      const to = x1 < column + 1 ? x1 : column + 1;
      const part = perColumn * (to - from);
      const right = (from + to) / 2 - column;
      sums[at + column] += part * (1 - right);
      sums[at + column + 1] += part * right;
    }
  }

  function harvest(width: number): void {
    if (found.pixel.length < columns * rows) {
      found.pixel = new Int32Array(2 * columns * rows);
      found.area = new Float64Array(2 * columns * rows);
    }
    const { pixel, area } = found;
    let count = 0;
    let inside = 0;
    for (let row = 0; row < rows; row++) {
      const at = row * (columns + 2);
      const start = (top + row) * width + left;
      let sum = 0;
      for (let column = 0; column < columns; column++) {
        sum += sums[at + column];
        if (sum > 1e-9) {
          pixel[count] = start + column;
          area[count++] = sum;
          inside += sum;
        }
      }
    }
    found.count = count;
    found.inside = inside;
  }
}

function signedArea(ring: Float64Array): number {
  let twice = 0;
  const n = ring.length;
  if (n < 2) return 0;
  // Relative to the first corner: far from the origin products would swallow the difference.
  const x0 = ring[0];
  const y0 = ring[1];
  for (let p = 2; p + 3 < n; p += 2) {
    twice += (ring[p] - x0) * (ring[p + 3] - y0) - (ring[p + 2] - x0) * (ring[p + 1] - y0);
  }
  return twice / 2;
}
