import { RondureError } from '../../errors.js';

/** A trade size of seed beads; lengths in millimetres. */
export interface BeadSize {
  /** As the trade writes it, for instance 11/0. */
  readonly name: string;
  /** Whether the bead is rounded or a straight piece of tube. */
  readonly shape: 'round' | 'cylinder';
  /** Outer diameter: the middle of what is sold, and its range. */
  readonly diameterMm: number;
  /** Smallest and largest outer diameter that is sold. */
  readonly diameterRangeMm: readonly [number, number];
  /** Length along the hole: what one bead takes up on the thread. */
  readonly lengthMm: number;
  /** Shortest and longest that is sold. */
  readonly lengthRangeMm: readonly [number, number];
  /** Diameter of the hole: the middle of what is sold. */
  readonly holeMm: number;
  /** Narrowest and widest hole that is sold. */
  readonly holeRangeMm: readonly [number, number];
  /** Beads that weigh a gram together: the middle of what is sold. */
  readonly beadsPerGram: number;
  /** Fewest and most of them. */
  readonly beadsPerGramRange: readonly [number, number];
}

type Row = [name: string, ...numbers: number[]];

/**
 * Trade table: common practice, no source; holes, and all of 11/0 cylinder, from memory and
 * unchecked. Charts differ by up to a quarter, so a palette may give its own figures.
 */
const table: readonly Row[] = [
  // name, diameter mid low high, length mid low high, hole mid low high, per gram mid low high
  ['15/0', 1.5, 1.3, 1.6, 1.1, 0.95, 1.15, 0.65, 0.5, 0.8, 275, 250, 350],
  ['13/0', 1.7, 1.5, 1.8, 1.15, 1.0, 1.25, 0.7, 0.6, 0.75, 235, 200, 300],
  ['11/0', 2.1, 1.8, 2.3, 1.5, 1.3, 1.7, 0.8, 0.7, 0.9, 110, 100, 125],
  ['11/0 cylinder', 1.65, 1.6, 1.8, 1.3, 1.2, 1.4, 0.8, 0.75, 0.9, 195, 180, 210],
  ['10/0', 2.25, 2.0, 2.4, 1.65, 1.5, 1.8, 0.9, 0.8, 1.0, 85, 75, 95],
  ['8/0', 3.05, 2.5, 3.2, 2.1, 1.9, 2.3, 1.1, 0.9, 1.4, 36, 34, 45],
  ['6/0', 4.0, 3.3, 4.5, 2.9, 2.6, 3.3, 1.5, 1.2, 1.7, 14, 11, 16],
];

/** The sizes we know, smallest bead first but for the cylinder. */
export const beadSizes: readonly BeadSize[] = table.map(([name, ...n]) => ({
  name,
  shape: name.endsWith('cylinder') ? 'cylinder' : 'round',
  diameterMm: n[0],
  diameterRangeMm: [n[1], n[2]],
  lengthMm: n[3],
  lengthRangeMm: [n[4], n[5]],
  holeMm: n[6],
  holeRangeMm: [n[7], n[8]],
  beadsPerGram: n[9],
  beadsPerGramRange: [n[10], n[11]],
}));

/** The size that nothing else decides. */
export const defaultSize = '11/0';

/** `11/0`, `11`, `11o`, `11°`, `11-0`, `size 11/0 round`, `11/0 cylinder`: the size, if we know it. */
export function findSize(text: string): BeadSize | undefined {
  const words = text
    .trim()
    .toLowerCase()
    .replace(/^size\s*/, '');
  const parts = /^(\d{1,2})\s*(?:[/-]\s*[0o]|[o°º])?\s*(round|cylinder|cyl\.?)?$/.exec(words);
  if (!parts) return undefined;
  const name = `${Number(parts[1])}/0${parts[2]?.startsWith('cyl') ? ' cylinder' : ''}`;
  return beadSizes.find((size) => size.name === name);
}

/**
 * The name of a trade size as we write it: `11o` becomes `11/0`.
 * @throws RondureError `size-unknown`, with the sizes known
 */
export function parseSize(text: string): string {
  const size = findSize(text);
  if (size) return size.name;
  throw new RondureError('size-unknown', {
    got: text.slice(0, 40),
    known: beadSizes.map(({ name }) => name),
  });
}

/** The table's row of a size named as in `parseSize`. @throws RondureError `size-unknown` */
export function sizeOf(text: string): BeadSize {
  const name = parseSize(text);
  return beadSizes.find((size) => size.name === name) as BeadSize;
}
