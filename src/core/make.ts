import { bare, undecided } from './bead.js';
import type { Bead, BeadOfStitch } from './bead.js';
import { chooseBeads } from './choice/choose.js';
import { parseHex } from './colour/hex.js';
import { linearToLab65 } from './colour/lab.js';
import { RondureError, warning } from './errors.js';
import type { Warning } from './errors.js';
import { acrossMm, roundsForAcross } from './geometry/edge.js';
import { panelFootprints } from './geometry/footprints.js';
import { panelGeometry } from './geometry/panel.js';
import type { PanelGeometry } from './geometry/panel.js';
import { bareMark, letters, undecidedMark } from './pattern/schema.js';
import type { Pattern, PatternBead, PatternPicture } from './pattern/schema.js';
import type { Picture } from './picture.js';
import { decideArt } from './sampling/art.js';
import { placePicture } from './sampling/place.js';
import type { PlaceWish } from './sampling/place.js';
import { samplePanel } from './sampling/sample.js';
import type { StitchColours } from './sampling/sample.js';
import { completeShape, shapeWarnings, stitchesBefore, stitchesInRound } from './shape.js';
import type { Shape, ShapeWish } from './shape.js';
import { thumbnailOf, thumbnailPng } from './thumbnail.js';

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
  const art = wish.art === 'auto' ? decideArt(wish.picture).art : wish.art;
  const place = placePicture(wish.picture, geometry, wish.place);
  const background = backgroundHex(wish);
  const colours = samplePanel({
    picture: wish.picture,
    geometry,
    footprints,
    place,
    art,
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
  const [first, second] = lettered.beads;
  if (!second)
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
        picture: pictureEntry(wish, art, background, place),
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
    artDecided: wish.art === 'auto',
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
    objective: sixDecimals(result.objective),
    lowerBound: sixDecimals(result.lowerBound),
    gap: sixDecimals(result.gap),
    proven: result.proven,
    method: result.method,
  };
  return { beadOf, choice, worst: result.worst };
}

function sixDecimals(value: number): number {
  return Math.round(value * 1e6) / 1e6;
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
): PatternPicture {
  return {
    file: wish.pictureName,
    width: wish.picture.width,
    height: wish.picture.height,
    art,
    background,
    thumbnail: thumbnailPng(thumbnailOf(wish.picture)),
    place,
  };
}
