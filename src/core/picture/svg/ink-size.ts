import type { Picture } from '../picture.js';
import type { SvgExtent, SvgSize } from './size.js';

/** An SVG without width, height and viewBox is looked for between these coordinates, both ways. */
const lookUnits = 4096;
/** The size of a picture that declares none, when its ink fills every bound: CSS 2.2, 10.3.2. */
const fallback: SvgSize = { aspect: 2, viewBox: '0 0 300 150' };

/**
 * The size of a picture that declares none: what its ink covers. It is looked for twice, coarsely over the whole
 * plane, then closely around what was found.
 *
 * @param draw a part of the drawing on a transparent ground, its longer side so many pixels
 */
export async function inkSize(
  draw: (size: SvgSize, longerSidePx: number) => Promise<Picture>,
): Promise<SvgSize> {
  let extent: SvgExtent = {
    x: -lookUnits,
    y: -lookUnits,
    width: 2 * lookUnits,
    height: 2 * lookUnits,
  };
  for (const longerSidePx of [1024, 1024]) {
    const viewBox = `${extent.x} ${extent.y} ${extent.width} ${extent.height}`;
    const aspect = extent.width / extent.height;
    const picture = await draw({ aspect, viewBox }, longerSidePx);
    const ink = inkBounds(picture);
    if (ink === undefined || touchesEdge(ink, picture)) return fallback;
    const unit = extent.width / picture.width;
    // One pixel more on each side: what the edge pixels hold in part.
    extent = {
      x: extent.x + (ink.x - 1) * unit,
      y: extent.y + (ink.y - 1) * unit,
      width: (ink.width + 2) * unit,
      height: (ink.height + 2) * unit,
    };
  }
  const { x, y, width, height } = extent;
  return { aspect: width / height, viewBox: `${x} ${y} ${width} ${height}` };
}

function touchesEdge(ink: SvgExtent, { width, height }: Picture): boolean {
  return ink.x === 0 || ink.y === 0 || ink.x + ink.width === width || ink.y + ink.height === height;
}

function inkBounds({ width, height, data }: Picture): SvgExtent | undefined {
  let [left, top, right, bottom] = [width, height, -1, -1];
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      if (data[4 * (y * width + x) + 3] === 0) continue;
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = y;
    }
  if (right < 0) return undefined;
  return { x: left, y: top, width: right - left + 1, height: bottom - top + 1 };
}
