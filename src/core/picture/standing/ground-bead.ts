import type { Bead } from '../../beads/bead.js';
import { ciede2000Fast } from '../../colour/ciede2000.js';
import { lab65ToLinear, linearToLab65 } from '../../colour/lab.js';
import type { Subject } from '../subject.js';

/** The ground that a subject shall stand on. */
export interface GroundBead {
  /** Palette index. */
  readonly bead: number;
  /** Whether it is the lightest bead, as good as white. */
  readonly light: boolean;
  /** Share of the subject's outline that stands out from it, 0 to 1. */
  readonly standsOut: number;
}

/** CIEDE2000 by which an outline stands out; its own beads will be off by some of it. */
const standsOutFrom = 18;
/** … from white: among few beads the pale tints of a subject are the first to become white. */
const standsOutOfWhiteFrom = 20;
/** Share of the outline that must stand out, or nearly all that can. */
const enough = 0.9;
const nearlyBest = 0.03;
/** Half a stitch of a panel of 20 rounds, as a share of the subject's larger side. */
const bandShare = 1 / 80;
/** Rim and inner colours that are looked at. */
const mostColours = 240;
/** Chroma from which a ground is loud, and below which it is dull. */
const [loudFrom, greyFrom] = [16, 6];
/** What a step of chroma below that costs, and a hue that is the subject's own or warm. */
const [greyCost, hueCost] = [0.5, 3];
/** Where warm colours lie in the plane of a and b: at 50 degrees. */
const [warmA, warmB] = [0.643, 0.766];
/** Lightness of a ground that is neither glaring nor gloomy. */
const [lightFrom, lightTo] = [58, 88];
/** A ground bead farther from white than this is none that a maker would call white. */
const whiteWithin = 12;

/**
 * The bead of the palette for the ground of a cut-out: the lightest where the subject's outline
 * stands out from it; otherwise the quietest that the outline does stand out from, of middling
 * lightness and of another hue than the subject.
 *
 * @param leaveOut palette indices that must not be used
 */
export function groundBead(
  subject: Subject,
  beads: readonly Bead[],
  leaveOut: readonly number[] = [],
): GroundBead {
  const open = [...beads.keys()].filter((bead) => !leaveOut.includes(bead));
  const lightest = open.reduce((a, b) => (beads[b].lab[0] > beads[a].lab[0] ? b : a));
  const white = open.reduce((a, b) => (fromWhite(beads[b]) < fromWhite(beads[a]) ? b : a));
  const light = fromWhite(beads[white]) <= whiteWithin ? white : lightest;
  const { rim, inner } = coloursOf(subject);
  const shareOf = (bead: number): number => standing(rim, beads[bead].lab, standsOutFrom);
  const atLight = standing(rim, beads[light].lab, standsOutOfWhiteFrom);
  if (atLight >= enough) return { bead: light, light: true, standsOut: atLight };
  const shares = new Map(open.map((bead) => [bead, shareOf(bead)]));
  const best = Math.max(...shares.values());
  if (best - atLight < nearlyBest) return { bead: light, light: true, standsOut: atLight };
  const least = Math.min(enough, best - nearlyBest);
  const main = meanOf(inner);
  let [bead, cost] = [light, Infinity];
  for (const [one, share] of shares) {
    if (share < least) continue;
    const own = loudness(beads[one].lab, main) + 40 * (1 - share);
    if (own < cost) [bead, cost] = [one, own];
  }
  return { bead, light: false, standsOut: shares.get(bead)! };
}

function fromWhite({ lab }: Bead): number {
  return ciede2000Fast(...lab, 100, 0, 0);
}

/**
 * How far a bead is from a quiet, pleasant ground for a subject of this mean colour; less is better.
 * Cool colours recede and warm ones come forward (common practice in painting, no source).
 */
function loudness([L, a, b]: readonly number[], main: readonly number[]): number {
  const chroma = Math.sqrt(a * a + b * b);
  const off = Math.max(0, lightFrom - L, L - lightTo);
  const loud = Math.max(0, chroma - loudFrom) + greyCost * Math.max(0, greyFrom - chroma);
  if (chroma < 1) return loud + off;
  const mainChroma = Math.sqrt(main[1] * main[1] + main[2] * main[2]);
  // Cosines of the angles between hues: 1 for the same hue.
  const same = mainChroma < 4 ? 0 : (a * main[1] + b * main[2]) / (chroma * mainChroma);
  const warm = (a * warmA + b * warmB) / chroma;
  return loud + off + hueCost * (Math.max(0, same) + Math.max(0, warm));
}

/** Share of the outline that stands out from a ground which shows through where it is not opaque. */
function standing(
  rim: readonly RimColour[],
  [L, a, b]: readonly [number, number, number],
  from: number,
): number {
  const ground = lab65ToLinear(L, a, b);
  let count = 0;
  for (const { light, alpha } of rim) {
    const [red, green, blue] = light.map((one, c) => one + (1 - alpha) * ground[c]);
    const seen = linearToLab65(red, green, blue);
    if (ciede2000Fast(...seen, L, a, b) >= from) count++;
  }
  return rim.length === 0 ? 1 : count / rim.length;
}

/** Linear light, premultiplied by alpha. */
interface RimColour {
  readonly light: readonly [number, number, number];
  readonly alpha: number;
}

/** Colours along the outline, half a stitch deep, and L, a, b of all of the subject; thinned out. */
function coloursOf(subject: Subject): { rim: RimColour[]; inner: Float64Array } {
  const { width, height, mask, colours: data } = subject;
  const on = (x: number, y: number): boolean =>
    x >= 0 && y >= 0 && x < width && y < height && mask[y * width + x] === 1;
  const outline: number[] = [];
  const inside: number[] = [];
  let [left, up, right, down] = [width, height, 0, 0];
  for (let p = 0; p < mask.length; p++) {
    if (!mask[p]) continue;
    const x = p % width;
    const y = (p - x) / width;
    inside.push(p);
    if (!(on(x - 1, y) && on(x + 1, y) && on(x, y - 1) && on(x, y + 1))) outline.push(p);
    [left, right] = [Math.min(left, x), Math.max(right, x)];
    [up, down] = [Math.min(up, y), Math.max(down, y)];
  }
  const band = Math.max(1, Math.round(bandShare * Math.max(right - left, down - up)));
  const meanAround = (p: number): RimColour => {
    const sums = [0, 0, 0, 0];
    let cells = 0;
    const x = p % width;
    const y = (p - x) / width;
    for (let v = y - band; v <= y + band; v++) {
      for (let u = x - band; u <= x + band; u++) {
        if (!on(u, v)) continue;
        cells++;
        for (let c = 0; c < 4; c++) sums[c] += data[4 * (v * width + u) + c];
      }
    }
    const [r, g, b, alpha] = sums.map((sum) => sum / cells);
    return { light: [r, g, b], alpha };
  };
  const ownColour = (p: number): [number, number, number] => {
    const [r, g, b, alpha] = data.subarray(4 * p, 4 * p + 4);
    return linearToLab65(r / alpha, g / alpha, b / alpha);
  };
  return {
    rim: thinned(outline).map(meanAround),
    inner: Float64Array.from(thinned(inside).flatMap(ownColour)),
  };
}

function thinned(places: readonly number[]): number[] {
  const step = Math.max(1, Math.floor(places.length / mostColours));
  return places.filter((_, n) => n % step === 0);
}

function meanOf(labs: Float64Array): number[] {
  const sums = [0, 0, 0];
  for (let p = 0; p < labs.length; p++) sums[p % 3] += labs[p];
  return sums.map((sum) => sum / Math.max(1, labs.length / 3));
}
