import { parseHex } from './colour/hex.js';
import type { ColouredPanel } from './decide-beads.js';
import { bareUnderFrame } from './frame/plan.js';
import { panelFootprints } from './geometry/footprints.js';
import type { PanelGeometry } from './geometry/panel.js';
import { maskOfStitches } from './importance/mask.js';
import type { Mask } from './importance/mask.js';
import type { PanelWish } from './make.js';
import type { PatternPicture, Place } from './pattern/schema.js';
import type { Picture } from './picture.js';
import { decideArt } from './sampling/art.js';
import { evenPaper } from './sampling/paper.js';
import { placePicture } from './sampling/place.js';
import { samplePanel } from './sampling/sample.js';
import type { Shape } from './shape.js';
import { thumbnailOf, thumbnailPng } from './thumbnail.js';

/** Pixels that a stitch keeps across when a large picture is reduced before it is sampled. */
const finestPxPerStitch = 16;
/** Pixels from which a picture is large; smaller ones are sampled as they are. */
const largePx = 4_000_000;

/** A picture that goes on a panel. */
export interface PictureSource {
  readonly picture: Picture;
  /** File name kept in the pattern. */
  readonly pictureName: string;
  readonly mask?: Mask | undefined;
}

/** A panel with its picture on it. */
export interface PicturePanel {
  readonly panel: ColouredPanel;
  /** What the pattern remembers of the picture. */
  readonly entry: PatternPicture;
  /** Share of its lines that are thinner than a bead. */
  readonly lostLines: number;
}

/**
 * Lays a picture on a panel and takes the colour of every stitch from it.
 *
 * @param wish how the picture lies and is treated
 * @throws RondureError `mask-shape-differs`
 */
export function picturePanel(
  wish: Pick<PanelWish, 'place' | 'art' | 'paper' | 'darkCover' | 'background' | 'beads' | 'frame'>,
  geometry: PanelGeometry,
  { picture, pictureName, mask }: PictureSource,
): PicturePanel {
  const footprints = panelFootprints(geometry);
  const seen = wish.paper ? evenPaper(picture) : picture;
  const place = placePicture(picture, geometry, wish.place);
  const background = backgroundHex(wish);
  const asSeen = { ...place, mmPerPixel: (place.mmPerPixel * picture.width) / seen.width };
  const near = reducedForStitches(seen, asSeen, geometry.shape);
  const wishedArt = wish.paper ? 'drawing' : wish.art;
  const art = wishedArt === 'auto' ? decideArt(near.picture).art : wishedArt;
  const colours = samplePanel({
    ...near,
    geometry,
    footprints,
    art,
    ...(wish.paper && { paper: true }),
    ...(wish.darkCover !== undefined && { darkCover: wish.darkCover }),
    background: background === 'bare' ? 'bare' : parseHex(background)!,
  });
  const underFrame = wish.frame && bareUnderFrame(wish.frame, geometry);
  underFrame?.forEach((one, s) => (colours.bare[s] ||= one));
  // Where a frame bares stitches, the wedges no longer hold the same string.
  const repeat = (wish.place.repeat ?? false) && !underFrame?.includes(1);
  const masked = mask && maskOfStitches(mask, picture, { geometry, footprints, place });
  return {
    panel: { geometry, footprints, colours, repeat, ...(masked && { mask: masked }) },
    entry: {
      file: pictureName,
      width: picture.width,
      height: picture.height,
      art,
      ...(wish.paper && { paper: true }),
      background,
      place,
      thumbnail: thumbnailPng(thumbnailOf(near.picture)),
    },
    lostLines: colours.lostLines,
  };
}

function backgroundHex({ background, beads }: Pick<PanelWish, 'background' | 'beads'>): string {
  return typeof background === 'number' ? beads[background].hex : background;
}

/**
 * A large picture with no more pixels than the stitches can tell apart, and its place: a stitch
 * keeps at least `finestPxPerStitch` pixels across, so that what is lost is far below a bead.
 */
function reducedForStitches(picture: Picture, place: Place, shape: Shape) {
  const stitchMm = Math.min(shape.stitchWidthMm, shape.roundHeightMm);
  const reduceBy = Math.floor(stitchMm / place.mmPerPixel / finestPxPerStitch);
  if (reduceBy < 2 || picture.width * picture.height < largePx) return { picture, place };
  const longer = Math.max(picture.width, picture.height);
  const reduced = thumbnailOf(picture, Math.max(512, Math.ceil(longer / reduceBy)));
  const mmPerPixel = (place.mmPerPixel * picture.width) / reduced.width;
  return { picture: reduced, place: { ...place, mmPerPixel } };
}
