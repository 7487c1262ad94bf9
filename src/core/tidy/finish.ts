import type { BeadOfStitch } from '../bead.js';
import { ciede2000Fast } from '../colour/ciede2000.js';
import { linearToLab65 } from '../colour/lab.js';
import type { Footprints } from '../geometry/footprints.js';
import type { PanelGeometry } from '../geometry/panel.js';
import type { Choice } from '../pattern/schema.js';
import type { StitchColours } from '../sampling/sample.js';
import { millionth } from '../units.js';
import { ditherBeads } from './dither.js';
import { tidyBeads } from './tidy.js';

/** What may be done to the beads after they are chosen: one or the other. */
export interface FinishWish {
  /**
   * What tidying may cost, percent of the mean difference; none when absent or 0. Does nothing
   * where beads are dithered: it would remove exactly what dithering adds.
   */
  tidy?: number;
  /** Share of its error that a stitch hands on, 0 to 1; none when absent or 0. */
  dither?: number;
}

/** The panel, as `decideBeads` has it. */
interface FinishPanel {
  readonly geometry: PanelGeometry;
  readonly footprints: Pick<Footprints, 'neighbours'>;
  readonly colours: Pick<StitchColours, 'linear'>;
  readonly repeat: boolean;
}

/** The beads as they were chosen. */
export interface ChosenBeads {
  /** Palette index of each stitch, or `bare`; length count. */
  readonly beadOf: BeadOfStitch;
  /** L, a, b (D65) of each bead of the palette; length 3·P. */
  readonly palette: Float64Array;
  /** Palette indices that may be used. */
  readonly chosen: readonly number[];
  /** Palette indices that must not vanish. */
  readonly keep?: readonly number[];
  /** How many stitches may have each bead of the palette; dithering knows no limits. */
  readonly limits?: ArrayLike<number>;
  /** How much each stitch counts; length count. */
  readonly weights?: Float64Array;
  /** 1 where the bead must stay; length count. */
  readonly guarded?: Uint8Array;
}

/** The beads as they will be worked. */
export interface FinishedBeads {
  readonly beadOf: BeadOfStitch;
  /** Mean and largest CIEDE2000 of a stitch and its bead, every stitch counting alike. */
  readonly mean: number;
  readonly worst: number;
  /** What was done, for the pattern. */
  readonly told: Pick<Choice, 'tidy' | 'dither'>;
}

/** Tidies or dithers chosen beads, as wished, and measures them. */
export function finishBeads(
  wish: FinishWish,
  panel: FinishPanel,
  chosen: ChosenBeads,
): FinishedBeads {
  const stitches = labsOf(panel.colours.linear);
  const { beadOf, told } = done(wish, panel, chosen, stitches);
  let [sum, worst, count] = [0, 0, 0];
  for (let s = 0; s < beadOf.length; s++) {
    if (beadOf[s] < 0) continue;
    const [L, a, b] = stitches.subarray(3 * s, 3 * s + 3);
    const [beadL, beadA, beadB] = chosen.palette.subarray(3 * beadOf[s], 3 * beadOf[s] + 3);
    const difference = ciede2000Fast(L, a, b, beadL, beadA, beadB);
    sum += difference;
    worst = Math.max(worst, difference);
    count += 1;
  }
  const mean = count > 0 ? millionth(sum / count) : 0;
  return { beadOf, told, mean, worst: millionth(worst) };
}

function done(
  { tidy, dither }: FinishWish,
  { geometry, footprints, colours, repeat }: FinishPanel,
  chosen: ChosenBeads,
  stitches: Float64Array,
): Pick<FinishedBeads, 'beadOf' | 'told'> {
  const { shape } = geometry;
  if (dither) {
    const { linear } = colours;
    const beadOf = ditherBeads({ ...chosen, shape, linear, strength: dither, repeat });
    return { beadOf, told: { dither: { strength: dither } } };
  }
  if (!tidy) return { beadOf: chosen.beadOf, told: {} };
  const { beadOf, report } = tidyBeads({
    ...chosen,
    shape,
    footprints,
    stitches,
    repeat,
    percent: tidy,
  });
  return { beadOf, told: { tidy: { ...report, costPercent: millionth(report.costPercent) } } };
}

/** L, a, b of every stitch; length that of `linear`. */
function labsOf(linear: Float64Array): Float64Array {
  const labs = new Float64Array(linear.length);
  for (let s = 0; s < linear.length; s += 3) {
    labs.set(linearToLab65(linear[s], linear[s + 1], linear[s + 2]), s);
  }
  return labs;
}
