import type { Page } from 'playwright-core';

/** Beads laid by hand in the first piece that the browser keeps: ids by `PANEL:STITCH`. */
export const keptLaid = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<Record<string, string>>((done, fail) => {
        const opening = indexedDB.open('rondure');
        opening.onerror = () => fail(opening.error);
        opening.onsuccess = () => {
          const all = opening.result.transaction('pieces').objectStore('pieces').getAll();
          all.onsuccess = () => {
            opening.result.close();
            done(all.result[0]?.piece.laid ?? {});
          };
        };
      }),
  );
