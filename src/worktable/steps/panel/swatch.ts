import { defaultSize, sizeOf } from '../../../core/beads/palette/sizes.js';
import { solveSwatch } from '../../../core/swatch/solve.js';
import type { SwatchWish } from '../../../core/swatch/solve.js';
import type { Piece } from '../../store/piece.js';
import type { SwatchForm } from './swatch-form.js';
import { solveLines } from './swatch-lines.js';
import type { SwatchPhoto } from './pointed.js';
import { workedLike } from './worked-like.js';

/** Degrees that a protractor is read to, and millimetres that a ruler is; as on the command line. */
const [protractorDegrees, rulerMm] = [3, 0.5];

/**
 * Works out the stitch from the form, and from the lines on a photo where there are some, for the way in
 * which the piece is worked. A turn that was measured by hand gives way to the lines.
 */
export function solveForm(form: SwatchForm, piece: Piece, lines?: SwatchPhoto) {
  const { palette } = piece;
  const size = sizeOf(palette.beads[0]?.size ?? defaultSize);
  const [low, high] = size.diameterRangeMm;
  const { rounds, lies, turnDegrees, turnWay, rimStitches, rimMm, threadMm, threadStitches } = form;
  const measured: SwatchWish['measured'] = {
    beadMm: palette.diameterMm,
    beadOffMm: Math.round((high - low) * 500) / 1000,
    ...(form.acrossMm !== undefined && { acrossMm: form.acrossMm }),
    ...(rimStitches !== undefined && rimMm !== undefined && { rimStitches, rimMm }),
    ...(turnDegrees !== undefined &&
      !lines && {
        turnDegrees: turnWay === 'with' ? turnDegrees : -turnDegrees,
        turnOffDegrees: protractorDegrees,
        fromRound: Math.min(2, rounds - 1),
        toRound: rounds,
        markedWedge: 1,
      }),
    ...(threadMm !== undefined && threadStitches !== undefined && { threadMm, threadStitches }),
    ...(form.fiftyBeadsMm !== undefined && { fiftyBeadsMm: form.fiftyBeadsMm }),
    rulerMm,
  };
  const seen = lines && solveLines(piece, lines);
  return solveSwatch({
    worked: workedLike(piece, rounds),
    lies,
    measured: { ...measured, ...seen?.measured },
    ...(seen && { photo: seen.photo }),
  });
}
