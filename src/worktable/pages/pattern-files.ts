import { encode } from 'fast-png';
import { drawChart } from '../../core/pages/chart/chart.js';
import { makeOutputs } from '../../core/pages/make-outputs.js';
import type { Files } from '../../core/pages/make-outputs.js';
import type { OutputTools } from '../../core/pages/output-facts.js';
import type { Fonts } from '../../core/pages/surface/font.js';
import { drawCompareCaptions, renderCompare } from '../../core/pages/worked/compare.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { Picture } from '../../core/picture/picture.js';
import type { Words } from '../../words/index.js';
import { CanvasSurface } from './canvas-surface.js';

/** Pictures are drawn on a canvas here: to the eye as the command line makes them. */
const tools: OutputTools = {
  png: (picture) => Promise.resolve(pngOf(picture)),
  chart({ sheet, paper, widthPx }) {
    const surface = new CanvasSurface(paper.widthMm, paper.heightMm, widthPx);
    drawChart(surface, sheet);
    return surface.png();
  },
  compare(input, fonts, words) {
    const { data, width, height } = renderCompare(input);
    const surface = new CanvasSurface(width, height, width);
    const context = surface.canvas.getContext('2d')!;
    const pixels = new Uint8ClampedArray(data.buffer as ArrayBuffer, data.byteOffset, data.length);
    context.putImageData(new ImageData(pixels, width), 0, 0);
    drawCompareCaptions(surface, fonts, words, input.panel);
    return surface.png();
  },
};

/** Every file of a pattern by name: texts to the byte as the command line writes them. */
export const patternFiles = (pattern: Pattern, words: Words, fonts: Fonts): Promise<Files> =>
  makeOutputs(pattern, { words, fonts, tools });

/** What is written and drawn of a pattern, by name, without its pictures. */
export const patternTexts = (pattern: Pattern, words: Words, fonts: Fonts): Promise<Files> =>
  makeOutputs(pattern, { words, fonts, tools, only: ({ name }) => !name.endsWith('.png') });

function pngOf({ width, height, data }: Picture): Uint8Array {
  const rgb = new Uint8Array(3 * width * height);
  for (let p = 0, q = 0; q < rgb.length; p += 4, q += 3) {
    rgb[q] = data[p];
    rgb[q + 1] = data[p + 1];
    rgb[q + 2] = data[p + 2];
  }
  return encode({ width, height, data: rgb, channels: 3, depth: 8 });
}
