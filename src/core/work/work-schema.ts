import * as z from 'zod';
import { patternSchema } from '../pattern/schema.js';

const whole = z.int().min(0).max(1_000_000);

/** What a saved piece remembers of the work of hands; see `Work`. */
export const workSchema = z.looseObject({
  pattern: patternSchema,
  copies: z.int().min(1).max(999),
  at: z.object({ panel: z.int().min(0).max(1), copy: z.int().min(1).max(999) }),
  open: z.enum(['string', 'crochet']).optional(),
  pace: z.enum(['stitch', 'run', 'wedge']),
  panels: z.record(
    z.string().regex(/^[01]:\d{1,3}$/),
    z.looseObject({
      strung: z.array(whole).max(10_000),
      checked: z.array(whole).max(10_000),
      worked: whole,
      notes: z
        .array(
          z.object({
            stitch: whole,
            text: z.string().max(1000),
            sewOn: z.string().length(1).optional(),
            extra: z.string().max(1000).optional(),
          }),
        )
        .max(20_000),
      seconds: z.number().min(0).max(1e9),
    }),
  ),
  timed: z.boolean().optional(),
  hourly: z.number().min(0).max(1e6).optional(),
});
