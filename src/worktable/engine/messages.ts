import type { PanelReport, PanelWish } from '../../core/make.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { Place } from '../../core/picture/sampling/place.js';
import type { Shape } from '../../core/panel/shape.js';
import type { Failure } from './failure.js';

/** To the worker: the parts of the wish that are new, and whether it is to be settled now. */
export interface Ask {
  readonly number: number;
  /** A key that holds undefined takes that part away. */
  readonly part: { readonly [K in keyof PanelWish]?: PanelWish[K] | undefined };
  readonly settle: boolean;
  /** Nobody looks: drop what is worked on, without an answer. */
  readonly rest?: boolean;
}

/** From the worker: what came of the newest wish it knows. */
export type Answer =
  | {
      readonly kind: 'followed';
      readonly number: number;
      readonly shape: Shape;
      /** Palette index of each stitch, by panel. */
      readonly panels: readonly {
        readonly startDegrees: number;
        readonly beadOf: Int16Array;
        readonly place?: Place | undefined;
      }[];
    }
  | {
      readonly kind: 'settled';
      readonly number: number;
      readonly pattern: Pattern;
      readonly report: PanelReport;
    }
  | { readonly kind: 'failed'; readonly number: number; readonly error: Failure };
