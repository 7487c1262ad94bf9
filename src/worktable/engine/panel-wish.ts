import type { PanelWish } from '../../core/make.js';
import { swatchShape } from '../steps/panel/swatch-shape.js';
import { maskOf } from '../picture-in/minded.js';
import type { Picture } from '../../core/picture/picture.js';
import type { Piece, PiecePicture } from '../store/piece.js';

/** What the core makes a pattern from; undefined while there is no picture. */
export function panelWish(piece: Piece): PanelWish | undefined {
  const { picture, palette, wish, title } = piece;
  if (!picture) return undefined;
  const mask = maskOf(piece);
  const indexOf = (id: string) => palette.beads.findIndex((bead) => bead.id === id);
  const known = (ids: readonly string[]) => ids.map(indexOf).filter((index) => index >= 0);
  const { background, dither, tidy, shape, acrossMm, startDegrees } = wish;
  const behind = typeof background === 'string' ? background : indexOf(background.id);
  return {
    picture: picture.picture,
    pictureName: picture.name,
    title,
    beads: palette.beads,
    colours: wish.colours,
    shape: inOrder({
      ...shape,
      ...swatchShape(piece.swatch),
      beadDiameterMm: palette.diameterMm,
    }),
    ...(acrossMm !== undefined && { acrossMm }),
    ...(startDegrees !== undefined && { startDegrees }),
    place: wish.place,
    ...backOf(piece, indexOf),
    ...(wish.frame && { frame: wish.frame }),
    art: wish.art,
    ...(wish.paper && { paper: true }),
    darkCover: wish.darkCover,
    detail: wish.detail,
    edges: wish.edges,
    lift: wish.lift,
    ...(mask && { mask }),
    ...(wish.cutOut && { subject: 'plain' as const }),
    background: behind === -1 ? 'auto' : behind,
    keep: known(wish.keep),
    leaveOut: known(wish.leaveOut),
    proof: 'normal',
    ...(wish.useStock && { useStock: true }),
    ...(dither === undefined ? { tidy } : { dither }),
  };
}

/** The second panel; none where its picture or its bead is not there. */
function backOf(
  { wish, backPicture }: Piece,
  indexOf: (id: string) => number,
): Pick<PanelWish, 'back' | 'backPlace'> {
  const { back, backPlace } = wish;
  const place = backPlace && { backPlace };
  if (back === 'same') return { back, ...place };
  if (back === 'own') {
    if (!backPicture) return {};
    return { back: behind(backPicture), ...place };
  }
  const plain = back ? indexOf(back.id) : -1;
  return plain < 0 ? {} : { back: { plain } };
}

const behinds = new WeakMap<PiecePicture, { picture: Picture; pictureName: string }>();

/** The same object as long as the picture is the same: the engine looks at nothing else. */
function behind(picture: PiecePicture): { picture: Picture; pictureName: string } {
  let known = behinds.get(picture);
  if (!known) {
    known = { picture: picture.picture, pictureName: picture.name };
    behinds.set(picture, known);
  }
  return known;
}

/** The parts of a shape in the order in which the command line says them: a pattern keeps it. */
const shapeOrder = [
  ...['wedges', 'rounds', 'increase', 'lean', 'construction', 'hand', 'beadsFace', 'stitch'],
  ...['outline', 'stitchWidthMm', 'roundHeightMm', 'beadDiameterMm'],
] as readonly (keyof PanelWish['shape'])[];

export function inOrder(shape: PanelWish['shape']): PanelWish['shape'] {
  const said = shapeOrder.filter((key) => shape[key] !== undefined);
  return Object.fromEntries(said.map((key) => [key, shape[key]])) as PanelWish['shape'];
}
