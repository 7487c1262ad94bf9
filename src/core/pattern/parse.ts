import type { z } from 'zod';
import { RondureError } from '../errors.js';
import { en } from '../../words/index.js';
import type { Words } from '../../words/index.js';
import { checkPattern, problemSentence } from './check.js';
import { patternSchema, patternVersion } from './schema.js';
import type { Pattern } from './schema.js';

type Issue = z.core.$ZodIssue;

/** Deeper than any pattern of ours; swatch, frame and thread hold plain records. */
const mostLevels = 32;

/**
 * Reads the text of a pattern file.
 *
 * @param text JSON, a byte order mark allowed
 * @param where how to name the file in an error, for instance its path
 * @throws RondureError `pattern-not-json`, `pattern-not-ours`, `pattern-too-new`, `pattern-invalid`
 */
export function parsePattern(text: string, where: string, words: Words = en): Pattern {
  const given = parseEnvelope(text, where);
  const invalid = (path: string, problem: string, more = 0) =>
    new RondureError('pattern-invalid', { where, path, problem, more });
  if (isTooDeep(given)) throw invalid('', words.pattern.tooDeep);
  const result = patternSchema.safeParse(given);
  if (!result.success) {
    const [first, ...rest] = result.error.issues;
    throw invalid(pathText(first.path), issueText(words, first, given), rest.length);
  }
  const pattern = result.data as Pattern;
  // A letter out of order is untidy, not wrong: whoever draws the pattern gives letters anew.
  const problems = checkPattern(pattern).filter(({ code }) => code !== 'letter-out-of-order');
  if (problems.length > 0) {
    const sentence = problemSentence(words, problems[0]).replace(/\.$/, '');
    throw invalid('', sentence, problems.length - 1);
  }
  return pattern;
}

/** JSON that says it is a pattern of ours, in a version that is known here. */
export function parseEnvelope(text: string, where: string): Record<string, unknown> {
  const given = parseJson(text, where);
  if (!isRecord(given) || given.format !== 'rondure-pattern') {
    throw new RondureError('pattern-not-ours', { where });
  }
  const { version } = given;
  if (typeof version === 'number' && Number.isInteger(version) && version > patternVersion) {
    throw new RondureError('pattern-too-new', { where, version, known: patternVersion });
  }
  return given;
}

function parseJson(text: string, where: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (cause) {
    const detail = cause instanceof Error ? shortened(cause.message) : '';
    throw new RondureError('pattern-not-json', { where, detail }, { cause });
  }
}

/** Engines quote parts of the text in their message: keep it to one short line. */
function shortened(message: string): string {
  const line = message.replace(/[\p{Cc}\s]+/gu, ' ').trim();
  return line.length > 120 ? `${line.slice(0, 119)}…` : line;
}

export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Walks level by level, so that no nesting can exhaust the stack. */
export function isTooDeep(value: unknown): boolean {
  let level: unknown[] = [value];
  for (let depth = 0; depth < mostLevels; depth++) {
    level = level.flatMap((item) =>
      typeof item === 'object' && item !== null ? (Object.values(item) as unknown[]) : [],
    );
    if (level.length === 0) return false;
  }
  return true;
}

/** `panels[0].rounds[3]`: the way the place is written in a program. */
export function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((step) => (typeof step === 'number' ? `[${step}]` : `.${String(step)}`))
    .join('')
    .replace(/^\./, '');
}

/** What is wrong with one value, to be put after its path. */
export function issueText(words: Words, issue: Issue, given: unknown): string {
  const say = words.pattern;
  switch (issue.code) {
    case 'unrecognized_keys':
      return say.unknownKeys(issue.keys.slice(0, 5).map(shortened));
    case 'invalid_type':
      return isMissing(given, issue.path) ? say.missing : say.wrongType(issue.expected);
    case 'invalid_value':
      return say.wrongValue(issue.values.map((value) => JSON.stringify(value)));
    case 'too_small':
      return say.tooSmall(String(issue.minimum), kindOf(issue.origin));
    case 'too_big':
      return say.tooBig(String(issue.maximum), kindOf(issue.origin));
    case 'invalid_union':
      return say.oneOfSeveral;
    default:
      return issue.message;
  }
}

function kindOf(origin: string): 'number' | 'text' | 'list' {
  if (origin === 'string') return 'text';
  return origin === 'array' ? 'list' : 'number';
}

function isMissing(given: unknown, path: readonly PropertyKey[]): boolean {
  let value = given as Record<PropertyKey, unknown> | undefined;
  for (const step of path) value = value?.[step] as typeof value;
  return value === undefined;
}
