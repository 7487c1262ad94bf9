import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';

// What a maker does on the page.

/** Drops a file on the table, as the browser hands it over. */
export async function drop(page: Page, name: string, bytes: Buffer, type: string): Promise<void> {
  await page.evaluate(
    ({ name, type, base64 }) => {
      const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      const data = new DataTransfer();
      data.items.add(new File([bytes], name, { type }));
      const event = { bubbles: true, cancelable: true, dataTransfer: data };
      document.body.dispatchEvent(new DragEvent('drop', event));
    },
    { name, type, base64: bytes.toString('base64') },
  );
}

/** A file as it was saved. */
export interface SavedFile {
  readonly name: string;
  readonly bytes: Buffer;
}

/** What an action saves. */
export async function saved(page: Page, action: string): Promise<SavedFile> {
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 180_000 }),
    page.locator(`[data-action="${action}"]`).first().click(),
  ]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

/** What one tap in the step Pages saves. */
export async function savedPages(page: Page, action: 'booklet' | 'zip'): Promise<SavedFile> {
  await page.locator('[data-step="pages"]').click();
  return saved(page, action);
}

/** Pulls from the middle of the panel by so many pixels, in small steps; the finger stays down. */
export async function pullPanel(page: Page, x: number, y: number): Promise<void> {
  const box = (await page.locator('.panel canvas').boundingBox())!;
  const [fromX, fromY] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(fromX, fromY);
  await page.mouse.down();
  for (let k = 1; k <= 8; k++) await page.mouse.move(fromX + (x * k) / 8, fromY + (y * k) / 8);
}

/** Title and number of kept steps of every piece that the browser keeps, by the page's own database. */
export function keptPieces(page: Page): Promise<{ title: string; at: number; shiftXmm: number }[]> {
  return page.evaluate(async () => {
    const result = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done, fail) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => fail(request.error!);
      });
    const db = await result(indexedDB.open('rondure'));
    try {
      const all = await result(db.transaction('pieces').objectStore('pieces').getAll());
      return all.map(({ title, at, piece }) => ({
        title: title as string,
        at: at as number,
        shiftXmm: piece.wish.place.shiftXmm as number,
      }));
    } finally {
      db.close();
    }
  });
}
