import { remembered } from '../remember.js';
import type { Picture } from './picture.js';
import { decideArt } from './sampling/art.js';
import { evenPaper } from './sampling/paper.js';
import { subjectOf } from './subject.js';
import type { Subject } from './subject.js';
import { thumbnailOf, thumbnailPng } from './thumbnail.js';

/**
 * A picture under work: what depends on its pixels alone, each made when it is first asked for, and
 * kept. The pixels must not change afterwards.
 */
export interface OpenPicture {
  /** As it was opened. */
  readonly picture: Picture;
  /** The same, or with its paper evened out; it may have fewer pixels. */
  seen(paper: boolean): Picture;
  /** What is seen, with its longer side reduced to at most so many pixels, in linear light. */
  reduced(paper: boolean, mostPx: number): Picture;
  /** What the pictures of `seen` and `reduced` show. */
  artOf(of: Picture): 'photo' | 'drawing';
  /** What of such a picture is its own, not its ground. */
  subjectOf(of: Picture): Subject;
  /** The PNG, in base64, that a pattern keeps of such a picture. */
  thumbnailOf(of: Picture): string;
}

/** Opens a picture. */
export function openPicture(picture: Picture): OpenPicture {
  const evened = remembered(() => evenPaper(picture));
  const seen = (paper: boolean): Picture => (paper ? evened() : picture);
  return {
    picture,
    seen,
    reduced: remembered((paper: boolean, mostPx: number) => thumbnailOf(seen(paper), mostPx)),
    artOf: remembered((of: Picture) => decideArt(of).art),
    subjectOf: remembered(subjectOf),
    thumbnailOf: remembered((of: Picture) => thumbnailPng(thumbnailOf(of))),
  };
}
