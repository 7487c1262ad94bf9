import type { Pattern } from '../../src/core/pattern/pattern.js';
import { patternOf } from './patterns.js';

/** A panel whose beads come in runs of many lengths, the same every time. */
export function somePattern(wish: {
  wedges: number;
  rounds: number;
  increase?: 'first' | 'middle' | 'last';
  /** Most beads on one length. */
  lengthBeads?: number;
  /** Each stitch of this number is bare. */
  bareEvery?: number;
  marks?: (s: number) => string;
}): Pattern {
  const { wedges, rounds, increase, lengthBeads, bareEvery = Infinity } = wish;
  const uneven = (s: number) => 'ABCA'[Math.floor((s * s) / 7 + s / 3) % 4];
  const { marks = uneven } = wish;
  let s = 0;
  const lines = Array.from({ length: rounds }, (_, r) =>
    Array.from({ length: wedges * (r + 1) }, () => {
      const mark = s % bareEvery === bareEvery - 1 ? '.' : marks(s);
      s++;
      return mark;
    }).join(''),
  );
  const pattern = patternOf(lines, increase && { increase });
  return { ...pattern, thread: { lengthMm: 1e6, ...(lengthBeads && { lengthBeads }) } };
}
