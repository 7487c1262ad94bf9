import type { Command, Option } from 'commander';
import { RondureError } from '../core/errors.js';
import type { Warning } from '../core/errors.js';
import type { Pattern } from '../core/pattern/schema.js';
import type { Swatch } from '../core/swatch/schema.js';
import { patternWithSwatch, swatchTooLate, swatchWarnings } from '../core/swatch/use.js';
import { readBytes } from '../node/read-bytes.js';
import { nameIn, textOf } from '../node/read-text.js';
import type { Words } from '../words/index.js';
import { option, shown } from './option-makers.js';

/** `--swatch FILE`, for every command that takes the options of the shape. */
export function swatchOption(words: Words): Option {
  return shown(option('--swatch <FILE>', words.swatch.options.use), words.cli.options.none);
}

/** What `--swatch` adds to a pattern that is finished otherwise. */
export interface SwatchUse {
  pattern(made: Pattern): Pattern;
  warnings(made: Pick<Pattern, 'shape'>, beadMm?: number): Warning[];
}

/**
 * Reads the file of `--swatch` and fills in the options that it answers and that were not typed:
 * stitch width, round height and lean.
 *
 * Throws what `readBytes` and `parseSwatch` throw.
 */
export async function useSwatch(command: Command, words: Words): Promise<SwatchUse> {
  const swatch = await readSwatch(command, words);
  if (swatch === undefined) return { pattern: (made) => made, warnings: () => [] };
  // Rounded far below what a ruler tells, so that charts and lists show short numbers.
  const answers = {
    stitchWidth: rounded(swatch.stitchWidthMm?.value, 1000),
    roundHeight: rounded(swatch.roundHeightMm?.value, 1000),
    lean: rounded(swatch.lean?.value, 100),
  };
  for (const [key, answer] of Object.entries(answers)) {
    if (answer !== undefined && command.getOptionValueSource(key) !== 'cli') {
      command.setOptionValueWithSource(key, answer, 'swatch');
    }
  }
  return {
    pattern: (made) => patternWithSwatch(made, swatch),
    warnings: ({ shape }, beadMm) => swatchWarnings(swatch, shape, beadMm),
  };
}

/**
 * Reads the file of `--swatch` for a command that has its pattern already: the thread is taken
 * from it; its stitch comes too late and is only compared.
 *
 * Throws what `readBytes` and `parseSwatch` throw.
 */
export async function useSwatchLate(command: Command, words: Words): Promise<SwatchUse> {
  const swatch = await readSwatch(command, words);
  if (swatch === undefined) return { pattern: (made) => made, warnings: () => [] };
  return {
    pattern: (made) => patternWithSwatch(made, swatch),
    warnings: ({ shape }, beadMm) => [
      ...swatchWarnings(swatch, shape, beadMm),
      ...swatchTooLate(swatch, shape),
    ],
  };
}

async function readSwatch(command: Command, words: Words): Promise<Swatch | undefined> {
  const { swatch: file, beads } = command.opts<{ swatch?: string; beads?: string }>();
  if (file === undefined) return undefined;
  if (file === '-' && (beads === '-' || command.args.includes('-'))) {
    const second = beads === '-' ? '--beads -' : '-';
    const why = words.expected.contradictions.input;
    throw new RondureError('options-contradict', { first: '--swatch -', second, why });
  }
  const { parseSwatch } = await import('../core/swatch/swatch-file.js');
  return parseSwatch(textOf(await readBytes(file), file), nameIn(file), words);
}

/** To so many parts of one. */
function rounded(value: number | undefined, parts: number): number | undefined {
  return value === undefined ? undefined : Math.round(value * parts) / parts;
}
