import { RondureError } from '../../errors.js';
import { guardSvg } from './guard.js';
import { isPlain } from './plain.js';
import { findSvgRoot } from '../header/svg-root.js';
import type { SvgRoot } from '../header/svg-root.js';
import { declaredSize } from './size.js';
import type { SvgSize } from './size.js';

/** What the text of an SVG tells before it is drawn. */
export interface SvgVerdict {
  readonly root: SvgRoot;
  /** The shape and extent that the root declares; undefined when it declares none. */
  readonly size: SvgSize | undefined;
  /** True for a short drawing of plain shapes, which is drawn at once. */
  readonly plain: boolean;
}

/**
 * Judges an SVG by its text, before it is drawn: what would eat the machine is refused, and the
 * root is found. Takes a time in proportion to the text.
 *
 * @param name of the file, for the sentences
 * @throws RondureError 'file-too-big', 'svg-entities', 'svg-nested', 'svg-pictures-too-large',
 *   'picture-damaged'
 */
export function judgeSvg(text: string, name: string): SvgVerdict {
  guardSvg(text, name);
  const root = findSvgRoot(text);
  if (root === undefined || root === 'unfinished')
    throw new RondureError('picture-damaged', { name, format: 'svg', detail: 'no-svg-element' });
  return { root, size: declaredSize(root), plain: isPlain(text) };
}
