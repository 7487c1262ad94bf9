import { RondureError } from '../errors.js';
import { pictureFromPng, thumbnailOf, thumbnailPng } from '../picture/thumbnail.js';
import type { Picture } from '../picture/picture.js';
import type { Mask } from '../picture/importance/mask.js';
import { millionth } from '../units.js';
import type { PanelWish } from '../wish.js';
import type { MakerWish } from './wished.js';

/**
 * What a pattern keeps of the wish that it was made from: every choice of the maker that is not
 * derived. Palette and pictures are handed over again by whoever goes on from it; a mask is kept as
 * a small copy.
 */
export function makerWish(wish: PanelWish): MakerWish {
  const { beads, mask, back, darkCover, background, frame } = wish;
  const ids = (indices: readonly number[] | undefined) => indices?.map((index) => beads[index].id);
  const kept = {
    colours: wish.colours,
    shape: shapeKept(wish),
    place: wish.place,
    backPlace: wish.backPlace,
    art: wish.art,
    paper: wish.paper,
    inkPercent: darkCover === undefined ? undefined : millionth(100 * darkCover),
    detail: wish.detail,
    edges: wish.edges,
    lift: wish.lift,
    mask: mask && painted(mask),
    subject: typeof wish.subject === 'object' ? painted(wish.subject) : wish.subject,
    back: back === undefined ? undefined : backKept(back, beads),
    background: typeof background === 'number' ? { bead: beads[background].id } : background,
    keep: ids(wish.keep),
    leaveOut: ids(wish.leaveOut),
    proof: wish.proof,
    useStock: wish.useStock,
    tidy: wish.tidy,
    dither: wish.dither,
    bareRounds: frame?.bareRounds,
  };
  return withoutGaps(kept) as MakerWish;
}

/** A size across goes before rounds. */
function shapeKept({ shape, acrossMm, startDegrees }: PanelWish) {
  const rounds = acrossMm === undefined ? shape.rounds : undefined;
  return { ...shape, rounds, acrossMm, startDegrees };
}

/** Small copies of masks, made once for as long as the mask lives. */
const smallCopies = new WeakMap<Picture, string>();

function smallCopyOf({ picture }: Mask): string {
  const known = smallCopies.get(picture);
  if (known !== undefined) return known;
  const made = thumbnailPng(thumbnailOf(picture));
  smallCopies.set(picture, made);
  return made;
}

const painted = (mask: Mask) => ({ file: mask.name, thumbnail: smallCopyOf(mask) });

/**
 * A mask or a painted subject that a wish kept, from its small copy.
 * @throws RondureError `picture-damaged`
 */
export function paintedOf(kept: MakerWish['mask']): Mask | undefined {
  if (!kept) return undefined;
  const { file: name, thumbnail } = kept;
  const picture = pictureFromPng(thumbnail);
  if (!picture) throw new RondureError('picture-damaged', { name, format: 'png', detail: '' });
  return { picture, name };
}

function backKept(
  back: NonNullable<PanelWish['back']>,
  beads: PanelWish['beads'],
): MakerWish['back'] {
  if (back === 'same') return back;
  return 'plain' in back ? { plain: beads[back.plain].id } : { file: back.pictureName };
}

/** The same without keys that say nothing: undefined, false, empty lists. */
function withoutGaps(value: object): object {
  const said = Object.entries(value).filter(
    ([, one]) => one !== undefined && one !== false && !(Array.isArray(one) && one.length === 0),
  );
  const inside = (one: unknown): unknown =>
    typeof one === 'object' && one !== null && !Array.isArray(one) ? withoutGaps(one) : one;
  return Object.fromEntries(said.map(([key, one]) => [key, inside(one)]));
}
