import type { Page } from 'playwright-core';

/** What tests look at of a piece that is kept. */
interface KeptPiece {
  readonly laid?: Record<string, string>;
  readonly work?: { readonly panels: Record<string, { strung: number[]; worked: number }> };
}

/** Runs in the page: the first piece that the browser keeps, in the page's own database. */
export function firstKept(): Promise<KeptPiece | undefined> {
  return new Promise((done, fail) => {
    const opening = indexedDB.open('rondure');
    opening.onerror = () => fail(opening.error as Error);
    opening.onsuccess = () => {
      const all = opening.result.transaction('pieces').objectStore('pieces').getAll();
      all.onsuccess = () => {
        opening.result.close();
        done((all.result[0] as { piece: KeptPiece } | undefined)?.piece);
      };
    };
  });
}

/** How far the first panel has come, as the browser keeps it. */
export const keptWork = async (page: Page) => (await page.evaluate(firstKept))?.work?.panels['0:1'];

/** Beads laid by hand, as the browser keeps them: ids by `PANEL:STITCH`. */
export const keptLaid = async (page: Page) => (await page.evaluate(firstKept))?.laid ?? {};
