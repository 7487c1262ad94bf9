import type { BeadSize } from '../beads/palette/sizes.js';
import { findSize } from '../beads/palette/sizes.js';
import { beadCounts } from '../pattern/stitches.js';
import type { Pattern } from '../pattern/pattern.js';

/** Thread of one beaded stitch by bead size, millimetres (common practice, no source). */
const usualMm: Readonly<Record<string, number>> = {
  '15/0': 18,
  '11/0': 24,
  '10/0': 27,
  '8/0': 36,
  '6/0': 48,
};
/** For other beads: thread of a stitch over its width, about what the sizes above come to. */
const perWidth = 11;
/** Thread of a stitch over its width, as far apart as makers tell it (common practice, no source). */
const perWidthRange = [8, 13] as const;

/** How much thread one stitch takes, and how that is known. */
export interface ThreadPerStitch {
  /** Thread that one stitch takes. */
  readonly mm: number;
  /** From the pattern's `thread.perStitchMm`, from the bead size, or 11 stitch widths. */
  readonly from: 'pattern' | 'size' | 'width';
  /** What other makers would need for stitches of this width, millimetres. */
  readonly usualRangeMm: readonly [number, number];
}

/** The thread that one stitch takes, with a bead or without one; an estimate unless measured. */
export function threadPerStitch(
  pattern: Pick<Pattern, 'shape' | 'beads' | 'panels' | 'thread'>,
): ThreadPerStitch {
  const width = pattern.shape.stitchWidthMm;
  const usualRangeMm = [perWidthRange[0] * width, perWidthRange[1] * width] as const;
  const own = pattern.thread?.perStitchMm;
  if (own !== undefined) return { mm: own, from: 'pattern', usualRangeMm };
  const usual = usualMm[mainSize(pattern)?.name ?? ''];
  if (usual !== undefined) return { mm: usual, from: 'size', usualRangeMm };
  return { mm: perWidth * width, from: 'width', usualRangeMm };
}

/** The size of the bead that is worked most, if it has one that we know. */
export function mainSize(pattern: Pick<Pattern, 'beads' | 'panels'>): BeadSize | undefined {
  const counts = beadCounts(pattern);
  const sizes = new Map<string, number>();
  for (const { letter, size } of pattern.beads) {
    const name = size === undefined ? '' : (findSize(size)?.name ?? '');
    sizes.set(name, (sizes.get(name) ?? 0) + (counts.get(letter) ?? 0));
  }
  let [best, most] = ['', -1];
  for (const [name, count] of sizes) if (count > most) [best, most] = [name, count];
  return best === '' ? undefined : findSize(best);
}
