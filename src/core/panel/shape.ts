import { RondureError, warning } from '../errors.js';
import type { Warning } from '../errors.js';
import { shapeLimits } from './limits.js';

export { shapeLimits } from './limits.js';

/** How a panel is worked: what its stitches are counted by, and what a stitch measures. */
export interface Shape {
  /** N, equal sectors of the panel and increases a round: a whole number, 3 to 12. */
  wedges: number;
  /** R, from the centre to the rim: a whole number, 2 to 80. */
  rounds: number;
  /** Which stitch of each wedge is doubled in each round. */
  increase: 'first' | 'middle' | 'last';
  /** How far a stitch sits behind the one that it is worked into, in stitch widths: -1 to 1. */
  lean: number;
  /** What the rounds are: N-gons, or circles; an N-gon needs an increase at an end of the wedge. */
  outline: 'polygon' | 'circle';
  /** Rounds run on, or each is closed by a slip stitch. */
  construction: 'spiral' | 'joined';
  /** The hand that holds the hook. */
  hand: 'right' | 'left';
  /** Whether beads lie away from the worker or toward the worker. */
  beadsFace: 'away' | 'toward';
  /** Single crochet under both loops or the one on the side of the beads; slip stitch. */
  stitch?: 'both-loops' | 'bead-side-loop' | 'slip' | undefined;
  /** From stitch to stitch along a round, millimetres: above 0, at most 50. */
  stitchWidthMm: number;
  /** From round to round, millimetres: above 0, at most 50. */
  roundHeightMm: number;
}

/** Stitch pitch over bead diameter while nothing has been measured (common practice, no source). */
export const pitchPerBeadDiameter = 1.05;

/** What `completeShape` needs; everything but wedges and rounds has a default. */
export interface ShapeWish {
  /** Wedges N: a whole number, 3 to 12. */
  wedges: number;
  /** Rounds R: a whole number, 2 to 80. */
  rounds: number;
  /** Which stitch of each wedge is doubled; the last when undefined. */
  increase?: Shape['increase'];
  /** How far a stitch sits behind its parent, in stitch widths, -1 to 1; 0.5 when undefined. */
  lean?: number;
  /** Shape of the rim; a polygon where it nests, when undefined. */
  outline?: Shape['outline'];
  /** Spiral or joined rounds; a spiral when undefined. */
  construction?: Shape['construction'];
  /** The hand that holds the hook; the right when undefined. */
  hand?: Shape['hand'];
  /** Which way the beads lie; away when undefined. */
  beadsFace?: Shape['beadsFace'];
  /** How the stitch is worked; left out, the pages say what usually gives such a lean. */
  stitch?: Shape['stitch'];
  /** Width of a stitch, measured; from the bead when undefined. */
  stitchWidthMm?: number;
  /** Height of a round, measured; from the bead when undefined. */
  roundHeightMm?: number;
  /** Bead diameter that gives the stitch size where it is not set, millimetres. */
  beadDiameterMm: number;
}

/** Round height over stitch width of a stitch of which `wedges` wedges lie flat. */
export function flatHeightPerWidth(wedges: number, outline: Shape['outline']): number {
  return outline === 'circle' ? wedges / (2 * Math.PI) : 1 / (2 * Math.tan(Math.PI / wedges));
}

/** How many wedges (not whole) lie flat with this stitch: the inverse of `flatHeightPerWidth`. */
export function flatWedges(
  shape: Pick<Shape, 'outline' | 'stitchWidthMm' | 'roundHeightMm'>,
): number {
  const { outline, stitchWidthMm: w, roundHeightMm: h } = shape;
  return outline === 'circle' ? (2 * Math.PI * h) / w : Math.PI / Math.atan(w / (2 * h));
}

/** The outline that nests without stretching (a polygon when |f - 0.5 - lean| <= 0.25). */
export function naturalOutline(increase: Shape['increase'], lean: number): Shape['outline'] {
  if (increase === 'middle') return 'circle';
  const f = increase === 'last' ? 1 : 0;
  return Math.abs(f - 0.5 - lean) <= 0.25 ? 'polygon' : 'circle';
}

/**
 * Fills a wish up to a whole shape: the usual way of working, the natural outline, and a stitch
 * that lies flat with pitch = 1.05 bead diameters.
 *
 * @throws RondureError `shape-impossible`, `polygon-needs-end-increase`
 */
export function completeShape(wish: ShapeWish): Shape {
  const increase = wish.increase ?? 'last';
  const lean = wish.lean ?? 0.5;
  const outline = wish.outline ?? naturalOutline(increase, lean);
  requireWhole('wedges', wish.wedges);
  requireWhole('rounds', wish.rounds);
  requireBetween('lean', lean, shapeLimits.lean);
  if (outline === 'polygon' && increase === 'middle') {
    throw new RondureError('polygon-needs-end-increase', undefined);
  }
  const size = stitchSize(wish, outline);
  return {
    wedges: wish.wedges,
    rounds: wish.rounds,
    increase,
    lean,
    outline,
    construction: wish.construction ?? 'spiral',
    hand: wish.hand ?? 'right',
    beadsFace: wish.beadsFace ?? 'away',
    ...(wish.stitch && { stitch: wish.stitch }),
    ...size,
  };
}

