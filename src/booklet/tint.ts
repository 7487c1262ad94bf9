import { contrastRatio } from '../core/colour/contrast.js';
import { mixed } from '../core/colour/mixed.js';
import { hexToLab65 } from '../core/colour/lab.js';
import type { Pattern } from '../core/pattern/pattern.js';
import { beadCounts } from '../core/pattern/stitches.js';

/** Colours of a booklet, #rrggbb, taken from its pattern's beads. */
export interface Tint {
  /** Of titles: 7:1 and more on white, 4.5:1 and more on `pale` (W3C, WCAG 2.1, 1.4.6 and 1.4.3). */
  readonly accent: string;
  /** A quiet ground for the cover and the heads of tables. */
  readonly pale: string;
  /** Rules that only please the eye. */
  readonly rule: string;
}

/** Where no bead is decided. */
export const plainTint: Tint = { accent: '#3a3a3a', pale: '#efefef', rule: '#c2c2c2' };

/**
 * The strongest bead colour darkened until titles read in it, and the quietest one that is much
 * used lightened until letters read on it. Beads without hue give greys.
 */
export function tintOf(pattern: Pattern): Tint {
  const counts = beadCounts(pattern);
  const beads = pattern.beads
    .map(({ letter, hex }) => ({ hex, count: counts.get(letter) ?? 0, lab: hexToLab65(hex) }))
    .filter(({ count }) => count > 0);
  if (beads.length === 0) return plainTint;
  const chroma = ([, a, b]: readonly number[]) => Math.hypot(a, b);
  const most = (weight: (bead: (typeof beads)[number]) => number) =>
    beads.reduce((best, bead) => (weight(bead) > weight(best) ? bead : best));
  // Darkening keeps the hue of dark and middling colours best.
  const strong = most(({ lab, count }) => chroma(lab) * Math.sqrt(count) * (lab[0] > 70 ? 0.6 : 1));
  const quiet = most(({ lab, count, hex }) =>
    hex === strong.hex && beads.length > 1 ? -1 : Math.sqrt(count) / (12 + chroma(lab)),
  );
  const steps = Array.from({ length: 21 }, (_, n) => n / 20);
  const pale = steps
    .map((share) => mixed(quiet.hex, 255, 0.55 + 0.45 * share))
    .find((hex) => contrastRatio(hex, '#000000') >= 16.5)!;
  const accent = steps
    .map((share) => mixed(strong.hex, 0, share))
    .find((hex) => contrastRatio(hex, '#ffffff') >= 7 && contrastRatio(hex, pale) >= 5.5)!;
  return { accent, pale, rule: mixed(accent, 255, 0.62) };
}
