import { srgbToLinear } from '../../colour/srgb.js';
import type { Picture } from '../picture.js';
import type { Coverage } from './coverage.js';
import { visibleShare } from './means.js';
import { samePixel } from './runs.js';

/** Colours are gathered in 16 steps a channel, each standing for its first colour met. */
const shades = 16 * 16 * 16;
const shadeOf = (r: number, g: number, b: number): number => ((r >> 4) << 8) | (g & 240) | (b >> 4);
/** Colours nearer than this are one colour; black and white are 765 apart. */
const oneColour = 90;

/** Shades that count as one colour; it bears that of its heaviest: r, g, b, 0 to 255. */
export interface Group {
  readonly r: number;
  readonly g: number;
  readonly b: number;
  /** Area, pixels. */
  weight: number;
}

/** The colours that lie under a footprint. */
export interface Shades {
  /**
   * Takes what a coverage shows, instead of what was taken before.
   *
   * @param runs see runs.ts
   */
  gather(coverage: Coverage, pixels: Picture['data'], runs?: Uint16Array): void;
  /** Takes an area of one more colour, pixels. */
  add(r: number, g: number, b: number, area: number): void;
  /** All that was taken, pixels. */
  visible(): number;
  /** Its colours in groups, the one with the heaviest shade first; the same list every time. */
  groups(): readonly Group[];
  /** Linear r, g, b of a group's mean, into `colour`. One colour in is exactly that colour out. */
  meanOf(group: number, colour: Float64Array): void;
}

