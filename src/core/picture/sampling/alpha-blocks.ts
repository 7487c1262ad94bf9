import type { Picture } from '../picture.js';
import type { Window } from './coverage.js';
import { fromSecondTime } from './second-time.js';

/** Side of a block of pixels is 2 to this power: small enough for the cache, finer than most footprints. */
const sideBits = 3;
const [clear, opaque, both] = [0, 255, 1];

/** What the alpha of each block of a picture's pixels is: all 0, all 255, or neither. */
export interface AlphaBlocks {
  readonly columns: number;
  readonly of: Uint8Array;
}

/** The blocks of a picture, where they are worth having. */
export const alphaBlocks = fromSecondTime(({ width, height, data }: Picture): AlphaBlocks => {
  const columns = Math.ceil(width / 2 ** sideBits);
  const of = new Uint8Array(columns * Math.ceil(height / 2 ** sideBits));
  for (let y = 0, p = 3; y < height; y++) {
    for (let x = 0; x < width; x++, p += 4) {
      const at = (y >> sideBits) * columns + (x >> sideBits);
      const first = ((x | y) & (2 ** sideBits - 1)) === 0;
      const own = data[p] === 0 || data[p] === 255 ? data[p] : both;
      of[at] = first || of[at] === own ? own : both;
    }
  }
  return { columns, of };
});

/** 255 where a window of the picture is surely opaque, 0 where it is surely clear, otherwise -1. */
export function alphaInWindow(blocks: AlphaBlocks, { left, top, columns, rows }: Window): number {
  const right = (left + columns - 1) >> sideBits;
  const bottom = (top + rows - 1) >> sideBits;
  const found = blocks.of[(top >> sideBits) * blocks.columns + (left >> sideBits)];
  if (found !== clear && found !== opaque) return -1;
  for (let row = top >> sideBits; row <= bottom; row++) {
    for (let column = left >> sideBits; column <= right; column++) {
      if (blocks.of[row * blocks.columns + column] !== found) return -1;
    }
  }
  return found;
}
