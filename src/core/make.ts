import { parseHex } from './colour/hex.js';
import { decideBeads } from './decide-beads.js';
import type { BeadWish } from './decide-beads.js';
import { RondureError, warning } from './errors.js';
import type { Warning } from './errors.js';
import { acrossMm, roundsForAcross } from './geometry/edge.js';
import { panelFootprints } from './geometry/footprints.js';
import { panelGeometry } from './geometry/panel.js';
import { maskOfStitches, saysNothing } from './importance/mask.js';
import type { Mask } from './importance/mask.js';
import { letterBeads, roundStrings } from './lettering.js';
import { mistakenWarnings } from './mistaken.js';
import type { Pattern, PatternPicture, Place } from './pattern/schema.js';
import type { Picture } from './picture.js';
import { decideArt } from './sampling/art.js';
import { evenPaper } from './sampling/paper.js';
import { placePicture } from './sampling/place.js';
import type { PlaceWish } from './sampling/place.js';
import { samplePanel } from './sampling/sample.js';
import { completeShape, shapeWarnings } from './shape.js';
import type { Shape, ShapeWish } from './shape.js';
import type { StockReport } from './stock/report.js';
import { thumbnailOf, thumbnailPng } from './thumbnail.js';

/** Pixels that a stitch keeps across when a large picture is reduced before it is sampled. */
const finestPxPerStitch = 16;
/** Pixels from which a picture is large; smaller ones are sampled as they are. */
const largePx = 4_000_000;

/** Share of lost lines from which the maker is told. */
const thinLinesFrom = 0.3;

/** Everything one panel is made from. */
export interface PanelWish extends BeadWish {
  /** The picture, upright. */
  picture: Picture;
  /** File name kept in the pattern. */
  pictureName: string;
  /** 1 to 200 characters. */
  title: string;
  /** Without `rounds` when `acrossMm` is given. */
  shape: Omit<ShapeWish, 'rounds'> & { rounds?: number };
  /** Wished size across, millimetres: the nearest number of rounds is taken. */
  acrossMm?: number;
  /** Face angle of the start mark, clockwise from 12 o’clock; the rim's step at the top when absent. */
  startDegrees?: number;
  /** How the picture lies on the panel. */
  place: PlaceWish;
  /** `photo` keeps mean colours, `drawing` keeps outlines, `auto` decides. */
  art: 'auto' | 'photo' | 'drawing';
  /** The picture shows a drawing on paper: its light is evened out, its lines are strengthened. */
  paper?: boolean;
  /** What matters most, painted white on a picture laid like the main one. */
  mask?: Mask;
  /** Share that a clearly darker colour must cover to win a stitch of a drawing, 0 to 1. */
  darkCover?: number;
}

/** What a maker wants to know of the result, besides the pattern itself. */
export interface PanelReport {
  rounds: number;
  /** N·R(R+1)/2. */
  stitches: number;
  /** Stitches that carry a bead. */
  beads: number;
  /** Bead colours used. */
  colours: number;
  /** The largest number of colours that was allowed. */
  mostColours: number;
  /** Size of the finished panel, millimetres. */
  acrossMm: number;
  /**
   * Mean and largest CIEDE2000 of a stitch's colour in the picture and its bead, after tidying or
   * dithering; `choice.objective` is before.
   */
  meanDifference: number;
  worstDifference: number;
  /** Steps that the proof of the choice took. */
  proofSteps: number;
  art: 'photo' | 'drawing';
  /** Whether `art` was decided here, not asked for. */
  artDecided: boolean;
  warnings: Warning[];
  /** With `useStock`: what is taken from the jars. */
  stock?: StockReport;
}

/**
 * The main job: a picture and a palette in, a whole pattern out. Pure: the same pixels give the
 * same bytes in every engine. `examples/` holds whole programs around it.
 *
 * @throws RondureError `shape-impossible`, `across-out-of-reach`, `polygon-needs-end-increase`,
 *   `nothing-to-bead`, and those of `chooseBeads`
 */
