import type { FrameKind } from '../../words/pages/english/frame.js';
import { acrossRange } from '../panel/across.js';
import { frameFault } from '../purse/frame/measures.js';
import { railLengthMm } from '../purse/frame/rail.js';
import type { Pattern } from '../pattern/pattern.js';
import type { Shape } from '../panel/shape.js';

/** Share of the rim that lies in the frame where no frame is known (worked out, no source). */
const openShare = 0.45;
/** Panel across over frame width: usual, least and most (worked out, no source). */
const panelPerFrame = { usual: 1.15, least: 1.1, most: 1.3 };
/** Sewing thread over the length it sews: rim to rim, and into a frame (from memory, unchecked). */
const seamThread = 3;
const frameThread = 5;
/** Braid turned under at each of its ends, millimetres. */
const braidEndMm = 10;

/** What joins two panels into a purse, millimetres. */
export interface Sewing {
  /** The finished edge of one panel. */
  readonly rimMm: number;
  /** The frame from hinge to hinge, on one side; and what of the rim is sewn to the other panel. */
  readonly arcMm: number;
  /** What of the rim is sewn to the other panel. */
  readonly seamMm: number;
  /** Whether the arc is only a usual share of the rim, since no frame is known. */
  readonly estimate: boolean;
  /** Width of the frame: known, or by the panel, with the range that goes with it. */
  readonly frameWidthMm: number;
  /** Narrowest and widest frame for this panel, where none is known. */
  readonly frameRangeMm: readonly [number, number] | undefined;
  /** Kind of the frame, where it is known. */
  readonly kind: FrameKind | undefined;
  /** How the frame is fixed, where it is known. */
  readonly fixing: 'sewn' | 'glued' | undefined;
  /** Thread for the seam between the panels. */
  readonly seamThreadMm: number;
  /** Both sides together; none for a glued frame. */
  readonly frameThreadMm: number;
  /** Braid over the seams of both sides. */
  readonly braidMm: number;
}

/**
 * Seam, frame and braid of a purse of two panels, by the pattern's frame where it has one; a frame
 * that is still to be bought goes with every size that the panel may have.
 */
export function sewing(pattern: Pick<Pattern, 'shape' | 'frame' | 'swatch'>): Sewing {
  const { leastMm, mostMm } = acrossRange(pattern);
  const rim = rimMm(pattern.shape);
  const frame = frameFacts(pattern.frame);
  const arcMm = frame.railMm ?? openShare * rim;
  const seamMm = Math.max(0, rim - (frame.heldMm ?? arcMm));
  const { usual, least, most } = panelPerFrame;
  return {
    rimMm: rim,
    arcMm,
    seamMm,
    estimate: frame.railMm === undefined,
    frameWidthMm: frame.widthMm ?? (leastMm + mostMm) / 2 / usual,
    frameRangeMm: frame.widthMm === undefined ? [mostMm / most, leastMm / least] : undefined,
    kind: frame.kind,
    fixing: frame.fixing,
    seamThreadMm: seamThread * seamMm,
    frameThreadMm: frame.fixing === 'glued' ? 0 : 2 * frameThread * arcMm,
    braidMm: 2 * (arcMm + 2 * braidEndMm),
  };
}

/** Length of the finished edge: the outline at h·(R + 0.5), without a spiral's step. */
export function rimMm(
  shape: Pick<Shape, 'wedges' | 'rounds' | 'roundHeightMm' | 'outline'>,
): number {
  const edge = shape.roundHeightMm * (shape.rounds + 0.5);
  const { wedges } = shape;
  return shape.outline === 'circle'
    ? 2 * Math.PI * edge
    : 2 * wedges * edge * Math.tan(Math.PI / wedges);
}

/** What is known of a frame, as far as the pattern's frame tells it. */
interface FrameFacts {
  /** From hinge to hinge along the frame. */
  readonly railMm?: number;
  /** What of the rim lies on it: more where it is gathered, less where it is eased. */
  readonly heldMm?: number;
  readonly widthMm?: number;
  readonly kind?: FrameKind;
  readonly fixing?: 'sewn' | 'glued';
}

/** Reads a frame field by field, so that one without all of them still tells what it has. */
function frameFacts(frame: Pattern['frame']): FrameFacts {
  const fields: Record<string, unknown> = { ...frame };
  const number = (name: string) => {
    const value = fields[name];
    return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
  };
  const kind = oneOf(fields.kind, ['half-round', 'squared', 'oval'] as const);
  const fixing = oneOf(fields.fixing, ['sewn', 'glued'] as const);
  const [widthMm, heightMm] = [number('widthMm'), number('heightMm')];
  const facts = {
    ...(widthMm !== undefined && { widthMm }),
    ...(kind && { kind }),
    ...(fixing && { fixing }),
  };
  if (kind === undefined || widthMm === undefined || heightMm === undefined) return facts;
  const [cornerRadiusMm, hingeWidthMm] = [number('cornerRadiusMm'), number('hingeWidthMm')];
  const measures = { kind, widthMm, heightMm, cornerRadiusMm, hingeWidthMm };
  if (frameFault(measures)) return facts;
  const railMm = railLengthMm(measures);
  return { ...facts, railMm, heldMm: railMm * (1 + (number('gatherPercent') ?? 0) / 100) };
}

function oneOf<T extends string>(value: unknown, known: readonly T[]): T | undefined {
  return known.find((one) => one === value);
}
