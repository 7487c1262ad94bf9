import * as z from 'zod';
import type { PlainFault, ValueFault } from '../words/en/pattern.js';
import { plainText } from './plain-text.js';

/** A schema for every field of an interface, no more and no fewer. */
export type Fields<T> = { readonly [K in keyof T]-?: z.ZodType<T[K]> };

/** Bounds of a number, both of which it may have. */
export interface Bounds {
  readonly least: number;
  readonly most: number;
}

/** A fault of `refine`, as data: `issueFault` hands it on. */
export const fault = (params: ValueFault) => ({ params: { ...params } });
/** The same for `regex`, which keeps a message alone. */
const plainly = (kind: PlainFault): string => kind;

export const finite = z.number().refine(Number.isFinite, fault({ kind: 'finite' }));
export const positive = finite.refine((value) => value > 0, fault({ kind: 'above-zero' }));
export const notNegative = finite.refine((value) => value >= 0, fault({ kind: 'zero-or-more' }));

export const between = ({ least, most }: Bounds) =>
  finite.refine(
    (value) => value >= least && value <= most,
    fault({ kind: 'between', least, most }),
  );
export const positiveUpTo = (most: number) =>
  positive.refine((value) => value <= most, fault({ kind: 'at-most', most }));
export const notNegativeUpTo = (most: number) =>
  notNegative.refine((value) => value <= most, fault({ kind: 'at-most', most }));
export const whole = ({ least, most }: Bounds) => z.number().int().min(least).max(most);

/** Text that is drawn and printed: without what is hidden in it. */
export const words = (most: number) => z.string().overwrite(plainText).min(1).max(most);
/** #rrggbb in small letters. */
export const hex = z.string().regex(/^#[0-9a-f]{6}$/, plainly('hex'));
/** One letter of a bead. */
export const letter = z.string().regex(/^[A-HJ-NP-Z]$/, plainly('letter'));
/** Letters of a round, `.` for bare, `_` for undecided. */
export const marks = z.string().regex(/^[A-HJ-NP-Z._]*$/, plainly('marks'));
/** A small picture. */
export const thumbnail = z
  .string()
  .max(4_000_000)
  .regex(/^[A-Za-z0-9+/]*={0,2}$/, plainly('base64'))
  .describe('PNG of at most 512 pixels a side, base64');
