import { alphaBlocks, alphaInWindow } from './alpha-blocks.js';
import { lightUnderAll } from './edge-light.js';
import type { EdgeLight } from './edge-light.js';
import { srgbToLinear } from '../../colour/srgb.js';
import { cornerRadius } from '../../panel/edge.js';
import { drain } from '../../steps.js';
import type { Steps } from '../../steps.js';
import type { Footprints } from '../../panel/footprints.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { ringList } from '../../panel/ring-list.js';
import type { RingList } from '../../panel/ring-list.js';
import { clipToConvex, ringArea } from '../../panel/rings.js';
import type { Ring } from '../../panel/rings.js';
import type { Place } from './place.js';
import type { Picture } from '../picture.js';
import { makeCoverage } from './coverage.js';
import type { Coverage } from './coverage.js';
import { makeDrawingChooser } from './drawing.js';
import { flattenedOn } from './flatten.js';
import type { LostLines } from './thin.js';
import type { StitchLight } from './drawing.js';
import { meanUnder, visibleUnder } from './means.js';
import { makePaperChooser, strengthenLines } from './paper-lines.js';
import { panelToPicture } from './place.js';
import { rotation } from './plane.js';
import { isKnownOpaque, lightSums } from './row-sums.js';
import { pixelRuns, pixelSquares, sameInWindow } from './runs.js';
import {
  hatchedStitches,
  keepInk,
  keepThinLines,
  lostLines,
  makeInks,
  mixedStitches,
} from './thin.js';
import { cellRing, cellsInWedge, inEveryWedge, neighbourCells } from './repeat.js';

/** What the picture shows where each stitch lies, in working order. */
export interface StitchColours {
  /** Linear red, green, blue of each stitch, 0 to 1; length 3·count. */
  readonly linear: Float64Array;
  /** The picture's own, where `linear` was lifted (see tone/). */
  readonly own?: Float64Array;
  /** Share of the footprint that lies under visible picture, 0 to 1, half-transparent counting half. */
  readonly covered: Float64Array;
  /** 1 where the background is bare and the picture covers less than half. */
  readonly bare: Uint8Array;
  /** Share of a drawing's lines that are too thin to be seen, 0 to 1 (see thin.ts). */
  lostLines(kept?: Uint8Array): LostLines;
  /** Share of a drawing's stitches that hold several colours (see thin.ts). */
  mixed(): number;
  /** Share of these that lies among its like (see thin.ts). */
  hatched(): number;
}

/** Stitches that are laid out, or sampled, in one step at most; and about how many pixels are sampled. */
const aStep = 256;
const pixelsAStep = 65_536;

const noLines: LostLines = { share: 0, stroke: 0 };

/** What `samplePanel` needs. */
export interface SampleInput {
  /** The pixels to take colours from. */
  picture: Picture;
  /** Where the stitches lie. */
  geometry: PanelGeometry;
  /** Which part of the panel each of them owns. */
  footprints: Footprints;
  /** Where the picture lies on the panel, by its own pixels. */
  place: Place;
  /** `photo` takes the mean under a stitch, `drawing` the colour that wins it. */
  art: 'photo' | 'drawing';
  /** The picture is a drawing on paper, evened out (see paper.ts). */
  paper?: boolean;
  /**
   * What lies outside the picture and under its transparent parts: r, g, b from 0 to 255, or
   * nothing. With `bare` colours are those of the covered part alone, white where there is none.
   */
  background: readonly [number, number, number] | 'bare';
  /** See drawing.ts. */
  darkCover?: number;
  /** Outlines of a drawing are left out where an edge stands without them (see thin.ts). */
  sparing?: boolean;
  /** Photographs at once, but for rounding (see edge-light.ts). */
  quick?: boolean;
}

/**
 * Samples the picture under every stitch, in linear light and exactly over the footprint. For a
 * repeat the cells of one wedge are sampled and all wedges are the same.
 */
export function samplePanel(input: SampleInput): StitchColours {
  return drain(samplingPanel(input));
}

