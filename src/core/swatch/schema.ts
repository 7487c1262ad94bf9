import { z } from 'zod';
import { en } from '../../words/index.js';

/** The version of swatch.json that this program writes. */
export const swatchVersion = 1;

const finite = z.number().refine(Number.isFinite, en.expected.pattern.finite);
const positive = finite.refine((value) => value > 0, en.expected.pattern.aboveZero);
const notNegative = finite.refine((value) => value >= 0, en.expected.pattern.zeroOrMore);
const round = z.number().int().min(1).max(80);

/** What was measured, and between what it lies with the precision of the ruler. */
export const estimateSchema = z.strictObject({ value: finite, least: finite, most: finite });

/** How the swatch was worked. */
export const workedSchema = z.strictObject({
  wedges: z.number().int().min(3).max(12),
  rounds: z.number().int().min(2).max(80),
  increase: z.enum(['first', 'middle', 'last']),
  outline: z.enum(['polygon', 'circle']),
  construction: z.enum(['spiral', 'joined']),
  hand: z.enum(['right', 'left']),
  beadsFace: z.enum(['away', 'toward']),
});

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
  markedWedge: z.number().int().min(1).max(12).optional(),
  threadMm: positive.optional(),
  threadStitches: positive.optional(),
  fiftyBeadsMm: positive.optional(),
  rulerMm: notNegative.describe('precision of the ruler'),
  photo: z
    .strictObject({
      file: z.string().min(1).max(1000),
      points: z.number().int().min(2),
      perspective: z.boolean(),
      offPixels: notNegative.describe('root mean square distance of the points from the fit'),
    })
    .optional(),
});

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
});

/** What swatch.json must look like. */
export const swatchFileSchema = z.strictObject({
  format: z.literal('rondure-swatch'),
  version: z.literal(swatchVersion),
  ...swatchSchema.shape,
});

/** A value from a measurement, with the least and the most that the ruler allows. */
export interface Estimate extends z.infer<typeof estimateSchema> {}
/** How a swatch was worked. */
export interface SwatchWorked extends z.infer<typeof workedSchema> {}
/** What was read off the ruler; millimetres and degrees. */
export interface SwatchMeasured extends z.infer<typeof measuredSchema> {}
/** A measured swatch: what was measured, and what follows for the stitch. */
export interface Swatch extends z.infer<typeof swatchSchema> {}

/** The published JSON Schema (draft 2020-12) of swatch.json. */
export function swatchJsonSchema(): object {
  return z.toJSONSchema(swatchFileSchema, { target: 'draft-2020-12', io: 'input' });
}
