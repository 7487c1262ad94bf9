import type { Words } from '../words/index.js';
import type { Io } from './io.js';
import type { SwatchOptions } from './swatch-options.js';

export async function writeGuide(_o: SwatchOptions, _w: Words, _io: Io): Promise<void> {}
