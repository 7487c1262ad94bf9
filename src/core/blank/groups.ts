import { median } from '../median.js';
import { chooseBeads } from '../beads/choice/choose.js';
import { ciede2000Fast } from '../colour/ciede2000.js';
import { lab65ToLinear, linearToLab65 } from '../colour/lab.js';

export type Lab = readonly [number, number, number];

/** Cells that were coloured alike, and the bead they stand for. */
export interface ColourGroup {
  /** Middle of what was read, L, a, b. */
  readonly colour: Lab;
  /** Median difference (CIEDE2000) of its cells from that. */
  readonly spread: number;
  /** Palette index, and the next nearest bead of the palette. */
  readonly bead: number;
  readonly next: number | undefined;
  /** CIEDE2000 from the middle to the bead (with grains of paper, and what they count). */
  readonly difference: number;
}

const difference = (p: Lab, q: Lab) => ciede2000Fast(p[0], p[1], p[2], q[0], q[1], q[2]);

/** Groups nearer than this are one (under 2 is hard to see; crayons vary more than print). */
const leastApart = 3;
/**
 * Two halves of one normal heap, cut in the middle, lie 1.33 times the sum of their deviations
 * apart: √(2/π) / √(1 - 2/π), the moments of the half-normal distribution; halves of an even
 * spread √3. Small and lopsided heaps come out up to 2 (by trial).
 */
const oneHeap = 2.2;
/** Groups are found from this many cells, and their first middles among this many of them. */
const mostCells = 3000;
const mostMiddles = 160;
/** A wish for beads of their own is worth this much difference to two groups. */
const ownBeadWorth = 6;

/**
 * Puts coloured cells into at most `most` groups and finds a bead for each. The cells' own colours
 * are the palette from which twice as many middles are chosen; groups then settle, and those that
 * are one heap, or too many, are joined.
 *
 * @param colours L, a, b of each clearly coloured cell
 * @param palette L, a, b of each bead, length 3·P
 */
export function groupColours(
  colours: readonly Lab[],
  palette: Float64Array,
  most: number,
): ColourGroup[] {
  const some = every(colours, mostCells);
  const seen = Float64Array.from(some.flat());
  const own = Float64Array.from(every(some, mostMiddles).flat());
  const { chosen } = chooseBeads({ stitches: seen, palette: own, most: 2 * most });
  let middles = chosen.map((m): Lab => [own[3 * m], own[3 * m + 1], own[3 * m + 2]]);
  let of: number[] = [];
  for (let turn = 0; turn < 3; turn++) ({ of, middles } = settled(some, middles));
  for (;;) {
    const pair = pairToJoin(some, of, middles, middles.length > most);
    if (!pair) break;
    of = of.map((g) => (g === pair[1] ? pair[0] : g));
    of = of.map((g) => (g > pair[1] ? g - 1 : g));
    middles = middlesOf(some, of, middles.length - 1);
    ({ of, middles } = settled(some, middles));
  }
  return withBeads(some, of, middles, palette);
}

/** At most `most` of a list, evenly spread over it. */
function every<T>(list: readonly T[], most: number): T[] {
  const step = Math.max(1, list.length / most);
  return Array.from(
    { length: Math.floor(list.length / step) },
    (_, n) => list[Math.floor(n * step)],
  );
}

function middlesOf(colours: readonly Lab[], of: readonly number[], count: number): Lab[] {
  return Array.from({ length: count }, (_, g) => {
    const own = colours.filter((__, n) => of[n] === g);
    return [0, 1, 2].map((c) => median(own.map((one) => one[c]))) as unknown as Lab;
  });
}

/** Every cell goes to the nearest middle; groups that end empty are dropped. */
function settled(colours: readonly Lab[], middles: readonly Lab[]) {
  const nearest = colours.map((one) => nearestOf(one, middles)[0]);
  const left = [...new Set(nearest)].sort((p, q) => p - q);
  const of = nearest.map((g) => left.indexOf(g));
  return { of, middles: middlesOf(colours, of, left.length) };
}

