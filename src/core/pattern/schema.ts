import { z } from 'zod';
import { en } from '../../words/index.js';
import { frameFault } from '../frame/measures.js';
import { swatchSchema } from '../swatch/schema.js';

/** Letters name bead colours: no I and no O, which are misread as 1 and 0. */
export const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ';
/** A stitch without a bead. */
export const bareMark = '.';
/** A stitch not decided yet, on a blank chart. */
export const undecidedMark = '_';
/** The version this program writes. */
export const patternVersion = 1;

const finite = z.number().refine(Number.isFinite, en.expected.pattern.finite);
const positive = finite.refine((value) => value > 0, en.expected.pattern.aboveZero);
const notNegative = finite.refine((value) => value >= 0, en.expected.pattern.zeroOrMore);
const words = (most: number) => z.string().min(1).max(most);
const hex = z.string().regex(/^#[0-9a-f]{6}$/, en.expected.pattern.hex);

export const shapeSchema = z.strictObject({
  wedges: z.number().int().min(3).max(12).describe('N, equal sectors of the panel'),
  rounds: z.number().int().min(2).max(80).describe('R, from the centre to the rim'),
  increase: z
    .enum(['first', 'middle', 'last'])
    .describe('which stitch of each wedge is doubled in each round'),
  lean: finite
    .refine((value) => value >= -1 && value <= 1, en.expected.pattern.between(-1, 1))
    .describe('stitch widths by which a stitch sits behind the one it is worked into'),
  outline: z.enum(['polygon', 'circle']),
  construction: z.enum(['spiral', 'joined']),
  hand: z.enum(['right', 'left']),
  beadsFace: z
    .enum(['away', 'toward'])
    .describe('whether beads lie away from the worker or toward the worker'),
  stitchWidthMm: positive.refine((value) => value <= 50, en.expected.pattern.atMost(50)),
  roundHeightMm: positive.refine((value) => value <= 50, en.expected.pattern.atMost(50)),
});

export const beadSchema = z.strictObject({
  letter: z
    .string()
    .regex(/^[A-HJ-NP-Z]$/, en.expected.pattern.letter)
    .describe('name of the colour in this pattern, most used first'),
  id: words(200).describe("the maker's or supplier's code"),
  name: words(200),
  hex,
  finish: words(80).optional(),
  size: words(40).optional().describe('trade size, for instance 11/0'),
  diameterMm: positive.optional(),
  beadsPerGram: positive.optional(),
  grams: notNegative.optional().describe('grams in stock'),
  count: notNegative.optional().describe('beads in stock, counted; goes before grams'),
  price: notNegative.optional().describe('price of one packet'),
  packGrams: positive.optional(),
});

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
  })
  .describe("where the upright picture's centre lies on the bead face, x right and y down");

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
  thumbnail: z
    .string()
    .max(4_000_000)
    .regex(/^[A-Za-z0-9+/]*={0,2}$/, en.expected.pattern.base64)
    .describe('PNG of at most 512 pixels a side, base64'),
  place: placeSchema,
});

export const panelSchema = z.strictObject({
  name: words(80),
  startDegrees: finite.describe('face angle of the start mark, clockwise from 12 o’clock'),
  picture: pictureSchema.optional(),
  rounds: z
    .array(z.string().regex(/^[A-HJ-NP-Z._]*$/, en.expected.pattern.marks))
    .min(2)
    .max(80)
    .describe('round r has N·r characters in working order'),
});

const count = z.number().int().min(0);

export const tidySchema = z
  .strictObject({
    percent: notNegative.describe('what tidying was allowed to cost, percent of the objective'),
    costPercent: notNegative.describe('what it cost'),
    changesBefore: count.describe('colour changes along the thread'),
    changesAfter: count,
    straysBefore: count.describe('stitches none of whose neighbours has their bead'),
    straysAfter: count,
  })
  .describe('how the beads were tidied after the choice');

