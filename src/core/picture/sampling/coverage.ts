import type { RingList } from '../../panel/ring-list.js';

/** Which pixels rings cover, and how much of each: filled anew by every call. */
export interface Coverage {
  /** Number of runs that hold; what lies behind them is left over from earlier calls. */
  count: number;
  /** First pixel of a run within a row, y·width + x, ascending. */
  pixel: Int32Array;
  /** How many pixels follow one another in it: 1, or more that are wholly covered. */
  length: Int32Array;
  /** Covered area of each of its pixels, 0 to 1; of a pixel that stands for others like it, theirs too. */
  area: Float64Array;
  /** Area of the rings, pixels, and of their part inside the picture. */
  total: number;
  inside: number;
  /** The part of the picture that they can touch, pixels. */
  readonly window: Window;
}

/** A part of a picture, pixels. */
export interface Window {
  left: number;
  top: number;
  columns: number;
  rows: number;
}

/** Whether all pixels of a window of the picture are known to be alike. */
export type AllAlike = (window: Window) => boolean;

/** Areas this near to nothing, or to all of a pixel, are rounding. */
const nothing = 1e-9;

const asTheyAre = [1, 0, 0, 1, 0, 0] as const;

/**
 * Makes `coverRings(list, first, end)`: the exact area of every pixel of a picture of width × height
 * that lies inside the rings `first` to `end`, without `end`. Signed areas add, so that a hole is a ring the other way round.
 *
 * Each edge adds, to the pixels it crosses and for all pixels to its right, the area between them:
 * one running sum over a row then gives coverage. The technique of font rasterisers, for instance
 * R. Levien, "Inside the fastest font renderer in the world" (2016). The result and its arrays are
 * reused by the next call.
 *
 * @param width, height pixels; pixel (0, 0) covers 0 to 1
 * @param map from the rings' corners to pixels: x' = a·x + c·y + e, y' = b·x + d·y + f
 * @param allAlike where it says so, one pixel stands for all
 */
