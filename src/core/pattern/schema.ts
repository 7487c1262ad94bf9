import * as z from 'zod';
import type { Choice, EdgesKept, Tidied } from '../beads/how-chosen.js';
import { shapeLimits } from '../panel/limits.js';
import type { Shape } from '../panel/shape.js';
import type { Place } from '../picture/sampling/place.js';
import { frameSchema } from '../purse/frame/schema.js';
import {
  between,
  finite,
  hex,
  marks,
  notNegative,
  notNegativeUpTo,
  positive,
  positiveUpTo,
  thumbnail,
  whole,
  words,
} from '../schema-parts.js';
import type { Fields } from '../schema-parts.js';
import { beadSchema } from './bead-schema.js';
import { swatchSchema } from '../swatch/schema.js';
import { keptThread } from '../thread/limits.js';
import { letters } from './marks.js';
import type { Panel, Pattern, PatternPicture, Thread } from './pattern.js';
import { wishSchema } from './wish-schema.js';

export { beadSchema } from './bead-schema.js';

/** The version this program writes. */
export const patternVersion = 1;

export const shapeSchema = z.strictObject({
  wedges: whole(shapeLimits.wedges).describe('N, equal sectors of the panel'),
  rounds: whole(shapeLimits.rounds).describe('R, from the centre to the rim'),
  increase: z
    .enum(['first', 'middle', 'last'])
    .describe('which stitch of each wedge is doubled in each round'),
  lean: between(shapeLimits.lean).describe(
    'stitch widths by which a stitch sits behind the one it is worked into',
  ),
  outline: z.enum(['polygon', 'circle']),
  construction: z.enum(['spiral', 'joined']),
  hand: z.enum(['right', 'left']),
  beadsFace: z
    .enum(['away', 'toward'])
    .describe('whether beads lie away from the worker or toward the worker'),
  stitch: z
    .enum(['both-loops', 'bead-side-loop', 'slip'])
    .optional()
    .describe('single crochet under both loops or the one on the side of the beads; slip stitch'),
  stitchWidthMm: positiveUpTo(shapeLimits.stitchMm.most),
  roundHeightMm: positiveUpTo(shapeLimits.stitchMm.most),
} satisfies Fields<Shape>) satisfies z.ZodType<Shape>;

export const placeSchema = z
  .strictObject({
    mmPerPixel: positive.describe('of the upright picture as it was read'),
    centreXmm: finite,
    centreYmm: finite,
    rotateDegrees: finite.describe('clockwise on the bead face'),
    mirror: z.boolean(),
    repeat: z
      .boolean()
      .optional()
      .describe('the picture lies on one wedge, rim up, and repeats in every wedge'),
  } satisfies Fields<Place>)
  .describe(
    "where the upright picture's centre lies on the bead face, x right and y down",
  ) satisfies z.ZodType<Place>;

export const pictureSchema = z.strictObject({
  file: words(1000),
  width: z.number().int().positive(),
  height: z.number().int().positive(),
  art: z.enum(['photo', 'drawing']),
  paper: z
    .boolean()
    .optional()
    .describe('a drawing on paper whose light was evened out; so was the thumbnail'),
  background: z
    .union([hex, z.literal('bare')])
    .optional()
    .describe('what lies outside the picture and under its transparent parts'),
  thumbnail,
  place: placeSchema,
} satisfies Fields<PatternPicture>) satisfies z.ZodType<PatternPicture>;

export const panelSchema = z.strictObject({
  name: words(80),
  startDegrees: finite.describe('face angle of the start mark, clockwise from 12 o’clock'),
  picture: pictureSchema.optional(),
  rounds: z
    .array(marks)
    .min(shapeLimits.rounds.least)
    .max(shapeLimits.rounds.most)
    .describe('round r has N·r characters in working order'),
} satisfies Fields<Panel>) satisfies z.ZodType<Panel>;

const count = z.number().int().min(0);

