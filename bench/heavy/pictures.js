// The largest pictures that are read: 64 megapixels.
import sharp from 'sharp';

const side = 8000;
const size = (width, height) => ({ width, height, channels: 3 });
const limitInputPixels = false;

const noise = () =>
  sharp({
    create: { ...size(side, side), noise: { type: 'gaussian', mean: 128, sigma: 30 } },
    limitInputPixels,
  });
const plain = (width = side, height = side) =>
  sharp({ create: { ...size(width, height), background: '#1f7fa8' }, limitInputPixels });
const fast = { compressionLevel: 1 };

/** Each [what it is, ending, what makes it]. */
export const largePictures = [
  ['PNG', 'png', () => noise().png(fast)],
  [
    'PNG of 16 bits with alpha in seven passes',
    'png',
    () => plain().ensureAlpha(0.5).toColourspace('rgb16').png({ progressive: true, ...fast }),
  ],
  ['JPEG in passes', 'jpg', () => noise().jpeg({ progressive: true })],
  ['WebP', 'webp', () => noise().webp({ effort: 0 })],
  ['WebP without loss', 'webp', () => plain().webp({ lossless: true, effort: 0, quality: 1 })],
  ['AVIF', 'avif', () => plain().avif({ effort: 0, quality: 20 })],
  ['AVIF of 12 bits', 'avif', () => plain().avif({ effort: 0, quality: 20, bitdepth: 12 })],
  ['GIF', 'gif', () => plain().gif({ effort: 1 })],
  ['TIFF', 'tif', () => plain().tiff({ compression: 'deflate' })],
  [
    'TIFF of 16 bits, not packed',
    'tif',
    () => plain(6500, 6500).toColourspace('rgb16').tiff({ compression: 'none' }),
  ],
  ['PNG in one row', 'png', () => plain(64e6, 1).png(fast)],
  ['PNG in one column', 'png', () => plain(1, 64e6).png(fast)],
]; // prettier-ignore
