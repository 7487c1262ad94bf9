import { linearToSrgb8 } from '../../colour/srgb.js';
import type { Picture } from '../picture.js';
import { toLinearRaster } from './linear.js';

/** How a picture should be sampled, and the figures behind the decision. */
export interface ArtDecision {
  /** What it is taken as. */
  art: 'photo' | 'drawing';
  /**
   * Why. Drawings: `empty` (nothing visible), `tiny`, `flat` (areas of one colour), `crisp` (sharp
   * edges nearly everywhere), `cutout` (smooth shapes on a transparent ground), `paper` (strokes on
   * light paper). Photos: `smooth` (no edges at all), `many` (many colours that run into each other).
   */
  reason: 'empty' | 'tiny' | 'flat' | 'crisp' | 'cutout' | 'paper' | 'smooth' | 'many';
  /** What that was told from. */
  facts: ArtFacts;
}

/** Measured on what can be seen of the picture, reduced to 256 px; each from 0 to 1. */
export interface ArtFacts {
  /** Share of the box around it that can be seen. */
  visible: number;
  /** Share of neighbouring pixels of exactly one colour. */
  equal: number;
  /** … that differ by 2 of 255 at most. */
  flat: number;
  /** … by 16 or more. */
  edge: number;
  /** … by 32 or more. */
  sharp: number;
  /** Share of the visible pixels in the 4 most used colours, of 16 steps a channel. */
  inFour: number;
  /** … in the 12 most used. */
  inTwelve: number;
  /** Share of the visible pixels without a hue to speak of. */
  grey: number;
  /** Share in the 12 most used of 64 steps of grey: a photograph without colours has only 16 coarse ones. */
  inTwelveGreys: number;
  /** Share that is less than half as bright, as coded, as the most used colour. */
  dark: number;
  /** Luma of the most used colour. */
  groundLuma: number;
  /** Its largest difference between two channels. */
  groundTint: number;
}

const sidePx = 256;
/** Fainter pixels tell too little about their colour. */
const leastAlpha = 32;
/** A picture with fewer visible pixels has been drawn pixel by pixel, or may as well have been. */
const tinyPixels = 400;
/** From this share on a picture is grey; channels of a grey differ by so much at most, of 255. */
const [greyFrom, greyTint] = [0.98, 12];
/** Strokes leave most of their paper bare: more dark than this is a photograph in grey. */
const mostDark = 0.22;

/**
 * Decides between photo and drawing from how neighbouring pixels differ and how few colours hold
 * most of the picture. The limits were set on photographs, clip art, engravings and pencil sketches.
 */
export function decideArt(picture: Picture): ArtDecision {
  const facts = artFacts(picture);
  const { visible, equal, flat, edge, sharp, inFour, inTwelve } = facts;
  const drawing = (reason: ArtDecision['reason']): ArtDecision => ({
    art: 'drawing',
    reason,
    facts,
  });
  const photo = (reason: ArtDecision['reason']): ArtDecision => ({ art: 'photo', reason, facts });
  if (visible === 0) return drawing('empty');
  if (picture.width * picture.height <= tinyPixels) return drawing('tiny');
  if (edge < 0.005 && equal < 0.9) return photo('smooth');
  if (equal >= 0.3 && inTwelve >= 0.6 && (inFour >= 0.55 || sharp >= 0.03)) return drawing('flat');
  // Flat colours that went through a lossy codec.
  const isGrey = facts.grey >= greyFrom;
  const few = isGrey ? facts.inTwelveGreys : inTwelve;
  if (flat >= 0.5 && few >= 0.8 && sharp >= 0.04) return drawing('flat');
  if (flat >= 0.35 && inFour >= 0.6 && few >= 0.85 && sharp >= 0.04) return drawing('flat');
  if (sharp >= 0.2 && equal >= 0.25) return drawing('crisp');
  // Shaded clip art: a photograph that was cut out has grain, and so hardly a pixel like its neighbour.
  if (visible <= 0.95 && flat >= 0.6 && equal >= 0.2) return drawing('cutout');
  const isPaper =
    facts.groundLuma >= 0.55 && facts.groundTint <= 0.21 && !(isGrey && facts.dark > mostDark);
  if (isPaper && inFour >= 0.45 && inTwelve >= 0.75) return drawing('paper');
  return photo('many');
}

