import type { Picture } from '../../core/picture/picture.js';
import { openPicture } from '../picture-in/open-file.js';
import type { CoverPhoto } from '../store/piece.js';

/** As long as a photograph on paper needs to be, pixels: 170 mm at 300 dots an inch; as on the command line. */
const longestPx = 2000;
const quality = 0.88;

/**
 * Reads a photograph for the cover, upright, on white, without its other facts such as the place.
 *
 * @throws RondureError those of `openPicture`
 */
export async function takePhoto(file: File): Promise<CoverPhoto> {
  const { picture } = await openPicture(file);
  const scale = Math.min(1, longestPx / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  const context = canvas.getContext('2d')!;
  context.fillStyle = '#ffffff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.imageSmoothingQuality = 'high';
  const bitmap = await createImageBitmap(pixelsOf(picture));
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  const address = canvas.toDataURL('image/jpeg', quality);
  const jpeg = address.slice(address.indexOf(',') + 1);
  return { name: file.name, jpeg, widthPx: canvas.width, heightPx: canvas.height };
}

function pixelsOf({ data, width }: Picture): ImageData {
  const pixels = new Uint8ClampedArray(data.buffer as ArrayBuffer, data.byteOffset, data.length);
  return new ImageData(pixels, width);
}
