import type { Sight } from '../../core/colour/vision.js';

/** How the table is looked at. Not part of the piece; nothing here is undone. */
export interface View {
  /** Id of the open step. */
  readonly step: string;
  /** Which panel: 0 the front, 1 the back. */
  readonly panel: number;
  readonly look: 'beads' | 'cells';
  readonly wedges: boolean;
  /** Seen from the side that faces the maker at work, where the beads lie away from it: as in a mirror. */
  readonly workingFace: boolean;
  /** Clockwise, as it is seen. */
  readonly turnDegrees: number;
  /** 1: the whole panel. */
  readonly zoom: number;
  /** Middle of what is shown, millimetres on the bead face as turned. */
  readonly panXmm: number;
  readonly panYmm: number;
  /** How much of the picture shows over the beads, 0 to 1. */
  readonly overlay: number;
  /** The stitch that is lit up on the panel and on the thread, or -1. */
  readonly litStitch: number;
  /** Id of the bead all of whose stitches are lit up. */
  readonly litBead: string | undefined;
  /** Stitches of an area that is lit up. */
  readonly litArea: readonly number[];
  /** Which way the thread is read: as it is strung, or as it is worked. */
  readonly threadWay: 'strung' | 'worked';
  /** Whose eyes look at it. */
  readonly eyes: Sight;
  /** Id of the bead whose card lies on the mat. */
  readonly card: string | undefined;
  /** Id of the bead that runs out, where that is being mended. */
  readonly runsOut: string | undefined;
  readonly help: boolean;
  /** Whether the panel stands below as text, too. */
  readonly asText: boolean;
}

export const firstView = (): View => ({
  step: 'picture',
  panel: 0,
  look: 'beads',
  wedges: false,
  workingFace: false,
  turnDegrees: 0,
  zoom: 1,
  panXmm: 0,
  panYmm: 0,
  overlay: 0,
  litStitch: -1,
  litBead: undefined,
  litArea: [],
  threadWay: 'strung',
  eyes: 'usual',
  card: undefined,
  runsOut: undefined,
  help: false,
  asText: false,
});
