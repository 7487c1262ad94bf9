import { ciede2000 } from './colour/ciede2000.js';
import { parseHex } from './colour/hex.js';
import { hexToLab65 } from './colour/lab.js';
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
import type { Pattern, PatternBead, PatternPicture, Place } from './pattern/schema.js';
import type { Picture } from './picture.js';
import { decideArt } from './sampling/art.js';
import { evenPaper } from './sampling/paper.js';
import { placePicture } from './sampling/place.js';
import type { PlaceWish } from './sampling/place.js';
import { samplePanel } from './sampling/sample.js';
import { completeShape, shapeWarnings } from './shape.js';
import type { Shape, ShapeWish } from './shape.js';
import { thumbnailOf, thumbnailPng } from './thumbnail.js';

/** Pixels that a stitch keeps across when a large picture is reduced before it is sampled. */
const finestPxPerStitch = 16;
/** CIEDE2000 below which two beads are easily mixed up on the table (judged by eye on prints). */
const alikeBelow = 7;
/** Pixels from which a picture is large; smaller ones are sampled as they are. */
const largePx = 4_000_000;

/** Share of lost lines from which the maker is told. */
const thinLinesFrom = 0.3;

/** Everything one panel is made from. */
export interface PanelWish extends BeadWish {
  picture: Picture;
  /** File name kept in the pattern. */
  pictureName: string;
  title: string;
  /** Without `rounds` when `acrossMm` is given. */
  shape: Omit<ShapeWish, 'rounds'> & { rounds?: number };
  /** Wished size across, millimetres: the nearest number of rounds is taken. */
  acrossMm?: number;
  startDegrees?: number;
  place: PlaceWish;
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
  stitches: number;
  beads: number;
  colours: number;
  acrossMm: number;
  meanDifference: number;
  worstDifference: number;
  art: 'photo' | 'drawing';
  artDecided: boolean;
  warnings: Warning[];
}

/**
 * The main job: a picture and a palette in, a whole pattern out. Pure: the same pixels give the
 * same bytes in every engine.
 *
 * @throws RondureError `shape-impossible`, `across-out-of-reach`, `polygon-needs-end-increase`,
 *   and those of `decideBeads`
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
  const alike = beadsAlike(lettered.beads);
  if (alike) warnings.push(alike);
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
    acrossMm: acrossMm(shape),
    meanDifference: chosen.mean,
    worstDifference: chosen.worst,
    art,
    artDecided: wishedArt === 'auto',
    warnings,
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

/** A warning where two beads of a pattern are nearer than eyes part them at a glance. */
function beadsAlike(beads: readonly PatternBead[]): Warning | undefined {
  const labs = beads.map((bead) => hexToLab65(bead.hex));
  const pairs: { name: string; apart: number }[] = [];
  for (let b = 1; b < beads.length; b++) {
    for (let a = 0; a < b; a++) {
      const apart = ciede2000(...labs[a], ...labs[b]);
      if (apart < alikeBelow) pairs.push({ name: `${beads[a].letter}/${beads[b].letter}`, apart });
    }
  }
  if (pairs.length === 0) return undefined;
  pairs.sort((one, other) => one.apart - other.apart);
  const shown = pairs.slice(0, 6).map(({ name }) => name);
  return warning('beads-look-alike', { pairs: shown, more: pairs.length - shown.length });
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
