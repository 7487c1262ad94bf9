import { parseHex } from '../../colour/hex.js';
import { cornerRadius } from '../../panel/edge.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import type { Picture } from '../../picture/picture.js';
import type { Shape } from '../../panel/shape.js';
import { beadInk, beadPainter } from './bead-light.js';
import type { BeadSpot, Canvas } from './bead-light.js';
import { glossOf } from './gloss.js';
import type { Gloss } from './gloss.js';
import { threadGround, threadRgb } from './thread-ground.js';
import { millionth } from '../../units.js';

/** Share of its stitch that a bead fills, along the row and across it. */
export const beadPerStitch = 0.96;
/** Page left free around the panel, as a share of the page. */
const margin = 0.03;

/** What the beads of a panel look like. */
export interface BeadLooks {
  /** Colour of a stitch's bead as #rrggbb; undefined: no bead, the thread shows. */
  hexOf: (stitch: number) => string | undefined;
  /** Finish of a stitch's bead as the palette calls it; glossy where none is given. */
  finishOf?: (stitch: number) => string | undefined;
}

/** What `renderWorked` draws. */
export interface WorkedInput extends BeadLooks {
  /** The panel as it is laid out. */
  geometry: PanelGeometry;
  /** Side of the square picture in pixels. */
  widthPx: number;
}

/** A good width for the worked picture: 1,400 pixels, more where beads would come below 20. */
export function workedWidthPx(shape: Pick<Shape, 'rounds'>): number {
  return Math.min(3200, Math.max(1400, Math.ceil((shape.rounds * 44) / 100) * 100));
}

/** Pixels a millimetre in a worked picture, the same both ways; the panel's centre is the middle. */
export function workedPxPerMm(shape: Shape, widthPx: number): number {
  const step = shape.construction === 'spiral' ? 0.5 * shape.roundHeightMm : 0;
  return (widthPx * (0.5 - margin)) / (cornerRadius(shape) + step);
}

/**
 * The panel as it will look: glass beads lying side by side on the cloth, each turned as its stitch
 * is, with light from the upper left. No letters; true proportions.
 *
 * @returns a square opaque picture
 */
export function renderWorked(input: WorkedInput): Picture {
  return renderAlike(input, [input])[0];
}

/**
 * Panels that differ in their beads alone, each as `renderWorked` paints it. Their cloth is painted
 * once, and so is the light of a stitch whose beads have one finish.
 *
 * @returns a square opaque picture for each of `looks`
 */
export function renderAlike(
  { geometry, widthPx }: Pick<WorkedInput, 'geometry' | 'widthPx'>,
  looks: readonly BeadLooks[],
): Picture[] {
  const ground = workedGround(geometry, widthPx);
  const canvases = looks.map((_, n) =>
    n === 0 ? ground : { ...ground, data: ground.data.slice() },
  );
  const spots = workedSpots(geometry, widthPx);
  const painterOf = remembering((gloss: Gloss) => beadPainter(gloss));
  const strand = beadInk(strandRgb, strandGloss);
  const inkOf = remembering((key: string) => {
    const space = key.indexOf(' ');
    const rgb = parseHex(key.slice(0, space)) ?? [128, 128, 128];
    return beadInk(rgb, glossOf(key.slice(space + 1)));
  });
  const beadIn = ({ hexOf, finishOf }: BeadLooks, s: number) => {
    const hex = hexOf(s);
    const finish = finishOf?.(s);
    return hex === undefined
      ? undefined
      : { gloss: glossOf(finish), ink: inkOf(`${hex} ${finish ?? ''}`) };
  };
  for (let s = 0; s < geometry.count; s++) {
    const spot = spots(s);
    const beads = looks.map((one) => beadIn(one, s));
    const done = beads.map(() => false);
    beads.forEach((bead, n) => {
      if (done[n]) return;
      if (!bead) {
        for (const loop of bareLoops(spot)) painterOf(strandGloss)([canvases[n]], loop, [strand]);
        return;
      }
      const alike = beads.flatMap((other, m) => (other?.gloss === bead.gloss ? [m] : []));
      for (const m of alike) done[m] = true;
      painterOf(bead.gloss)(
        alike.map((m) => canvases[m]),
        spot,
        alike.map((m) => beads[m]!.ink),
      );
    });
  }
  return canvases;
}

