import { computed } from '@preact/signals';
import { formatHex, parseHex } from '../../core/colour/hex.js';
import { linearToSrgb8, srgbToLinear } from '../../core/colour/srgb.js';
import { seenAs } from '../../core/colour/vision.js';
import type { Sight } from '../../core/colour/vision.js';
import type { Chart } from './chart.js';
import { chart, view } from './store.js';

/** A colour as other eyes, or a grey printer, see it. */
export function seenHex(hex: string, sight: Sight): string {
  if (sight === 'usual') return hex;
  const [r, g, b] = parseHex(hex) ?? [128, 128, 128];
  const seen = seenAs(sight, [srgbToLinear[r], srgbToLinear[g], srgbToLinear[b]]);
  const [seenR, seenG, seenB] = seen.map(linearToSrgb8);
  return formatHex(seenR, seenG, seenB);
}

/** The chart as the eyes of the view see it: what the panel is drawn from. */
export const seenChart = computed(() => seenBy(chart.value, view.value.eyes));

/** A chart as some eyes see it. */
export function seenBy(made: Chart | undefined, eyes: Sight): Chart | undefined {
  if (!made || eyes === 'usual') return made;
  return { ...made, beads: made.beads.map((bead) => ({ ...bead, hex: seenHex(bead.hex, eyes) })) };
}
