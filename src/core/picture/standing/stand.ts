import type { Bead } from '../../beads/bead.js';
import { formatHex } from '../../colour/hex.js';
import type { Subject } from '../subject.js';
import { groundBead } from './ground-bead.js';
import type { GroundBead } from './ground-bead.js';

/** What is asked of a picture's ground. */
export interface GroundWish {
  /** `#rrggbb`, `bare`, `auto`, or the palette index of a bead. */
  readonly background: string | number;
  readonly beads: readonly Bead[];
  readonly leaveOut?: readonly number[] | undefined;
}

/** What lies around a picture and under its transparent parts. */
export interface Ground {
  /** `#rrggbb` or `bare`. */
  readonly background: string;
  /** Where a bead was chosen for a cut-out. */
  readonly chosen?: GroundBead;
}

const white = '#ffffff';

/**
 * Settles the ground. `auto` is white around a picture that has no ground of its own; a plain ground
 * goes on in its own colour; under a cut-out lies what lets it stand out (see ground-bead.ts).
 *
 * @param subjectOf the picture's subject; only asked for where it matters
 */
export function groundOf(
  { background, beads, leaveOut }: GroundWish,
  subjectOf: () => Subject,
): Ground {
  if (typeof background === 'number') return { background: beads[background].hex };
  if (background !== 'auto') return { background };
  const subject = subjectOf();
  if (subject.plain) return { background: formatHex(...subject.plain) };
  if (subject.ground !== 'clear' || beads.length === 0) return { background: white };
  const chosen = groundBead(subject, beads, leaveOut);
  return { background: chosen.light ? white : beads[chosen.bead].hex, chosen };
}
