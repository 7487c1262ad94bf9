import * as z from 'zod';
import type { PatternBead } from '../beads/bead.js';
import { finite, hex, letter, notNegative, positive, words } from '../schema-parts.js';
import type { Fields } from '../schema-parts.js';

/** A bead colour of a pattern, as its file holds it. */
export const beadSchema = z.strictObject({
  letter: letter.describe('name of the colour in this pattern, most used first'),
  id: words(200).describe("the maker's or supplier's code"),
  name: words(200),
  hex,
  lab: z
    .tuple([finite, finite, finite])
    .readonly()
    .optional()
    .describe('L, a, b (D65, 2°) as measured, where that says more than hex'),
  finish: words(80).optional(),
  size: words(40).optional().describe('trade size, for instance 11/0'),
  diameterMm: positive.optional(),
  beadsPerGram: positive.optional(),
  grams: notNegative.optional().describe('grams in stock'),
  count: notNegative.optional().describe('beads in stock, counted; goes before grams'),
  price: notNegative.optional().describe('price of one packet'),
  packGrams: positive.optional(),
  sample: z
    .literal(true)
    .optional()
    .describe('a sample colour of the palettes that come with the program: its id is no shop’s'),
} satisfies Fields<PatternBead>) satisfies z.ZodType<PatternBead>;
