import { srgbToLinear } from '../colour/srgb.js';
import { cornerRadius } from '../geometry/edge.js';
import type { Footprints } from '../geometry/footprints.js';
import type { PanelGeometry } from '../geometry/panel.js';
import { clipToConvex, ringArea } from '../geometry/rings.js';
import type { Place } from '../pattern/schema.js';
import type { Picture } from '../picture.js';
import { makeCoverage } from './coverage.js';
import { makeDrawingChooser } from './drawing.js';
import { flattenedOn } from './flatten.js';
import type { Choice } from './drawing.js';
import { meanUnder } from './means.js';
import { makePaperChooser, strengthenLines } from './paper-lines.js';
import { panelToPicture } from './place.js';
import { rotation } from './plane.js';
import { keepThinLines, lostLines, makeInks } from './thin.js';
import { cellOf, cellRing, cellsInWedge, inEveryWedge, neighbourCells } from './repeat.js';

/** What the picture shows where each stitch lies, in working order. */
export interface StitchColours {
  /** Linear red, green, blue of each stitch, 0 to 1; length 3·count. */
  readonly linear: Float64Array;
  /** Share of the footprint that lies under visible picture, 0 to 1, half-transparent counting half. */
  readonly covered: Float64Array;
  /** 1 where the background is bare and the picture covers less than half. */
  readonly bare: Uint8Array;
  /** Share of a drawing's lines that are too thin to be seen, 0 to 1 (see thin.ts). */
  readonly lostLines: number;
}

/** What `samplePanel` needs. */
export interface SampleInput {
  picture: Picture;
  geometry: PanelGeometry;
  footprints: Footprints;
  place: Place;
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
}

/** Colour of one area of the panel. */
interface AreaSampler {
  /** Takes rings in millimetres, writes linear r, g, b into `colour` and returns the share covered. */
  (rings: readonly Float64Array[]): number;
  readonly colour: Float64Array;
  /** Share of the last area that lay inside the picture's rectangle. */
  inside: number;
  /** What the chooser for drawings found. */
  choice: Choice | undefined;
}

/**
 * Samples the picture under every stitch, in linear light and exactly over the footprint. For a
 * repeat the cells of one wedge are sampled and all wedges are the same.
 */
export function samplePanel(input: SampleInput): StitchColours {
  const { geometry, footprints, place, background } = input;
  const { shape, direction } = geometry;
  const repeat = place.repeat === true;
  const count = repeat ? cellsInWedge(shape.rounds) : geometry.count;
  const linear = new Float64Array(3 * count);
  const covered = new Float64Array(count);
  const sample = areaSampler(input);
  const inks = makeInks(count);
  const keep = (s: number, rings: readonly Float64Array[]): void => {
    covered[s] = sample(rings);
    linear.set(sample.colour, 3 * s);
    inks.luma[s] = sample.choice?.luma ?? 255;
    inks.cover[s] = sample.choice?.cover ?? 0;
    inks.darkLuma[s] = sample.choice?.darker?.luma ?? 255;
    inks.darkCover[s] = sample.choice?.darker?.cover ?? 0;
    inks.dark.set(sample.choice?.darker?.linear ?? [0, 0, 0], 3 * s);
    inks.darkShare[s] = sample.choice?.darkShare ?? 0;
  };
  if (repeat) {
    for (let r = 1; r <= shape.rounds; r++) {
      for (let j = 0; j < r; j++) keep(cellOf(r, j), [cellRing(shape, direction, r, j)]);
    }
  } else {
    const square = squareAround(geometry, place);
    for (let s = 0; s < count; s++) {
      const rings = footprints.rings(s);
      keep(s, rings.length > 0 ? rings : [speckAround(geometry, s)]);
      if (sample.inside === 1) continue;
      const cut = rings.map((ring) => withinSquare(ring, square));
      if (cut.every((ring, p) => ring === rings[p])) continue;
      if (sample(cut) >= 0 && sample.inside === 1) keep(s, cut);
    }
  }
  let lost = 0;
  if (input.art === 'drawing') {
    const neighbours = repeat ? neighbourCells(shape.rounds) : footprints.neighbours;
    lost = lostLines(inks, neighbours, keepThinLines(inks, neighbours, linear));
  }
  const all = repeat ? inEveryWedge(shape, { linear, covered }) : { linear, covered };
  const bare = Uint8Array.from(all.covered, (c) => (background === 'bare' && c < 0.5 ? 1 : 0));
  return { ...all, bare, lostLines: lost };
}

function areaSampler(input: SampleInput): AreaSampler {
  const { place, art, paper, background, darkCover } = input;
  const { stitchWidthMm, roundHeightMm } = input.geometry.shape;
  const stitchPx = Math.min(stitchWidthMm, roundHeightMm) / place.mmPerPixel;
  const { width, height, data } = paper ? strengthenLines(input.picture, stitchPx) : input.picture;
  const map = panelToPicture(place, input.picture);
  const coverRings = makeCoverage();
  const choose = paper ? makePaperChooser() : makeDrawingChooser(darkCover);
  const colour = new Float64Array(3);
  const mean = new Float64Array(3);
  const ground = background === 'bare' ? undefined : background;
  const drawn = art === 'drawing' && ground ? flattenedOn(data, ground) : data;

  const sample = (rings: readonly Float64Array[]): number => {
    const coverage = coverRings(
      rings.map((ring) => mapped(ring, map)),
      width,
      height,
    );
    sampler.inside = share(coverage.inside, coverage.total);
    colour.fill(1);
    const visible = meanUnder(coverage, data, mean);
    const covered = share(visible, coverage.total);
    if (art === 'drawing') {
      const open = ground && { rgb: ground, area: (1 - sampler.inside) * coverage.total };
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

function mapped(ring: Float64Array, [a, b, c, d, e, f]: readonly number[]): Float64Array {
  const out = new Float64Array(ring.length);
  for (let p = 0; p < ring.length; p += 2) {
    out[p] = a * ring[p] + c * ring[p + 1] + e;
    out[p + 1] = b * ring[p] + d * ring[p + 1] + f;
  }
  return out;
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