/** The same in steps. */
export function* samplingPanel(input: SampleInput): Steps<StitchColours> {
  const { geometry, footprints, place, background } = input;
  const { shape, direction } = geometry;
  const repeat = place.repeat === true;
  const count = repeat ? cellsInWedge(shape.rounds) : geometry.count;
  const linear = new Float64Array(3 * count);
  const covered = new Float64Array(count);
  const sample = areaSampler(input);
  const inks = input.art === 'drawing' ? makeInks(count) : undefined;
  const keep = (s: number, rings: RingList, first: number, end: number): void => {
    covered[s] = sample(rings, first, end);
    for (let c = 0; c < 3; c++) linear[3 * s + c] = sample.colour[c];
    if (inks) keepInk(inks, s, sample.choice);
  };
  if (repeat) {
    const cells: Ring[] = [];
    for (let r = 1; r <= shape.rounds; r++) {
      for (let j = 0; j < r; j++) cells.push(cellRing(shape, direction, r, j));
    }
    const rings = ringList(cells);
    for (let cell = 0; cell < count; cell++) keep(cell, rings, cell, cell + 1);
  } else {
    // The loops are functions of their own: one that gives way is slower.
    const prepare = (from: number, to: number): void => {
      for (let s = from; s < to; s++) footprints.rings(s);
    };
    for (let from = 0; from < count; from += aStep) {
      prepare(from, Math.min(count, from + aStep));
      yield { stage: 'colours' };
    }
    const square = squareAround(geometry, place);
    const all = footprints.all();
    const quick = input.quick && input.art === 'photo' ? quickLight(input) : undefined;
    const keepWithin = (s: number): void => {
      const own = footprints.rings(s);
      const cut = own.map((ring) => withinSquare(ring, square));
      if (cut.every((ring, p) => ring === own[p])) return;
      const part = ringList(cut);
      if (sample(part, 0, cut.length) >= 0 && sample.inside === 1) keep(s, part, 0, cut.length);
    };
    const take = (from: number, to: number): void => {
      for (let s = from; s < to; s++) {
        if (quick?.whole[s]) {
          covered[s] = 1;
          for (let k = 3 * s; k < 3 * s + 3; k++) linear[k] = quick.linear[k];
          continue;
        }
        const [first, end] = [all.firstOf[s], all.firstOf[s + 1]];
        if (first < end) keep(s, all, first, end);
        else keep(s, ringList([speckAround(geometry, s)]), 0, 1);
        if (sample.inside !== 1) keepWithin(s);
      }
    };
    const pixels = (shape.stitchWidthMm * shape.roundHeightMm) / place.mmPerPixel ** 2;
    const many = Math.max(1, Math.min(aStep, Math.floor(pixelsAStep / pixels)));
    for (let from = 0; from < count; from += many) {
      take(from, Math.min(count, from + many));
      yield { stage: 'colours' };
    }
  }
  const neighbours = repeat ? neighbourCells(shape.rounds) : footprints.neighbours;
  const drawn = inks && keepThinLines(inks, neighbours, linear, input.sparing);
  const all = repeat ? inEveryWedge(shape, { linear, covered }) : { linear, covered };
  const bare = new Uint8Array(all.covered.length);
  if (background === 'bare') all.covered.forEach((c, s) => (bare[s] = c < 0.5 ? 1 : 0));
  return {
    ...all,
    bare,
    lostLines: (kept) => (inks && drawn ? lostLines(inks, neighbours, drawn, kept) : noLines),
    mixed: () => (inks ? mixedStitches(inks) : 0),
    hatched: () => (inks ? hatchedStitches(inks, neighbours) : 0),
  };
}

/** The light of the stitches that lie in the picture wholly, where it has sums of light. */
function quickLight({ picture, footprints, place }: SampleInput): EdgeLight | undefined {
  const sums = lightSums(picture);
  return sums && lightUnderAll(footprints, picture, sums, panelToPicture(place, picture));
}

/** Colour of one area of the panel. */
interface AreaSampler {
  /**
   * Takes the rings from `first` to `end` (without it) of a list in millimetres, writes linear r, g, b
   * into `colour` and returns the share covered.
   */
  (rings: RingList, first: number, end: number): number;
  readonly colour: Float64Array;
  /** Share of the last area that lay inside the picture's rectangle. */
  inside: number;
  /** What the chooser for drawings found. */
  choice: StitchLight | undefined;
}

