import { linearToLab65 } from '../../colour/lab.js';
import { srgbToLinear } from '../../colour/srgb.js';
import type { Lay } from '../../panel/lay.js';
import type { Steps } from '../../steps.js';
import type { LaidPicture, SampleHow } from '../sampling/sample-stitches.js';
import { parseHex } from '../../colour/hex.js';
import { reducing } from '../sampling/linear.js';
import { panelToPicture } from '../sampling/place.js';
import type { StitchColours } from '../sampling/sample.js';
import { ridgeLines } from './ridges.js';
import type { RidgeLine } from './ridges.js';

/** Pixels that a stitch is across while lines are looked for; a coarser picture has none to show. */
const [pxPerStitch, leastPx] = [5, 3];
/** How far from its crest the sides of a line lie, stitches: a line is thinner than twice that. */
const reachStitches = 0.6;
/** A line is long from so many stitches on: in a drawing, and in a photograph, which is full of short ones. */
const longStitches = { drawing: 5, photo: 8 };
/** L* by which a line of a photograph must stand out on average. */
const strongFrom = 10;
/** Share of the panel that lines may take: what has more of them is fur or grass. */
const mostShare = { photo: 0.05, drawing: 0.2 };
/** Pixels that are seen in one step. */
const pixelsAStep = 20_000;
/**
 * Share of its dark lines that sampling lost, from which a drawing is one of hairlines: it is nothing
 * but lines, and they may take more of the panel.
 */
const hairlinesFrom = 0.3;
const mostHairlines = 0.4;
/** Share of a stitch that a line must run for to win it. */
const winsFrom = 0.45;
/** Share of a line's colour in the stitches that it wins: it is thinner than they are. */
const lineShare = { drawing: 0.7, photo: 0.5 };
/** Share of its strength from which a line of a photograph shows in the means of its stitches by itself. */
const showsFrom = 0.5;

/**
 * Gives lines thinner than a stitch stitches of their own colour: in a photograph dark and light
 * ones (lids, whiskers, veins), in a drawing light ones, since its sampling has kept the dark ones
 * (see sampling/thin.ts). Only long ones that the means have lost, and the strongest of them first: a
 * panel of nothing but lines would be a worse picture.
 */
export function* keepLines(
  colours: StitchColours,
  lay: Pick<Lay, 'geometry' | 'footprints'>,
  { picture, uprightWidth, place }: LaidPicture,
  { art, paper, background }: SampleHow,
): Steps<StitchColours> {
  if (paper || place.repeat) return colours;
  const { stitchWidthMm, roundHeightMm } = lay.geometry.shape;
  const mmPerPixel = (place.mmPerPixel * uprightWidth) / picture.width;
  const stitchPx = Math.sqrt(stitchWidthMm * roundHeightMm) / mmPerPixel;
  const reduceBy = Math.max(1, stitchPx / pxPerStitch);
  const perStitch = stitchPx / reduceBy;
  if (perStitch < leastPx) return colours;
  yield { stage: 'colours' };
  const raster = yield* reducing(picture, reduceBy);
  const { width, height, data } = raster;
  const ground = (background === 'bare' ? undefined : parseHex(background)) ?? [255, 255, 255];
  const linear = new Float32Array(3 * width * height);
  const light = new Float32Array(width * height);
  for (let p = 0; p < light.length; p++) {
    if (p % pixelsAStep === 0) yield { stage: 'colours' };
    const open = 1 - data[4 * p + 3];
    for (let c = 0; c < 3; c++) {
      linear[3 * p + c] = data[4 * p + c] + open * srgbToLinear[ground[c]];
    }
    light[p] = linearToLab65(linear[3 * p], linear[3 * p + 1], linear[3 * p + 2])[0];
  }
  yield { stage: 'colours' };
  const hairlines = art === 'drawing' && colours.lostLines().share >= hairlinesFrom;
  const found = yield* ridgeLines({ width, height, light }, reachStitches * perStitch, art);
  const lines = found
    .filter(
      ({ pixels, lighter, strength }) =>
        pixels.length >= longStitches[art] * perStitch &&
        (art === 'photo' ? strength >= strongFrom : lighter || hairlines),
    )
    .sort((a, b) => b.strength - a.strength || a.pixels[0] - b.pixels[0]);
  if (lines.length === 0) return colours;
  yield { stage: 'colours' };
  const ownerOf = ownerIn(lay, { width, height }, { ...place, mmPerPixel }, picture);
  const kept = colours.linear.slice();
  const drawn = new Uint8Array(colours.bare.length);
  let room = (hairlines ? mostHairlines : mostShare[art]) * drawn.length;
  for (const line of lines) {
    const won = stitchesOf(line, ownerOf, winsFrom * perStitch).filter(
      ([s]) => !drawn[s] && !colours.bare[s] && colours.covered[s] >= 0.5,
    );
    if (won.length > room) continue;
    if (art === 'photo' && standsOut(line, won, colours, lay) >= showsFrom * line.strength)
      continue;
    room -= won.length;
    for (const [s, pixels] of won) {
      drawn[s] = 1;
      for (let c = 0; c < 3; c++) {
        const crest = pixels.reduce((sum, p) => sum + linear[3 * p + c], 0) / pixels.length;
        kept[3 * s + c] += lineShare[art] * (crest - kept[3 * s + c]);
      }
    }
  }
  return { ...colours, linear: kept, lostLines: () => colours.lostLines(drawn) };
}

/** L* by which the means of a line's stitches stand out from those beside it, the way the line does. */
function standsOut(
  { lighter }: RidgeLine,
  won: readonly (readonly [number, number[]])[],
  { linear, bare }: StitchColours,
  { footprints }: Pick<Lay, 'footprints'>,
): number {
  const own = new Set(won.map(([s]) => s));
  const lightOf = (s: number) =>
    linearToLab65(linear[3 * s], linear[3 * s + 1], linear[3 * s + 2])[0];
  let [sum, count] = [0, 0];
  for (const s of own) {
    const beside = footprints.neighbours(s).filter((n) => !own.has(n) && !bare[n]);
    if (beside.length === 0) continue;
    sum += lightOf(s) - beside.reduce((total, n) => total + lightOf(n), 0) / beside.length;
    count++;
  }
  return count === 0 ? 0 : ((lighter ? 1 : -1) * sum) / count;
}

/** Stitches that a line runs through far enough, and its pixels in each. */
function stitchesOf(
  { pixels }: RidgeLine,
  ownerOf: (p: number) => number,
  least: number,
): [number, number[]][] {
  const under = new Map<number, number[]>();
  for (const p of pixels) {
    const s = ownerOf(p);
    if (s < 0) continue;
    const own = under.get(s);
    if (own) own.push(p);
    else under.set(s, [p]);
  }
  return [...under].filter(([, own]) => own.length >= least);
}

/** The stitch under each pixel of a raster. */
function ownerIn(
  { footprints }: Pick<Lay, 'footprints'>,
  size: { width: number; height: number },
  place: LaidPicture['place'],
  picture: { width: number; height: number },
): (p: number) => number {
  const [a, b, c, d, e, f] = panelToPicture(place, picture);
  const det = a * d - b * c;
  return (p) => {
    const x = (((p % size.width) + 0.5) * picture.width) / size.width - e;
    const y = ((Math.floor(p / size.width) + 0.5) * picture.height) / size.height - f;
    return footprints.owner((d * x - c * y) / det, (a * y - b * x) / det);
  };
}
