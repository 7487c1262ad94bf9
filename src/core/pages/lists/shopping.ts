import { finishedEdge } from '../../panel/edge.js';
import { layPanel } from '../../panel/lay.js';
import { lettersInWorkingOrder } from '../../pattern/stitches.js';
import { undecidedMark } from '../../pattern/marks.js';
import type { Pattern, Thread } from '../../pattern/pattern.js';
import { stitchCount } from '../../panel/shape.js';
import { panelLengths } from '../../thread/lengths.js';
import { threadFit } from '../../thread/fit.js';
import type { ThreadFit } from '../../thread/fit.js';
import { threadFor, usualTailMm, usualThreadReservePercent } from '../../thread/need.js';
import type { ThreadNeed } from '../../thread/need.js';
import { mainSize, threadPerStitch } from '../../thread/per-stitch.js';
import type { ThreadPerStitch } from '../../thread/per-stitch.js';
import { sewing } from '../../thread/sewing.js';
import type { Sewing } from '../../thread/sewing.js';
import { hookRangeMm, needleRangeMm } from '../../thread/tools.js';
import { usualBeadReservePercent } from '../../beads/amounts.js';
import { materials } from './materials.js';
import type { MaterialRow } from './materials.js';

/** Seam allowance of the lining, millimetres (common practice, no source). */
const liningAllowanceMm = 5;
/** Width of cloth that is usual for linings, centimetres (common practice, no source). */
export const usualClothWidthCm = 110;
/** Cloth over the cuts, for their lines and a hem that frays, centimetres (common practice, no source). */
const clothSpareCm = 2;

/** How much is to be bought for. */
export interface ShoppingWish {
  /** Finished purses, or single panels where a purse is to have one panel; default 1. */
  pieces?: number;
  /** Panels of one purse: 2 unless said otherwise. A pattern of one panel then serves both sides. */
  panels?: 1 | 2;
  /** Reserve of beads, per cent of all that are worked; default 10, and at least 30 beads. */
  beadReservePercent?: number;
  /** Width of the cloth that the lining is cut from, centimetres; default 110. */
  clothWidthCm?: number;
  /** Whether the lining is of cloth, as is usual, or crocheted: the same panels without beads. */
  lining?: 'cloth' | 'crocheted';
}

/** Everything to have for some purses; lengths in millimetres where the names say so. */
export interface ShoppingList {
  /** Title of the pattern. */
  readonly title: string;
  /** Purses to be made: 1 or more. */
  readonly pieces: number;
  /** Panels of one purse, and how many of them the pattern holds. */
  readonly panels: number;
  /** Panels that the pattern holds: 1 or 2. */
  readonly patternPanels: number;
  /** Whether a swatch gave the stitch. */
  readonly swatch: boolean;
  /** Beads over what is worked, per cent. */
  readonly beadReservePercent: number;
  /** Beads for all pieces: reserve and packets are worked out once, on the whole. */
  readonly beads: readonly MaterialRow[];
  /** Sums over all beads. */
  readonly totals: ShoppingTotals;
  /** Stitches of all pieces that no bead is decided for. */
  readonly undecided: number;
  /** Thread for all pieces. */
  readonly thread: ShoppingThread;
  /** Seam, frame and braid of one purse; undefined for single panels. */
  readonly sewing: Sewing | undefined;
  /** Usual hooks for these beads, smallest and largest, millimetres. */
  readonly hookMm: readonly [number, number] | undefined;
  /** Usual needles for these beads, thinnest and thickest, millimetres. */
  readonly needleMm: readonly [number, number] | undefined;
  /** Cloth for the linings of all pieces. */
  readonly lining: LiningCloth;
  /** The lining crocheted instead: panels without beads. */
  readonly panelLining: PanelLining;
  /** Which of them is wanted. */
  readonly liningOf: 'cloth' | 'crocheted';
  /** The maker's own hook, millimetres. */
  readonly ownHookMm: number | undefined;
}

