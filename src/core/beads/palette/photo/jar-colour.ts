import { formatHex } from '../../../colour/hex.js';
import { linearToLab65 } from '../../../colour/lab.js';
import { linearToSrgb8 } from '../../../colour/srgb.js';

/** Shares of a heap's pixels, from the darkest, between which its colour is taken. */
const fromShare = 0.35;
const toShare = 0.8;
/** Spread of a and b (quarter to quarter) above which a heap is not of one colour. */
const mixedSpread = 22;

/**
 * The colour of one heap of beads under even light: the mean of the middle of its pixels by
 * brightness, so that the gaps and shadows below and the highlights above do not count.
 *
 * @param even light of each pixel over that of the paper
 * @param places indices of the heap's pixels
 * @param paper the same light on the paper around the heap, for each channel
 */
export function jarColour(
  even: Float64Array,
  places: readonly number[],
  paper: readonly [number, number, number],
): { hex: string; mixed: boolean } {
  const sum = (at: number) =>
    0.2126 * even[3 * at] + 0.7152 * even[3 * at + 1] + 0.0722 * even[3 * at + 2];
  const sorted = [...places].sort((a, b) => sum(a) - sum(b) || a - b);
  const first = Math.floor(fromShare * sorted.length);
  const middle = sorted.slice(first, Math.max(first + 1, Math.ceil(toShare * sorted.length)));
  const mean = [0, 1, 2].map((c) => {
    const total = middle.reduce((all, at) => all + even[3 * at + c], 0);
    return Math.min(1, total / middle.length / paper[c]);
  });
  const [r, g, b] = mean.map(linearToSrgb8);
  return { hex: formatHex(r, g, b), mixed: spread(even, middle, paper) > mixedSpread };
}

function spread(
  even: Float64Array,
  places: readonly number[],
  paper: readonly [number, number, number],
): number {
  const step = Math.max(1, Math.floor(places.length / 500));
  const labs: [number, number, number][] = [];
  for (let n = 0; n < places.length; n += step) {
    const at = 3 * places[n];
    labs.push(linearToLab65(even[at] / paper[0], even[at + 1] / paper[1], even[at + 2] / paper[2]));
  }
  const quarters = [1, 2].map((axis) => {
    const sorted = labs.map((lab) => lab[axis]).sort((p, q) => p - q);
    const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))];
    return at(0.75) - at(0.25);
  });
  return Math.max(...quarters);
}