/** Index of the nearest colour, and its difference. */
export function nearestOf(one: Lab, among: readonly Lab[]): [index: number, difference: number] {
  let best = 0;
  let least = Infinity;
  among.forEach((other, g) => {
    const d = difference(one, other);
    if (d < least) [best, least] = [g, d];
  });
  return [best, least];
}

/** The pair that most looks like one heap cut in two, if any does; the likest when one must go. */
function pairToJoin(
  colours: readonly Lab[],
  of: readonly number[],
  middles: readonly Lab[],
  must: boolean,
): [number, number] | undefined {
  let found: [number, number] | undefined;
  let least = must ? Infinity : 1;
  const members = middles.map((_, g) => colours.filter((__, n) => of[n] === g));
  for (let p = 0; p < middles.length; p++) {
    for (let q = p + 1; q < middles.length; q++) {
      const apart = difference(middles[p], middles[q]);
      const axis = middles[p].map((v, c) => middles[q][c] - v);
      const length = Math.hypot(...axis);
      const wide = deviation(members[p], axis, length) + deviation(members[q], axis, length);
      const heap = apart < 14 ? length / (oneHeap * wide) : Infinity;
      const score = Math.min(apart / leastApart, heap);
      if (score < least) [found, least] = [[p, q], score];
    }
  }
  return found;
}

/** Standard deviation along an axis, L, a, b. */
function deviation(members: readonly Lab[], axis: readonly number[], length: number): number {
  const along = members.map((m) => (m[0] * axis[0] + m[1] * axis[1] + m[2] * axis[2]) / length);
  const mean = along.reduce((sum, v) => sum + v, 0) / along.length;
  return Math.sqrt(along.reduce((sum, v) => sum + (v - mean) ** 2, 0) / along.length);
}

/** How a bead's colour looks when only a part of the paper takes it. */
const coverings = [1, 0.9, 0.8, 0.7, 0.6, 0.5];
/** What a tenth of bare paper counts, so that a plain match is preferred. */
const perTenth = 1;

/**
 * Crayons leave grains of paper white: a group is compared with every bead as it would look when
 * it covers all, nine tenths, … or half of the paper.
 *
 * @param palette L, a, b of each bead
 * @returns for each group and bead the least difference
 */
function differences(middles: readonly Lab[], palette: Float64Array): number[][] {
  const looks = Array.from({ length: palette.length / 3 }, (_, b) => {
    const light = lab65ToLinear(palette[3 * b], palette[3 * b + 1], palette[3 * b + 2]);
    return coverings.map((cover) => {
      const [red, green, blue] = light.map((v) => 1 - cover + cover * v);
      return linearToLab65(red, green, blue);
    });
  });
  return middles.map((middle) =>
    looks.map((look) => Math.min(...look.map((one, k) => difference(middle, one) + k * perTenth))),
  );
}

function withBeads(
  colours: readonly Lab[],
  of: readonly number[],
  middles: readonly Lab[],
  palette: Float64Array,
): ColourGroup[] {
  const table = differences(middles, palette);
  const pairs = table.flatMap((row, group) => {
    const nearest = Math.min(...row);
    return row
      .map((d, index) => ({ group, index, d }))
      .filter(({ d }) => d <= nearest + ownBeadWorth);
  });
  pairs.sort((p, q) => p.d - q.d || p.group - q.group || p.index - q.index);
  const beadOf = new Map<number, number>();
  const taken = new Set<number>();
  for (const { group, index } of pairs) {
    if (beadOf.has(group) || taken.has(index)) continue;
    beadOf.set(group, index);
    taken.add(index);
  }
  return middles.map((colour, group) => {
    const row = table[group];
    const bead = beadOf.get(group) ?? row.indexOf(Math.min(...row));
    const others = pairs.filter((p) => p.group === group && p.index !== bead);
    const own = colours.filter((_, n) => of[n] === group);
    return {
      colour,
      spread: median(own.map((one) => difference(one, colour))),
      bead,
      next: others[0]?.index,
      difference: row[bead],
    };
  });
}
