import { findRuling } from './paper-ruling.js';
import type { Ruling, RulingLine } from './paper-ruling.js';

/** How far from the middle of a line its ink is looked for, and how finely, pixels. */
const [reachPx, binPx] = [4, 0.5];
const bins = (2 * reachPx) / binPx + 1;
/** Rows of pixels that tell the ink of a line together, and how many of them must be bare paper. */
const [rowsTogether, fewestRows] = [160, 40];
/** Where beside a line paper is looked for, pixels, and how much ink it may have. */
const [besidePx, paperInk] = [5, 20];
/** A channel this near to white carries no ink of a line. */
const noInk = 4;
/** A pixel is the line alone up to so many times its usual ink, and a little. */
const [aloneTimes, aloneMore] = [1.5, 10];

/**
 * Takes the ruling of ruled or squared paper out of an evened picture, in place: what is the line
 * alone becomes paper; what is drawn over it loses the line's share of the light that it swallows.
 *
 * @param data r, g, b, alpha, 0 to 255, white where paper is
 * @returns whether there was a ruling
 */
export function removeRuling(
  data: Uint8Array,
  width: number,
  height: number,
  inkOf: (data: Uint8Array) => Float32Array,
): boolean {
  // Lines that run down, then lines that run across: the picture turned over its diagonal.
  const ink = inkOf(data);
  const down = findRuling(ink, width, height);
  const over = findRuling(turned(ink, width, height), height, width);
  if (down) removeFamily(data, down, (x, y) => y * width + x, width, height);
  if (over) removeFamily(data, over, (x, y) => x * width + y, height, width);
  return down !== undefined || over !== undefined;
}

function removeFamily(
  data: Uint8Array,
  ruling: Ruling,
  pixelAt: (x: number, y: number) => number,
  width: number,
  height: number,
): void {
  const lines = ruling.lines.map((line) => alongLine(data, ruling, line, pixelAt, width, height));
  const family = usualColours(data, lines);
  if (!family) return;
  for (const line of lines) removeLine(data, line, family);
}

function turned(ink: Float32Array, width: number, height: number): Float32Array {
  const out = new Float32Array(ink.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) out[x * height + y] = ink[y * width + x];
  }
  return out;
}

/** The pixels around a line, row by row, each with its distance from the line's middle in bins. */
interface Along {
  readonly rows: number;
  /** Calls `use` for each pixel of a row. */
  each(y: number, use: (p: number, bin: number) => void): void;
  /** Whether bare paper lies on one side of the line in a row, and on both. */
  paperBeside(y: number, both: boolean): boolean;
}

function removeLine(data: Uint8Array, along: Along, family: Float64Array): void {
  const own = usualColours(data, [along]) ?? family;
  for (let top = 0; top < along.rows; top += rowsTogether) {
    const part = { ...along, rows: Math.min(along.rows, top + rowsTogether) };
    const usual = usualColours(data, [part], top) ?? own;
    for (let y = top; y < part.rows; y++) {
      const onPaper = along.paperBeside(y, false);
      along.each(y, (p, bin) => {
        let [ink, ruled] = [0, 0];
        for (let c = 0; c < 3; c++) {
          ink = Math.max(ink, 255 - data[p + c]);
          ruled = Math.max(ruled, 255 - usual[3 * bin + c]);
        }
        if (ruled < noInk) return;
        const alone = onPaper && ink <= aloneTimes * ruled + aloneMore;
        for (let c = 0; c < 3; c++) {
          const through = Math.max(1, usual[3 * bin + c]) / 255;
          data[p + c] = alone ? 255 : Math.min(255, Math.round(data[p + c] / through));
        }
      });
    }
  }
}

/** What lies along one line of a ruling. */
function alongLine(
  data: Uint8Array,
  { stripPx, strips }: Ruling,
  { across }: RulingLine,
  pixelAt: (x: number, y: number) => number,
  width: number,
  height: number,
): Along {
  /** Where the line lies in a row of pixels: straight between the middles of strips, and beyond. */
  const middleAt = (y: number): number => {
    const s = (y + 0.5) / stripPx - 0.5;
    const first = Math.min(strips - 2, Math.max(0, Math.floor(s)));
    return across[first] + (s - first) * (across[first + 1] - across[first]);
  };
  const inkAt = (x: number, y: number): number => {
    if (x < 0 || x >= width) return 255;
    const p = 4 * pixelAt(x, y);
    return 255 - Math.min(data[p], data[p + 1], data[p + 2]);
  };
  return {
    rows: height,
    each: (y, use) => {
      const middle = middleAt(y);
      const first = Math.max(0, Math.ceil(middle - reachPx));
      const last = Math.min(width - 1, Math.floor(middle + reachPx));
      for (let x = first; x <= last; x++) {
        use(4 * pixelAt(x, y), Math.round((x - middle) / binPx) + (bins - 1) / 2);
      }
    },
    paperBeside: (y, both) => {
      const middle = middleAt(y);
      const left = inkAt(Math.floor(middle - besidePx), y) <= paperInk;
      const right = inkAt(Math.ceil(middle + besidePx), y) <= paperInk;
      return both ? left && right : left || right;
    },
  };
}

/**
 * The usual r, g, b at each distance from lines that have bare paper on both sides: medians, so that
 * strokes across do not count; undefined where there is too little of them.
 */
function usualColours(data: Uint8Array, all: readonly Along[], from = 0): Float64Array | undefined {
  const counts = Array.from({ length: 3 * bins }, () => new Int32Array(256));
  const totals = new Int32Array(bins);
  let rows = 0;
  for (const along of all) {
    for (let y = from; y < along.rows; y++) {
      if (!along.paperBeside(y, true)) continue;
      rows++;
      along.each(y, (p, bin) => {
        totals[bin]++;
        for (let c = 0; c < 3; c++) counts[3 * bin + c][data[p + c]]++;
      });
    }
  }
  if (rows < fewestRows) return undefined;
  return Float64Array.from(counts, (count, n) => {
    const half = totals[Math.floor(n / 3)] / 2;
    if (half === 0) return 255;
    let value = 0;
    for (let sum = count[0]; sum < half && value < 255; sum += count[value]) value++;
    return value;
  });
}
