import {
  compareCaptionsSvg,
  compareLayout,
  renderCompare,
} from '../../core/pages/worked/compare.js';
import type { CompareInput } from '../../core/pages/worked/compare.js';
import type { Fonts } from '../../core/pages/surface/font.js';
import type { Words } from '../../words/index.js';
import { rasteriseSvg } from './rasterise.js';
import { sharp } from '../sharp.js';

/** PNG bytes of the comparison: the pictures with their captions laid over them. */
export async function comparePng(
  input: CompareInput,
  fonts: Fonts,
  words: Words,
): Promise<Uint8Array> {
  const svg = compareCaptionsSvg(fonts, words, input.panel);
  const captions = rasteriseSvg(svg, compareLayout.widthPx);
  const { data, width, height } = renderCompare(input);
  return sharp(data, { raw: { width, height, channels: 4 } })
    .composite([{ input: Buffer.from(await captions), blend: 'multiply' }])
    .removeAlpha()
    .png({ compressionLevel: 3 })
    .toBuffer();
}
