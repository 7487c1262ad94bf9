import { roundOfStitch, stitchesBefore, stitchesInRound } from '../panel/shape.js';
import type { Shape } from '../panel/shape.js';

type Rounded = Pick<Shape, 'wedges' | 'rounds'>;

/** Where a stitch lies: round and wedge from 1, its place inside the wedge from 0. */
export interface StitchPlace {
  readonly round: number;
  readonly wedge: number;
  readonly inWedge: number;
}

/** @param s number of the stitch in working order, from 0 */
export function placeOfStitch(shape: Rounded, s: number): StitchPlace {
  const round = roundOfStitch(shape, s);
  const i = s - stitchesBefore(shape, round);
  const before = Math.floor(i / round);
  return { round, wedge: before + 1, inWedge: i - before * round };
}

/** The stitch at a place, from 0 in working order. */
export function stitchAtPlace(shape: Rounded, { round, wedge, inWedge }: StitchPlace): number {
  return stitchesBefore(shape, round) + (wedge - 1) * round + inWedge;
}

/** Every stitch of a round. */
export function stitchesOfRound(shape: Rounded, round: number): number[] {
  const first = stitchesBefore(shape, round);
  return Array.from({ length: stitchesInRound(shape, round) }, (_, i) => first + i);
}

/** Every stitch of a wedge, from the centre to the rim. */
export function stitchesOfWedge(shape: Rounded, wedge: number): number[] {
  return Array.from({ length: shape.rounds }, (_, n) => n + 1).flatMap((round) =>
    Array.from({ length: round }, (_, inWedge) => stitchAtPlace(shape, { round, wedge, inWedge })),
  );
}

/** The stitches that lie in every wedge where this one lies in its own, the wedges in order. */
export function inEveryWedge(shape: Rounded, s: number): number[] {
  const { round, inWedge } = placeOfStitch(shape, s);
  return Array.from({ length: shape.wedges }, (_, n) =>
    stitchAtPlace(shape, { round, wedge: n + 1, inWedge }),
  );
}

/** The next stitch of the same round, or so many further on; round and round. */
export function alongRound(shape: Rounded, s: number, by: number): number {
  const round = roundOfStitch(shape, s);
  const first = stitchesBefore(shape, round);
  const many = stitchesInRound(shape, round);
  return first + ((((s - first + by) % many) + many) % many);
}

/**
 * The stitch one round farther out (or in) at the same share of the same wedge; the stitch itself
 * at the rim or in round 1. Out and in again comes back to the same stitch.
 */
export function acrossRounds(shape: Rounded, s: number, way: 'out' | 'in'): number {
  const { round, wedge, inWedge } = placeOfStitch(shape, s);
  const to = way === 'out' ? round + 1 : round - 1;
  if (to < 1 || to > shape.rounds) return s;
  const place = Math.floor(((2 * inWedge + 1) * to) / (2 * round));
  return stitchAtPlace(shape, { round: to, wedge, inWedge: place });
}