/** The same function, which keeps every answer. */
function remembering<K, T>(make: (key: K) => T): (key: K) => T {
  const kept = new Map<K, T>();
  return (key) => {
    if (!kept.has(key)) kept.set(key, make(key));
    return kept.get(key)!;
  };
}

/** The cloth of the panel with the shadow of every bead on it, before any bead is painted. */
export function workedGround(geometry: PanelGeometry, widthPx: number): Canvas {
  const canvas = threadGround(geometry, widthPx, workedPxPerMm(geometry.shape, widthPx));
  const spots = workedSpots(geometry, widthPx);
  for (let s = 0; s < geometry.count; s++) castShadow(canvas, spots(s));
  return canvas;
}

/** Where the bead of each stitch lies on a worked picture, pixels. */
export function workedSpots(geometry: PanelGeometry, widthPx: number): (s: number) => BeadSpot {
  const { shape, centres, tilts } = geometry;
  const pxPerMm = workedPxPerMm(shape, widthPx);
  const halfAlong = (shape.stitchWidthMm * beadPerStitch * pxPerMm) / 2;
  const halfAcross = (shape.roundHeightMm * beadPerStitch * pxPerMm) / 2;
  return (s) => ({
    x: centres[2 * s] * pxPerMm + widthPx / 2,
    y: centres[2 * s + 1] * pxPerMm + widthPx / 2,
    halfAlong,
    halfAcross,
    alongX: millionth(Math.cos(tilts[s])),
    alongY: millionth(Math.sin(tilts[s])),
    dimple: 0.5,
  });
}

/** Colour and light of a stitch without a bead: the thread itself. */
export const strandRgb: readonly [number, number, number] = [...threadRgb];
export const strandGloss: Gloss = { ...glossOf('matte'), relief: 0.6 };

/** A stitch without a bead: the two loops of its chain, side by side like a V. */
export function bareLoops(spot: BeadSpot): BeadSpot[] {
  return [-1, 1].map((side) => {
    // Unit vector of a loop: 0.6 along the row, 0.8 outward.
    const alongX = 0.6 * side * spot.alongX + 0.8 * spot.alongY;
    const alongY = 0.6 * side * spot.alongY - 0.8 * spot.alongX;
    return {
      x: spot.x + side * 0.42 * spot.halfAlong * spot.alongX,
      y: spot.y + side * 0.42 * spot.halfAlong * spot.alongY,
      halfAlong: spot.halfAcross * 0.92,
      halfAcross: spot.halfAlong * 0.38,
      alongX,
      alongY,
      dimple: 0,
    };
  });
}

/** Darkens the thread to the lower right of a bead, where its light does not reach. */
function castShadow(canvas: Canvas, spot: BeadSpot): void {
  const { width, height, data } = canvas;
  const radius = (spot.halfAlong + spot.halfAcross) * 0.62;
  const x = spot.x + radius * 0.12;
  const y = spot.y + radius * 0.18;
  const bottom = Math.min(height - 1, Math.ceil(y + radius));
  const right = Math.min(width - 1, Math.ceil(x + radius));
  for (let py = Math.max(0, Math.floor(y - radius)); py <= bottom; py++) {
    for (let px = Math.max(0, Math.floor(x - radius)); px <= right; px++) {
      const dx = (px + 0.5 - x) / radius;
      const dy = (py + 0.5 - y) / radius;
      const far = dx * dx + dy * dy;
      if (far >= 1) continue;
      const at = 4 * (py * width + px);
      const keep = 1 - 0.42 * (1 - far);
      for (let c = 0; c < 3; c++) data[at + c] *= keep;
    }
  }
}
