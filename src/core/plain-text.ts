/**
 * What no drawing and no terminal may get: control characters, halves of characters, line and
 * paragraph ends, marks that turn the writing around, and what XML 1.0 (2.2) forbids.
 */
const hidden = /[\p{Cc}\p{Cs}\u2028-\u202E\u2066-\u2069\uFFF9-\uFFFB\uFFFE\uFFFF]+/gu;

/** A title or name as it came in a file, made fit to be drawn and printed; mostly as it is. */
export function plainText(text: string): string {
  hidden.lastIndex = 0;
  return hidden.test(text) ? text.replace(hidden, ' ').replace(/ {2,}/g, ' ').trim() : text;
}
