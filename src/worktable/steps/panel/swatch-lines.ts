import { directionOf, naturalOutline } from '../../../core/panel/shape.js';
import type { Picture } from '../../../core/picture/picture.js';
import { unitPlaces } from '../../../core/swatch/model.js';
import { solvePhoto } from '../../../core/swatch/photo.js';
import type { Piece } from '../../store/piece.js';
import type { PointedBead, SwatchPhoto } from './pointed.js';
import { workedLike } from './worked-like.js';

/** Where the lines lie before anything is pulled: in the middle, over this share of the shorter side. */
const firstShare = 0.38;
const usualLean = 0.5;

/** The first bead of every wedge, in the last round and half way in, as the model has them. */
export function firstLines(
  piece: Piece,
  rounds: number,
  { width, height }: Picture,
): PointedBead[] {
  const worked = workedLike(piece, rounds);
  const outline = naturalOutline(worked.increase, usualLean);
  const place = unitPlaces({ ...worked, outline, lean: usualLean });
  const direction = directionOf(worked);
  const scale = (firstShare * Math.min(width, height)) / rounds;
  const at = (round: number, wedge: number): PointedBead => {
    const { angle, distance } = place(round, (wedge - 1) * round);
    const x = direction * distance * Math.sin(angle) * scale;
    const y = -distance * Math.cos(angle) * scale;
    return { round, wedge, at: [0.5 + x / width, 0.5 + y / height], pulled: false };
  };
  const half = Math.max(1, Math.round(rounds / 2));
  return Array.from({ length: worked.wedges }, (_, k) => [
    at(rounds, k + 1),
    at(half, k + 1),
  ]).flat();
}

/** A point on a photo is pulled to within so much of the photo's width. */
const offShare = 1 / 300;

/**
 * Lean, and with a ruler round height, by the lines that were pulled to their places.
 *
 * @throws RondureError those of `solvePhoto`
 */
export function solveLines(piece: Piece, photo: SwatchPhoto) {
  const { width, height } = photo.picture;
  const px = ([x, y]: readonly [number, number]): [number, number] => [x * width, y * height];
  const points = photo.beads
    .filter(({ pulled }) => pulled)
    .map(({ round, wedge, at }) => ({ round, wedge, x: px(at)[0], y: px(at)[1] }));
  const found = solvePhoto({
    worked: workedLike(piece, photo.rounds),
    centre: px(photo.centre),
    points,
    pixels: Math.max(1, width * offShare),
    ...(photo.ruler && {
      ruler: {
        from: px(photo.ruler.ends[0]),
        to: px(photo.ruler.ends[1]),
        mm: photo.ruler.mm,
        offMm: 0.5,
      },
    }),
  });
  const { lean, roundHeightMm, perspective, offPixels } = found;
  return {
    photo: { lean, ...(roundHeightMm && { roundHeightMm }) },
    measured: {
      photo: { file: photo.name.slice(0, 200), points: points.length + 1, perspective, offPixels },
    },
    warnings: found.warnings,
  };
}