function artFacts(picture: Picture): ArtFacts {
  const { width, height, pixels } = reduced(picture);
  const uses = new Int32Array(4096);
  const greys = new Int32Array(64);
  const lights = new Int32Array(256);
  let grey = 0;
  let [visible, pairs, equal, flat, edge, sharp] = [0, 0, 0, 0, 0, 0];
  const compare = (p: number, q: number): void => {
    if (pixels[q + 3] < leastAlpha) return;
    const apart = Math.max(
      Math.abs(pixels[p] - pixels[q]),
      Math.abs(pixels[p + 1] - pixels[q + 1]),
      Math.abs(pixels[p + 2] - pixels[q + 2]),
    );
    pairs++;
    if (apart === 0) equal++;
    if (apart <= 2) flat++;
    if (apart >= 16) edge++;
    if (apart >= 32) sharp++;
  };
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const p = 4 * (y * width + x);
      if (pixels[p + 3] < leastAlpha) continue;
      visible++;
      uses[((pixels[p] >> 4) << 8) | ((pixels[p + 1] >> 4) << 4) | (pixels[p + 2] >> 4)]++;
      const [red, green, blue] = pixels.subarray(p, p + 3);
      if (Math.max(red, green, blue) - Math.min(red, green, blue) <= greyTint) grey++;
      greys[green >> 2]++;
      lights[green]++;
      if (x + 1 < width) compare(p, p + 4);
      if (y + 1 < height) compare(p, p + 4 * width);
    }
  }
  const most = uses.indexOf(uses.reduce((a, b) => Math.max(a, b)));
  const [r, g, b] = [most >> 8, (most >> 4) & 15, most & 15].map((step) => step / 15);
  const inMost = (of: Int32Array, k: number): number =>
    of
      .sort()
      .reverse()
      .subarray(0, k)
      .reduce((sum, n) => sum + n, 0) / Math.max(1, visible);
  const half = Math.round((255 * (0.2126 * r + 0.7152 * g + 0.0722 * b)) / 2);
  const dark = lights.subarray(0, half).reduce((sum, n) => sum + n, 0) / Math.max(1, visible);
  const ofPairs = (n: number): number => n / Math.max(1, pairs);
  return {
    visible: visible / (width * height),
    equal: ofPairs(equal),
    flat: ofPairs(flat),
    edge: ofPairs(edge),
    sharp: ofPairs(sharp),
    inFour: inMost(uses, 4),
    inTwelve: inMost(uses, 12),
    grey: grey / Math.max(1, visible),
    inTwelveGreys: inMost(greys, 12),
    dark,
    groundLuma: 0.2126 * r + 0.7152 * g + 0.0722 * b,
    groundTint: Math.max(r, g, b) - Math.min(r, g, b),
  };
}

/** What can be seen of the picture at 256 px at most, 8 bits a channel, not premultiplied. */
function reduced(picture: Picture): { width: number; height: number; pixels: Uint8Array } {
  const seen = thinned(picture);
  const reduceBy = Math.max(1, Math.max(seen.width, seen.height) / sidePx);
  const { width, height, data } = toLinearRaster(seen, reduceBy);
  const pixels = new Uint8Array(4 * width * height);
  for (let p = 0; p < pixels.length; p += 4) {
    const alpha = data[p + 3];
    pixels[p + 3] = Math.round(255 * alpha);
    if (alpha === 0) continue;
    for (let c = 0; c < 3; c++) pixels[p + c] = linearToSrgb8(data[p + c] / alpha);
  }
  return { width, height, pixels };
}

/** The box around what can be seen; of a very large picture every second, third … pixel. */
function thinned({ width, height, data }: Picture): Picture {
  const visibleIn = (x0: number, y0: number, x1: number, y1: number): boolean => {
    for (let y = y0; y < y1; y++) {
      for (let at = 4 * (y * width + x0) + 3; at < 4 * (y * width + x1); at += 4) {
        if (data[at] >= leastAlpha) return true;
      }
    }
    return false;
  };
  let [left, top, right, bottom] = [0, 0, width, height];
  while (top < bottom && !visibleIn(0, top, width, top + 1)) top++;
  while (top < bottom && !visibleIn(0, bottom - 1, width, bottom)) bottom--;
  if (top === bottom) return { width: 1, height: 1, data: new Uint8Array(4) };
  while (!visibleIn(left, top, left + 1, bottom)) left++;
  while (!visibleIn(right - 1, top, right, bottom)) right--;
  const step = Math.max(1, Math.floor(Math.max(right - left, bottom - top) / (6 * sidePx)));
  const thin = {
    width: Math.ceil((right - left) / step),
    height: Math.ceil((bottom - top) / step),
  };
  const kept = new Uint8Array(4 * thin.width * thin.height);
  let to = 0;
  for (let y = top; y < bottom; y += step) {
    for (let x = left; x < right; x += step, to += 4) {
      const from = 4 * (y * width + x);
      kept[to] = data[from];
      kept[to + 1] = data[from + 1];
      kept[to + 2] = data[from + 2];
      kept[to + 3] = data[from + 3];
    }
  }
  return { ...thin, data: kept };
}