export function makePattern(wish: PanelWish): { pattern: Pattern; report: PanelReport } {
  const shape = shapeFor(wish);
  const geometry = panelGeometry(
    shape,
    wish.startDegrees === undefined ? {} : { startDegrees: wish.startDegrees },
  );
  const footprints = panelFootprints(geometry);
  const seen = wish.paper ? evenPaper(wish.picture) : wish.picture;
  const place = placePicture(wish.picture, geometry, wish.place);
  const background = backgroundHex(wish);
  const asSeen = { ...place, mmPerPixel: (place.mmPerPixel * wish.picture.width) / seen.width };
  const near = reducedForStitches(seen, asSeen, shape);
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
  const repeat = wish.place.repeat ?? false;
  const mask =
    wish.mask && maskOfStitches(wish.mask, wish.picture, { geometry, footprints, place });
  const panel = { geometry, footprints, colours, repeat, ...(mask && { mask }) };
  const chosen = decideBeads(wish, panel);
  const lettered = letterBeads(wish.beads, chosen.beadOf);
  const warnings = [...shapeWarnings(shape, wish.shape.beadDiameterMm), ...chosen.warnings];
  if (mask && saysNothing(mask))
    warnings.push(warning('mask-says-nothing', { name: wish.mask!.name }));
  for (const kept of wish.keep ?? []) {
    if (!lettered.order.includes(kept)) {
      warnings.push(warning('kept-bead-unused', { id: wish.beads[kept].id }));
    }
  }
  warnings.push(...mistakenWarnings(lettered.beads));
  const [first, second] = lettered.beads;
  if (colours.lostLines >= thinLinesFrom) {
    const percent = Math.round(100 * colours.lostLines);
    warnings.push(warning('thin-lines-lost', { percent }));
  } else if (!second)
    warnings.push(warning('one-colour-only', { letter: first.letter, name: first.name }));
  const pattern: Pattern = {
    format: 'rondure-pattern',
    version: 1,
    title: wish.title,
    shape,
    beads: lettered.beads,
    panels: [
      {
        name: 'front',
        startDegrees: geometry.startDegrees,
        picture: {
          ...pictureEntry(wish, art, background, place),
          thumbnail: thumbnailPng(thumbnailOf(near.picture)),
        },
        rounds: roundStrings(geometry, lettered.letterOf),
      },
    ],
    choice: chosen.choice,
  };
  const report: PanelReport = {
    rounds: shape.rounds,
    stitches: geometry.count,
    beads: chosen.beadOf.reduce((sum, index) => sum + (index >= 0 ? 1 : 0), 0),
    colours: lettered.beads.length,
    mostColours: wish.colours,
    acrossMm: acrossMm(shape),
    meanDifference: chosen.mean,
    worstDifference: chosen.worst,
    proofSteps: chosen.proofSteps,
    art,
    artDecided: wishedArt === 'auto',
    warnings,
    ...(chosen.stock && { stock: chosen.stock }),
  };
  return { pattern, report };
}

function shapeFor(wish: PanelWish): Shape {
  const { acrossMm: across } = wish;
  const first = completeShape({ ...wish.shape, rounds: wish.shape.rounds ?? 20 });
  if (across === undefined) return first;
  const rounds = roundsForAcross(first, across);
  const shape = { ...first, rounds };
  const got = acrossMm(shape);
  const perRound = acrossMm({ ...first, rounds: rounds + 1 }) - got;
  if (Math.abs(got - across) > perRound) {
    throw new RondureError('across-out-of-reach', {
      gotMm: across,
      leastMm: acrossMm({ ...first, rounds: 2 }),
      mostMm: acrossMm({ ...first, rounds: 80 }),
    });
  }
  return shape;
}

function backgroundHex(wish: PanelWish): string {
  return typeof wish.background === 'number' ? wish.beads[wish.background].hex : wish.background;
}

function pictureEntry(
  wish: PanelWish,
  art: 'photo' | 'drawing',
  background: string,
  place: PatternPicture['place'],
): Omit<PatternPicture, 'thumbnail'> {
  return {
    file: wish.pictureName,
    width: wish.picture.width,
    height: wish.picture.height,
    art,
    ...(wish.paper && { paper: true }),
    background,
    place,
  };
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
