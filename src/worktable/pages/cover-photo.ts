import type { Photo } from '../../booklet/facts.js';
import type { CoverPhoto } from '../store/piece.js';

/** How well a photograph is kept on paper; as on the command line. */
const quality = 0.88;

/** A photograph for the cover as a PDF takes it; without its colours for a grey printer. */
export async function photoOf(kept: CoverPhoto, grey: boolean): Promise<Photo> {
  const { widthPx, heightPx } = kept;
  const jpeg = Uint8Array.from(atob(kept.jpeg), (letter) => letter.charCodeAt(0));
  if (!grey) return { jpeg, widthPx, heightPx };
  const bitmap = await createImageBitmap(new Blob([jpeg], { type: 'image/jpeg' }));
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  const context = canvas.getContext('2d')!;
  context.drawImage(bitmap, 0, 0);
  const pixels = context.getImageData(0, 0, widthPx, heightPx);
  const { data } = pixels;
  for (let p = 0; p < data.length; p += 4) {
    // Luma of Rec. 709.
    const luma = 0.2126 * data[p] + 0.7152 * data[p + 1] + 0.0722 * data[p + 2];
    data[p] = data[p + 1] = data[p + 2] = luma;
  }
  context.putImageData(pixels, 0, 0);
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality });
  return { jpeg: new Uint8Array(await blob.arrayBuffer()), widthPx, heightPx };
}
