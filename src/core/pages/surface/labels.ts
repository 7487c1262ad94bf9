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

  /** Whether a label has room, y its baseline, and so many millimetres on either side. */
  fits(text: string, style: TextStyle, x: number, y: number, anchor: Anchor, sideMm: number) {
    const [left, top, right, bottom] = boxOf(text, style, x, y, anchor);
    const box: Box = [left - sideMm, top, right + sideMm, bottom];
    return !this.taken.some((one) => near(one, box));
  }

  /** Draws a label, y its baseline, where it has room; tells whether it did. */
  draw(text: string, style: TextStyle, x: number, y: number, anchor: Anchor = 'start'): boolean {
    const box = boxOf(text, style, x, y, anchor);
    if (this.taken.some((one) => near(one, box))) return false;
    this.taken.push(box);
    drawText(this.surface, text, style, x, y, anchor);
    return true;
  }
}

/** What a label covers: from above the capitals to below the hanging letters. */
function boxOf(text: string, style: TextStyle, x: number, y: number, anchor: Anchor): Box {
  const wide = textWidth(text, style);
  const left = x - { start: 0, middle: 0.5, end: 1 }[anchor] * wide;
  return [left, y - 0.8 * style.sizeMm, left + wide, y + 0.25 * style.sizeMm];
}

const near = (one: Box, other: Box): boolean =>
  one[0] < other[2] + apartMm &&
  other[0] < one[2] + apartMm &&
  one[1] < other[3] &&
  other[1] < one[3];
