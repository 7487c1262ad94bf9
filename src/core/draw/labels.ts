import type { Surface } from './surface.js';
import { drawText, textWidth } from './text.js';
import type { TextStyle } from './text.js';

type Anchor = 'start' | 'middle' | 'end';
type Box = readonly [left: number, top: number, right: number, bottom: number];

/** Room that labels keep from one another, millimetres. */
const apartMm = 0.6;

/**
 * Labels on a drawing: one that would run into an earlier one is left out, so that the words that
 * matter most come first.
 */
export class Labels {
  private readonly taken: Box[] = [];

  constructor(private readonly surface: Surface) {}

  /** Keeps labels off a place that something else takes. */
  keepOff(left: number, top: number, right: number, bottom: number): void {
    this.taken.push([left, top, right, bottom]);
  }

  /** Draws a label, y its baseline, where it has room; tells whether it did. */
  draw(text: string, style: TextStyle, x: number, y: number, anchor: Anchor = 'start'): boolean {
    const wide = textWidth(text, style);
    const left = x - { start: 0, middle: 0.5, end: 1 }[anchor] * wide;
    // From above the capitals to below the hanging letters.
    const box: Box = [left, y - 0.8 * style.sizeMm, left + wide, y + 0.25 * style.sizeMm];
    if (this.taken.some((one) => near(one, box))) return false;
    this.taken.push(box);
    drawText(this.surface, text, style, x, y, anchor);
    return true;
  }
}

const near = (one: Box, other: Box): boolean =>
  one[0] < other[2] + apartMm &&
  other[0] < one[2] + apartMm &&
  one[1] < other[3] &&
  other[1] < one[3];
