import * as z from 'zod';
import { between, fault, notNegative, positive, whole } from '../../schema-parts.js';
import type { Fields } from '../../schema-parts.js';
import { frameFault, frameLimits } from './measures.js';
import type { Frame } from './measures.js';

/** What frame.json and the frame of a pattern must look like. */
export const frameSchema = z
  .strictObject({
    kind: z
      .enum(['half-round', 'squared', 'oval'])
      .describe('half an ellipse; straight with rounded corners; an ellipse that bends in again'),
    widthMm: positive.describe('at its widest'),
    heightMm: positive.describe('from the line between the hinges to the top'),
    cornerRadiusMm: notNegative.optional().describe('of a squared frame'),
    hingeWidthMm: positive.optional().describe('between the hinges of an oval frame'),
    fixing: z.enum(['sewn', 'glued']),
    channelDepthMm: positive.optional().describe('of a frame that is glued on'),
    holeSpacingMm: positive.optional().describe('of a frame that is sewn on'),
    ratio: between(frameLimits.ratio).describe(
      'wished width of the panel as worn, over the width of the frame',
    ),
    gatherPercent: between(frameLimits.gatherPercent).describe(
      'by how much the rim in the frame is longer than the rail',
    ),
    bareRounds: whole(frameLimits.bareRounds).optional().describe('rounds without beads'),
  } satisfies Fields<Frame>)
  .refine((frame) => frameFault(frame) === undefined, fault({ kind: 'frame' }))
  .describe(
    'the purse frame, as it was measured; its stretch of the rim is centred at the top',
  ) satisfies z.ZodType<Frame>;
