import { RondureError, warning } from '../../errors.js';
import type { Warning } from '../../errors.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { layPanel } from '../../panel/lay.js';
import type { Frame } from './measures.js';
import { shapeLimits } from '../../panel/shape.js';
import type { Shape } from '../../panel/shape.js';
import { millionth } from '../../units.js';
import { usualChannelMm, usualHolesMm } from './measures.js';
import { railLengthMm } from './rail.js';
import { rimOf } from './rim.js';
import { frameStretch, heldIn, runsInRound, runsOfHeld } from './stretch.js';
import type { FrameStretch, StitchRun } from './stretch.js';
import { nearestRounds, wornWidthMm, wornWidths } from './worn.js';

/** Panel width over frame width (common practice): what is taken, and the usual range. */
export const usualRatio = 1.15;
export const ratioRange = { least: 1.1, most: 1.3 } as const;
/** Outside this range the maker is warned. */
const warnRatio = { least: 1.05, most: 1.35 };
/** More of the rim than this cannot lie in a frame: something must be left to sew together. */
const mostShare = 0.9;
/** A purse of which more than this opens gapes (judged by hand). */
const wideShare = 0.6;
/** Bare rounds under a frame that is sewn on (common practice, no source). */
const usualBareRounds = 2;

/** A hinge, seen on the bead face with 12 o'clock on top. */
export interface HingeMark {
  /** Side of the bead face. */
  readonly side: 'left' | 'right';
  /** The last stitch in the frame and the first one in the seam, of the last round, from 1. */
  readonly inFrame: number;
  /** The first stitch in the seam, of the last round, from 1. */
  readonly inSeam: number;
  /** Face angle, degrees clockwise from 12 o'clock, 0 up to 360. */
  readonly degrees: number;
}

/** The stitches of one round that lie between the hinges. */
export interface FrameRound {
  /** The round, from 1. */
  readonly round: number;
  /** Its stitches in the frame. */
  readonly runs: readonly StitchRun[];
  /** How many those are. */
  readonly stitches: number;
  /** Worked without beads. */
  readonly bare: boolean;
}

/** How a rail and the rim on it are spread over the holes of a sewn frame. */
export interface HolePlan {
  /** From one hole to the next. */
  readonly spacingMm: number;
  /** Spaces between holes along the rail: an estimate, holes differ. */
  readonly spaces: number;
  /** Stitches for one space: this many in `spaces - more` of them, one more in `more`. */
  readonly stitches: number;
  /** Spaces that hold one stitch more. */
  readonly more: number;
}

/** How a panel sits in its frame; lengths in millimetres. */
export interface FramePlan {
  /** The rail of the frame from hinge to hinge. */
  readonly railMm: number;
  /** Rounds R of the panel. */
  readonly rounds: number;
  /** Width of the panel as it hangs. */
  readonly wornWidthMm: number;
  /** Panel width over frame width. */
  readonly ratio: number;
  /** Once round the finished rim. */
  readonly rimMm: number;
  /** Stitches of the rim in the frame, and what they take up along it. */
  readonly stitches: number;
  /** What those stitches take up along the rim. */
  readonly stretchMm: number;
  /** By how much that is longer than the rail (gather) or, below zero, shorter (ease), per cent. */
  readonly gatherPercent: number;
  /** Rounds in the frame that have no beads there. */
  readonly bareRounds: number;
  /** The last round and every other one with bare stitches, from the rim inward. */
  readonly framed: readonly FrameRound[];
  /** Left, then right. */
  readonly hinges: readonly HingeMark[];
  /** The rest of the rim, sewn to the other panel. */
  readonly seam: {
    readonly runs: readonly StitchRun[];
    readonly stitches: number;
    readonly lengthMm: number;
  };
  /** Only for a frame that is sewn on. */
  readonly holes?: HolePlan;
}

/**
 * The number of rounds for a frame: the panel's worn width comes nearest to the frame's width
 * times the ratio.
 *
 * @throws RondureError `frame-out-of-reach`
 */
export function roundsForFrame(frame: Frame, shape: Shape, startDegrees?: number): number {
  const widths = wornWidths(shape, startDegrees);
  const wish = frame.widthMm * frame.ratio;
  const rounds = nearestRounds(widths, wish, frame.widthMm);
  const { least, most } = shapeLimits.rounds;
  const perRound = widths.get(least + 1)! - widths.get(least)!;
  if (Math.abs(widths.get(rounds)! - wish) > perRound) {
    throw new RondureError('frame-out-of-reach', {
      widthMm: frame.widthMm,
      leastMm: Math.ceil(widths.get(least)! / frame.ratio),
      mostMm: Math.floor(widths.get(most)! / frame.ratio),
    });
  }
  return rounds;
}

/** The rounds that stay bare under a frame: as asked, else 2, or as deep as the channel and 1 mm. */
export function bareRoundsOf(frame: Frame, shape: Shape): number {
  if (frame.bareRounds !== undefined) return Math.min(frame.bareRounds, shape.rounds);
  if (frame.fixing === 'sewn') return Math.min(usualBareRounds, shape.rounds);
  const deep = ((frame.channelDepthMm ?? usualChannelMm) + 1) / shape.roundHeightMm;
  return Math.min(Math.ceil(deep - 1e-9), shape.rounds);
}

/** The part of a panel that lies in a frame, whether or not the frame suits it. */
export function stretchIn(frame: Frame, geometry: PanelGeometry): FrameStretch | undefined {
  return frameStretch(geometry, railLengthMm(frame) * (1 + frame.gatherPercent / 100));
}

