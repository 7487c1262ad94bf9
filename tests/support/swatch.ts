import { solveSwatch } from '../../src/core/swatch/solve.js';
import type { Swatch } from '../../src/core/swatch/swatch.js';

/** A swatch of ten rounds of 11/0 beads, measured in every way. */
export function smallSwatch(): Swatch {
  return solveSwatch({
    worked: {
      wedges: 7,
      rounds: 10,
      increase: 'last',
      construction: 'spiral',
      hand: 'right',
      beadsFace: 'away',
    },
    lies: 'flat',
    measured: {
      beadMm: 2.1,
      beadOffMm: 0.05,
      acrossMm: 49,
      rimStitches: 23,
      rimMm: 50,
      turnDegrees: -14,
      turnOffDegrees: 2,
      fromRound: 2,
      toRound: 10,
      threadMm: 1000,
      threadStitches: 42,
      fiftyBeadsMm: 75,
      rulerMm: 0.5,
    },
  }).swatch;
}
