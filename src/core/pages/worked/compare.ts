import type { Picture } from '../../picture/picture.js';
import type { Words } from '../../../words/index.js';
import type { Fonts } from '../surface/font.js';
import { scaledOnWhite } from '../surface/scale.js';
import type { Surface } from '../surface/surface.js';
import { SvgSurface } from '../surface/svg-surface.js';
import { drawText, shortened, wrapped } from '../surface/text.js';

/** Where things stand on the comparison, in pixels from the top left corner. */
export const compareLayout = {
  widthPx: 1600,
  heightPx: 1440,
  /** The picture, scaled to fit this box. */
  inset: { x: 624, y: 96, side: 352 },
  /** The panel as a chart without lean would give it. */
  leaned: { x: 24, y: 520, side: 760 },
  /** The panel as it is charted. */
  upright: { x: 816, y: 520, side: 760 },
} as const;

const ink = '#232629';

/** The three pictures that are compared. */
export interface CompareInput {
  /** The panel as it is charted. */
  upright: Picture;
  /** The same panel sampled as if turn were 0. */
  leaned: Picture;
  /** The picture both were made from. */
  inset: Picture;
  /** Name of the panel where a pattern has two. */
  panel?: string;
}

/**
 * What lean does: the picture above, below it the panel charted without lean and the upright one.
 * Without letters: multiply it with the page of `compareCaptionsSvg`, rasterised at the same size
 * (both are white where the other has something to show).
 *
 * @returns an opaque picture of the size in `compareLayout`
 */
export function renderCompare({ upright, leaned, inset }: CompareInput): Picture {
  const { widthPx: width, heightPx: height } = compareLayout;
  const data = new Uint8ClampedArray(4 * width * height).fill(255);
  for (const [picture, box] of [
    [leaned, compareLayout.leaned],
    [upright, compareLayout.upright],
    [inset, compareLayout.inset],
  ] as const) {
    const scale = box.side / Math.max(picture.width, picture.height);
    const scaled = scaledOnWhite(
      picture,
      Math.max(1, Math.round(picture.width * scale)),
      Math.max(1, Math.round(picture.height * scale)),
    );
    const left = box.x + Math.round((box.side - scaled.width) / 2);
    const top = box.y + Math.round((box.side - scaled.height) / 2);
    for (let y = 0; y < scaled.height; y++) {
      const row = scaled.data.subarray(4 * y * scaled.width, 4 * (y + 1) * scaled.width);
      data.set(row, 4 * ((top + y) * width + left));
    }
  }
  return { width, height, data };
}

/**
 * The captions of the comparison as an SVG page of outlines, one unit a pixel: rasterise it
 * `compareLayout.widthPx` wide.
 *
 * @throws RondureError `glyph-missing`
 */
export function compareCaptionsSvg(fonts: Fonts, words: Words, panel?: string): string {
  const surface = new SvgSurface({
    widthMm: compareLayout.widthPx,
    heightMm: compareLayout.heightPx,
    title: titleOf(words, panel),
    description: words.compare.description,
  });
  drawCompareCaptions(surface, fonts, words, panel);
  return surface.toString();
}

const titleOf = (words: Words, panel: string | undefined) =>
  words.compare.titleOf(panel === undefined ? {} : { panel });

/** Draws the captions on a page of the size in `compareLayout`, one unit a pixel. */
export function drawCompareCaptions(
  surface: Surface,
  fonts: Fonts,
  words: Words,
  panel?: string,
): void {
  const { widthPx, inset, leaned, upright } = compareLayout;
  const text = words.compare;
  const title = titleOf(words, panel);
  const bold = { face: fonts.bold, ink };
  const middle = widthPx / 2;
  drawText(
    surface,
    shortened(title, { ...bold, sizeMm: 42 }, widthPx - 48),
    { ...bold, sizeMm: 42 },
    middle,
    66,
    'middle',
  );
  const under = inset.y + inset.side + 38;
  drawText(surface, text.picture, { ...bold, sizeMm: 27 }, middle, under, 'middle');
  for (const [box, name, note] of [
    [leaned, text.leaned, text.leanedNote],
    [upright, text.upright, text.uprightNote],
  ] as const) {
    const x = box.x + box.side / 2;
    const y = box.y + box.side + 32;
    drawText(surface, name, { ...bold, sizeMm: 30 }, x, y, 'middle');
    const style = { face: fonts.regular, ink, sizeMm: 24 };
    wrapped(note, style, box.side - 48).forEach((line, n) => {
      drawText(surface, line, style, x, y + 40 + 32 * n, 'middle');
    });
  }
}
