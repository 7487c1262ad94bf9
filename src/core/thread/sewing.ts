import type { Pattern, Shape } from '../pattern/schema.js';

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
  /** Of it, what lies in the frame on one side, and what is sewn to the other panel. */
  readonly arcMm: number;
  readonly seamMm: number;
  /** Whether the arc is only a usual share of the rim, since no frame is known. */
  readonly estimate: boolean;
  /** Width of the frame: known, or by the panel, with the range that goes with it. */
  readonly frameWidthMm: number;
  readonly frameRangeMm: readonly [number, number] | undefined;
  readonly kind: string | undefined;
  readonly fixing: 'sewn' | 'glued' | undefined;
  readonly seamThreadMm: number;
  /** Both sides together; none for a glued frame. */
  readonly frameThreadMm: number;
  /** Braid over the seams of both sides. */
  readonly braidMm: number;
}

/** Seam, frame and braid of a purse of two panels, by the pattern's frame where it has one. */
export function sewing(pattern: Pick<Pattern, 'shape' | 'frame'>, acrossMm: number): Sewing {
  const rim = rimMm(pattern.shape);
  const frame = frameFacts(pattern.frame);
  const arcMm = Math.min(rim, frame.arcMm ?? openShare * rim);
  const seamMm = rim - arcMm;
  const { usual, least, most } = panelPerFrame;
  return {
    rimMm: rim,
    arcMm,
    seamMm,
    estimate: frame.arcMm === undefined,
    frameWidthMm: frame.widthMm ?? acrossMm / usual,
    frameRangeMm: frame.widthMm === undefined ? [acrossMm / most, acrossMm / least] : undefined,
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

/** What is known of a frame: fields of the pattern's frame, as far as they are there. */
function frameFacts(frame: Pattern['frame']): {
  arcMm?: number;
  widthMm?: number;
  kind?: string;
  fixing?: 'sewn' | 'glued';
} {
  const { railMm, widthMm, fixing, kind }: Record<string, unknown> = frame ?? {};
  const isLength = (value: unknown): value is number =>
    typeof value === 'number' && value > 0 && Number.isFinite(value);
  return {
    ...(isLength(railMm) && { arcMm: railMm }),
    ...(isLength(widthMm) && { widthMm }),
    ...(typeof kind === 'string' && { kind }),
    ...((fixing === 'sewn' || fixing === 'glued') && { fixing }),
  };
}