export function makeCoverage(
  { width, height }: { readonly width: number; readonly height: number },
  [mapA, mapB, mapC, mapD, mapE, mapF]: readonly number[] = asTheyAre,
  allAlike?: AllAlike,
): (rings: RingList, first: number, end: number) => Coverage {
  /** Corners in pixels. */
  let corners = new Float64Array(64);
  let sums = new Float64Array(0);
  const window: Window = { left: 0, top: 0, columns: 0, rows: 0 };
  const found: Coverage = {
    count: 0,
    pixel: new Int32Array(0),
    length: new Int32Array(0),
    area: new Float64Array(0),
    total: 0,
    inside: 0,
    window,
  };
  let left = 0;
  let top = 0;
  let columns = 0;
  let rows = 0;
  /** Whether the corners lie inside the picture. */
  let within = false;

  return (rings, first, end) => {
    const { from } = rings;
    const begin = from[first];
    const many = from[end] - begin;
    found.count = 0;
    found.total = 0;
    found.inside = 0;
    if (corners.length < many) corners = new Float64Array(2 * many);
    const isSeen = mapped(rings.corners, begin, many);
    for (let ring = first; ring < end; ring++) {
      found.total += signedArea(corners, from[ring] - begin, from[ring + 1] - begin);
    }
    const sign = found.total < 0 ? -1 : 1;
    found.total *= sign;
    if (!isSeen) return found;
    // Below a pixel the rounding of areas is not small beside them.
    if (allAlike && within && found.total >= 1 && allAlike(found.window)) {
      roomFor(1);
      found.pixel[0] = top * width + left;
      found.length[0] = 1;
      found.area[0] = found.inside = found.total;
      found.count = 1;
      return found;
    }
    const needed = (columns + 2) * rows;
    // What was read is cleared at once, so that the sums are always all zero here.
    if (sums.length < needed) sums = new Float64Array(2 * needed);
    for (let ring = first; ring < end; ring++) {
      const stop = from[ring + 1] - begin;
      let x = corners[stop - 2] - left;
      let y = corners[stop - 1] - top;
      for (let p = from[ring] - begin; p < stop; p += 2) {
        const toX = corners[p] - left;
        const toY = corners[p + 1] - top;
        // Coverage lies to the right of an edge that runs up the page.
        // Inside the window nothing is to be cut off.
        if (toY > y) (within ? addPiece : addEdge)(x, y, toX, toY, -sign);
        else if (toY < y) (within ? addPiece : addEdge)(toX, toY, x, y, sign);
        x = toX;
        y = toY;
      }
    }
    harvest();
    return found;
  };

  /** Takes the corners in pixels, and the pixels that they can touch; false when there are none. */
  function mapped(from: Float64Array, begin: number, many: number): boolean {
    const to = corners;
    let x0 = Infinity;
    let y0 = Infinity;
    let x1 = -Infinity;
    let y1 = -Infinity;
    for (let p = 0; p < many; p += 2) {
      const ownX = from[begin + p];
      const ownY = from[begin + p + 1];
      const x = mapA * ownX + mapC * ownY + mapE;
      const y = mapB * ownX + mapD * ownY + mapF;
      to[p] = x;
      to[p + 1] = y;
      if (x < x0) x0 = x;
      if (x > x1) x1 = x;
      if (y < y0) y0 = y;
      if (y > y1) y1 = y;
    }
    within = x0 >= 0 && y0 >= 0 && x1 <= width && y1 <= height;
    left = Math.max(0, Math.floor(x0));
    top = Math.max(0, Math.floor(y0));
    columns = Math.min(width, Math.ceil(x1)) - left;
    rows = Math.min(height, Math.ceil(y1)) - top;
    window.left = left;
    window.top = top;
    window.columns = columns;
    window.rows = rows;
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
    const rising = ax <= bx;
    let leftX = rising ? ax : bx;
    let leftY = rising ? ay : by;
    let rightX = rising ? bx : ax;
    let rightY = rising ? by : ay;
    if (rightX <= 0) return addPiece(0, ay, 0, by, sign);
    if (leftX >= columns) return;
    if (leftX < 0) {
      const y = leftY - leftX / slope;
      addPiece(0, Math.min(leftY, y), 0, Math.max(leftY, y), sign);
      leftX = 0;
      leftY = y;
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
    const into = sums;
    const most = columns;
    const stride = most + 2;
    const slope = (bx - ax) / (by - ay);
    const last = Math.min(rows - 1, Math.ceil(by) - 1);
    let x = ax;
    let y = ay;
    let row = Math.min(rows - 1, Math.floor(ay));
    for (let at = row * stride; row <= last; row++, at += stride) {
      const toY = row === last ? by : row + 1;
      let toX = bx;
      if (row !== last) {
        const there = ax + (toY - ay) * slope;
        toX = there < 0 ? 0 : there > most ? most : there;
      }
      // What of it lies in this row falls by so much.
      const fall = sign * (toY - y);
      const x0 = x < toX ? x : toX;
      const x1 = x < toX ? toX : x;
      const first = Math.floor(x0);
      if (x1 <= first + 1) {
        const right = (x0 + x1) / 2 - first;
        into[at + first] += fall * (1 - right);
        into[at + first + 1] += fall * right;
      } else {
        const perColumn = fall / (x1 - x0);
        for (let column = first; column < x1; column++) {
          const from = x0 > column ? x0 : column;
          const to = x1 < column + 1 ? x1 : column + 1;
          const part = perColumn * (to - from);
          const right = (from + to) / 2 - column;
          into[at + column] += part * (1 - right);
          into[at + column + 1] += part * right;
        }
      }
      x = toX;
      y = toY;
    }
  }

  function roomFor(runs: number): void {
    if (found.pixel.length >= runs) return;
    found.pixel = new Int32Array(2 * runs);
    found.length = new Int32Array(2 * runs);
    found.area = new Float64Array(2 * runs);
  }

  function harvest(): void {
    roomFor(columns * rows);
    const { pixel, length, area } = found;
    const from = sums;
    const many = columns;
    let count = 0;
    let inside = 0;
    for (let row = 0, at = 0; row < rows; row++, at += 2) {
      const toPixel = (top + row) * width + left - at;
      const stop = at + many;
      let sum = 0;
      while (at < stop) {
        const begin = at;
        sum += from[at];
        from[at] = 0;
        // Where no edge adds anything, the next pixels are covered alike.
        for (at++; at < stop && from[at] === 0;) at++;
        if (sum <= nothing) continue;
        if (sum > 1 - nothing && sum < 1 + nothing) {
          pixel[count] = toPixel + begin;
          length[count] = at - begin;
          area[count++] = 1;
          inside += at - begin;
          continue;
        }
        for (let c = begin; c < at; c++) {
          pixel[count] = toPixel + c;
          length[count] = 1;
          area[count++] = sum;
          inside += sum;
        }
      }
      from[at] = 0;
      from[at + 1] = 0;
    }
    found.count = count;
    found.inside = inside;
  }
}

/** Signed area of the ring between two places of a list of corners. */
function signedArea(corners: Float64Array, begin: number, stop: number): number {
  if (stop - begin < 2) return 0;
  let twice = 0;
  // Relative to the first corner: far from the origin products would swallow the difference.
  const x0 = corners[begin];
  const y0 = corners[begin + 1];
  for (let p = begin + 2; p + 3 < stop; p += 2) {
    twice +=
      (corners[p] - x0) * (corners[p + 3] - y0) - (corners[p + 2] - x0) * (corners[p + 1] - y0);
  }
  return twice / 2;
}
