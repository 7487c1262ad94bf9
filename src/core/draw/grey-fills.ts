import { formatHex, parseHex } from '../colour/hex.js';
import { hexToLab65 } from '../colour/lab.js';
import { linearToSrgb8, srgbToLinear } from '../colour/srgb.js';
import type { Surface } from './surface.js';

/** What tells a bead's fill from others of the same grey; our own marks. */
export type CellMark = 'plain' | 'sides' | 'ends' | 'corners';

/** How a bead is filled where there is no colour. */
export interface GreyFill {
  /** A grey, #rrggbb. */
  readonly hex: string;
  readonly mark: CellMark;
}

/** From dark to light; black or white letters read at 4.5:1 and more on each (WCAG 2.1, 1.4.3). */
const greys = ['#000000', '#3a3a3a', '#6b6b6b', '#a6a6a6', '#d0d0d0', '#ffffff'];
const marks: readonly CellMark[] = ['plain', 'sides', 'corners', 'ends'];

/**
 * A fill for each of up to 24 beads, all different in grey or mark, from dark to light as the beads
 * are.
 *
 * @param beads with colours as #rrggbb
 */
export function greyFills(
  beads: readonly { readonly letter: string; readonly hex: string }[],
): ReadonlyMap<string, GreyFill> {
  const lightness = beads.map(({ hex }) => hexToLab65(hex)[0]);
  const order = beads.map((_, n) => n).sort((a, b) => lightness[a] - lightness[b] || a - b);
  const fills = new Map<string, GreyFill>();
  order.forEach((n, rank) => {
    const few = beads.length <= greys.length;
    const step = few
      ? Math.round((rank * (greys.length - 1)) / Math.max(1, beads.length - 1))
      : Math.floor((rank * greys.length) / beads.length);
    // Beads of the same grey follow one another, at most four: their marks differ.
    const mark = few ? 'plain' : marks[rank % marks.length];
    fills.set(beads[n].letter, { hex: greys[step], mark });
  });
  return fills;
}

/** A colour as the grey of the same luminance (WCAG 2.1): contrasts stay what they are. */
export function asGrey(hex: string): string {
  const [r, g, b] = parseHex(hex)!;
  const linear = 0.2126 * srgbToLinear[r] + 0.7152 * srgbToLinear[g] + 0.0722 * srgbToLinear[b];
  const grey = linearToSrgb8(linear);
  return formatHex(grey, grey, grey);
}

/** Ends of the strokes that make a mark, in cells from the cell's centre: x along the round. */
export const markStrokes: Readonly<Record<CellMark, readonly (readonly number[])[]>> = {
  plain: [],
  sides: [
    [-0.39, -0.2, -0.39, 0.2],
    [0.39, -0.2, 0.39, 0.2],
  ],
  ends: [
    [-0.2, -0.4, 0.2, -0.4],
    [-0.2, 0.4, 0.2, 0.4],
  ],
  corners: [
    [-0.31, -0.31, -0.31, -0.31],
    [0.31, -0.31, 0.31, -0.31],
    [-0.31, 0.31, -0.31, 0.31],
    [0.31, 0.31, 0.31, 0.31],
  ],
};

/** Marks of many cells at once: black on light greys, white on dark ones. */
export function drawCellMarks(
  surface: Surface,
  { mark, ink }: { readonly mark: CellMark; readonly ink: string },
  cells: readonly { readonly x: number; readonly y: number; readonly tilt: number }[],
  cellMm: number,
): void {
  const strokes = markStrokes[mark];
  const lines = cells.flatMap(({ x, y, tilt }) => {
    const [cos, sin] = [cellMm * Math.cos(tilt), cellMm * Math.sin(tilt)];
    return strokes.map(([ax, ay, bx, by]) => [
      x + ax * cos - ay * sin,
      y + ax * sin + ay * cos,
      x + bx * cos - by * sin,
      y + bx * sin + by * cos,
    ]);
  });
  if (lines.length === 0) return;
  surface.strokePath(lines, { stroke: ink, widthMm: (mark === 'corners' ? 0.15 : 0.09) * cellMm });
}
