import { bare } from '../bead.js';
import type { BeadOfStitch } from '../bead.js';
import { nearestBead } from '../choice/nearest.js';
import { ciede2000Fast } from '../../colour/ciede2000.js';
import { lab65ToLinear, linearToLab65 } from '../../colour/lab.js';
import type { Shape } from '../../panel/shape.js';
import { onwardFrom } from './onward.js';

/**
 * CIEDE2000 by which a bead may be farther from the stitch's own colour than the nearest is. Beads
 * farther off stand out as specks and hardly help the eye (tried on five photographs).
 */
const reach = 15;

/** What dithering needs. */
export interface DitherInput {
  readonly shape: Shape;
  /** Linear red, green, blue of each stitch, 0 to 1; length 3·count. */
  readonly linear: Float64Array;
  /** Palette index of each stitch, or negative where it has no bead; length count. */
  readonly beadOf: BeadOfStitch;
  /** Palette indices that may be used. */
  readonly chosen: readonly number[];
  /** L, a, b (D65) of each bead of the palette; length 3·P. */
  readonly palette: Float64Array;
  /** Share of its error that a stitch hands on, 0 to 1. */
  readonly strength: number;
  /** Every wedge must keep the same string: then one is dithered and stands for all. */
  readonly repeat: boolean;
  /** 1 where the bead must stay; length count. */
  readonly guarded?: Uint8Array;
}

/**
 * Mixes colours for the eye: what a bead lacks of its stitch's light is handed on, half to the next
 * stitch and half to those worked into it (error diffusion after Floyd and Steinberg, 1976, in linear
 * light and along the work). What would go to a stitch without a bead, or beyond the rim, is lost.
 * A stitch cannot want more light than there is, so errors stay small, and takes no bead that is
 * far from its own colour.
 *
 * @returns palette index of each stitch; bare ones stay bare
 */
export function ditherBeads(input: DitherInput): BeadOfStitch {
  const { shape, linear, chosen, palette, strength, guarded } = input;
  const wedges = input.repeat ? shape.wedges : 1;
  const beadOf = input.beadOf.slice();
  const light = new Map(
    chosen.map((bead) => [bead, lab65ToLinear(...labOf(palette, bead))] as const),
  );
  const error = new Float64Array(linear.length);
  const wanted = new Float64Array(3);
  for (let r = 1, first = 0; r <= shape.rounds; first += shape.wedges * r, r++) {
    const inRow = (shape.wedges * r) / wedges;
    for (let i = 0; i < inRow; i++) {
      const s = first + i;
      if (beadOf[s] < 0) continue;
      const held = guarded !== undefined && guarded[s] > 0;
      for (let c = 0; c < 3; c++) {
        const want = linear[3 * s + c] + (held ? 0 : error[3 * s + c]);
        wanted[c] = want < 0 ? 0 : want > 1 ? 1 : want;
      }
      if (!held) {
        const own = linearToLab65(linear[3 * s], linear[3 * s + 1], linear[3 * s + 2]);
        const lab = linearToLab65(wanted[0], wanted[1], wanted[2]);
        beadOf[s] = nearestBead(palette, ...lab, withinReach(palette, own, chosen));
      }
      for (let k = 1; k < wedges; k++) beadOf[s + k * r] = beadOf[s];
      const got = light.get(beadOf[s])!;
      for (const [to, share] of onwardFrom(shape, wedges, r, i)) {
        if (beadOf[to] === bare) continue;
        for (let c = 0; c < 3; c++) error[3 * to + c] += strength * share * (wanted[c] - got[c]);
      }
    }
  }
  return beadOf;
}

/** The beads that lie within reach of a colour, in their order. */
function withinReach(
  palette: Float64Array,
  colour: readonly [number, number, number],
  chosen: readonly number[],
): number[] {
  const apart = chosen.map((bead) => ciede2000Fast(...colour, ...labOf(palette, bead)));
  const most = Math.min(...apart) + reach;
  return chosen.filter((_, k) => apart[k] <= most);
}

function labOf(palette: Float64Array, bead: number): [number, number, number] {
  return [palette[3 * bead], palette[3 * bead + 1], palette[3 * bead + 2]];
}