export function makeShades(): Shades {
  /** Place of each shade in the lists below, and 1 more; 0 for those not met. */
  const placeOf = new Uint16Array(shades);
  /** By place: the shade, its first colour met as 0xrrggbb, the group that it joins. */
  const shadeAt = new Uint16Array(shades);
  const firstOf = new Int32Array(shades);
  const groupOf = new Int32Array(shades);
  /** Area, and that area's light beyond that of the first colour. */
  const weights = new Float64Array(shades);
  const beyond = new Float64Array(3 * shades);
  /** The areas without the last digits, which depend on the order of adding: ties stay ties. */
  const rounded = new Float64Array(shades);
  /** The places in order of weight. */
  const order = new Uint16Array(shades);
  let count = 0;
  const groups: Group[] = [];
  /** All that was taken, pixels. Lists hold numbers that change often: a closure boxes each anew. */
  const visible = new Float64Array(1);

  /** The place of a colour's shade, which is new where it was not met before. */
  function placeFor(colour: number): number {
    const shade = shadeOf(colour >> 16, (colour >> 8) & 255, colour & 255);
    const known = placeOf[shade];
    if (known > 0) return known - 1;
    const at = count++;
    placeOf[shade] = count;
    shadeAt[at] = shade;
    firstOf[at] = colour;
    weights[at] = beyond[3 * at] = beyond[3 * at + 1] = beyond[3 * at + 2] = 0;
    return at;
  }

  /** Heaviest shade first, ties by number. There are few: each is put in its place. */
  function inOrderOfWeight(): void {
    for (let n = 0; n < count; n++) {
      const weight = Math.round(weights[n] * 1e9) / 1e9;
      rounded[n] = weight;
      let at = n;
      for (; at > 0; at--) {
        const before = order[at - 1];
        if (rounded[before] > weight) break;
        if (rounded[before] === weight && shadeAt[before] < shadeAt[n]) break;
        order[at] = before;
      }
      order[at] = n;
    }
  }

  return {
    gather({ count: coveredRuns, pixel, length, area }, data, runs) {
      for (let n = 0; n < count; n++) placeOf[shadeAt[n]] = 0;
      count = 0;
      let seen = 0;
      /** What was taken last: its colour as 0xrrggbb, its place, that one's first colour, and its light beyond it. */
      let colour = -1;
      let at = -1;
      let first = -1;
      let red = 0;
      let green = 0;
      let blue = 0;
      for (let n = 0; n < coveredRuns; n++) {
        const own = area[n];
        let p = pixel[n];
        const stop = p + length[n];
        while (p < stop) {
          const from = p;
          const byte = 4 * p;
          if (stop - p === 1) p = stop;
          else if (runs) p = Math.min(stop, p + runs[p]);
          else for (p++; p < stop && samePixel(data, from, p);) p++;
          const alpha = data[byte + 3];
          if (alpha === 0) continue;
          const next = (data[byte] << 16) | (data[byte + 1] << 8) | data[byte + 2];
          if (next !== colour) {
            colour = next;
            at = placeFor(colour);
            first = firstOf[at];
            if (first !== colour) {
              red = srgbToLinear[colour >> 16] - srgbToLinear[first >> 16];
              green = srgbToLinear[(colour >> 8) & 255] - srgbToLinear[(first >> 8) & 255];
              blue = srgbToLinear[colour & 255] - srgbToLinear[first & 255];
            }
          }
          const weight = (p - from) * (alpha === 255 ? own : own * visibleShare[alpha]);
          seen += weight;
          weights[at] += weight;
          if (first === colour) continue;
          beyond[3 * at] += weight * red;
          beyond[3 * at + 1] += weight * green;
          beyond[3 * at + 2] += weight * blue;
        }
      }
      visible[0] = seen;
    },
    add(r, g, b, weight) {
      const at = placeFor((r << 16) | (g << 8) | b);
      const first = firstOf[at];
      visible[0] += weight;
      weights[at] += weight;
      beyond[3 * at] += weight * (srgbToLinear[r] - srgbToLinear[first >> 16]);
      beyond[3 * at + 1] += weight * (srgbToLinear[g] - srgbToLinear[(first >> 8) & 255]);
      beyond[3 * at + 2] += weight * (srgbToLinear[b] - srgbToLinear[first & 255]);
    },
    visible: () => visible[0],
    groups() {
      inOrderOfWeight();
      groups.length = 0;
      // Each joins the nearest group near enough or founds one.
      for (let n = 0; n < count; n++) {
        const at = order[n];
        const first = firstOf[at];
        const r = first >> 16;
        const g = (first >> 8) & 255;
        const b = first & 255;
        const group = nearestGroup(r, g, b, groups, oneColour);
        groupOf[at] = group < 0 ? groups.length : group;
        if (group < 0) groups.push({ r, g, b, weight: rounded[at] });
        else groups[group].weight += rounded[at];
      }
      return groups;
    },
    meanOf(group, colour) {
      const { r, g, b } = groups[group];
      const r0 = srgbToLinear[r];
      const g0 = srgbToLinear[g];
      const b0 = srgbToLinear[b];
      let weight = 0;
      let red = 0;
      let green = 0;
      let blue = 0;
      for (let n = 0; n < count; n++) {
        const at = order[n];
        if (groupOf[at] !== group) continue;
        const first = firstOf[at];
        const own = weights[at];
        weight += own;
        red += own * (srgbToLinear[first >> 16] - r0) + beyond[3 * at];
        green += own * (srgbToLinear[(first >> 8) & 255] - g0) + beyond[3 * at + 1];
        blue += own * (srgbToLinear[first & 255] - b0) + beyond[3 * at + 2];
      }
      colour[0] = r0 + red / weight;
      colour[1] = g0 + green / weight;
      colour[2] = b0 + blue / weight;
    },
  };
}

/**
 * The nearest group to a colour within a distance, by the eye's rough weights 2, 4, 3; -1 when none
 * is, and the first of several alike.
 */
export function nearestGroup(
  r: number,
  g: number,
  b: number,
  groups: readonly Group[],
  within = Infinity,
): number {
  let best = -1;
  let least = within * within;
  for (let k = 0; k < groups.length; k++) {
    const dr = r - groups[k].r;
    const dg = g - groups[k].g;
    const db = b - groups[k].b;
    const distance = 2 * dr * dr + 4 * dg * dg + 3 * db * db;
    if (distance < least) {
      least = distance;
      best = k;
    }
  }
  return best;
}
