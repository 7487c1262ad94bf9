import type { ColouredPanel } from '../beads/decide-beads.js';
import { bareUnderFrame } from '../purse/frame/plan.js';
import type { Lay } from '../panel/lay.js';
import { maskOfStitches } from './importance/mask.js';
import type { Mask } from './importance/mask.js';
import type { PatternPicture } from '../pattern/pattern.js';
import type { Place } from './sampling/place.js';
import { cutOff } from './cut-off.js';
import type { CutOff } from './cut-off.js';
import { openPicture } from './open-picture.js';
import type { OpenPicture } from './open-picture.js';
import type { Picture } from './picture.js';
import { remembered, rememberedSteps } from '../remember.js';
import { drain } from '../steps.js';
import type { Steps } from '../steps.js';
import { placePicture, placeWithoutSubject } from './sampling/place.js';
import type { LaidPicture, SampleHow } from './sampling/sample-stitches.js';
import { sampleStitches, samplingStitches } from './sampling/sample-stitches.js';
import type { StitchColours } from './sampling/sample.js';
import type { LostLines } from './sampling/thin.js';
import type { Shape } from '../panel/shape.js';
import { cutOut } from './standing/cut-out.js';
import type { GroundBead } from './standing/ground-bead.js';
import { hullOf } from './standing/hull.js';
import { groundOf } from './standing/stand.js';
import type { Subject } from './subject.js';
import { keepLines } from './lines/keep-lines.js';
import { liftTone } from './tone/lift.js';
import type { PanelWish } from '../wish.js';

/** Pixels that a stitch keeps across when a large picture is reduced before it is sampled. */
const finestPxPerStitch = 16;
/** Share of hatching from which a drawing is taken as a photograph is (.5 in an engraving, .2 at most in 20 other drawings). */
const hatchedFrom = 0.35;
/** Pixels from which a picture is large; smaller ones are sampled as they are. */
const largePx = 4_000_000;

/** A picture that goes on a panel. */
export interface PictureSource {
  readonly picture: Picture;
  /** File name kept in the pattern. */
  readonly pictureName: string;
  readonly mask?: Mask | undefined;
  /** What is cut out of it, before anything else. */
  readonly subject?: 'plain' | Mask | undefined;
}

/** What of a wish has a say in the colours of the stitches. */
export type PictureWish = Pick<
  PanelWish,
  | 'place'
  | 'art'
  | 'paper'
  | 'darkCover'
  | 'background'
  | 'beads'
  | 'leaveOut'
  | 'frame'
  | 'lift'
  | 'edges'
>;

/** How a picture came to stand where it does. */
export interface Standing {
  /** Place as it was carried out: `subject` only where one was told from its ground. */
  readonly place: 'subject' | 'fit' | 'fill' | 'inside';
  /** What told the subject from its ground, where it was looked for. */
  readonly ground?: 'clear' | 'plain' | 'none';
  /** The bead chosen for the ground of a cut-out. */
  readonly chosen?: GroundBead;
  /** Where a subject was to be cut out: whether there was a ground to take away. */
  readonly cut?: boolean;
}

/** A panel with its picture on it. */
export interface PicturePanel {
  /** Its stitches at once, for `Charting.follow`: light to 1e-11, thin lines not kept. */
  followed(): ColouredPanel;
  /** Its stitches for a pattern; thin lines are kept, where edges are (see lines/). */
  settled(): Steps<ColouredPanel>;
  /** What the maker's mask adds to each stitch. */
  readonly mask?: Float64Array;
  /** What the pattern remembers of the picture, its thumbnail apart. */
  readonly entry: Omit<PatternPicture, 'thumbnail'>;
  /** The picture's small copy for the pattern, a PNG in base64; made when it is asked for. */
  thumbnail(): string;
  /** What was done with it where the wish left that open. */
  readonly standing: Standing;
  /** Share of its lines that are thinner than a bead. */
  lostLines(): LostLines;
  /** Share of a repeated drawing's stitches that hold several colours; 0 where it does not repeat. */
  mixed(): number;
  /** How much of what is its own, not its ground, does not show; worked out when it is asked for. */
  cutOff(): CutOff;
}

/**
 * Makes what lays a picture on a panel and takes the colour of every stitch from it. It remembers
 * its last panel: what a change does not touch is the very same object again.
 *
 * @returns a function that throws RondureError `mask-shape-differs`
 */
