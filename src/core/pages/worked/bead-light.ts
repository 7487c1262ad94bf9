import { linearToSrgb8, srgbToLinear } from '../../colour/srgb.js';
import { rememberedFor } from '../../remember.js';
import type { Gloss } from './gloss.js';

/** Direction to the lamp in the page frame (x right, y down, z to the eye), length 1. */
const lamp = unit(-0.48, -0.62, 0.62);
/** Half-way between lamp and eye: where a mirror would show the lamp. */
const half = unit(lamp[0], lamp[1], lamp[2] + 1);

/** How far a bead's outline is from an oval to a box: F = a² + b² - squareness·a²b². */
const squareness = 0.5;

/** Steps of the table that turns linear light (0 to 1) into an sRGB code. */
const lightSteps = 4095;
const codeOfLight = Uint8Array.from({ length: lightSteps + 1 }, (_, step) =>
  linearToSrgb8(step / lightSteps),
);

/** A drawing ground: an opaque picture that beads are painted on. */
export interface Canvas {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/** One bead to paint, in pixels. */
export interface BeadSpot {
  x: number;
  y: number;
  /** Half its length along the row and half its height across it. */
  halfAlong: number;
  halfAcross: number;
  /** Direction of the row in the page frame, length 1. */
  alongX: number;
  alongY: number;
  /** Dark dimples at both ends, where the thread goes in: 0 = none. */
  dimple: number;
}

/**
 * Shade of a place on a bead: what its own light is multiplied by, and the light added to it.
 * The dome is F = 1 - z², so that the slope needs no trigonometry.
 */
function shade(nx: number, ny: number, nz: number, gloss: Gloss, out: Float64Array): void {
  const toLamp = nx * lamp[0] + ny * lamp[1] + nz * lamp[2];
  const rim = 1 - nz;
  const lit = 1 - gloss.relief + gloss.relief * 1.5 * Math.max(0, toLamp);
  const away = Math.max(0, -(nx * lamp[0] + ny * lamp[1]));
  out[0] = lit * (1 - 0.55 * rim * rim) + gloss.glow * away * away * 1.6;
  const facing = Math.max(0, nx * half[0] + ny * half[1] + nz * half[2]);
  const p4 = facing * facing * facing * facing;
  const p16 = p4 * p4 * p4 * p4;
  const p64 = p16 * p16 * p16 * p16;
  out[1] = gloss.sparkle * Math.min(1, p64 * 1.5) + gloss.sheen * p4 * p4;
}

/** Half the width of the hole, as a share of the bead's half height. */
const holeShare = 0.36;

/** How much lighter a place on the bead is for the thread that shows through; b across the hole. */
function stripe(b2: number, through: number): number {
  const inside = 1 - b2 / (holeShare * holeShare);
  return inside > 0 ? 1 + through * inside : 1;
}

/** Means of both parts of `shade` over a round bead, so that a bead can be brought to its hex. */
const meanShade = rememberedFor((gloss: Gloss): [number, number] => {
  const out = new Float64Array(2);
  const sums = [0, 0, 0];
  const n = 48;
  for (let i = 0; i < n * n; i++) {
    const a = (2 * ((i % n) + 0.5)) / n - 1;
    const b = (2 * (Math.floor(i / n) + 0.5)) / n - 1;
    const F = a * a + b * b - squareness * a * a * b * b;
    if (F >= 1) continue;
    const nx = a * (1 - squareness * b * b);
    const ny = b * (1 - squareness * a * a);
    const nz = Math.sqrt(1 - F);
    const length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    shade(nx / length, ny / length, nz / length, gloss, out);
    sums[0] += out[0] * stripe(b * b, gloss.through);
    sums[1] += out[1];
    sums[2] += 1;
  }
  return [sums[0] / sums[2], sums[1] / sums[2]];
});

/**
 * Told of each pixel that a bead covers.
 *
 * @param at number of the pixel, row by row
 * @param cover share of the pixel that the bead covers, above 0 up to 1
 * @param own what the bead's own light is multiplied by there
 * @param added how much light is added to it
 */
export type TakeLight = (at: number, cover: number, own: number, added: number) => void;

/**
 * The routine that tells how light falls on beads of one finish, pixel by pixel; which pixels a
 * bead covers, and how much of them, hangs on the spot alone.
 */
export function beadShine(
  gloss: Gloss,
): (size: { width: number; height: number }, spot: BeadSpot, take: TakeLight) => void {
  const parts = new Float64Array(2);
  return ({ width, height }, spot, take) => {
    const { x, y, halfAlong, halfAcross, alongX, alongY, dimple } = spot;
    // The outline's farthest place, at its corners, is 1.08 half sizes out.
    const reach = Math.max(halfAlong, halfAcross) * 1.09 + 1;
    const left = Math.max(0, Math.floor(x - reach));
    const right = Math.min(width - 1, Math.ceil(x + reach));
    const bottom = Math.min(height - 1, Math.ceil(y + reach));
    for (let py = Math.max(0, Math.floor(y - reach)); py <= bottom; py++) {
      for (let px = left; px <= right; px++) {
        const dx = px + 0.5 - x;
        const dy = py + 0.5 - y;
        const a = (dx * alongX + dy * alongY) / halfAlong;
        const b = (dy * alongX - dx * alongY) / halfAcross;
        const a2 = a * a;
        const b2 = b * b;
        if (a2 > 1.4 || b2 > 1.4) continue;
        const F = a2 + b2 - squareness * a2 * b2;
        const slopeA = a * (1 - squareness * b2);
        const slopeB = b * (1 - squareness * a2);
        const ga = slopeA / halfAlong;
        const gb = slopeB / halfAcross;
        const steep = 2 * Math.sqrt(ga * ga + gb * gb) + 1e-9;
        const cover = Math.min(1, 0.5 + (1 - F) / steep);
        if (cover <= 0) continue;
        const nz = F < 1 ? Math.sqrt(1 - F) : 0;
        const length = Math.sqrt(slopeA * slopeA + slopeB * slopeB + nz * nz) + 1e-9;
        const nx = (slopeA * alongX - slopeB * alongY) / length;
        const ny = (slopeA * alongY + slopeB * alongX) / length;
        shade(nx, ny, nz / length, gloss, parts);
        let own = parts[0] * stripe(b2, gloss.through);
        if (dimple > 0 && a2 > 0.5) {
          const depth = (a2 - 0.5) * 2 - b2 * 14;
          if (depth > 0) own *= 1 - dimple * Math.min(1, depth * 1.6);
        }
        take(py * width + px, cover, own, parts[1]);
      }
    }
  };
}

/**
 * The routine that gives a place on a bead its colour. The mean light of a bead stays that of
 * its colour, so that a picture of beads looks like its colours from a distance: the highlight is
 * paid for by the rest of the bead, as far as the colour has light to give.
 *
 * @param rgb sRGB codes 0 to 255
 * @returns `own` and `added` as `TakeLight` has them; `channel` 0 to 2; an sRGB code
 */
export function beadInk(
  rgb: readonly [number, number, number],
  gloss: Gloss,
): (own: number, added: number, channel: number) => number {
  const { body, tinted } = inkParts(rgb, gloss);
  return (own, added, c) => codeOf(body[c] * own + added * tinted[c]);
}

/** What `beadInk` multiplies its two lights by, by channel. */
export function inkParts(rgb: readonly [number, number, number], gloss: Gloss) {
  const [meanBody, meanAdded] = meanShade(gloss);
  const light = rgb.map((code) => srgbToLinear[code]);
  const brightest = Math.max(light[0], light[1], light[2], 0.02);
  const tinted = light.map((l) => 1 - gloss.tint + (gloss.tint * l) / brightest);
  // A dark bead keeps some of its highlight for nothing, or it would turn black around it.
  const body = light.map((l, c) => Math.max(l * 0.72, l - meanAdded * tinted[c] * 0.9) / meanBody);
  return { body, tinted };
}

/** The sRGB code of linear light, 0 or more; what is lighter than white is white. */
export const codeOf = (light: number): number =>
  codeOfLight[light >= 1 ? lightSteps : (light * lightSteps + 0.5) | 0];

/** How a bead of one colour and finish takes up light: the routine of `beadInk`. */
export type BeadInk = ReturnType<typeof beadInk>;

/**
 * The routine that paints one bead of a finish in several pictures of one size, each in its own
 * colour: light is worked out once.
 *
 * @returns the inks belong to the canvases in order
 */
export function beadPainter(
  gloss: Gloss,
): (canvases: readonly Canvas[], spot: BeadSpot, inks: readonly BeadInk[]) => void {
  const shine = beadShine(gloss);
  return (canvases, spot, inks) => {
    shine(canvases[0], spot, (pixel, cover, own, added) => {
      const at = 4 * pixel;
      for (let n = 0; n < canvases.length; n++) {
        const { data } = canvases[n];
        const ink = inks[n];
        for (let c = 0; c < 3; c++) {
          const code = ink(own, added, c);
          data[at + c] = cover === 1 ? code : data[at + c] + (code - data[at + c]) * cover;
        }
      }
    });
  };
}

function unit(x: number, y: number, z: number): [number, number, number] {
  const length = Math.sqrt(x * x + y * y + z * z);
  return [x / length, y / length, z / length];
}
