import type { Bead } from '../../beads/bead.js';
import { lab65ToLinear } from '../../colour/lab.js';
import { labsOf } from '../../colour/labs-of.js';
import type { StitchColours } from '../sampling/sample.js';

/** `--lift` where nothing else is said. */
export const defaultLift = 0.5;
/** A picture whose colours span this much of Lab is left as it is. */
const fullRange = 36;
/** A range of less than the first is one colour and its noise; from the second on it counts fully. */
const [noRange, someRange] = [4, 12];
/** Most by which a range is stretched, at strength 1. */
const mostStretch = 1.8;
/** Shares of the stitches that lie below and above what counts as the range. */
const [lowShare, highShare] = [0.02, 0.98];
/** Share of the stretch that chroma gets. */
const chromaShare = 0.5;
/** Halvings until a colour lies within sRGB. */
const halvings = 20;

/**
 * Stretches the lightness of a picture of little contrast onto what the beads can show, and its
 * chroma by half as much: hues stay, grey stays grey, nothing leaves sRGB or the beads' range of
 * lightness, and a picture that has contrast is given back as it came, be it of lightness or of
 * hues: an orange's light skin and its flesh differ enough as they are. Stitches that show mostly
 * ground have no say.
 *
 * @param strength 0 (off) to 1
 * @returns colours whose `own` are those of the picture
 */
export function liftTone(
  colours: StitchColours,
  beads: readonly Pick<Bead, 'lab'>[],
  strength: number,
): StitchColours {
  if (strength <= 0) return colours;
  const { linear, covered, bare } = colours;
  const count = covered.length;
  const labs = labsOf(linear);
  let many = 0;
  const values = new Float64Array(count);
  /** Where one of L, a and b begins and ends among the stitches that have a say, a few of them left out. */
  const spanOf = (c: number): [number, number] => {
    many = 0;
    for (let s = 0; s < count; s++)
      if (!bare[s] && covered[s] >= 0.5) values[many++] = labs[3 * s + c];
    const sorted = values.subarray(0, many).sort();
    const at = (share: number): number => sorted[Math.floor(share * (many - 1))];
    return [at(lowShare), at(highShare)];
  };
  const [dark, light] = spanOf(0);
  if (many === 0 || beads.length === 0) return colours;
  const range = light - dark;
  const least = Math.min(...beads.map(({ lab }) => lab[0]));
  const most = Math.max(...beads.map(({ lab }) => lab[0]));
  const room = Math.min(fullRange, most - least);
  if (range >= room) return colours;
  const [[a1, a2], [b1, b2]] = [spanOf(1), spanOf(2)];
  const spread = Math.sqrt(range ** 2 + (a2 - a1) ** 2 + (b2 - b1) ** 2);
  const sure = Math.min(1, Math.max(0, (range - noRange) / (someRange - noRange)));
  const stretch = 1 + strength * sure * (Math.min(mostStretch, room / spread) - 1);
  if (!(stretch > 1)) return colours;
  const middle = (dark + light) / 2;
  const half = (stretch * range) / 2;
  const aim = Math.min(Math.max(middle, least + half), most - half);
  const more = 1 + chromaShare * (stretch - 1);
  const lifted = linear.slice();
  for (let s = 0; s < count; s++) {
    if (bare[s] || covered[s] < 0.5) continue;
    const [L, a, b] = labs.subarray(3 * s, 3 * s + 3);
    const to = Math.min(most, Math.max(least, aim + stretch * (L - middle)));
    lifted.set(within(to, a, b, more), 3 * s);
  }
  return { ...colours, linear: lifted, own: linear };
}

/** Linear light of a colour whose chroma is multiplied by as much of `more` as sRGB holds. */
function within(L: number, a: number, b: number, more: number): [number, number, number] {
  const light = (factor: number) => lab65ToLinear(L, factor * a, factor * b);
  const fits = (rgb: readonly number[]) => rgb.every((one) => one >= -1e-9 && one <= 1 + 1e-9);
  let rgb = light(more);
  if (!fits(rgb)) {
    let [low, high] = [0, more];
    for (let n = 0; n < halvings; n++) {
      const half = (low + high) / 2;
      if (fits(light(half))) low = half;
      else high = half;
    }
    rgb = light(low);
  }
  const [r, g, blue] = rgb.map((one) => Math.min(1, Math.max(0, one)));
  return [r, g, blue];
}
