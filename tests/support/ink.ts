import { createCanvas } from '@napi-rs/canvas';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

const mmPerPoint = 25.4 / 72;

/** Renders a page as a viewer would; tells how dark a part of it is, 0 white to 1 black. */
export async function inkOf(bytes: Uint8Array, pageNumber: number) {
  const doc = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
  const page = await doc.getPage(pageNumber);
  const scale = 2;
  const viewport = page.getViewport({ scale });
  const [width, height] = [Math.round(viewport.width), Math.round(viewport.height)];
  const canvas = createCanvas(width, height);
  const context = canvas.getContext('2d');
  context.fillStyle = '#ffffff';
  context.fillRect(0, 0, width, height);
  const target = context as unknown as CanvasRenderingContext2D;
  await page.render({ canvas: null, canvasContext: target, viewport }).promise;
  const { data } = context.getImageData(0, 0, width, height);
  await doc.destroy();
  /** Share of dark pixels in a box, millimetres. */
  return (left: number, top: number, right: number, bottom: number): number => {
    const px = (mm: number) => Math.round((mm / mmPerPoint) * scale);
    let dark = 0;
    let all = 0;
    for (let y = px(top); y < px(bottom); y++) {
      for (let x = px(left); x < px(right); x++, all++) {
        if (data[4 * (y * width + x)] < 128) dark++;
      }
    }
    return dark / all;
  };
}
