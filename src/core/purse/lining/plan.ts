import { RondureError } from '../../errors.js';
import { stretchIn } from '../frame/plan.js';
import { acrossRange } from '../../panel/across.js';
import type { SizeRange } from '../../panel/across.js';
import { acrossMm, cornerRadius } from '../../panel/edge.js';
import { layPanel } from '../../panel/lay.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import type { Pattern } from '../../pattern/pattern.js';
import { grown, lengthOfOutline, spotFromTop, support, widestMm } from './soft-outline.js';
import type { OutlineSpot, SoftOutline } from './soft-outline.js';

/** What is usual where nothing is said (common practice, no source); lengths in millimetres. */
export const usualLining = { allowanceMm: 5, easeMm: 0, openingShare: 0.45, gapMm: 0 } as const;
/** What may be asked for. */
export const liningLimits = {
  allowanceMm: { least: 0, most: 30 },
  easeMm: { least: 0, most: 50 },
  openingPercent: { least: 10, most: 90 },
  gapMm: { least: 0, most: 200 },
  /** Measured width over the model's: beyond this it is a slip of the ruler or of the unit. */
  measured: { least: 0.5, most: 2 },
  /** Ease over the panel's width. */
  easeShare: 0.2,
  acrossMm: { least: 10, most: 1200 },
} as const;
/** The turning gap leaves this much of the seam on both sides of it. */
const leastSeamMm = 10;

/** What a lining is cut by; lengths in millimetres. */
export interface LiningWish {
  /** 0-based index into the pattern's panels. */
  readonly panel?: number;
  /** The finished panel at its widest place, as measured; without it the model's estimate holds. */
  readonly measuredMm?: number;
  /** From the seam to the edge that is cut; the usual when undefined. */
  readonly allowanceMm?: number;
  /** How much narrower than the panel the lining is, at its widest place. */
  readonly easeMm?: number;
  /**
   * Share of the rim that lies in the frame, 0 to 1, centred at 12 o'clock. Left out: by the
   * pattern's frame, or as usual where it has none.
   */
  readonly openingShare?: number;
  /**
   * Length of a gap for turning: none by default, for a lining that is put in wrong side out needs no
   * turning. At the bottom, on a polygon in the middle of a side there.
   */
  readonly gapMm?: number;
}

/** A lining piece, seen as the bead face is, origin at the panel's centre; millimetres. */
export interface Lining {
  /** Where it is sewn. */
  readonly seam: SoftOutline;
  /** Where it is cut. */
  readonly cut: SoftOutline;
  /** Widest places. */
  readonly seamAcrossMm: number;
  /** Widest place of the cut piece. */
  readonly cutAcrossMm: number;
  /** Width by the model. */
  readonly modelAcrossMm: number;
  /** Between what it lies: before a swatch both outlines are possible. */
  readonly modelAcross: SizeRange;
  /** Width of the finished panel, where it was measured. */
  readonly measuredMm?: number;
  /** From the seam to the edge that is cut. */
  readonly allowanceMm: number;
  /** How much narrower than the panel the lining is, at its widest place. */
  readonly easeMm: number;
  /** Share of the rim that lies in the frame, 0 to 1. */
  readonly openingShare: number;
  /** Where the opening comes from. */
  readonly openingFrom: 'asked' | 'frame' | 'usual';
  /** Length of the turning gap; 0 for none. */
  readonly gapMm: number;
  /** The closed ring stands for a spiral's stepped rim. */
  readonly spiral: boolean;
  /** Pieces of this shape for one purse. */
  readonly pieces: 1 | 2;
  /** 12 o'clock on the seam. */
  readonly top: OutlineSpot;
  /** Where the seam between the panels begins and ends, right and left of 12 o'clock. */
  readonly hinges: readonly [OutlineSpot, OutlineSpot];
  /** One end, the middle and the other end of the turning gap; none when it is 0. */
  readonly gap: readonly OutlineSpot[];
}

/**
 * The lining of one panel: the closed ring of its finished edge (a spiral's step must not be cut
 * into cloth), scaled to the measured widest place less ease, and grown by the allowance.
 *
 * @throws RondureError `lining-impossible` for measurements that cannot be, with the range
 */