function areaSampler(input: SampleInput): AreaSampler {
  const { place, art, paper, background, darkCover } = input;
  const { stitchWidthMm, roundHeightMm } = input.geometry.shape;
  const stitchPx = Math.min(stitchWidthMm, roundHeightMm) / place.mmPerPixel;
  const picture = paper ? strengthenLines(input.picture, stitchPx) : input.picture;
  const { width, height } = picture;
  const choose = paper ? makePaperChooser() : makeDrawingChooser(darkCover);
  const colour = new Float64Array(3);
  const mean = new Float64Array(3);
  const ground = background === 'bare' ? undefined : background;
  const drawing = art === 'drawing';
  const seen = drawing && ground ? flattenedOn(picture.data, ground) : picture.data;
  const drawn = {
    data: seen,
    runs: drawing ? pixelRuns({ width, height, data: seen }) : undefined,
  };
  const light = drawing ? undefined : lightSums(picture);
  const opaque = isKnownOpaque(picture.data);
  const alpha = drawing && !opaque ? alphaBlocks(picture) : undefined;
  const squares = drawing && !paper ? pixelSquares(picture) : undefined;
  const coverRings = makeCoverage(
    picture,
    panelToPicture(place, input.picture),
    squares && ((window) => sameInWindow(picture, squares, window)),
  );

  const visibleInDrawing = (coverage: Coverage): number => {
    const { inside, window, count } = coverage;
    if (opaque || count === 0) return inside;
    const all = alpha ? alphaInWindow(alpha, window) : -1;
    return all === 255 ? inside : all === 0 ? 0 : visibleUnder(coverage, picture.data);
  };

  const sample = (rings: RingList, first: number, end: number): number => {
    const coverage = coverRings(rings, first, end);
    const { total, inside } = coverage;
    sampler.inside = share(inside, total);
    colour.fill(1);
    const visible = !drawing
      ? meanUnder(coverage, picture, mean, light)
      : visibleInDrawing(coverage);
    const covered = share(visible, total);
    if (drawing) {
      const open = ground && { rgb: ground, area: (1 - sampler.inside) * total };
      sampler.choice = choose(coverage, drawn, open, colour);
    } else {
      for (let c = 0; c < 3; c++) {
        const under = ground ? srgbToLinear[ground[c]] : visible > 0 ? mean[c] : 1;
        colour[c] =
          covered === 1 ? mean[c] : covered === 0 ? under : under + covered * (mean[c] - under);
      }
    }
    return covered;
  };
  const sampler: AreaSampler = Object.assign(sample, { colour, inside: 0, choice: undefined });
  return sampler;
}

/** Places are kept to nine digits: what is that near to all or nothing is all or nothing. */
function share(part: number, whole: number): number {
  const found = whole > 0 ? part / whole : 0;
  return found > 1 - 1e-6 ? 1 : found < 1e-6 ? 0 : found;
}

/**
 * The square around the circle through the outline's corners, turned as the picture is. A spiral's
 * end climbs up to half a round beyond it, where a picture that fills the panel has stopped: what
 * lies there takes no part when the rest of a stitch lies on the picture, or a few rim stitches
 * would be tinged with background.
 */
function squareAround({ shape }: PanelGeometry, { rotateDegrees }: Place): Float64Array {
  const { cos, sin } = rotation(rotateDegrees);
  const half = cornerRadius(shape);
  const corners = [[-1, -1], [1, -1], [1, 1], [-1, 1]]; // prettier-ignore
  return Float64Array.from(
    corners.flatMap(([x, y]) => [half * (cos * x - sin * y), half * (sin * x + cos * y)]),
  );
}

/** The part of a ring inside the square, or all of it when none is. */
function withinSquare(ring: Float64Array, square: Float64Array): Float64Array {
  const safe = square[0] ** 2 / 2 + square[1] ** 2 / 2;
  let reach = 0;
  for (let p = 0; p < ring.length; p += 2) {
    reach = Math.max(reach, ring[p] * ring[p] + ring[p + 1] * ring[p + 1]);
  }
  if (reach <= safe) return ring;
  const part = clipToConvex(ring, square);
  return part.length >= 6 && ringArea(part) > 1e-6 ? part : ring;
}

/** A speck around the centre of a stitch that owns nothing, so that it has a colour all the same. */
function speckAround({ centres, shape }: PanelGeometry, s: number): Float64Array {
  const half = Math.min(shape.stitchWidthMm, shape.roundHeightMm) / 10;
  const [x, y] = [centres[2 * s], centres[2 * s + 1]];
  return Float64Array.of(
    x - half,
    y - half,
    x + half,
    y - half,
    x + half,
    y + half,
    x - half,
    y + half, // prettier-ignore
  );
}
