import { srgbToLab65 } from '../../colour/lab.js';
import { refuseOtherShape } from '../importance/mask.js';
import type { Mask } from '../importance/mask.js';
import type { Picture } from '../picture.js';
import { subjectOf } from '../subject.js';

/** A picture whose ground was to be taken away. */
export interface CutOutPicture {
  readonly picture: Picture;
  /** Whether there was a ground to take away; otherwise the picture is the one given. */
  readonly cut: boolean;
}

/**
 * Takes the ground away, so that what lies under the picture shows: the plain one, or what a painted
 * mask leaves black. Transparent pixels stay so.
 *
 * @param by `plain`, or a mask laid like the picture: white on the subject
 * @throws RondureError `mask-shape-differs`
 */
export function cutOut(picture: Picture, by: 'plain' | Mask): CutOutPicture {
  if (by === 'plain') {
    const subject = subjectOf(picture);
    if (subject.ground !== 'plain') return { picture, cut: false };
    const { width, height, mask } = subject;
    return { picture: through(picture, { width, height, share: (p) => mask[p] }), cut: true };
  }
  refuseOtherShape(by, picture);
  const { width, height, data } = by.picture;
  const share = (p: number): number => {
    const [L] = srgbToLab65(data[4 * p], data[4 * p + 1], data[4 * p + 2]);
    return (data[4 * p + 3] / 255) * Math.min(1, L / 100);
  };
  return { picture: through(picture, { width, height, share }), cut: true };
}

/** The picture seen through a stencil with more or fewer pixels, drawn out between their middles. */
function through(
  { width, height, data }: Picture,
  stencil: { width: number; height: number; share: (p: number) => number },
): Picture {
  const shares = Float64Array.from({ length: stencil.width * stencil.height }, (_, p) =>
    stencil.share(p),
  );
  const out = new Uint8Array(data);
  for (let y = 0; y < height; y++) {
    const v = within(((y + 0.5) * stencil.height) / height - 0.5, stencil.height);
    const [top, down] = [Math.floor(v), v - Math.floor(v)];
    const below = Math.min(top + 1, stencil.height - 1);
    for (let x = 0; x < width; x++) {
      const u = within(((x + 0.5) * stencil.width) / width - 0.5, stencil.width);
      const [left, along] = [Math.floor(u), u - Math.floor(u)];
      const right = Math.min(left + 1, stencil.width - 1);
      const row = (r: number): number => {
        const [one, other] = [shares[r * stencil.width + left], shares[r * stencil.width + right]];
        return one + along * (other - one);
      };
      const share = row(top) + down * (row(below) - row(top));
      const at = 4 * (y * width + x) + 3;
      out[at] = Math.round(share * data[at]);
    }
  }
  return { width, height, data: out };
}

function within(at: number, size: number): number {
  return Math.min(size - 1, Math.max(0, at));
}