export function makePicturePanel(): (
  wish: PictureWish,
  lay: Lay,
  source: PictureSource,
) => PicturePanel {
  const cutOutOf = remembered(cutOut);
  const open = remembered(openPicture);
  const underFrame = remembered(bareUnderFrame);
  const quickly = remembered(sampleStitches);
  const ways = {
    photo: rememberedSteps(samplingStitches),
    drawing: rememberedSteps(samplingStitches),
  };
  const sampled = (lay: Lay, laid: LaidPicture, how: SampleHow): Steps<StitchColours> =>
    ways[how.art](lay, laid, how);
  const maskOf = remembered(maskOfStitches);
  const linedOf = rememberedSteps(keepLines);
  const [followed, settled] = [makeColoured(), makeColoured()];
  const ground = remembered(
    (
      background: PictureWish['background'],
      beads: PictureWish['beads'],
      leaveOut: PictureWish['leaveOut'],
      subject: Subject | undefined,
    ) => groundOf({ background, beads, leaveOut }, () => subject!),
  );
  const hullFor = remembered((subject: Subject, size: { width: number; height: number }) =>
    subject.ground === 'none' ? undefined : hullOf(subject.reach ?? subject.mask, subject, size),
  );
  const placed = remembered(placePicture);

  return (wish, lay, source) => {
    const { pictureName, mask } = source;
    const cut = source.subject && cutOutOf(source.picture, source.subject);
    const picture = cut?.picture ?? source.picture;
    const opened = open(picture);
    const { paper = false, darkCover } = wish;
    const framed = wish.frame && underFrame(wish.frame, lay.geometry);
    const bySubject = wish.place.place === 'subject' && !wish.place.repeat;
    const subject =
      bySubject || wish.background === 'auto' ? opened.subjectOf(opened.seen(paper)) : undefined;
    const size = { width: picture.width, height: picture.height };
    const hull = bySubject ? hullFor(subject!, size) : undefined;
    const place = placed(size, lay.geometry, wish.place, { hull, bare: framed });
    const { background, chosen } = ground(wish.background, wish.beads, wish.leaveOut, subject);
    const near = nearPicture(opened, paper, place, lay.geometry.shape);
    const wished = paper ? 'drawing' : wish.art;
    const laid = { picture: near, uprightWidth: picture.width, place };
    const common = { paper, darkCover, background, sparing: (wish.edges ?? 0) > 0 };
    /** A drawing whose hatching is finer than its stitches is tones to the eye, where edges count. */
    const decided = (): 'photo' | 'drawing' => {
      const seen = opened.artOf(near);
      if (seen === 'photo' || !wish.edges) return seen;
      const drawn = drain(sampled(lay, laid, { art: seen, ...common }));
      return drawn.hatched() >= hatchedFrom ? 'photo' : seen;
    };
    const art = wished === 'auto' ? decided() : wished;
    const how = { art, ...common };
    const exact = () => drain(sampled(lay, laid, how));
    const taken = function* (): Steps<StitchColours> {
      const means = yield* sampled(lay, laid, how);
      return wish.edges ? yield* linedOf(means, lay, laid, how) : means;
    };
    // Where a frame bares stitches, the wedges no longer hold the same string.
    const repeat = (wish.place.repeat ?? false) && !framed?.includes(1);
    const masked = mask && maskOf(mask, picture, { lay, place });
    const { geometry, footprints } = lay;
    const placedOn = {
      geometry,
      footprints,
      repeat,
      ...(masked && { mask: masked }),
      ...(chosen && !chosen.light && { ground: chosen.bead }),
    };
    return {
      followed: () => {
        const atOnce = art === 'photo' ? quickly(lay, laid, { ...how, quick: true }) : exact();
        return followed(atOnce, wish, framed, placedOn);
      },
      *settled() {
        return settled(yield* taken(), wish, framed, placedOn);
      },
      ...(masked && { mask: masked }),
      entry: {
        file: pictureName,
        width: picture.width,
        height: picture.height,
        art,
        ...(wish.paper && { paper: true }),
        background,
        place,
      },
      standing: {
        place:
          wish.place.place === 'subject' && !hull
            ? placeWithoutSubject(wish.place)
            : wish.place.place,
        ...(subject && { ground: subject.ground }),
        ...(chosen && { chosen }),
        ...(cut && { cut: cut.cut }),
      },
      thumbnail: () => opened.thumbnailOf(near),
      lostLines: () => drain(taken()).lostLines(),
      mixed: () => (place.repeat ? exact().mixed() : 0),
      cutOff: () =>
        cutOff(opened.subjectOf(opened.seen(wish.paper ?? false)), size, {
          ...lay,
          place,
          underFrame: framed,
        }),
    };
  };
}

/** What is sampled: the picture as it is seen, a large one with no more pixels than stitches tell apart. */
function nearPicture(opened: OpenPicture, paper: boolean, place: Place, shape: Shape): Picture {
  const seen = opened.seen(paper);
  const mmPerPixel = (place.mmPerPixel * opened.picture.width) / seen.width;
  const mostPx = mostPxFor(seen, mmPerPixel, shape);
  return mostPx === undefined ? seen : opened.reduced(paper, mostPx);
}

/** Makes what makes a panel of the colours that were taken: lifted, and without beads under the frame. */
function makeColoured() {
  const lifted = remembered(liftTone);
  const bared = remembered(withBare);
  const panelOf = remembered((panel: ColouredPanel) => panel);
  return (
    taken: StitchColours,
    { beads, lift = 0 }: Pick<PictureWish, 'beads' | 'lift'>,
    framed: Uint8Array | undefined,
    placedOn: Omit<ColouredPanel, 'colours'>,
  ): ColouredPanel => panelOf({ ...placedOn, colours: bared(lifted(taken, beads, lift), framed) });
}

/** The colours of a panel of which a frame bares some stitches more. */
function withBare(colours: StitchColours, framed: Uint8Array | undefined): StitchColours {
  return framed ? { ...colours, bare: colours.bare.map((one, s) => one || framed[s]) } : colours;
}

/**
 * To how many pixels at most the longer side of a large picture is reduced: a stitch keeps at least
 * `finestPxPerStitch` pixels across, so that what is lost is far below a bead. Undefined where the
 * picture is taken as it is.
 */
function mostPxFor(picture: Picture, mmPerPixel: number, shape: Shape): number | undefined {
  const stitchMm = Math.min(shape.stitchWidthMm, shape.roundHeightMm);
  const reduceBy = Math.floor(stitchMm / mmPerPixel / finestPxPerStitch);
  if (reduceBy < 2 || picture.width * picture.height < largePx) return undefined;
  return Math.max(512, Math.ceil(Math.max(picture.width, picture.height) / reduceBy));
}
