import type { Picture } from '../picture.js';
import type { Coverage } from './coverage.js';
import { makeDrawingChooser } from './drawing.js';
import { inkAt } from './paper.js';

/** A line is drawn at least this wide, in stitches, so that it fills what it crosses. */
const lineWidth = 0.6;
/** Half the width of a line at most: a picture of a few stitches takes no longer than another. */
const mostReachPx = 40;
/** A fainter pixel is the blurred border of a line. */
const leastInk = 15;
/** Share of a stitch from which marks win it from the paper. */
const inkWinsFromCover = 0.34;

/**
 * Draws every line that is thinner than `lineWidth` that wide, in the colour of its core; wider
 * areas stay. What is neither becomes exactly white.
 *
 * @param picture evened out (see paper.ts)
 * @param stitchPx pixels a stitch
 */
export function strengthenLines(picture: Picture, stitchPx: number): Picture {
  const { width, height, data } = picture;
  const count = width * height;
  const depth = depths(picture);
  const reach = Math.min(mostReachPx, Math.max(0.7, (lineWidth * stitchPx) / 2));
  const out = new Uint8Array(4 * count).fill(255);
  for (let p = 0; p < count; p++) {
    if (depth[p] > 0) for (let c = 0; c < 3; c++) out[4 * p + c] = data[4 * p + c];
  }
  const nearest = new Float32Array(count).fill(Infinity);
  const core = new Float64Array(3);
  const span = Math.ceil(reach);
  for (let p = 0; p < count; p++) {
    const x = p % width;
    const y = (p - x) / width;
    if (depth[p] === 0 || depth[p] > reach || !isRidge(depth, p, x, y, width, height)) continue;
    coreColour(picture, p, x, y, Math.ceil(depth[p]) + 1, core);
    for (let dy = Math.max(-span, -y); dy <= Math.min(span, height - 1 - y); dy++) {
      for (let dx = Math.max(-span, -x); dx <= Math.min(span, width - 1 - x); dx++) {
        const apart = dx * dx + dy * dy;
        const q = p + dy * width + dx;
        if (apart > reach * reach || apart >= nearest[q]) continue;
        // A wide area keeps its own colours where a line runs into it.
        if (depth[q] > reach) continue;
        nearest[q] = apart;
        for (let c = 0; c < 3; c++) out[4 * q + c] = core[c];
      }
    }
  }
  return { width, height, data: out };
}

/** How deep each pixel lies inside a mark, pixels: 0 outside; chamfer distances 3 and 4, over 3. */
function depths({ width, height, data }: Picture): Float32Array {
  const count = width * height;
  const depth = new Float32Array(count);
  for (let p = 0; p < count; p++) depth[p] = inkAt(data, p) >= leastInk ? 1e6 : 0;
  const pass = (from: number, to: number, step: number): void => {
    for (let p = from; p !== to; p += step) {
      if (depth[p] === 0) continue;
      const x = p % width;
      let least = depth[p];
      const look = (q: number, inRow: boolean, by: number): void => {
        const there = q >= 0 && q < count && inRow ? depth[q] : 1e6;
        if (there + by < least) least = there + by;
      };
      look(p - step, step > 0 ? x > 0 : x + 1 < width, 1);
      look(p - step * width, true, 1);
      look(p - step * width - 1, x > 0, 4 / 3);
      look(p - step * width + 1, x + 1 < width, 4 / 3);
      depth[p] = least;
    }
  };
  pass(0, count, 1);
  pass(count - 1, -1, -1);
  return depth;
}

/** No deeper pixel touches this one. */
function isRidge(
  depth: Float32Array,
  p: number,
  x: number,
  y: number,
  width: number,
  height: number,
): boolean {
  for (let dy = y > 0 ? -1 : 0; dy <= (y + 1 < height ? 1 : 0); dy++) {
    for (let dx = x > 0 ? -1 : 0; dx <= (x + 1 < width ? 1 : 0); dx++) {
      if (depth[p + dy * width + dx] > depth[p]) return false;
    }
  }
  return true;
}

/** Mean colour around a pixel, in which strong ink counts by far the most. */
function coreColour(
  { width, height, data }: Picture,
  p: number,
  x: number,
  y: number,
  span: number,
  core: Float64Array,
): void {
  core.fill(0);
  let weight = 0;
  for (let dy = Math.max(-span, -y); dy <= Math.min(span, height - 1 - y); dy++) {
    for (let dx = Math.max(-span, -x); dx <= Math.min(span, width - 1 - x); dx++) {
      const q = p + dy * width + dx;
      const ink = inkAt(data, q);
      const share = ink * ink * ink * ink;
      weight += share;
      for (let c = 0; c < 3; c++) core[c] += share * data[4 * q + c];
    }
  }
  for (let c = 0; c < 3; c++) core[c] = Math.min(254, Math.round(core[c] / weight));
}

/**
 * Makes the chooser for evened-out paper: marks win a stitch where they cover enough of it,
 * otherwise paper does, and what the marks hold is told so that lines can be kept (see thin.ts).
 * Among marks the chooser for drawings decides.
 */
export function makePaperChooser(): ReturnType<typeof makeDrawingChooser> {
  const chooseMark = makeDrawingChooser();
  return (coverage, { data }, ground, colour) => {
    const { inked, ink, paper } = marksUnder(coverage, data);
    const outside = ground?.area ?? 0;
    const whole = ink + paper + outside;
    if (whole === 0) return undefined;
    const mark = new Float64Array(3);
    const choice = chooseMark(inked, { data }, undefined, mark);
    const cover = ink / whole;
    if (choice && cover >= inkWinsFromCover) {
      colour.set(mark);
      return { luma: choice.luma, cover };
    }
    if (ground && outside > paper) {
      const only: Coverage = { ...coverage, count: 0 };
      makeDrawingChooser()(only, { data }, ground, colour);
    } else colour.fill(1);
    const darker = choice && { luma: choice.luma, cover, linear: mark };
    return { luma: Infinity, cover: 1 - cover, ...(darker && { darker }) };
  };
}

/** The pixels of a coverage that hold ink, and how much of it is ink and paper, pixels. */
function marksUnder(coverage: Coverage, data: Picture['data']) {
  const [pixel, area]: number[][] = [[], []];
  let ink = 0;
  let paper = 0;
  for (let n = 0; n < coverage.count; n++) {
    for (let p = coverage.pixel[n]; p < coverage.pixel[n] + coverage.length[n]; p++) {
      if (inkAt(data, p) === 0) {
        paper += coverage.area[n];
        continue;
      }
      ink += coverage.area[n];
      pixel.push(p);
      area.push(coverage.area[n]);
    }
  }
  const inked: Coverage = {
    ...coverage,
    count: pixel.length,
    pixel: Int32Array.from(pixel),
    length: new Int32Array(pixel.length).fill(1),
    area: Float64Array.from(area),
  };
  return { inked, ink, paper };
}
