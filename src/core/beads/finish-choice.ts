import type { BeadOfStitch } from './bead.js';
import { ciede2000Fast } from '../colour/ciede2000.js';
import { labsOf } from '../colour/labs-of.js';
import { howKept } from './how-kept.js';
import type { HowKept } from './how-kept.js';
import type { Footprints } from '../panel/footprints.js';
import type { PanelGeometry } from '../panel/geometry.js';
import type { Choice } from './how-chosen.js';
import type { StitchColours } from '../picture/sampling/sample.js';
import type { Steps } from '../steps.js';
import { millionth } from '../units.js';
import { keepEdges } from './edges/keep-edges.js';
import type { EdgeReport } from './edges/keep-edges.js';
import { ditherBeads } from './tidy/dither.js';
import { tidyBeads } from './tidy/tidy.js';

/** What may be done to the beads after they are chosen: one or the other. */
export interface FinishWish {
  /**
   * What tidying may cost, percent of the mean difference; none when absent or 0. Does nothing
   * where beads are dithered: it would remove exactly what dithering adds.
   */
  tidy?: number;
  /** Share of its error that a stitch hands on, 0 to 1; none when absent or 0. */
  dither?: number;
  /**
   * How much contrast between touching stitches counts against their own difference, 0 to 1 (see
   * edges/); nothing when absent or 0. Does nothing where beads are dithered, which lives by
   * contrast that the picture has not.
   */
  edges?: number;
}

/** The panel, as `decideBeads` has it. */
interface FinishPanel {
  readonly geometry: PanelGeometry;
  readonly footprints: Pick<Footprints, 'neighbours'>;
  readonly colours: Pick<StitchColours, 'linear' | 'own'>;
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
  /** Mean and largest CIEDE2000 of a stitch's own colour and its bead, every stitch counting alike. */
  readonly mean: number;
  readonly worst: number;
  /** How well what the picture shows is kept. */
  readonly kept: HowKept;
  /** What was done, for the pattern. */
  readonly told: Pick<Choice, 'tidy' | 'dither' | 'edges'>;
}

/** Tidies or dithers chosen beads, as wished, and measures them. */
export function* finishBeads(
  wish: FinishWish,
  panel: FinishPanel,
  chosen: ChosenBeads,
): Steps<FinishedBeads> {
  const stitches = labsOf(panel.colours.linear);
  yield { stage: 'finish' };
  const { beadOf, told } = yield* done(wish, panel, chosen, stitches);
  const { own } = panel.colours;
  const asSeen = own ? labsOf(own) : stitches;
  let [sum, worst, count] = [0, 0, 0];
  const { palette } = chosen;
  yield { stage: 'finish' };
  for (let s = 0; s < beadOf.length; s++) {
    if (beadOf[s] < 0) continue;
    const [at, bead] = [3 * s, 3 * beadOf[s]];
    const difference = ciede2000Fast(
      asSeen[at],
      asSeen[at + 1],
      asSeen[at + 2],
      palette[bead],
      palette[bead + 1],
      palette[bead + 2],
    );
    sum += difference;
    worst = Math.max(worst, difference);
    count += 1;
  }
  const mean = count > 0 ? millionth(sum / count) : 0;
  const { neighbours } = panel.footprints;
  const { centres } = panel.geometry;
  yield { stage: 'finish' };
  const kept = yield* howKept({
    stitches: asSeen,
    beadOf,
    palette,
    neighbours,
    centres,
  });
  return { beadOf, told, mean, worst: millionth(worst), kept };
}

function* done(
  { tidy, dither, edges = 0 }: FinishWish,
  { geometry, footprints, colours, repeat }: FinishPanel,
  chosen: ChosenBeads,
  stitches: Float64Array,
): Steps<Pick<FinishedBeads, 'beadOf' | 'told'>> {
  const { shape } = geometry;
  if (dither) {
    const { linear } = colours;
    const beadOf = ditherBeads({ ...chosen, shape, linear, strength: dither, repeat });
    return { beadOf, told: { dither: { strength: dither } } };
  }
  const panel = { ...chosen, shape, footprints, stitches, repeat };
  const kept = edges > 0 ? yield* keepEdges({ ...panel, strength: edges }) : undefined;
  const told = kept && { edges: toldEdges(kept.report, chosen.beadOf) };
  if (!tidy) return { beadOf: kept?.beadOf ?? chosen.beadOf, told: { ...told } };
  const start = kept && { beadOf: kept.beadOf, edges };
  const { beadOf, report } = yield* tidyBeads({ ...panel, ...start, percent: tidy });
  const costPercent = millionth(report.costPercent);
  return { beadOf, told: { ...told, tidy: { ...report, costPercent } } };
}

/** For the pattern: sums as means over the stitches that carry a bead. */
function toldEdges(report: EdgeReport, beadOf: BeadOfStitch): NonNullable<Choice['edges']> {
  const { strength, before, after, lowerBound } = report;
  const beads = beadOf.reduce((count, bead) => count + (bead < 0 ? 0 : 1), 0);
  const each = (sum: number) => millionth(sum / beads);
  return {
    strength,
    before: each(before),
    after: each(after),
    ...(lowerBound !== undefined && { lowerBound: each(lowerBound) }),
  };
}