export function planLining(pattern: Pattern, wish: LiningWish = {}): Lining {
  const { shape, panels } = pattern;
  const index = wish.panel ?? 0;
  const geometry = layPanel(shape, { startDegrees: panels[index].startDegrees }).geometry;
  const modelAcrossMm = acrossMm(shape);
  const { measuredMm } = wish;
  const { allowanceMm, easeMm } = { ...usualLining, ...wish };
  const { measured, easeShare, acrossMm: possible } = liningLimits;
  const panelMm = measuredMm ?? modelAcrossMm;
  if (measuredMm !== undefined) {
    const least = measured.least * modelAcrossMm;
    require('measured', measuredMm, least, measured.most * modelAcrossMm, modelAcrossMm);
  }
  require('across', panelMm, possible.least, possible.most);
  require('ease', easeMm, 0, easeShare * panelMm, panelMm);
  const { least, most } = liningLimits.allowanceMm;
  require('allowance', allowanceMm, least, most);

  const unscaled = closedRim(geometry);
  const scale = (panelMm - easeMm) / widestMm(unscaled);
  const seam: SoftOutline = {
    corners: unscaled.corners.map(([x, y]) => [x * scale, y * scale] as const),
    radiusMm: unscaled.radiusMm * scale,
  };
  const cut = grown(seam, allowanceMm);
  const length = lengthOfOutline(seam);
  const framed = shareInFrame(pattern, geometry);
  const openingShare = wish.openingShare ?? framed ?? usualLining.openingShare;
  const mostGap = (1 - openingShare) * length - 2 * leastSeamMm;
  const gapMm = wish.gapMm ?? usualLining.gapMm;
  require('gap', gapMm, 0, Math.max(0, mostGap));
  const half = (openingShare * length) / 2;
  const gapAt = middleOfGap(seam, half + leastSeamMm + gapMm / 2);
  return {
    seam,
    cut,
    seamAcrossMm: widestMm(seam),
    cutAcrossMm: widestMm(cut),
    modelAcrossMm,
    modelAcross: acrossRange(pattern),
    ...(measuredMm !== undefined && { measuredMm }),
    allowanceMm,
    easeMm,
    openingShare,
    openingFrom: wish.openingShare !== undefined ? 'asked' : framed ? 'frame' : 'usual',
    gapMm,
    spiral: shape.construction === 'spiral',
    pieces: panels.length === 2 && !alike(pattern, seam, index) ? 1 : 2,
    top: spotFromTop(seam, 0),
    hinges: [spotFromTop(seam, half), spotFromTop(seam, -half)],
    gap: gapMm === 0 ? [] : [-1, 0, 1].map((side) => spotFromTop(seam, gapAt + (side * gapMm) / 2)),
  };
}

/**
 * The ring h·(R+0.5) of a panel: its edge where rounds are joined, halfway up the step where they
 * are a spiral. A polygon is turned as its last round is.
 */
export function closedRim(geometry: PanelGeometry): SoftOutline {
  const { shape, startDegrees, direction, turns } = geometry;
  const reach = cornerRadius(shape);
  if (shape.outline === 'circle') return { corners: [[0, 0]], radiusMm: reach };
  const step = (2 * Math.PI) / shape.wedges;
  const first = (startDegrees * Math.PI) / 180 + direction * turns[shape.rounds] * step;
  const corners = Array.from({ length: shape.wedges }, (_, k) => {
    const angle = first + k * step;
    return [reach * Math.sin(angle), -reach * Math.cos(angle)] as const;
  });
  return { corners, radiusMm: 0 };
}

/** Share of the rim that lies in the pattern's frame, by the stitches in it. */
function shareInFrame({ frame }: Pattern, geometry: PanelGeometry): number | undefined {
  const stretch = frame && stretchIn(frame, geometry);
  return stretch && stretch.lengthMm / stretch.rim.lengthMm;
}

/**
 * Where the middle of the turning gap lies, from the top along the seam: a straight piece is easier
 * to close by hand than a corner, so the middle of the side nearest to the bottom, when that keeps
 * its distance from the hinges.
 */
function middleOfGap(seam: SoftOutline, leastFromTop: number): number {
  const length = lengthOfOutline(seam);
  const sides = seam.corners.length;
  if (sides === 1) return length / 2;
  // The first corner past the top lies on the same straight side as the top.
  const turn = 2 * Math.PI;
  const angleOf = (p: readonly [number, number]) => (Math.atan2(p[0], -p[1]) + turn) % turn;
  const [x, y] = seam.corners.reduce((a, b) => (angleOf(b) < angleOf(a) ? b : a));
  const top = spotFromTop(seam, 0);
  const corner = Math.hypot(x - top.x, y - top.y);
  const middles = seam.corners.map((_, k) => corner + ((k + 0.5) * length) / sides);
  const off = (at: number) => Math.abs(at - length / 2);
  const nearest = middles.reduce((a, b) => (off(b) < off(a) - 1e-6 ? b : a));
  return off(nearest) <= length / 2 - leastFromTop ? nearest : length / 2;
}

/** Whether the other panel's lining has this shape as well, within a fifth of a millimetre. */
function alike(pattern: Pattern, seam: SoftOutline, index: number): boolean {
  const { startDegrees } = pattern.panels[1 - index];
  const other = closedRim(layPanel(pattern.shape, { startDegrees }).geometry);
  const scale = widestMm(seam) / widestMm(other);
  return Array.from({ length: 360 }, (_, degree) => (degree * Math.PI) / 180).every(
    (angle) => Math.abs(support(seam, angle) - scale * support(other, angle)) < 0.2,
  );
}

/** What of a lining can be out of its range. */
export type LiningMeasure = 'measured' | 'across' | 'ease' | 'allowance' | 'gap';

function require(
  what: LiningMeasure,
  gotMm: number,
  leastMm: number,
  mostMm: number,
  panelMm?: number,
): void {
  if (gotMm >= leastMm - 1e-9 && gotMm <= mostMm + 1e-9) return;
  throw new RondureError('lining-impossible', { what, gotMm, leastMm, mostMm, panelMm });
}
