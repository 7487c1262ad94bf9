import { outputs } from '../../src/core/pages/outputs.js';
import type { OutputFile } from '../../src/core/pages/outputs.js';

/** Names of the files that there are one a panel, one a pattern, or where there are two panels, in order. */
export const namesOf = (...of: OutputFile['of'][]): string[] =>
  outputs
    .filter((one) => of.includes(one.of))
    .map(({ name }) => name)
    .sort();
