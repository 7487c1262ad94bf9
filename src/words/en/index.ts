import { errors } from './errors.js';
import { warnings } from './warnings.js';

/** English. Its type is the type of every language: a missing word does not compile. */
export const en = { errors, warnings };

export type Words = typeof en;
