import { warning } from '../errors.js';
import type { Warning } from '../errors.js';
import { pictureFromPng } from '../picture/thumbnail.js';
import type { Pattern } from './pattern.js';

/** A warning for each panel whose thumbnail cannot be read: its comparison is left out. */
export function thumbnailWarnings({ panels }: Pick<Pattern, 'panels'>): Warning[] {
  return panels.flatMap(({ name, picture }) =>
    picture && !pictureFromPng(picture.thumbnail)
      ? [warning('thumbnail-damaged', { panel: panels.length > 1 ? name : undefined })]
      : [],
  );
}
