import type { Mask } from '../../core/picture/importance/mask.js';
import { paintedMask } from '../../core/picture/importance/painted-mask.js';
import type { BrushPull } from '../../core/picture/importance/painted-mask.js';
import type { Picture } from '../../core/picture/picture.js';
import type { Piece } from '../store/piece.js';

let last: { pulls: readonly BrushPull[]; of: Picture; mask: Mask } | undefined;

/** What was brushed over as a mask, the same object as long as nothing of it changes. */
export function maskOf({ minded, picture }: Pick<Piece, 'minded' | 'picture'>): Mask | undefined {
  if (!minded || minded.length === 0 || !picture) return undefined;
  const of = picture.picture;
  if (last?.pulls === minded && last.of === of) return last.mask;
  const before = last?.of === of ? { pulls: last.pulls, picture: last.mask.picture } : undefined;
  const mask = { picture: paintedMask(minded, of, before), name: 'brushed' };
  last = { pulls: minded, of, mask };
  return mask;
}
