import * as z from 'zod';
import { RondureError } from '../../errors.js';
import type { ValueFault } from '../../../words/en/pattern.js';
import { isRecord, issueFault, pathText } from '../../value-fault.js';
import { parsePattern } from './parse.js';
import { isTooDeep, parseJsonText } from '../../input-limits.js';
import { frameSchema } from '../../purse/frame/schema.js';
import type { Frame } from '../../purse/frame/measures.js';
import type { Pattern } from '../pattern.js';
import { wishSchema } from '../wish-schema.js';
import type { MakerWish } from '../wished.js';

/** The version of a wish.json that this program reads and writes. */
export const wishVersion = 1;

/** What a wish.json must look like. */
export const wishFileSchema = z.strictObject({
  format: z.literal('rondure-wish'),
  version: z.literal(wishVersion),
  ...wishSchema.shape,
  frame: frameSchema.optional(),
});

/** How a pattern was asked for. */
export interface KeptWish {
  /** What was asked for. */
  readonly wish: MakerWish;
  /** The purse frame; its bare rounds as they were asked for. */
  readonly frame?: Frame | undefined;
  /** The pattern that kept it. */
  readonly pattern?: Pattern;
}

/** The text of a wish.json: how a pattern was asked for, without the pattern. */
export function wishText({ wish, frame }: KeptWish): string {
  const file = { format: 'rondure-wish', version: wishVersion, ...wish, frame };
  return `${JSON.stringify(file, null, 2)}\n`;
}

/**
 * Reads how a pattern was asked for, out of the text of a wish.json or of a pattern that keeps it.
 *
 * @param where how to name the file in an error, for instance its path
 * @throws RondureError `wish-not-ours`, `wish-too-new`, `wish-invalid`, `pattern-without-wish`, and
 *   those of `parsePattern`
 */
export function parseWish(text: string, where: string): KeptWish {
  const given = parsed(text);
  if (isRecord(given) && given.format === 'rondure-pattern') {
    const pattern = parsePattern(text, where);
    if (!pattern.wish) throw new RondureError('pattern-without-wish', { where });
    return { wish: pattern.wish, frame: frameOf(pattern), pattern };
  }
  if (!isRecord(given) || given.format !== 'rondure-wish') {
    throw new RondureError('wish-not-ours', { where });
  }
  const { version } = given;
  if (typeof version === 'number' && Number.isInteger(version) && version > wishVersion) {
    throw new RondureError('wish-too-new', { where, version, known: wishVersion });
  }
  const invalid = (path: string, problem: ValueFault) =>
    new RondureError('wish-invalid', { where, path, problem });
  if (isTooDeep(given)) throw invalid('', { kind: 'too-deep' });
  const result = wishFileSchema.safeParse(given);
  if (!result.success) {
    const [first] = result.error.issues;
    throw invalid(pathText(first.path), issueFault(first, given));
  }
  const { format: _format, version: _version, frame, ...wish } = result.data;
  return { wish, frame };
}

/** The frame of a pattern, with the bare rounds that were asked for instead of those that it has. */
function frameOf({ frame: made, wish }: Pattern): Frame | undefined {
  if (!made) return undefined;
  const { bareRounds: _bareRounds, ...frame } = made;
  const asked = wish?.bareRounds;
  return { ...frame, ...(asked !== undefined && { bareRounds: asked }) };
}

function parsed(text: string): unknown {
  try {
    return parseJsonText(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}
