import { RondureError } from '../../core/errors.js';
import type { ErrorCode, ErrorFacts } from '../../core/errors.js';

/** An error as it goes between threads; one with a code is worded where it is shown. */
export interface Failure {
  readonly message: string;
  readonly code?: ErrorCode | undefined;
  readonly facts?: unknown;
}

export function failureOf(error: unknown): Failure {
  const message = error instanceof Error ? error.message : String(error);
  return error instanceof RondureError
    ? { message, code: error.code, facts: error.facts }
    : { message };
}

/** The error again, in the thread that it was sent to. */
export function errorOf({ message, code, facts }: Failure): Error {
  return code ? new RondureError(code, facts as ErrorFacts<ErrorCode>) : new Error(message);
}