export const edgesSchema = z
  .strictObject({
    strength: notNegative
      .max(1)
      .describe('what contrast counts against the difference of a stitch'),
    before: notNegative.describe(
      'mean over the beaded stitches of CIEDE2000 and of strength times the contrast lost or made up between touching stitches, as chosen',
    ),
    after: notNegative.describe('the same when the beads were assigned anew'),
    lowerBound: notNegative
      .optional()
      .describe('no assignment of these beads has a smaller mean; absent where stock limits it'),
  } satisfies Fields<EdgesKept>)
  .describe(
    'how the beads were assigned so that neighbours that differ stay different',
  ) satisfies z.ZodType<EdgesKept>;

export const tidySchema = z
  .strictObject({
    percent: notNegative.describe('what tidying was allowed to cost, percent of the objective'),
    costPercent: notNegative.describe('what it cost'),
    changesBefore: count.describe('colour changes along the thread'),
    changesAfter: count,
    straysBefore: count.describe('stitches none of whose neighbours has their bead'),
    straysAfter: count,
  } satisfies Fields<Tidied>)
  .describe('how the beads were tidied after the choice') satisfies z.ZodType<Tidied>;

export const choiceSchema = z
  .strictObject({
    objective: notNegative.describe(
      'mean CIEDE2000 over the beaded stitches, weighted as chosen, before any tidying',
    ),
    lowerBound: notNegative.optional().describe('no choice under the same rules is below this'),
    gap: notNegative.optional().describe('(objective - lowerBound) / objective'),
    proven: z.boolean().optional().describe('whether the gap is at most 1e-6'),
    method: words(200),
    edges: edgesSchema.optional(),
    tidy: tidySchema.optional(),
    dither: z.strictObject({ strength: finite.min(0).max(1) }).optional(),
  } satisfies Fields<Choice>)
  .describe('how good the choice of beads is') satisfies z.ZodType<Choice>;

export const threadSchema = z
  .strictObject({
    lengthBeads: z.number().int().positive().optional().describe('most beads on one thread'),
    lengthMm: positive.optional().describe('most strung beads on one thread, millimetres'),
    name: words(200).optional(),
    diameterMm: positiveUpTo(keptThread.diameterMm).optional(),
    tex: positiveUpTo(keptThread.tex).optional().describe('grams of 1,000 m'),
    perStitchMm: positiveUpTo(keptThread.perStitchMm)
      .optional()
      .describe('thread that one stitch takes'),
    beadLengthMm: positiveUpTo(keptThread.beadLengthMm)
      .optional()
      .describe('what one bead of the commonest size takes up on the thread, as measured'),
    reservePercent: notNegativeUpTo(keptThread.reservePercent)
      .optional()
      .describe('thread to have over what is worked'),
    tailMm: notNegativeUpTo(keptThread.tailMm)
      .optional()
      .describe('what hangs out at each end of a length'),
    spoolMm: positiveUpTo(keptThread.spoolMm).optional().describe('thread on one ball or spool'),
    spoolPrice: notNegative.optional().describe('price of one ball or spool'),
    hookMm: positiveUpTo(keptThread.hookMm)
      .optional()
      .describe('the hook that the maker works with'),
  } satisfies Fields<Thread>)
  .describe('the thread and how it is strung') satisfies z.ZodType<Thread>;

/** What a pattern.json must look like; `parsePattern` and `checkPattern` find what is wrong in one. */
export const patternSchema = z.strictObject({
  format: z.literal('rondure-pattern'),
  version: z.literal(patternVersion),
  title: words(200),
  shape: shapeSchema,
  beads: z.array(beadSchema).max(letters.length),
  panels: z.array(panelSchema).min(1).max(2),
  choice: choiceSchema.optional(),
  swatch: swatchSchema.optional().describe('the trial panel that gave the stitch'),
  frame: frameSchema.optional(),
  thread: threadSchema.optional(),
  wish: wishSchema.optional(),
} satisfies Fields<Pattern>) satisfies z.ZodType<Pattern>;

/** The published JSON Schema (draft 2020-12) of pattern.json. */
export function patternJsonSchema(): object {
  return z.toJSONSchema(patternSchema, { target: 'draft-2020-12', io: 'input' });
}
