import { errors } from '../words/en/errors.js';
import type { Words } from '../words/index.js';

/** Every code an error of ours can carry; the catalogue in src/words is the list. */
export type ErrorCode = keyof Words['errors'];
/** What was got, what was expected and where, for one code. */
export type ErrorFacts<C extends ErrorCode> = Parameters<Words['errors'][C]>[0];

/**
 * The only error the library throws on purpose. `code` is stable and meant for programs, `facts`
 * hold what was got, what was expected and where; `message` is the English sentence made of both.
 */
export class RondureError<C extends ErrorCode = ErrorCode> extends Error {
  override readonly name = 'RondureError';
  /** Stable; programs may rely on it. */
  readonly code: C;
  /** What was got, what was expected and where. */
  readonly facts: ErrorFacts<C>;

  constructor(code: C, facts: ErrorFacts<C>, options?: { cause?: unknown }) {
    super(sentence(errors, code, facts), options);
    this.code = code;
    this.facts = facts;
  }
}

/** The sentence for an error in another language's words. */
export function errorSentence(words: Words, error: RondureError): string {
  return sentence(words.errors, error.code, error.facts);
}

/** Every code a warning can carry. */
export type WarningCode = keyof Words['warnings'];

/** Something the maker should know about a result that was made all the same. */
export interface Warning<C extends WarningCode = WarningCode> {
  /** Stable; programs may rely on it. */
  readonly code: C;
  /** What it is about, as data. */
  readonly facts: Parameters<Words['warnings'][C]>[0];
}

/** Makes a warning; the types tie the facts to the code. */
export function warning<C extends WarningCode>(
  code: C,
  facts: Parameters<Words['warnings'][C]>[0],
): Warning<C> {
  return { code, facts };
}

/** The sentence for a warning, in the words given. */
export function warningSentence(words: Words, given: Warning): string {
  return sentence(words.warnings, given.code, given.facts);
}

function sentence(catalogue: object, code: string, facts: unknown): string {
  const say = (catalogue as Record<string, (facts: unknown) => string>)[code];
  return say(facts);
}
