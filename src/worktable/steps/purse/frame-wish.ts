import { acrossMm } from '../../../core/panel/edge.js';
import type { Frame } from '../../../core/purse/frame/measures.js';
import { roundsForFrame, usualRatio } from '../../../core/purse/frame/plan.js';
import type { Piece } from '../../store/piece.js';
import { shapeOf, withRounds } from '../panel/shape-wish.js';

/** Height over width of a frame that is not measured yet (no source: measure yours). */
const usualHeights = { 'half-round': 0.5, squared: 0.45, oval: 0.55 } as const;
/** Between the hinges of an oval frame over its width, as wide as lets a panel hang without a waist (no source). */
const usualHinges = 0.92;

/** The piece with its frame wished otherwise; none where undefined. */
export function framed(now: Piece, frame: Frame | undefined): Piece {
  return { ...now, wish: { ...now.wish, frame } };
}

/** Another kind of frame: as wide and fixed as the one before, or as suits the panel. */
export function withKind(now: Piece, kind: Frame['kind'] | undefined): Piece {
  if (!kind) return framed(now, undefined);
  const before = now.wish.frame;
  const widthMm = before?.widthMm ?? Math.round(acrossMm(shapeOf(now)) / usualRatio);
  return framed(now, {
    kind,
    widthMm,
    heightMm: Math.round(widthMm * usualHeights[kind]),
    ...(kind === 'oval' && { hingeWidthMm: Math.round(widthMm * usualHinges) }),
    fixing: before?.fixing ?? 'sewn',
    ratio: usualRatio,
    gatherPercent: 0,
    ...(before?.bareRounds !== undefined && { bareRounds: before.bareRounds }),
  });
}

/** The frame with some of its measures changed. */
export function measured(now: Piece, part: Partial<Frame>): Piece {
  const { frame } = now.wish;
  return frame ? framed(now, { ...frame, ...part }) : now;
}

/**
 * As many rounds as the frame asks for.
 *
 * @throws RondureError `frame-out-of-reach`
 */
export function fitted(now: Piece): Piece {
  const { frame, startDegrees } = now.wish;
  return frame ? withRounds(now, roundsForFrame(frame, shapeOf(now), startDegrees)) : now;
}
