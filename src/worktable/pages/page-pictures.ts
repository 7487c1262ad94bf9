import type { PrintPaper } from '../../core/pages/surface/print-sheet.js';
import { asGrey } from '../../core/pages/panel/grey-fills.js';
import { layOutBooklet } from '../../booklet/layout.js';
import type { BookletFacts } from '../../booklet/facts.js';
import { CanvasSurface } from './canvas-surface.js';

/** How wide a page is pictured: sharp on a tablet that shows it whole, pixels. */
const pageWidthPx = 1100;

/** The pages of a booklet as pictures, one after the other, drawn by the routines that draw its PDF. */
export async function* bookletPictures(
  given: BookletFacts,
  paper: PrintPaper,
): AsyncGenerator<{ png: Uint8Array; page: number; pages: number }> {
  const { facts, look, flow, foot } = layOutBooklet(given, paper);
  const shown = facts.edition.grey ? asGrey : undefined;
  const photos = new Map<NonNullable<BookletFacts['photo']>, ImageBitmap>();
  if (facts.photo) {
    const jpeg = new Blob([facts.photo.jpeg as BlobPart], { type: 'image/jpeg' });
    photos.set(facts.photo, await createImageBitmap(jpeg));
  }
  for (const [n, page] of flow.pages.entries()) {
    const surface = new CanvasSurface(look.widthMm, look.heightMm, pageWidthPx, shown, photos);
    for (const { draw } of page.drawn) draw(surface);
    foot(surface, page, n);
    yield { png: await surface.png(), page: n + 1, pages: flow.pages.length };
  }
}
