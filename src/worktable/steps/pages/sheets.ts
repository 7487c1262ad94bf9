import { signal } from '@preact/signals';
import { makePictures } from '../../pages/make-pages.js';
import { chart, piece, tellTrouble } from '../../store/store.js';
import { language } from '../../words.js';

/** The booklet's pages as pictures: the addresses of those that are drawn already, and how many there will be. */
export interface Sheets {
  readonly addresses: readonly string[];
  readonly pages: number;
}

/** Undefined until the maker wants to see them. */
export const sheets = signal<Sheets | undefined>(undefined);
/** Which page is looked at closely, from 0. */
export const openSheet = signal<number | undefined>(undefined);

let under: AbortController | undefined;

/** Draws all pages anew, for what is wished now; the first is there before the last. */
export async function showSheets(): Promise<void> {
  const pattern = chart.peek()?.settled?.pattern;
  if (!pattern) return;
  const own = new AbortController();
  under?.abort();
  under = own;
  forget();
  sheets.value = { addresses: [], pages: 0 };
  try {
    const wish = piece.peek().pages ?? {};
    const shown = (png: Blob, _page: number, pages: number) => {
      const before = sheets.peek()?.addresses ?? [];
      sheets.value = { addresses: [...before, URL.createObjectURL(png)], pages };
    };
    await makePictures(pattern, wish, language.peek(), shown, own.signal);
  } catch (error) {
    if (own.signal.aborted) return;
    tellTrouble(error);
    putSheetsAway();
  }
}

export function putSheetsAway(): void {
  under?.abort();
  forget();
  sheets.value = undefined;
  openSheet.value = undefined;
}

function forget(): void {
  for (const address of sheets.peek()?.addresses ?? []) URL.revokeObjectURL(address);
}
