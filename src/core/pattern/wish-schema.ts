import * as z from 'zod';
import { shapeLimits } from '../panel/limits.js';
import { frameLimits } from '../purse/frame/measures.js';
import { between, finite, hex, positive, positiveUpTo, thumbnail, whole } from '../schema-parts.js';
import type { Fields } from '../schema-parts.js';
import { wishLimits } from './wish-limits.js';
import { beadSchema } from './bead-schema.js';
import { bareMark, letters } from './marks.js';
import type {
  HandLaid,
  LaidStitches,
  MakerWish,
  Painted,
  WishedPlace,
  WishedShape,
} from './wished.js';

const words = (most: number) => z.string().min(1).max(most);
const stitchMm = positiveUpTo(shapeLimits.stitchMm.most);

/** How a panel was asked for, before anything followed from it. */
const wishedShape = z.strictObject({
  wedges: whole(shapeLimits.wedges),
  rounds: whole(shapeLimits.rounds).optional(),
  acrossMm: positive.optional().describe('wished size across, where rounds were not asked for'),
  increase: z.enum(['first', 'middle', 'last']).optional(),
  lean: between(shapeLimits.lean).optional(),
  outline: z.enum(['polygon', 'circle']).optional(),
  construction: z.enum(['spiral', 'joined']).optional(),
  hand: z.enum(['right', 'left']).optional(),
  beadsFace: z.enum(['away', 'toward']).optional(),
  stitch: z.enum(['both-loops', 'bead-side-loop', 'slip']).optional(),
  stitchWidthMm: stitchMm.optional(),
  roundHeightMm: stitchMm.optional(),
  beadDiameterMm: stitchMm.describe('of the palette: gives the stitch that is not asked for'),
  startDegrees: finite.optional(),
} satisfies Fields<WishedShape>) satisfies z.ZodType<WishedShape>;

const wishedPlace = z.strictObject({
  place: z.enum(['subject', 'fit', 'fill', 'inside']),
  zoom: positive.optional(),
  shiftXmm: finite.optional(),
  shiftYmm: finite.optional(),
  rotateDegrees: finite.optional(),
  mirror: z.boolean().optional(),
  repeat: z.boolean().optional(),
} satisfies Fields<WishedPlace>) satisfies z.ZodType<WishedPlace>;

/** A painted picture, kept small: enough to go on from. */
const paintedSchema = z.strictObject({
  file: words(1000),
  thumbnail,
} satisfies Fields<Painted>) satisfies z.ZodType<Painted>;

export const laidStitchesSchema = z.strictObject({
  bead: z.union([words(200), z.literal(bareMark)]).describe('id of the bead, or . for none'),
  round: whole({ least: 1, most: shapeLimits.rounds.most }),
  stitches: z
    .array(z.number().int().min(1))
    .min(1)
    .max(shapeLimits.rounds.most * shapeLimits.wedges.most)
    .describe('in working order, from 1'),
} satisfies Fields<LaidStitches>) satisfies z.ZodType<LaidStitches>;

const laidSide = z.array(laidStitchesSchema).max(100_000);

/** Beads that the maker laid by hand over those that were chosen for the picture. */
export const handLaidSchema = z
  .strictObject({
    wedges: whole(shapeLimits.wedges).describe('of the panel on which they were laid'),
    beads: z.array(beadSchema.omit({ letter: true })).max(letters.length),
    front: laidSide.optional(),
    back: laidSide.optional(),
  } satisfies Fields<HandLaid>)
  .describe(
    'beads laid by hand: they stand where they stood, whatever is chosen around them',
  ) satisfies z.ZodType<HandLaid>;

/** Every choice of the maker that is not derived; beads by their ids in the palette. */
export const wishSchema = z
  .strictObject({
    colours: whole(wishLimits.colours).describe('most bead colours'),
    shape: wishedShape,
    place: wishedPlace,
    backPlace: wishedPlace.optional().describe('of the second picture, where it lies otherwise'),
    art: z.enum(['auto', 'photo', 'drawing']),
    paper: z.boolean().optional(),
    inkPercent: between({ least: 0, most: 100 })
      .optional()
      .describe('of a stitch that dark must cover to win it'),
    detail: between(wishLimits.detail).optional(),
    edges: between(wishLimits.edges).optional(),
    lift: between(wishLimits.lift).optional(),
    mask: paintedSchema.optional(),
    subject: z
      .union([z.literal('plain'), paintedSchema])
      .optional()
      .describe('what of the picture was cut out'),
    back: z
      .union([
        z.literal('same'),
        z.strictObject({ plain: words(200) }),
        z.strictObject({ file: words(1000) }),
      ])
      .optional()
      .describe('the second panel: the same picture, one bead, or the picture of a file'),
    background: z.union([z.enum(['auto', 'bare']), hex, z.strictObject({ bead: words(200) })]),
    keep: z.array(words(200)).optional(),
    leaveOut: z.array(words(200)).optional(),
    proof: z.enum(['off', 'normal', 'long']).optional(),
    useStock: z.boolean().optional(),
    tidy: between(wishLimits.tidyPercent).optional(),
    dither: between(wishLimits.dither).optional(),
    bareRounds: whole(frameLimits.bareRounds).optional().describe('asked for under the frame'),
    instead: z
      .record(words(200), words(200))
      .optional()
      .describe('beads laid wherever others were chosen, both by their ids'),
    laid: handLaidSchema.optional(),
  } satisfies Fields<MakerWish>)
  .describe(
    'how the pattern was asked for: enough to go on from it',
  ) satisfies z.ZodType<MakerWish>;