/** 1 for every stitch that stays bare under a frame, in working order; length count. */
export function bareUnderFrame(frame: Frame, geometry: PanelGeometry): Uint8Array {
  const { shape, count } = geometry;
  const bare = new Uint8Array(count);
  const stretch = stretchIn(frame, geometry);
  if (!stretch) return bare;
  let s = count;
  for (let left = bareRoundsOf(frame, shape), r = shape.rounds; left > 0; left--, r--) {
    for (let i = 0; i < shape.wedges * r; i++) bare[--s] = stretch.holds(s) ? 1 : 0;
  }
  return bare;
}

/**
 * How a panel sits in a frame.
 *
 * @throws RondureError `frame-too-wide` when the panel is narrower than the frame,
 *   `frame-rail-too-long` when too little of the rim is left
 */
export function planFrame(frame: Frame, geometry: PanelGeometry): FramePlan {
  const { shape, startDegrees, direction } = geometry;
  const railMm = railLengthMm(frame);
  const worn = wornWidthMm(shape, startDegrees);
  const ratio = worn / frame.widthMm;
  if (ratio < 1) {
    throw new RondureError('frame-too-wide', {
      widthMm: frame.widthMm,
      rounds: shape.rounds,
      wornMm: worn,
      ...usualRounds(frame, geometry),
    });
  }
  const rimMm = rimOf(geometry).lengthMm;
  const stretch = stretchIn(frame, geometry);
  if (!stretch || stretch.lengthMm > mostShare * rimMm) {
    const needed = (railMm * (1 + frame.gatherPercent / 100)) / mostShare / rimMm;
    const rounds = Math.ceil(needed * (shape.rounds + 0.5));
    throw new RondureError('frame-rail-too-long', {
      railMm,
      rounds: shape.rounds,
      rimMm,
      ...(rounds <= shapeLimits.rounds.most && { leastRounds: rounds }),
    });
  }
  const { rim, first, last, holds, stitches, lengthMm } = stretch;
  const bareRounds = bareRoundsOf(frame, shape);
  const framed = Array.from({ length: Math.max(1, bareRounds) }, (_, n) => {
    const round = shape.rounds - n;
    const runs = runsInRound(geometry, round, holds);
    const held = runs.reduce((sum, run) => sum + run.to - run.from + 1, 0);
    return { round, runs, stitches: held, bare: n < bareRounds };
  });
  const hinge = (inFrame: number, inSeam: number, mm: number): Omit<HingeMark, 'side'> => {
    const degrees = (direction * rim.angleAt(mm) * 180) / Math.PI;
    return { inFrame: inFrame + 1, inSeam: inSeam + 1, degrees: around(degrees) };
  };
  const begins = hinge(first, (first + rim.stitches - 1) % rim.stitches, rim.borderMm(first));
  const ends = hinge(last, (last + 1) % rim.stitches, rim.borderMm(last + 1));
  const [left, right] = direction === 1 ? [begins, ends] : [ends, begins];
  const seam = heldIn(geometry, shape.rounds, (s) => !holds(s));
  return {
    railMm,
    rounds: shape.rounds,
    wornWidthMm: worn,
    ratio: millionth(ratio),
    rimMm: millionth(rimMm),
    stitches,
    stretchMm: millionth(lengthMm),
    gatherPercent: millionth(100 * (lengthMm / railMm - 1)),
    bareRounds,
    framed,
    hinges: [
      { side: 'left', ...left },
      { side: 'right', ...right },
    ],
    seam: {
      runs: runsOfHeld(seam),
      stitches: rim.stitches - stitches,
      lengthMm: millionth(rimMm - lengthMm),
    },
    ...(frame.fixing === 'sewn' && { holes: holePlan(frame, railMm, stitches) }),
  };
}

/**
 * How every panel of a pattern sits in its frame; none where it has no frame.
 *
 * @throws RondureError those of `planFrame`
 */
export function framePlans({
  frame,
  shape,
  panels,
}: {
  readonly frame?: Frame | undefined;
  readonly shape: Shape;
  readonly panels: readonly { readonly startDegrees: number }[];
}): FramePlan[] {
  if (!frame) return [];
  return panels.map(({ startDegrees }) =>
    planFrame(frame, layPanel(shape, { startDegrees }).geometry),
  );
}

/** What a maker should know of a frame and a panel that can be joined all the same. */
export function frameWarnings(frame: Frame, geometry: PanelGeometry): Warning[] {
  const plan = planFrame(frame, geometry);
  const found: Warning[] = [];
  if (plan.ratio < warnRatio.least || plan.ratio > warnRatio.most) {
    const { rounds, ratio } = plan;
    found.push(warning('frame-ratio', { rounds, ratio, ...usualRounds(frame, geometry) }));
  }
  const share = plan.stretchMm / plan.rimMm;
  if (share > wideShare) {
    found.push(warning('frame-opens-wide', { percent: Math.round(100 * share) }));
  }
  return found;
}

/** The rounds with which a panel of this shape has the usual width for a frame. */
function usualRounds(frame: Frame, { shape, startDegrees }: PanelGeometry) {
  const widths = wornWidths(shape, startDegrees);
  return {
    from: nearestRounds(widths, ratioRange.least * frame.widthMm, frame.widthMm),
    to: nearestRounds(widths, ratioRange.most * frame.widthMm, frame.widthMm),
  };
}

function holePlan(frame: Frame, railMm: number, stitches: number): HolePlan {
  const spacingMm = frame.holeSpacingMm ?? usualHolesMm;
  const spaces = Math.max(1, Math.round(railMm / spacingMm));
  const each = Math.floor(stitches / spaces);
  return { spacingMm, spaces, stitches: each, more: stitches - each * spaces };
}

/** Degrees brought to 0 up to 360. */
function around(degrees: number): number {
  const rest = millionth(degrees - 360 * Math.floor(degrees / 360));
  return rest >= 360 ? 0 : rest;
}
