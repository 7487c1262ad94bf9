import type { PanelGeometry } from '../../panel/geometry.js';
import { stitchesBefore, stitchesInRound } from '../../panel/shape.js';
import { normalised, rimOf } from './rim.js';
import type { Rim } from './rim.js';

/** Stitches of one round that stand in a row, numbered from 1 in working order, both included. */
export interface StitchRun {
  /** First stitch, from 1. */
  readonly from: number;
  /** Last stitch, from 1. */
  readonly to: number;
}

/** The part of a panel that lies in the frame. */
export interface FrameStretch {
  readonly rim: Rim;
  /** First and last stitch of the last round in it, from 0, with the work; `first` may be greater. */
  readonly first: number;
  readonly last: number;
  /** Stitches of the last round in it. */
  readonly stitches: number;
  /** What they take up along the rim, millimetres. */
  readonly lengthMm: number;
  /** Whether a stitch of the panel, by its number in working order, lies between the hinges. */
  holds(stitch: number): boolean;
}

/**
 * Which part of the rim lies in the frame: as long as wished, the same length on both sides of
 * 12 o'clock. A stitch of any round belongs to it when its centre lies, by angle on the bead
 * face, between the two ends.
 *
 * @returns undefined when the wish is longer than the rim
 */
export function frameStretch(geometry: PanelGeometry, wishMm: number): FrameStretch | undefined {
  const { shape, direction, centres } = geometry;
  const rim = rimOf(geometry);
  if (!(wishMm < rim.lengthMm)) return undefined;
  const before = rim.angleAt(rim.topMm - wishMm / 2) - rim.topAngle;
  const after = rim.angleAt(rim.topMm + wishMm / 2) - rim.topAngle;
  // Rounded, so that a centre that lies just on an end counts the same in every engine.
  const [from, to] = [before - 1e-7, after + 1e-7];
  const holds = (s: number): boolean => {
    const angle = direction * Math.atan2(centres[2 * s], -centres[2 * s + 1]);
    const away = normalised(angle - rim.topAngle);
    return [away, away - 2 * Math.PI, away + 2 * Math.PI].some((one) => one >= from && one <= to);
  };
  const held = heldIn(geometry, shape.rounds, holds);
  const first = held.findIndex((one, i) => one && !held.at(i - 1));
  if (first < 0) return undefined;
  const stitches = held.filter((one) => one).length;
  const last = (first + stitches - 1) % rim.stitches;
  return { rim, first, last, stitches, lengthMm: lengthOf(rim, first, last), holds };
}

/** The stitches of a round that a stretch holds, as runs in working order. */
export function runsInRound(
  geometry: PanelGeometry,
  r: number,
  holds: (stitch: number) => boolean,
): StitchRun[] {
  return runsOfHeld(heldIn(geometry, r, holds));
}

/** Runs of true, numbered from 1. */
export function runsOfHeld(held: readonly boolean[]): StitchRun[] {
  const runs: { from: number; to: number }[] = [];
  held.forEach((one, i) => {
    if (!one) return;
    if (i > 0 && held[i - 1]) runs[runs.length - 1].to = i + 1;
    else runs.push({ from: i + 1, to: i + 1 });
  });
  return runs;
}

/** Of every stitch of round r, whether it is held. */
export function heldIn(
  { shape }: Pick<PanelGeometry, 'shape'>,
  r: number,
  holds: (stitch: number) => boolean,
): boolean[] {
  const start = stitchesBefore(shape, r);
  return Array.from({ length: stitchesInRound(shape, r) }, (_, i) => holds(start + i));
}

/** Along the rim from the border before one stitch to the border after another, with the work. */
export function lengthOf(rim: Rim, first: number, last: number): number {
  const length = rim.borderMm(last + 1) - rim.borderMm(first);
  return first <= last ? length : length + rim.lengthMm;
}
