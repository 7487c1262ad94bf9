import { bare, undecided } from './bead.js';
import type { Bead, BeadOfStitch } from './bead.js';
import { chooseBeads } from './choice/choose.js';
import { parseHex } from './colour/hex.js';
import { ciede2000 } from './colour/ciede2000.js';
import { hexToLab65, linearToLab65 } from './colour/lab.js';
import { RondureError, warning } from './errors.js';
import type { Warning } from './errors.js';
import { acrossMm, roundsForAcross } from './geometry/edge.js';
import { panelFootprints } from './geometry/footprints.js';
import { panelGeometry } from './geometry/panel.js';
import type { PanelGeometry } from './geometry/panel.js';
import { bareMark, letters, undecidedMark } from './pattern/schema.js';
import type { Pattern, PatternBead, PatternPicture, Place } from './pattern/schema.js';
import type { Picture } from './picture.js';
import { decideArt } from './sampling/art.js';
import { evenPaper } from './sampling/paper.js';
import { placePicture } from './sampling/place.js';
import type { PlaceWish } from './sampling/place.js';
import { samplePanel } from './sampling/sample.js';
import type { StitchColours } from './sampling/sample.js';
import { completeShape, shapeWarnings, stitchesBefore, stitchesInRound } from './shape.js';
import type { Shape, ShapeWish } from './shape.js';
import { thumbnailOf, thumbnailPng } from './thumbnail.js';
import { millionth } from './units.js';

/** Pixels that a stitch keeps across when a large picture is reduced before it is sampled. */
const finestPxPerStitch = 16;
/** CIEDE2000 below which two beads are easily mixed up on the table (judged by eye on prints). */
const alikeBelow = 7;
/** Pixels from which a picture is large; smaller ones are sampled as they are. */
const largePx = 4_000_000;

/** Share of lost lines from which the maker is told. */
const thinLinesFrom = 0.3;

/** Everything one panel is made from. */
export interface PanelWish {
  picture: Picture;
  /** File name kept in the pattern. */
  pictureName: string;
  title: string;
  /** The maker's beads, in the order of their palette. */
  beads: readonly Bead[];
  /** Most colours, 1 to 24. */
  colours: number;
  /** Without `rounds` when `acrossMm` is given. */
  shape: Omit<ShapeWish, 'rounds'> & { rounds?: number };
  /** Wished size across, millimetres: the nearest number of rounds is taken. */
  acrossMm?: number;
  startDegrees?: number;
  place: PlaceWish;
  art: 'auto' | 'photo' | 'drawing';
  /** The picture shows a drawing on paper: its light is evened out, its lines are strengthened. */
  paper?: boolean;
  /** `#rrggbb`, or `bare`, or the palette index of a bead. */
  background: string | number;
  /** Palette indices that must be, or must not be, among the chosen beads. */
  keep?: readonly number[];
  leaveOut?: readonly number[];
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
    background: background === 'bare' ? 'bare' : parseHex(background)!,
  });
  const chosen = beadsFor(wish, colours);
  const lettered = letterBeads(wish.beads, chosen.beadOf);
  const warnings = shapeWarnings(shape, wish.shape.beadDiameterMm);
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
    meanDifference: chosen.choice.objective,
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

function beadsFor(wish: PanelWish, colours: StitchColours) {
  const count = colours.bare.length;
  const beaded: number[] = [];
  for (let s = 0; s < count; s++) if (!colours.bare[s]) beaded.push(s);
  if (beaded.length === 0) throw new RondureError('nothing-to-bead', undefined);
  const stitches = new Float64Array(3 * beaded.length);
  beaded.forEach((s, n) => {
    const [r, g, b] = colours.linear.subarray(3 * s, 3 * s + 3);
    stitches.set(linearToLab65(r, g, b), 3 * n);
  });
  const palette = new Float64Array(3 * wish.beads.length);
  wish.beads.forEach((one, index) => palette.set(one.lab, 3 * index));
  const keep = [...(wish.keep ?? [])];
  if (typeof wish.background === 'number' && !keep.includes(wish.background)) {
    keep.push(wish.background);
  }
  const result = chooseBeads({
    stitches,
    palette,
    most: wish.colours,
    keep,
    leaveOut: wish.leaveOut ?? [],
  });
  const beadOf: BeadOfStitch = new Int16Array(count).fill(bare);
  beaded.forEach((s, n) => (beadOf[s] = result.beadOf[n]));
  const choice = {
    objective: millionth(result.objective),
    lowerBound: millionth(result.lowerBound),
    gap: millionth(result.gap),
    proven: result.proven,
    method: result.method,
  };
  return { beadOf, choice, worst: result.worst };
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

/** Letters go by use, most used first; ties go to the lower place in the palette. */
export function letterBeads(palette: readonly Bead[], beadOf: BeadOfStitch) {
  const uses = new Map<number, number>();
  for (const index of beadOf) if (index >= 0) uses.set(index, (uses.get(index) ?? 0) + 1);
  const order = [...uses.keys()].sort((a, b) => uses.get(b)! - uses.get(a)! || a - b);
  const letterAt = new Map(order.map((index, rank) => [index, letters[rank]]));
  const letterOf = (s: number): string => {
    if (beadOf[s] === bare) return bareMark;
    return beadOf[s] === undecided ? undecidedMark : letterAt.get(beadOf[s])!;
  };
  return { order, beads: order.map((index, n) => patternBead(palette[index], n)), letterOf };
}

function patternBead(from: Bead, rank: number): PatternBead {
  const { lab: _lab, filled: _filled, ...kept } = from;
  return { letter: letters[rank], ...kept };
}

export function roundStrings(geometry: PanelGeometry, letterOf: (s: number) => string): string[] {
  const { shape } = geometry;
  return Array.from({ length: shape.rounds }, (_, index) => {
    const first = stitchesBefore(shape, index + 1);
    const inRound = stitchesInRound(shape, index + 1);
    return Array.from({ length: inRound }, (_, i) => letterOf(first + i)).join('');
  });
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
