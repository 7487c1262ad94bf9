import { RondureError } from '../../errors.js';
import type { ErrorFacts } from '../../errors.js';
import { isTooDeep, parseJsonText } from '../../input-limits.js';
import { isRecord, issueFault, pathText, shortened } from '../../value-fault.js';
import { checkPattern } from './check.js';
import { patternSchema, patternVersion } from '../schema.js';
import type { Pattern } from '../pattern.js';

type Fault = ErrorFacts<'pattern-invalid'>['problem'];

/**
 * Reads the text of a pattern file.
 *
 * @param text JSON, a byte order mark allowed
 * @param where how to name the file in an error, for instance its path
 * @throws RondureError `pattern-not-json`, `pattern-not-ours`, `pattern-too-new`, `pattern-invalid`
 */
export function parsePattern(text: string, where: string): Pattern {
  const given = parseEnvelope(text, where);
  const invalid = (path: string, problem: Fault, more = 0) =>
    new RondureError('pattern-invalid', { where, path, problem, more });
  if (isTooDeep(given)) throw invalid('', { kind: 'too-deep' });
  const result = patternSchema.safeParse(given);
  if (!result.success) {
    const [first, ...rest] = result.error.issues;
    throw invalid(pathText(first.path), issueFault(first, given), rest.length);
  }
  const pattern = result.data as Pattern;
  // A letter out of order is untidy, not wrong: whoever draws the pattern gives letters anew.
  const problems = checkPattern(pattern).filter(({ code }) => code !== 'letter-out-of-order');
  if (problems.length > 0) {
    throw invalid('', { kind: 'pattern', problem: problems[0] }, problems.length - 1);
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
    return parseJsonText(text.replace(/^\uFEFF/, ''));
  } catch (cause) {
    const detail = cause instanceof Error ? shortened(cause.message) : '';
    throw new RondureError('pattern-not-json', { where, detail }, { cause });
  }
}
