import type { Picture } from '../../core/picture/picture.js';

const spares = new WeakMap<Picture, Picture['data']>();

/** Keeps a second copy of a picture's pixels, for another thread. */
export const keepSpare = (picture: Picture, data: Picture['data']): void =>
  void spares.set(picture, data);

/** The second copy, to be given away; undefined where it has been. */
export function takeSpare(picture: Picture): Picture['data'] | undefined {
  const data = spares.get(picture);
  spares.delete(picture);
  return data;
}
