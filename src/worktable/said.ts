import { RondureError } from '../core/errors.js';

/** An error whose message is a sentence for the maker, in the language of the page. */
export class Said extends Error {}

/** Whether an error's message is for the maker to read. */
export const isSaid = (error: unknown): error is Error =>
  error instanceof Said || error instanceof RondureError;
