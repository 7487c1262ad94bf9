import { textWidth } from '../../core/pages/surface/text.js';
import type { Flow } from '../flow.js';
import { lineMm } from '../look.js';

const padMm = 1.8;

/** Where the text of such a frame stands: beside its word where the page is wide enough, else below it. */
function placed(flow: Flow, word: string, text: string) {
  const { look } = flow;
  const wordMm = flow.hangs ? textWidth(word, look.strong) + 4 : 0;
  const left = look.left + padMm + wordMm;
  const wide = look.right - padMm - left;
  const over = flow.hangs ? 0 : lineMm(look.strong);
  return { left, wide, over, high: over + flow.highOf(text, look.body, wide) + 2 * padMm };
}

/** How high such a frame is, millimetres. */
export const stopMm = (flow: Flow, word: string, text: string): number =>
  placed(flow, word, text).high;

/** A frame that stops the eye: a bold word and what to do before going on. */
export function drawStop(flow: Flow, word: string, text: string): void {
  const { look } = flow;
  const { left, right } = look;
  const { high, over, ...place } = placed(flow, word, text);
  if (!flow.fits(high)) flow.next();
  const top = flow.y;
  flow.draw((surface) => {
    const ring = [left, top, right, top, right, top + high, left, top + high];
    const outline = { stroke: look.tint.accent, widthMm: 0.8, closed: true };
    surface.fillPath([ring], { fill: look.tint.pale, outline });
  });
  flow.y += padMm;
  const beside = { left: left + padMm, wide: right - left - 2 * padMm };
  flow.set(word, { ...look.strong, ink: look.tint.accent }, 'P', beside);
  flow.y = top + padMm + over;
  flow.set(text, look.body, 'P', place);
  flow.y = top + high + 3;
}