/** Sums over the beads. */
export interface ShoppingTotals {
  /** Beads worked. */
  readonly count: number;
  /** Beads to have ready. */
  readonly withReserve: number;
  /** Undefined where some bead's grams are not known. */
  readonly grams: number | undefined;
  /** Beads that the stock lacks. */
  readonly toBuy: number;
  /** Packets that hold them, where known. */
  readonly packets: number | undefined;
  /** What is to be bought of the beads with a known price costs. */
  readonly cost: number;
  /** Beads of which something is to be bought, and those of them whose cost is known. */
  readonly bought: number;
  /** Beads whose cost is known, of those that are to be bought. */
  readonly priced: number;
}

/** The crochet thread of all pieces. */
export interface ShoppingThread extends ThreadNeed {
  /** What a stitch takes. */
  readonly perStitch: ThreadPerStitch;
  /** Thread over what the stitches take, per cent. */
  readonly reservePercent: number;
  /** What hangs out at each end of a length. */
  readonly tailMm: number;
  /** What the beads take up when they are strung. */
  readonly strungMm: number;
  /** What it weighs where its tex is known, grams. */
  readonly grams: number | undefined;
  /** Balls or spools that hold it, and what they cost, where the maker says what one holds and costs. */
  readonly spools: Spools | undefined;
  /** The maker's own thread, where the pattern knows it. */
  readonly given: Thread | undefined;
  /** Whether it passes the beads, where their hole is known. */
  readonly fit: ThreadFit | undefined;
  /** The size of the bead that is worked most, if it is known. */
  readonly size: string | undefined;
}

/** Thread as it is sold. */
export interface Spools {
  /** Balls or spools: 1 or more. */
  readonly spools: number;
  /** On one of them. */
  readonly metres: number;
  /** What all of them cost, where known. */
  readonly cost: number | undefined;
}

/** A crocheted lining: so many panels without beads, and their thread with reserve and tails. */
export interface PanelLining {
  /** Panels to be worked. */
  readonly pieces: number;
  /** Thread that they take. */
  readonly mm: number;
}

/** Cloth for the lining, whole centimetres: pieces laid in rows, and a little more than the cuts. */
export interface LiningCloth {
  /** Pieces to be cut. */
  readonly pieces: number;
  /** Width of one of them, with its allowance. */
  readonly pieceWidthCm: number;
  /** Height of one of them, with its allowance. */
  readonly pieceHeightCm: number;
  /** Width of cloth that all of them take. */
  readonly widthCm: number;
  /** Length of cloth that all of them take. */
  readonly heightCm: number;
  /** Width of the cloth that is reckoned with. */
  readonly clothWidthCm: number;
  /** What is added to each piece all round. */
  readonly allowanceMm: number;
}

/**
 * What to have for one purse or a batch, from the pattern alone. A pattern with one panel stands for
 * both sides of a purse, unless `panels` is 1; one with two panels is a purse.
 */
export function shoppingList(pattern: Pattern, wish: ShoppingWish = {}): ShoppingList {
  const { pieces = 1, beadReservePercent = usualBeadReservePercent } = wish;
  const { clothWidthCm = usualClothWidthCm, lining = 'cloth' } = wish;
  const held = pattern.panels.length;
  const panels = Math.max(held, wish.panels ?? 2);
  const times = (pieces * panels) / held;
  const beads = materials(pattern, { times, reservePercent: beadReservePercent });
  const open = pattern.panels.reduce(
    (sum, panel) => sum + lettersInWorkingOrder(panel).split(undecidedMark).length - 1,
    0,
  );
  const size = mainSize(pattern);
  return {
    title: pattern.title,
    pieces,
    panels,
    patternPanels: held,
    swatch: pattern.swatch !== undefined,
    beadReservePercent,
    beads,
    totals: totalsOf(beads),
    undecided: open * times,
    thread: threadOf(pattern, times, lining === 'crocheted' ? pieces * panels : 0),
    sewing: panels === 2 ? sewing(pattern) : undefined,
    hookMm: size && hookRangeMm(size),
    needleMm: size && needleRangeMm(size),
    lining: liningOf(pattern, pieces * panels, clothWidthCm),
    panelLining: { pieces: pieces * panels, mm: bareThreadMm(pattern, pieces * panels) },
    liningOf: lining,
    ownHookMm: pattern.thread?.hookMm,
  };
}

