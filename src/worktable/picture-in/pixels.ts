import type { Picture } from '../../core/picture/picture.js';

/** Whether anything of a picture lets itself be seen. */
export function isVisible({ data }: Pick<Picture, 'data'>): boolean {
  for (let p = 3; p < data.length; p += 4) if (data[p] !== 0) return true;
  return false;
}

/** The pixels of something that can be drawn, at its own size. */
export function pixelsOf(source: ImageBitmap): Picture {
  const { width, height } = source;
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { willReadFrequently: true })!;
  context.drawImage(source, 0, 0);
  source.close();
  return { width, height, data: context.getImageData(0, 0, width, height).data };
}
