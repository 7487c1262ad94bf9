import { edgePoint } from '../../panel/edge.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { stitchesBefore } from '../../panel/shape.js';
import type { Face } from '../surface/font.js';
import type { Surface } from '../surface/surface.js';
import { drawText, textWidth } from '../surface/text.js';
import { black } from './cells.js';
import { boxOfWord } from './panel-view.js';
import type { Box } from './panel-view.js';

/** A tick on the rim at every tenth stitch of the last round, millimetres from the panel's centre. */
export interface RimTick {
  /** 10, 20, 30 … counted from the round's first stitch, which is 1. */
  readonly stitch: number;
  /** From the rim outward. */
  readonly line: readonly [fromX: number, fromY: number, toX: number, toY: number];
  /** What its number takes up. */
  readonly box: Box;
}

const gapMm = 0.25;
const longMm = 0.9;
/** Between the rim and a number; more where a frame's bracket passes there. */
const numberGapMm = 1.4;
const besideBracketMm = 1.9;
const digitMm = 1.75;
/** Ticks and their numbers take no more than this outside the rim. */
export const tickBandMm = 5;

const styleOf = (face: Face) => ({ face, sizeMm: digitMm / face.capHeight });

/**
 * The ticks of a panel at one scale, all of them.
 *
 * @param bracket whether a frame's bracket runs along the rim
 * @param holds whether a part of the panel has a stitch; all have their ticks where it is left out
 */
export function rimTicks(
  geometry: PanelGeometry,
  scale: number,
  face: Face,
  bracket = false,
  holds: (s: number) => boolean = () => true,
): RimTick[] {
  const { shape, tilts } = geometry;
  const { wedges, rounds } = shape;
  const inRound = wedges * rounds;
  const ticks: RimTick[] = [];
  for (let stitch = 10; stitch <= inRound; stitch += 10) {
    const s = stitchesBefore(shape, rounds) + stitch - 1;
    if (!holds(s)) continue;
    const [rimX, rimY] = edgePoint(geometry, rounds, (stitch - 0.5) / inRound);
    const [outX, outY] = [Math.sin(tilts[s]), -Math.cos(tilts[s])];
    const at = (mm: number) => [scale * rimX + mm * outX, scale * rimY + mm * outY] as const;
    const size = { widthMm: textWidth(String(stitch), styleOf(face)), heightMm: digitMm };
    const half = (Math.abs(outX) * size.widthMm + Math.abs(outY) * size.heightMm) / 2;
    const [x, y] = at((bracket ? besideBracketMm : numberGapMm) + half);
    ticks.push({
      stitch,
      line: [...at(gapMm), ...at(gapMm + longMm)],
      box: boxOfWord({ x, y }, size),
    });
  }
  return ticks;
}

/**
 * Draws the ticks, and the numbers that have room.
 *
 * @param taken what else stands around the rim, millimetres from the panel's centre
 * @param window only what is whole inside it is drawn, millimetres on the page
 */
export function drawRimTicks(
  surface: Surface,
  ticks: readonly RimTick[],
  face: Face,
  centre: { readonly x: number; readonly y: number },
  taken: readonly Box[],
  title: string,
  window?: Box,
): void {
  const inside = (box: Box) =>
    !window ||
    (centre.x + box.left > window.left &&
      centre.x + box.right < window.right &&
      centre.y + box.top > window.top &&
      centre.y + box.bottom < window.bottom);
  const free = (box: Box, mm: number) => inside(box) && !taken.some((one) => meet(one, box, mm));
  const lineBox = ({ line: [ax, ay, bx, by] }: RimTick): Box => ({
    left: Math.min(ax, bx),
    right: Math.max(ax, bx),
    top: Math.min(ay, by),
    bottom: Math.max(ay, by),
  });
  const shown = ticks.filter((tick) => free(lineBox(tick), 0.2));
  if (shown.length === 0) return;
  surface.beginGroup('rim-ticks', title);
  const lines = shown.map(({ line }) => line.map((v, p) => v + (p % 2 ? centre.y : centre.x)));
  surface.strokePath(lines, { stroke: black, widthMm: 0.35 });
  for (const { stitch, box } of shown) {
    if (!free(box, 0.4)) continue;
    const x = centre.x + (box.left + box.right) / 2;
    drawText(surface, String(stitch), styleOf(face), x, centre.y + box.bottom, 'middle');
  }
  surface.endGroup();
}

/** What the numbers take up together; undefined where there are none. */
export function boxOfTicks(ticks: readonly RimTick[]): Box | undefined {
  if (ticks.length === 0) return undefined;
  return {
    left: Math.min(...ticks.map(({ box }) => box.left)),
    right: Math.max(...ticks.map(({ box }) => box.right)),
    top: Math.min(...ticks.map(({ box }) => box.top)),
    bottom: Math.max(...ticks.map(({ box }) => box.bottom)),
  };
}

const meet = (one: Box, other: Box, apartMm: number): boolean =>
  one.left < other.right + apartMm &&
  other.left < one.right + apartMm &&
  one.top < other.bottom + apartMm &&
  other.top < one.bottom + apartMm;