function stitchSize(
  wish: ShapeWish,
  outline: Shape['outline'],
): Pick<Shape, 'stitchWidthMm' | 'roundHeightMm'> {
  const { stitchWidthMm: w, roundHeightMm: h, beadDiameterMm, wedges } = wish;
  for (const [field, length] of Object.entries({ stitchWidthMm: w, roundHeightMm: h })) {
    if (length !== undefined) requireBetween(field, length, shapeLimits.stitchMm);
  }
  requireBetween('beadDiameterMm', beadDiameterMm, shapeLimits.stitchMm);
  const pitch = pitchPerBeadDiameter * beadDiameterMm;
  if (w !== undefined && h !== undefined) return { stitchWidthMm: w, roundHeightMm: h };
  if (w !== undefined) return { stitchWidthMm: w, roundHeightMm: thousandths(pitch ** 2 / w) };
  if (h !== undefined) return { stitchWidthMm: thousandths(pitch ** 2 / h), roundHeightMm: h };
  const ratio = flatHeightPerWidth(wedges, outline);
  return {
    stitchWidthMm: thousandths(pitch / Math.sqrt(ratio)),
    roundHeightMm: thousandths(pitch * Math.sqrt(ratio)),
  };
}

/** Stitch sizes are kept to a micrometre: finer than any measurement, and short in the file. */
function thousandths(length: number): number {
  return Math.round(length * 1000) / 1000;
}

function requireWhole(field: 'wedges' | 'rounds', got: number): void {
  const { least, most } = shapeLimits[field];
  if (!Number.isInteger(got) || got < least || got > most) {
    throw new RondureError('shape-impossible', {
      field,
      got,
      expected: { kind: 'whole', least, most },
    });
  }
}

function requireBetween(
  field: string,
  got: number,
  { least, most }: { readonly least: number; readonly most: number },
): void {
  if (!(got >= least && got <= most)) {
    throw new RondureError('shape-impossible', {
      field,
      got,
      expected: { kind: 'between', least, most },
    });
  }
}

/** +1 when the work runs clockwise on the bead face, -1 when anticlockwise. */
export function directionOf(shape: Pick<Shape, 'hand' | 'beadsFace'>): 1 | -1 {
  return (shape.hand === 'right') === (shape.beadsFace === 'away') ? 1 : -1;
}

/** Stitches in round r: N·r. */
export function stitchesInRound(shape: Pick<Shape, 'wedges'>, r: number): number {
  return shape.wedges * r;
}

/** Stitches before round r, which is the number in the panel of its first stitch: N·r(r-1)/2. */
export function stitchesBefore(shape: Pick<Shape, 'wedges'>, r: number): number {
  return (shape.wedges * r * (r - 1)) / 2;
}

/** The round, from 1, of a stitch of the panel, counted from 0 in working order. */
export function roundOfStitch(shape: Pick<Shape, 'wedges' | 'rounds'>, s: number): number {
  let r = 1;
  while (r < shape.rounds && s >= stitchesBefore(shape, r + 1)) r++;
  return r;
}

/** Stitches of the whole panel: N·R(R+1)/2. */
export function stitchCount(shape: Pick<Shape, 'wedges' | 'rounds'>): number {
  return stitchesBefore(shape, shape.rounds + 1);
}

/** What a maker should know before crocheting this shape with beads of this diameter. */
export function shapeWarnings(shape: Shape, beadDiameterMm: number): Warning[] {
  const { wedges, increase, lean, outline, stitchWidthMm: w, roundHeightMm: h } = shape;
  const found: Warning[] = [];
  if (outline === 'polygon' && naturalOutline(increase, lean) !== 'polygon') {
    found.push(warning('polygon-stretches', { increase, lean }));
  }
  const flat = flatWedges(shape);
  const facts = { wedges, flatWedges: Math.round(flat * 10) / 10 };
  // Lies flat within 0.92-1.08 after blocking and sewing (from memory, unchecked).
  if (wedges / flat < 0.92) found.push(warning('panel-cups', facts));
  if (wedges / flat > 1.08) found.push(warning('panel-ruffles', facts));
  for (const [what, gotMm] of [['width', w] as const, ['height', h] as const]) {
    if (gotMm < 0.9 * beadDiameterMm) {
      found.push(warning('stitch-smaller-than-bead', { what, gotMm, beadMm: beadDiameterMm }));
    }
  }
  return found;
}
