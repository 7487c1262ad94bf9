import { signal } from '@preact/signals';

/** How the purse is looked at: both sides of it, one of them, or opened. */
export type PurseLook = 'both' | 'front' | 'back' | 'inside';

export const purseLook = signal<PurseLook>('both');
/** Whether it is shown as large as it will be. */
export const trueSize = signal(false);

const key = 'rondure-px-per-mm';
/** CSS pixels in a millimetre where nobody has held a card against the screen (CSS: 96 to the inch). */
const usualPxPerMm = 96 / 25.4;

/** CSS pixels in a millimetre of this screen; kept in the browser, since it is the screen's. */
export const pxPerMm = signal(read() ?? usualPxPerMm);
/** Whether somebody has held a card against the screen. */
export const calibrated = signal(read() !== undefined);

export function calibrate(px: number): void {
  pxPerMm.value = px;
  calibrated.value = true;
  try {
    localStorage.setItem(key, String(px));
  } catch {
    // a browser that keeps nothing: it holds until the page is closed
  }
}

function read(): number | undefined {
  try {
    const kept = Number(localStorage.getItem(key) ?? NaN);
    return kept > 1 && kept < 40 ? kept : undefined;
  } catch {
    return undefined;
  }
}
