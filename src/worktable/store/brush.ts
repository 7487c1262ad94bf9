import { signal } from '@preact/signals';

/** What the brush does where it touches the panel. */
export type BrushTool =
  'bead' | 'line' | 'ring' | 'wedge' | 'patch' | 'away' | 'replace' | 'move' | 'pick';

/** The brush as it lies in the hand. Not part of the piece; nothing here is undone. */
export interface Brush {
  readonly tool: BrushTool;
  /** Id of the bead that it lays, `.` for none; the most used bead while undefined. */
  readonly bead: string | undefined;
  /** Whether each stroke is done in every wedge alike. */
  readonly everyWedge: boolean;
  /** Whether beads laid by hand are marked on the panel. */
  readonly shown: boolean;
  /** Whether a part that is moved stays where it was, too. */
  readonly copies: boolean;
  /** Stitches that are marked to be moved. */
  readonly part: readonly number[];
  /** Where a line begins that is laid by keyboard, or -1. */
  readonly lineFrom: number;
}

export const brush = signal<Brush>({
  tool: 'bead',
  bead: undefined,
  everyWedge: false,
  shown: false,
  copies: false,
  part: [],
  lineFrom: -1,
});

/** Changes the brush, part by part. */
export function handle(part: Partial<Brush>): void {
  brush.value = { ...brush.peek(), ...part };
}
