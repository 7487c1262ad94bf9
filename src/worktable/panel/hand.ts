import type { ChartPanel } from '../store/chart.js';

/** A place on the panel. */
export interface Spot {
  /** On the bead face, x right and y down, as the panel was made (not as it is turned now). */
  readonly xMm: number;
  readonly yMm: number;
  /** The stitch there, or -1. */
  readonly stitch: number;
}

/** What follows a finger that is down. */
export interface Pull {
  move(to: Spot): void;
  /** The finger was lifted. */
  end(): void;
  /** A second finger came, or the system took the pointer away: take back what was done. */
  drop(): void;
}

/** What touched the panel. */
export interface Touch {
  readonly kind: 'mouse' | 'pen' | 'touch';
  /** The other end of a pen, or the key Alt with a mouse. */
  readonly other: boolean;
}

/** What the open step does with fingers and wheel on the panel. */
export interface PanelHand {
  /** A finger or the mouse comes down; undefined: it is left to the view, which lights the stitch up. */
  begin(at: Spot, by: Touch): Pull | undefined;
  /** Whether fingers only move the panel once a pen has been taken up. */
  readonly pens?: boolean;
  /** Whether beads are chosen anew as the finger moves: then it is told of a move before the frame is due. */
  readonly soon?: boolean;
  /** Whether a tap that it took lights up no stitch. */
  readonly quiet?: boolean;
  /** Reads what `draw` hangs on besides chart, view and what the chart follows: drawn anew when another value comes. */
  watch?(): unknown;
  /** What is said of the stitch that is lit up (-1: of none); undefined: what is said elsewhere. */
  says?(s: number): string | undefined;
  /** The wheel, or two fingers: larger by a factor, turned clockwise, about a place. */
  pinch?(by: { factor: number; degrees: number; about: Spot }): void;
  /** Draws on the panel, in millimetres of the bead face. */
  draw?(context: CanvasRenderingContext2D, scene: HandScene): void;
  /** The shape of the pointer over a place. */
  cursor?(at: Spot): string;
}

/** What a hand may want to know when it draws. */
export interface HandScene {
  readonly panel: ChartPanel;
  /** Screen pixels (CSS) in a millimetre. */
  readonly pxPerMm: number;
  readonly ink: string;
  readonly paper: string;
}
