import type { SvgRoot } from '../header/svg-root.js';

/** A rectangle in the drawing's own units. */
export interface SvgExtent {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How wide a picture of an SVG is for its height, and the part of the drawing that it shows. */
export interface SvgSize {
  /** Width over height. */
  readonly aspect: number;
  /** As the attribute of the same name. */
  readonly viewBox: string;
}

/** CSS pixels in a unit, 96 to the inch (CSS Values and Units 3, section 6.2; em and ex by 16 px type). */
const pixelsIn: Readonly<Record<string, number>> = {
  '': 1,
  px: 1,
  in: 96,
  cm: 96 / 2.54,
  mm: 96 / 25.4,
  q: 96 / 101.6,
  pt: 96 / 72,
  pc: 16,
  em: 16,
  ex: 8,
};

/**
 * The size that the root declares: width and height, else the viewBox, as in SVG 2 section 8.
 * Undefined when it declares neither (percentages declare nothing).
 */
export function declaredSize(root: SvgRoot): SvgSize | undefined {
  const width = pixels(declared(root, 'width'));
  const height = pixels(declared(root, 'height'));
  const box = viewBoxOf(root);
  if (box !== undefined) {
    const aspect =
      width !== undefined && height !== undefined ? width / height : box.width / box.height;
    return { aspect, viewBox: `${box.x} ${box.y} ${box.width} ${box.height}` };
  }
  if (width === undefined || height === undefined) return undefined;
  return { aspect: width / height, viewBox: `0 0 ${width} ${height}` };
}

/** Whole pixels for a picture whose longer side is this long; at least 1 by 1. */
export function fitted(aspect: number, longerSidePx: number): { width: number; height: number } {
  const side = (share: number) => Math.max(1, Math.round(longerSidePx * share));
  return { width: side(Math.min(1, aspect)), height: side(Math.min(1, 1 / aspect)) };
}

/** Written on the root, as a style or else as an attribute. */
function declared(root: SvgRoot, what: 'width' | 'height'): string | undefined {
  const style = new RegExp(`(?:^|;)\\s*${what}\\s*:([^;!]*)`, 'i');
  return style.exec(root.attributes.get('style') ?? '')?.[1] ?? root.attributes.get(what);
}

function pixels(attribute: string | undefined): number | undefined {
  const found = /^\s*\+?((?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?)\s*([a-z]*)\s*$/i.exec(
    attribute ?? '',
  );
  const unit = pixelsIn[found?.[2].toLowerCase() ?? '?'];
  if (found === null || unit === undefined) return undefined;
  const value = Number(found[1]) * unit;
  return Number.isFinite(value) && value > 0 ? value : undefined;
}

function viewBoxOf(root: SvgRoot): SvgExtent | undefined {
  const values = (root.attributes.get('viewBox') ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [x, y, width, height] = values;
  if (values.length !== 4 || !values.every(Number.isFinite)) return undefined;
  return width > 0 && height > 0 ? { x, y, width, height } : undefined;
}
