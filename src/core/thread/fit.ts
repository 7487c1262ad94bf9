import { warning } from '../errors.js';
import type { Warning } from '../errors.js';
import { findSize } from '../beads/palette/sizes.js';
import type { BeadSize } from '../beads/palette/sizes.js';
import { beadCounts } from '../pattern/stitches.js';
import type { Pattern, Thread } from '../pattern/pattern.js';
import { millionth } from '../units.js';
import { threadPerStitch } from './per-stitch.js';

/** Most thickness of a single and of a doubled thread over the hole (from memory, unchecked). */
const singleShare = 0.65;
const doubledShare = 0.95;
/** Thickness of polyester or cotton at usual packing, mm: this times the root of its tex. */
const mmPerRootTex = 0.0376;
/** Thread of a stitch beyond these, in stitch widths, is most likely a slip. */
const perWidthDoubted = [5, 20] as const;

/** How thick a thread is, millimetres: as given, or by its tex (grams of 1,000 m). */
export function threadDiameterMm(
  thread: Pick<Thread, 'diameterMm' | 'tex'> | undefined,
): number | undefined {
  const { diameterMm, tex } = thread ?? {};
  return diameterMm ?? (tex === undefined ? undefined : millionth(mmPerRootTex * Math.sqrt(tex)));
}

/** The tex of a thread of this thickness, the inverse of `threadDiameterMm`. */
export function texOf(diameterMm: number): number {
  return (diameterMm / mmPerRootTex) ** 2;
}

/** What thickness of thread the beads of a pattern take. */
export interface ThreadFit {
  /** The worked size with the narrowest hole, as the trade table gives it, millimetres. */
  readonly size: BeadSize;
  /** Its narrowest hole. */
  readonly holeMm: number;
  /** The thickest thread that passes singly, and folded double at the eye of a needle. */
  readonly singleMostMm: number;
  /** The thickest thread that passes folded double. */
  readonly doubledMostMm: number;
  /** The pattern's own thread, and whether it passes, where it is known. */
  readonly diameterMm: number | undefined;
  /** Whether it passes singly, where its diameter is known. */
  readonly single: boolean | undefined;
  /** Whether it passes folded double, where its diameter is known. */
  readonly doubled: boolean | undefined;
}

/** Thread against bead hole; undefined where no worked bead has a size that we know. */
export function threadFit(
  pattern: Pick<Pattern, 'beads' | 'panels' | 'thread'>,
): ThreadFit | undefined {
  const counts = beadCounts(pattern);
  const sizes = pattern.beads.flatMap(({ letter, size }) => {
    const known = size === undefined ? undefined : findSize(size);
    return known && counts.get(letter) !== 0 ? [known] : [];
  });
  if (sizes.length === 0) return undefined;
  const size = sizes.reduce((a, b) => (b.holeMm < a.holeMm ? b : a));
  const singleMostMm = millionth(singleShare * size.holeMm);
  const doubledMostMm = millionth((doubledShare * size.holeMm) / 2);
  const diameterMm = threadDiameterMm(pattern.thread);
  const fits = (most: number) => (diameterMm === undefined ? undefined : diameterMm <= most + 1e-9);
  return {
    size,
    holeMm: size.holeMm,
    singleMostMm,
    doubledMostMm,
    diameterMm,
    single: fits(singleMostMm),
    doubled: fits(doubledMostMm),
  };
}

/** What a maker should know of the thread before buying or stringing. */
export function threadWarnings(
  pattern: Pick<Pattern, 'shape' | 'beads' | 'panels' | 'thread'>,
): Warning[] {
  const found: Warning[] = [];
  const perStitch = threadPerStitch(pattern);
  const width = pattern.shape.stitchWidthMm;
  const [least, most] = perWidthDoubted;
  if (perStitch.mm < least * width || perStitch.mm > most * width) {
    const [usualLeastMm, usualMostMm] = perStitch.usualRangeMm.map(millionth);
    found.push(
      warning('thread-per-stitch-unusual', {
        gotMm: perStitch.mm,
        widthMm: width,
        usualLeastMm,
        usualMostMm,
      }),
    );
  }
  const fit = threadFit(pattern);
  if (fit?.diameterMm === undefined) return found;
  const { diameterMm, holeMm, singleMostMm, doubledMostMm, size } = fit;
  const facts = { diameterMm, size: size.name, holeMm };
  if (fit.single === false) {
    found.push(warning('thread-too-thick', { ...facts, mostMm: singleMostMm }));
  } else if (fit.doubled === false) {
    found.push(warning('thread-too-thick-doubled', { ...facts, mostMm: doubledMostMm }));
  }
  return found;
}
