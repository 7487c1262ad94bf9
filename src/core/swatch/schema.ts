import * as z from 'zod';
import { shapeLimits } from '../panel/limits.js';
import { finite, notNegative, positive, whole, words } from '../schema-parts.js';
import type { Fields } from '../schema-parts.js';
import type { Estimate, Swatch, SwatchMeasured, SwatchPhoto, SwatchWorked } from './swatch.js';

/** The version of swatch.json that this program writes. */
export const swatchVersion = 1;

const round = whole({ least: 1, most: shapeLimits.rounds.most });

/** What was measured, and between what it lies with the precision of the ruler. */
export const estimateSchema = z.strictObject({
  value: finite,
  least: finite,
  most: finite,
} satisfies Fields<Estimate>) satisfies z.ZodType<Estimate>;

/** How the swatch was worked. */
export const workedSchema = z.strictObject({
  wedges: whole(shapeLimits.wedges),
  rounds: whole(shapeLimits.rounds),
  increase: z.enum(['first', 'middle', 'last']),
  outline: z.enum(['polygon', 'circle']),
  construction: z.enum(['spiral', 'joined']),
  hand: z.enum(['right', 'left']),
  beadsFace: z.enum(['away', 'toward']),
  stitch: z
    .enum(['both-loops', 'bead-side-loop', 'slip'])
    .optional()
    .describe('how the stitch was worked'),
} satisfies Fields<SwatchWorked>) satisfies z.ZodType<SwatchWorked>;

/** What the maker read off the ruler, and how finely. */
export const measuredSchema = z.strictObject({
  beadMm: positive.describe('diameter of a bead'),
  beadOffMm: notNegative.describe('how far that diameter may be off'),
  acrossMm: positive.optional().describe('widest place over the outer edges of beads'),
  rimStitches: positive.optional(),
  rimMm: positive.optional().describe('length of the rim that the rim stitches take up'),
  turnDegrees: finite.optional().describe('of the marked stitch, with the work'),
  turnOffDegrees: notNegative.optional(),
  fromRound: round.optional(),
  toRound: round.optional(),
  markedWedge: whole({ least: 1, most: shapeLimits.wedges.most }).optional(),
  threadMm: positive.optional(),
  threadStitches: positive.optional(),
  fiftyBeadsMm: positive.optional(),
  rulerMm: notNegative.describe('precision of the ruler'),
  photo: z
    .strictObject({
      file: words(1000),
      points: z.number().int().min(2),
      perspective: z.boolean(),
      offPixels: notNegative.describe('root mean square distance of the points from the fit'),
    } satisfies Fields<SwatchPhoto>)
    .optional(),
} satisfies Fields<SwatchMeasured>) satisfies z.ZodType<SwatchMeasured>;

/** A measured swatch, as swatch.json and pattern.json hold it. */
export const swatchSchema = z.strictObject({
  worked: workedSchema,
  lies: z.enum(['flat', 'cups', 'ruffles']).describe('how the swatch lies on the table'),
  measured: measuredSchema,
  roundHeightMm: estimateSchema.optional(),
  stitchWidthMm: estimateSchema.optional(),
  lean: estimateSchema.optional(),
  flatWedges: estimateSchema.optional().describe('increases a round that lie flat, not whole'),
  perStitchMm: estimateSchema.optional().describe('thread for one stitch'),
  beadLengthMm: estimateSchema.optional().describe('length of a bead along its hole'),
} satisfies Fields<Swatch>) satisfies z.ZodType<Swatch>;

/** What swatch.json must look like. */
export const swatchFileSchema = z.strictObject({
  format: z.literal('rondure-swatch'),
  version: z.literal(swatchVersion),
  ...swatchSchema.shape,
});

/** The published JSON Schema (draft 2020-12) of swatch.json. */
export function swatchJsonSchema(): object {
  return z.toJSONSchema(swatchFileSchema, { target: 'draft-2020-12', io: 'input' });
}
