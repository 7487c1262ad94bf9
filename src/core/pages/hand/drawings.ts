import { beadSide } from './bead-side.js';
import type { HandDrawing } from './facts.js';
import { braid } from './braid.js';
import { frameDrawing } from './frame.js';
import { frameEdge } from './frame-edge.js';
import { lining } from './lining.js';
import { increase } from './increase.js';
import { lastStitches } from './last-stitches.js';
import { marker } from './marker.js';
import { newLength } from './new-length.js';
import { magicRing } from './ring.js';
import { roundEnd } from './round-end.js';
import { roundRun } from './round-run.js';
import { seam } from './seam.js';
import { seamStitch } from './seam-stitch.js';
import { slipStitch } from './slip-stitch.js';
import { stitchSteps } from './stitch.js';

/** Every drawing of the handwork, in the order in which a purse is made. */
export const handDrawings: readonly HandDrawing[] = [
  magicRing,
  beadSide,
  stitchSteps,
  slipStitch,
  increase,
  roundRun,
  marker,
  roundEnd,
  newLength,
  lastStitches,
  seam,
  seamStitch,
  frameDrawing,
  frameEdge,
  lining,
  braid,
];
