import { holeRadius } from '../../panel/edge.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { pairStart } from '../../panel/links.js';
import { stitchesBefore } from '../../panel/shape.js';
import { pillPerDigit } from './cells.js';
import type { PanelView } from './panel-view.js';

/** A round's number on the page; x, y is its middle. */
export interface RoundNumber {
  readonly round: number;
  readonly x: number;
  readonly y: number;
  /** Height of its digits, millimetres. */
  readonly digitMm: number;
}

/** A letter that makes room for a number. */
export interface MovedLetter {
  readonly x: number;
  readonly y: number;
  /** Its height as a share of other letters'; 0 where it has no room at all. */
  readonly share: number;
}

/** What stands along the start line: round numbers on it, letters that step aside beside it. */
export interface StartColumn {
  readonly numbers: readonly RoundNumber[];
  /** By stitch. */
  readonly letters: ReadonlyMap<number, MovedLetter>;
}

/** Digits smaller than this help nobody: then every fifth round has a larger number. */
const leastDigitMm = 1.15;
const fifthDigitMm = 1.4;
/** Letters of the start column keep at least this share of their height, if the number can shrink. */
const leastShare = 0.74;

/**
 * Places the round numbers on the border before each round's first stitch, so that no bead hides
 * under one, and moves the letters on both sides off it, each inside its own cell. The number of
 * round 1 stands in the hole.
 *
 * @param cellMm what a letter has to itself on the page
 * @param capMm height of the letters
 * @param letterMm width of a stitch's letter at that height
 * @param numberMm width of a number's pill at a height of its digits
 */
export function startColumn(
  { shape, centres, tilts }: PanelGeometry,
  { scale, centreX, centreY }: PanelView,
  cellMm: number,
  capMm: number,
  letterMm: (s: number) => number,
  numberMm: (round: number, digitMm: number) => number,
): StartColumn {
  const at = (s: number) => [
    centreX + scale * centres[2 * s],
    centreY + scale * centres[2 * s + 1],
  ];
  const wanted = Math.min(3, 0.44 * cellMm);
  const all = wanted >= leastDigitMm;
  const largest = all ? wanted : fifthDigitMm;
  const numbers: RoundNumber[] = [];
  const letters = new Map<number, MovedLetter>();
  for (let round = 1; round <= shape.rounds; round++) {
    if (!all && round % 5 > 0) continue;
    const first = stitchesBefore(shape, round);
    const [firstX, firstY] = at(first);
    if (round === 1) {
      // The first stitch of all has the least room: its number stands in the hole beside it.
      const digitMm = Math.min(largest, (1.3 * scale * holeRadius(shape)) / pillPerDigit);
      const reach = Math.hypot(firstX - centreX, firstY - centreY);
      const inner = reach - 0.29 * cellMm - 0.5 * pillPerDigit * digitMm - 0.05 * cellMm;
      const share = Math.max(0, inner) / reach;
      const x = centreX + share * (firstX - centreX);
      numbers.push({ round, x, y: centreY + share * (firstY - centreY), digitMm });
      letters.set(first, { x: firstX, y: firstY, share: 0.8 });
      continue;
    }
    const before = stitchBefore(shape, round);
    const [beforeX, beforeY] = at(before);
    const apart = Math.hypot(firstX - beforeX, firstY - beforeY);
    const [x, y] = [(firstX + beforeX) / 2, (firstY + beforeY) / 2];
    const [alongX, alongY] = [(firstX - beforeX) / apart, (firstY - beforeY) / apart];
    /** How far something upright reaches from its middle along the work. */
    const reach = (wide: number, high: number) =>
      (Math.abs(alongX) * wide + Math.abs(alongY) * high) / 2;
    const laid = (digitMm: number) => {
      const number = reach(numberMm(round, digitMm), pillPerDigit * digitMm);
      const room = apart - number - 0.085 * cellMm;
      const shareOf = (s: number) => Math.min(1, room / 2 / reach(letterMm(s), capMm));
      return { digitMm, number, shares: [shareOf(before), shareOf(first)] };
    };
    const tried = [1, 0.95, 0.9, 0.85].map((part) => laid(part * largest));
    const { digitMm, number, shares } =
      tried.find((one) => Math.min(...one.shares) >= leastShare) ?? tried.at(all ? -1 : 0)!;
    numbers.push({ round, x, y, digitMm });
    for (const [side, s] of [
      [-1, before],
      [1, first],
    ] as const) {
      const share = shares[side === -1 ? 0 : 1];
      const off = Math.max(apart / 2, number + 0.035 * cellMm + share * reach(letterMm(s), capMm));
      // A bar may join it to the stitch that it moves toward: it steps over the bar.
      const moved = off - apart / 2;
      const up = besideBar(shape, round, side) ? Math.min(0.12 * cellMm, moved) : 0;
      letters.set(s, {
        x: x + side * off * alongX + up * Math.sin(tilts[s]),
        y: y + side * off * alongY - up * Math.cos(tilts[s]),
        share: share < 0.5 ? 0 : share,
      });
    }
  }
  return { numbers, letters };
}

/** The stitch that lies before a round's first one: in a spiral the last of the round below. */
export function stitchBefore(shape: PanelGeometry['shape'], round: number): number {
  const first = stitchesBefore(shape, round);
  return shape.construction === 'spiral' && round > 1
    ? first - 1
    : first + shape.wedges * round - 1;
}

/** Whether the stitch on one side of the start line makes a doubled pair with the next one. */
function besideBar(shape: PanelGeometry['shape'], round: number, side: -1 | 1): boolean {
  const r = side === -1 && shape.construction === 'spiral' ? round - 1 : round;
  const pair = pairStart(shape, r);
  return pair !== undefined && pair === (side === 1 ? 0 : r - 2);
}
