import { computed } from '@preact/signals';
import { panelLengths } from '../../core/thread/lengths.js';
import { stitchesBefore } from '../../core/panel/shape.js';
import { calmChart, calmPanel } from '../store/calm.js';
import { view } from '../store/store.js';

/** The beads of the shown panel in the order in which they are strung, and what is marked on the thread. */
export interface Strung {
  /** Stitch of each bead, first strung first. */
  readonly stitches: Int32Array;
  /** Place of each stitch on the thread, or -1 for one without a bead. */
  readonly placeOf: Int32Array;
  /** Before which place a round is done: its number is written there. */
  readonly rounds: ReadonlyMap<number, number>;
  /** Before which place a length begins, and how long it is; none while the choice follows a gesture. */
  readonly lengths: ReadonlyMap<number, { number: number; beads: number; metres: number }>;
}

const noLengths: ReturnType<typeof panelLengths> = [];

/** The lengths of the shown panel; none while the choice follows a gesture. */
const lengthsOf = computed(() => {
  const pattern = settledPattern.value;
  if (!pattern) return noLengths;
  return panelLengths(pattern, Math.min(panelAt.value, pattern.panels.length - 1));
});
// A stroke of the brush changes the chart many times and neither of these.
const settledPattern = computed(() => calmChart.value?.settled?.pattern);
const panelAt = computed(() => view.value.panel);

/** The thread: the reverse of working order as it is strung, or working order itself. */
export const strung = computed((): Strung | undefined => {
  const panel = calmPanel.value;
  const made = calmChart.value;
  if (!panel || !made) return undefined;
  const { shape, count } = panel.geometry;
  const worked = view.value.threadWay === 'worked';
  const stitches: number[] = [];
  const placeOf = new Int32Array(count).fill(-1);
  for (let n = 0; n < count; n++) {
    const s = worked ? n : count - 1 - n;
    if (panel.beadOf[s] === -1) continue;
    placeOf[s] = stitches.length;
    stitches.push(s);
  }
  /** The first place at or after a stitch, in the thread's own direction. */
  const placeFrom = (s: number): number => {
    for (let at = s; at >= 0 && at < count; at += worked ? 1 : -1) {
      if (placeOf[at] >= 0) return placeOf[at];
    }
    return stitches.length;
  };
  const rounds = new Map<number, number>();
  for (let r = 1; r <= shape.rounds; r++) {
    const first = stitchesBefore(shape, r);
    rounds.set(placeFrom(worked ? first : first + shape.wedges * r - 1), r);
  }
  const lengths: [number, { number: number; beads: number; metres: number }][] = [];
  for (const one of lengthsOf.value) {
    const from = worked ? one.fromStitch : one.toStitch - 1;
    lengths.push([
      placeFrom(from),
      { number: one.number, beads: one.beads.length, metres: one.strungMm / 1000 },
    ]);
  }
  return { stitches: Int32Array.from(stitches), placeOf, rounds, lengths: new Map(lengths) };
});