export const choiceSchema = z
  .strictObject({
    objective: notNegative.describe(
      'mean CIEDE2000 over the beaded stitches, weighted as chosen, before any tidying',
    ),
    lowerBound: notNegative.optional().describe('no choice under the same rules is below this'),
    gap: notNegative.optional().describe('(objective - lowerBound) / objective'),
    proven: z.boolean().optional().describe('whether the gap is at most 1e-6'),
    method: words(200),
    tidy: tidySchema.optional(),
    dither: z.strictObject({ strength: finite.min(0).max(1) }).optional(),
  })
  .describe('how good the choice of beads is');

export const threadSchema = z
  .strictObject({
    lengthBeads: z.number().int().positive().optional().describe('most beads on one thread'),
    lengthMm: positive.optional().describe('most strung beads on one thread, millimetres'),
    name: words(200).optional(),
    diameterMm: positive.refine((value) => value <= 5, en.expected.pattern.atMost(5)).optional(),
    tex: positive
      .refine((value) => value <= 10_000, en.expected.pattern.atMost(10_000))
      .optional()
      .describe('grams of 1,000 m'),
    perStitchMm: positive
      .refine((value) => value <= 1000, en.expected.pattern.atMost(1000))
      .optional()
      .describe('thread that one stitch takes'),
    beadLengthMm: positive
      .refine((value) => value <= 50, en.expected.pattern.atMost(50))
      .optional()
      .describe('what one bead of the commonest size takes up on the thread, as measured'),
    reservePercent: notNegative
      .refine((value) => value <= 1000, en.expected.pattern.atMost(1000))
      .optional()
      .describe('thread to have over what is worked'),
    tailMm: notNegative
      .refine((value) => value <= 10_000, en.expected.pattern.atMost(10_000))
      .optional()
      .describe('what hangs out at each end of a length'),
  })
  .describe('the thread and how it is strung');

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
    ratio: finite
      .refine((value) => value >= 1 && value <= 2, en.expected.pattern.between(1, 2))
      .describe('wished width of the panel as worn, over the width of the frame'),
    gatherPercent: finite
      .refine((value) => value >= -10 && value <= 30, en.expected.pattern.between(-10, 30))
      .describe('by how much the rim in the frame is longer than the rail'),
    bareRounds: z.number().int().min(0).max(80).optional().describe('rounds without beads'),
  })
  .refine((frame) => frameFault(frame) === undefined, en.expected.pattern.frame)
  .describe('the purse frame, as it was measured; its stretch of the rim is centred at the top');

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
});

/** How a panel is worked: wedges, rounds, increase, lean, hand and stitch size (millimetres). */
export interface Shape extends z.infer<typeof shapeSchema> {}
/** A bead colour as it stands in a pattern; a palette's `Bead` is the same without its letter. */
export interface PatternBead extends z.infer<typeof beadSchema> {}
/** Where the upright picture lies on the bead face: millimetres, x right and y down, degrees clockwise. */
export interface Place extends z.infer<typeof placeSchema> {}
/** What a panel remembers of its picture. */
export interface PatternPicture extends z.infer<typeof pictureSchema> {}
/** One panel: `rounds[r - 1]` holds the N·r marks of round r in working order. */
export interface Panel extends z.infer<typeof panelSchema> {}
/** How good the choice of beads is: mean CIEDE2000, and how far it could be from the best. */
export interface Choice extends z.infer<typeof choiceSchema> {}
/** The thread and how it is strung. */
export interface Thread extends z.infer<typeof threadSchema> {}
/** A purse frame as it was measured, and how a panel is to sit in it. */
export interface Frame extends z.infer<typeof frameSchema> {}
/** A whole pattern, as pattern.json holds it; lengths in millimetres. */
export interface Pattern extends z.infer<typeof patternSchema> {}

/** The published JSON Schema (draft 2020-12) of pattern.json. */
export function patternJsonSchema(): object {
  return z.toJSONSchema(patternSchema, { target: 'draft-2020-12', io: 'input' });
}
