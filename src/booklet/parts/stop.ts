import type { Flow } from '../flow.js';
import { lineMm } from '../look.js';

const padMm = 2.5;
/** Room for what follows. */
const withMm = 40;

/** A frame that stops the eye: a bold word and what to do before going on. */
export function drawStop(flow: Flow, word: string, text: string): void {
  const { look } = flow;
  const { left, right } = look;
  const wide = right - left - 2 * padMm;
  const high = lineMm(look.strong) + flow.highOf(text, look.body, wide) + 2 * padMm;
  if (!flow.fits(high + withMm)) flow.next();
  const top = flow.y;
  flow.draw((surface) => {
    const ring = [left, top, right, top, right, top + high, left, top + high];
    const outline = { stroke: look.tint.accent, widthMm: 0.8, closed: true };
    surface.fillPath([ring], { fill: look.tint.pale, outline });
  });
  flow.y += padMm;
  const place = { left: left + padMm, wide };
  flow.set(word, { ...look.strong, ink: look.tint.accent }, 'P', place);
  flow.set(text, look.body, 'P', place);
  flow.y = top + high + 3;
}
