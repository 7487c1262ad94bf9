import { formatHex, parseHex } from '../../colour/hex.js';
import { hexToLab65 } from '../../colour/lab.js';
import { linearToSrgb8, srgbToLinear } from '../../colour/srgb.js';
import type { Surface } from '../surface/surface.js';

/** What tells a bead's fill from others of the same grey; our own marks. */
export type CellMark = 'plain' | 'rising' | 'falling' | 'upright';

/** How a bead is filled where there is no colour. */
export interface GreyFill {
  /** A grey, #rrggbb. */
  readonly hex: string;
  /** Mark drawn over the fill. */
  readonly mark: CellMark;
}

/** From dark to light; black or white letters read at 4.5:1 and more on each (WCAG 2.1, 1.4.3). */
const greys = ['#000000', '#3a3a3a', '#6b6b6b', '#a6a6a6', '#d0d0d0', '#ffffff'];
const marks: readonly CellMark[] = ['plain', 'rising', 'falling', 'upright'];

/**
 * A fill for each of up to 24 beads, all different in grey or mark, as light as the beads are as far
 * as that leaves them different.
 *
 * @param beads with colours as #rrggbb
 */
export function greyFills(
  beads: readonly { readonly letter: string; readonly hex: string }[],
): ReadonlyMap<string, GreyFill> {
  const lightness = beads.map(({ hex }) => hexToLab65(hex)[0]);
  const order = beads.map((_, n) => n).sort((a, b) => lightness[a] - lightness[b] || a - b);
  // Few beads have a grey each; of more, up to four share one, and their marks differ.
  const most = beads.length <= greys.length ? 1 : marks.length;
  const counts = sharedOut(
    order.map((n) => lightness[n]),
    most,
  );
  const fills = new Map<string, GreyFill>();
  let next = 0;
  counts.forEach((count, step) => {
    // Of few beads neighbours in tone differ in hatching too; black and white stay plain.
    const alone = most === 1 && step > 0 && step < greys.length - 1 ? 1 + (step % 3) : 0;
    for (let k = 0; k < count; k++, next++) {
      const mark = marks[count === 1 ? alone : k];
      fills.set(beads[order[next]].letter, { hex: greys[step], mark });
    }
  });
  return fills;
}

/**
 * How many beads take each grey, from dark to light, so that the sum of squared differences in
 * lightness is smallest; at most `most` each.
 */
function sharedOut(lightness: readonly number[], most: number): number[] {
  const levels = greys.map((hex) => hexToLab65(hex)[0]);
  // best[n]: cost of the first n beads on the greys looked at so far, and how many each has.
  let best: ({ cost: number; counts: number[] } | undefined)[] = [{ cost: 0, counts: [] }];
  for (const level of levels) {
    best = Array.from({ length: lightness.length + 1 }, (_, n) => {
      let found: { cost: number; counts: number[] } | undefined;
      let cost = 0;
      for (let count = 0; count <= Math.min(most, n); count++) {
        if (count > 0) cost += (lightness[n - count] - level) ** 2;
        const before = best[n - count];
        if (before && (!found || before.cost + cost < found.cost))
          found = { cost: before.cost + cost, counts: [...before.counts, count] };
      }
      return found;
    });
  }
  return best[lightness.length]!.counts;
}

/** A colour as the grey of the same luminance (WCAG 2.1): contrasts stay what they are. */
export function asGrey(hex: string): string {
  const [r, g, b] = parseHex(hex)!;
  const linear = 0.2126 * srgbToLinear[r] + 0.7152 * srgbToLinear[g] + 0.0722 * srgbToLinear[b];
  const grey = linearToSrgb8(linear);
  return formatHex(grey, grey, grey);
}

/** Hatching stays outside this circle, where the letter stands, and inside the other, in cells. */
const quietRadius = 0.36;
const hatchRadius = 0.47;

/** Parallel lines in one direction, cut out where the letter stands. */
function hatching(degrees: number): number[][] {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return [-0.39, -0.195, 0, 0.195, 0.39].flatMap((off) => {
    const outer = Math.sqrt(hatchRadius ** 2 - off ** 2);
    const inner = Math.abs(off) < quietRadius ? Math.sqrt(quietRadius ** 2 - off ** 2) : 0;
    const spans =
      inner === 0
        ? [[-outer, outer]]
        : [
            [-outer, -inner],
            [inner, outer],
          ];
    return spans.map(([from, to]) => [
      from * cos - off * sin,
      from * sin + off * cos,
      to * cos - off * sin,
      to * sin + off * cos,
    ]);
  });
}

/**
 * Ends of the strokes that make a mark, in cells from the cell's centre: x along the round. None
 * lies along the round like the bar of an increase.
 */
export const markStrokes: Readonly<Record<CellMark, readonly (readonly number[])[]>> = {
  plain: [],
  rising: hatching(-45),
  falling: hatching(45),
  upright: hatching(90),
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
  surface.strokePath(lines, { stroke: ink, widthMm: 0.055 * cellMm });
}
