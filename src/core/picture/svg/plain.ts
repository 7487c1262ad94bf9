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
