import { warning } from '../errors.js';
import type { Warning } from '../errors.js';
import type { Pattern } from './pattern.js';
import type { Shape } from '../panel/shape.js';
import type { Swatch } from '../swatch/swatch.js';

/** The pattern with the swatch and what it tells of the thread. */
export function patternWithSwatch(pattern: Pattern, swatch: Swatch | undefined): Pattern {
  if (swatch === undefined) return pattern;
  const { perStitchMm, beadLengthMm } = swatch;
  const thread = {
    ...pattern.thread,
    ...(perStitchMm && { perStitchMm: perStitchMm.value }),
    ...(beadLengthMm && { beadLengthMm: beadLengthMm.value }),
  };
  return {
    ...pattern,
    swatch,
    ...(Object.keys(thread).length > 0 && { thread }),
  };
}

/** Shares of a stitch (lean: stitches) from which a chart no longer fits the hand. */
const [sameSize, sameLean] = [0.02, 0.05];

/**
 * Where a pattern that is there already was laid out for another stitch than the swatch's: its
 * chart and size no longer fit, though its counts and thread do.
 */
export function swatchTooLate(swatch: Swatch, shape: Shape): Warning[] {
  const { stitchWidthMm: width, roundHeightMm: height, lean } = swatch;
  const differs =
    (width && Math.abs(shape.stitchWidthMm / width.value - 1) > sameSize) ||
    (height && Math.abs(shape.roundHeightMm / height.value - 1) > sameSize) ||
    (lean && Math.abs(shape.lean - lean.value) > sameLean);
  return differs ? [warning('swatch-too-late', undefined)] : [];
}

/** Beads that differ by more than this share are other beads. */
const sameBead = 0.1;

/** Where the panel is worked in another way than the swatch, and whether its numbers still hold. */
export function swatchWarnings(swatch: Swatch, shape: Shape, beadMm?: number): Warning[] {
  const { worked, measured, lies } = swatch;
  const found: Warning[] = [];
  if (worked.hand !== shape.hand) {
    found.push(warning('swatch-other-hand', { swatch: worked.hand, panel: shape.hand }));
  }
  if (worked.beadsFace !== shape.beadsFace) {
    const facts = { swatch: worked.beadsFace, panel: shape.beadsFace };
    found.push(warning('swatch-other-face', facts));
  }
  if (worked.stitch && shape.stitch && worked.stitch !== shape.stitch) {
    const facts = { swatch: worked.stitch, panel: shape.stitch };
    found.push(warning('swatch-other-stitch', facts));
  }
  if (worked.increase !== shape.increase) {
    const facts = { swatch: worked.increase, panel: shape.increase };
    found.push(warning('swatch-other-increase', facts));
  }
  if (worked.wedges !== shape.wedges) {
    const facts = { swatch: worked.wedges, panel: shape.wedges };
    found.push(warning('swatch-other-wedges', facts));
  }
  if (worked.construction !== shape.construction) {
    const facts = { swatch: worked.construction, panel: shape.construction };
    found.push(warning('swatch-other-construction', facts));
  }
  if (beadMm !== undefined && Math.abs(beadMm / measured.beadMm - 1) > sameBead) {
    found.push(warning('swatch-other-bead', { swatchMm: measured.beadMm, panelMm: beadMm }));
  }
  if (lies !== 'flat' && worked.wedges === shape.wedges) {
    found.push(warning('swatch-not-flat', { lies, wedges: worked.wedges }));
  }
  return found;
}
