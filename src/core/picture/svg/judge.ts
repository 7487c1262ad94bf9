import { RondureError } from '../../errors.js';
import { guardSvg } from './guard.js';
import { findSvgRoot } from '../header/svg-root.js';
import type { SvgRoot } from '../header/svg-root.js';
import { declaredSize } from './size.js';
import type { SvgSize } from './size.js';

/** What the text of an SVG tells before it is drawn. */
export interface SvgVerdict {
  /** Its outermost element. */
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

/** Characters; within them nothing was found that takes more than a few seconds to draw. */
const plainLength = 4000;

/**
 * What can multiply or stack work: references, effects, repetition, groups that are drawn apart;
 * and escapes, behind which any of these could hide.
 */
const costly =
  /url\(|[&\\]|[<:](use|image|foreign|switch)|filter|pattern|mask|clip|marker|dash|blend|isolat|(?<!fill-|stroke-|stop-)opacity/i;

/**
 * True for a short SVG of plain shapes, which is drawn at once. Length alone promises nothing: a
 * path of 16,000 characters can take a minute, and so can 400 gradients one above the other.
 */
export function isPlain(svg: string): boolean {
  return svg.length <= plainLength && !costly.test(svg);
}
