import type { Picture } from '../picture.js';

/** Pixels of a picture up to which more than themselves is kept. */
const mostKeptPx = 4_000_000;

/**
 * Makes what works something out about a picture and keeps it as long as its pixels live, from the
 * second time that it is asked for: of a picture that is sampled once it costs more than it saves.
 * Undefined before, and for a picture too large.
 */
export function fromSecondTime<T>(
  make: (picture: Picture) => T,
): (picture: Picture) => T | undefined {
  const kept = new WeakMap<Picture['data'], { made?: T }>();
  return (picture) => {
    const { width, height, data } = picture;
    if (width * height > mostKeptPx) return undefined;
    const found = kept.get(data);
    if (!found) kept.set(data, {});
    else found.made ??= make(picture);
    return found?.made;
  };
}