function totalsOf(beads: readonly MaterialRow[]): ShoppingTotals {
  const sum = (of: (row: MaterialRow) => number) =>
    Math.round(beads.reduce((total, row) => total + of(row), 0) * 100) / 100;
  const all = (of: (row: MaterialRow) => number | undefined) =>
    beads.every((row) => of(row) !== undefined) ? sum((row) => of(row)!) : undefined;
  const bought = beads.filter(({ toBuy }) => toBuy > 0);
  return {
    count: sum(({ count }) => count),
    withReserve: sum(({ withReserve }) => withReserve),
    grams: all(({ grams }) => grams),
    toBuy: sum(({ toBuy }) => toBuy),
    packets: all(({ toBuy, packets }) => (toBuy === 0 ? 0 : packets)),
    cost: sum(({ cost }) => cost ?? 0),
    bought: bought.length,
    priced: bought.filter(({ cost }) => cost !== undefined).length,
  };
}

/** The thread of panels without beads, each in one length. */
function bareThreadMm(pattern: Pattern, panels: number): number {
  return threadFor(pattern, stitchCount(pattern.shape) * panels, panels).totalMm;
}

/** @param bare panels without beads that the same thread is to serve for */
function threadOf(pattern: Pattern, times: number, bare: number): ShoppingThread {
  const { thread: given } = pattern;
  const split = pattern.panels.map((_, panel) => panelLengths(pattern, panel));
  const lengths = split.reduce((sum, { length }) => sum + length, 0);
  const strung = split.flat().reduce((sum, { strungMm }) => sum + strungMm, 0);
  const stitches = stitchCount(pattern.shape) * pattern.panels.length;
  const need = threadFor(pattern, stitches * times, lengths * times);
  return {
    ...need,
    perStitch: threadPerStitch(pattern),
    reservePercent: given?.reservePercent ?? usualThreadReservePercent,
    tailMm: given?.tailMm ?? usualTailMm,
    strungMm: strung * times,
    // Tex is grams of 1,000 m.
    grams: given?.tex === undefined ? undefined : (need.totalMm * given.tex) / 1e6,
    spools: spoolsOf(given, need.totalMm + bareThreadMm(pattern, bare)),
    given,
    fit: threadFit(pattern),
    size: mainSize(pattern)?.name,
  };
}

function spoolsOf(given: Thread | undefined, totalMm: number): Spools | undefined {
  if (given?.spoolMm === undefined) return undefined;
  const spools = Math.max(1, Math.ceil(totalMm / given.spoolMm - 1e-9));
  const { spoolPrice: price } = given;
  const cost = price === undefined ? undefined : Math.round(spools * price * 100) / 100;
  return { spools, metres: given.spoolMm / 1000, cost };
}

/** Pieces side by side as the panels hang, each as large as the largest panel and its allowance. */
function liningOf(pattern: Pattern, pieces: number, clothWidthCm: number): LiningCloth {
  let [width, height] = [0, 0];
  for (const { startDegrees } of pattern.panels) {
    const edge = finishedEdge(layPanel(pattern.shape, { startDegrees }).geometry);
    let [left, right, top, bottom] = [0, 0, 0, 0];
    for (let p = 0; p < edge.length; p += 2) {
      left = Math.min(left, edge[p]);
      right = Math.max(right, edge[p]);
      top = Math.min(top, edge[p + 1]);
      bottom = Math.max(bottom, edge[p + 1]);
    }
    width = Math.max(width, right - left);
    height = Math.max(height, bottom - top);
  }
  const cm = (mm: number) => Math.ceil((mm + 2 * liningAllowanceMm) / 10 - 1e-6);
  const [pieceWidthCm, pieceHeightCm] = [cm(width), cm(height)];
  const inRow = Math.max(
    1,
    Math.min(pieces, Math.floor((clothWidthCm - clothSpareCm) / pieceWidthCm)),
  );
  return {
    pieces,
    pieceWidthCm,
    pieceHeightCm,
    widthCm: inRow * pieceWidthCm + clothSpareCm,
    heightCm: Math.ceil(pieces / inRow) * pieceHeightCm + clothSpareCm,
    clothWidthCm,
    allowanceMm: liningAllowanceMm,
  };
}
