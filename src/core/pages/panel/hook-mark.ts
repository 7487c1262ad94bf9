import { black } from './cells.js';
import type { Box } from './panel-view.js';
import type { Surface } from '../surface/surface.js';
import { drawText } from '../surface/text.js';
import type { TextStyle } from '../surface/text.js';

const longMm = 24;
const thickMm = 1.5;

/** Where the hook lies beside the start, millimetres from the panel's centre. */
export interface HookMark {
  /** x, y of its tip and of its other end. */
  readonly shaft: readonly [number, number, number, number];
  readonly barb: readonly [number, number, number, number];
  readonly word: { readonly x: number; readonly y: number };
  readonly box: Box;
}

/**
 * A crochet hook that comes from the hand that holds it, its tip above the start.
 *
 * @param start the place of the rim's step, millimetres from the centre on the page
 * @param toward −1 where the work runs to the left, away from a hook on the right
 */
export function hookMark(
  start: { readonly x: number; readonly y: number },
  toward: 1 | -1,
  word: { readonly widthMm: number; readonly heightMm: number },
): HookMark {
  const back = -toward;
  const tipX = start.x + back * 3.4;
  const tipY = start.y - 8.2;
  const endX = tipX + back * longMm;
  const endY = tipY - 2.6;
  const wordX = endX + back * (2.5 + word.widthMm / 2);
  const sides = [tipX - 1, endX, wordX + (back * word.widthMm) / 2];
  return {
    shaft: [tipX, tipY, endX, endY],
    barb: [tipX, tipY, tipX + back * 2.6, tipY + 1.7],
    word: { x: wordX, y: endY },
    box: {
      left: Math.min(...sides),
      right: Math.max(...sides),
      top: endY - Math.max(word.heightMm / 2, thickMm),
      bottom: tipY + 2,
    },
  };
}

/** Draws it with its word. */
export function drawHookMark(
  surface: Surface,
  mark: HookMark,
  centre: { readonly x: number; readonly y: number },
  label: { readonly text: string; readonly style: TextStyle },
): void {
  const at = (line: readonly number[]) =>
    line.map((value, p) => value + (p % 2 === 0 ? centre.x : centre.y));
  surface.beginGroup('hook', label.text);
  surface.strokePath([at(mark.shaft)], { stroke: black, widthMm: thickMm });
  surface.strokePath([at(mark.barb)], { stroke: black, widthMm: 0.8 });
  const baseline = centre.y + mark.word.y + label.style.sizeMm * 0.26;
  drawText(surface, label.text, label.style, centre.x + mark.word.x, baseline, 'middle');
  surface.endGroup();
}
