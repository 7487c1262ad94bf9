import type { Command, Option } from 'commander';
import type { Warning } from '../../core/errors.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { Swatch } from '../../core/swatch/swatch.js';
import {
  patternWithSwatch,
  swatchTooLate,
  swatchWarnings,
} from '../../core/pattern/with-swatch.js';
import { readBytes } from '../../node/read/read-bytes.js';
import { nameIn, textOf } from '../../node/read/read-text.js';
import type { Words } from '../../words/index.js';
import { optionsOf } from './described.js';
import { contradict } from './output-options.js';
import { shapeTable } from './shape-options.js';

/** `--swatch FILE` alone, for commands without the other options of the shape. */
export const swatchOption = (words: Words): Option[] =>
  optionsOf({ swatch: shapeTable.swatch }, words);

/** What `--swatch` adds to a pattern that is finished otherwise. */
export interface SwatchUse {
  readonly measured: Swatch | undefined;
  pattern(made: Pattern): Pattern;
  warnings(made: Pick<Pattern, 'shape'>, beadMm?: number): Warning[];
}

const noSwatch: SwatchUse = { measured: undefined, pattern: (made) => made, warnings: () => [] };

/**
 * Reads the file of `--swatch` and fills in the options that it answers and that were not typed:
 * stitch width, round height, lean and how the stitch is worked.
 *
 * Throws what `readBytes` and `parseSwatch` throw.
 */
export async function useSwatch(command: Command): Promise<SwatchUse> {
  const swatch = await readSwatch(command);
  if (swatch === undefined) return noSwatch;
  // Rounded far below what a ruler tells, so that charts and lists show short numbers.
  const answers = {
    stitchWidth: rounded(swatch.stitchWidthMm?.value, 1000),
    roundHeight: rounded(swatch.roundHeightMm?.value, 1000),
    lean: rounded(swatch.lean?.value, 100),
    outline: outlineFor(command, swatch),
    stitch: swatch.worked.stitch,
  };
  for (const [key, answer] of Object.entries(answers)) {
    if (answer !== undefined && command.getOptionValueSource(key) !== 'cli') {
      command.setOptionValueWithSource(key, answer, 'swatch');
    }
  }
  return {
    measured: swatch,
    pattern: (made) => patternWithSwatch(made, swatch),
    warnings: ({ shape }, beadMm) => swatchWarnings(swatch, shape, beadMm),
  };
}

/**
 * The outline that the swatch's round height goes with; it follows from lean and increase anew where
 * the panel is worked otherwise.
 */
function outlineFor(command: Command, { worked }: Swatch): Swatch['worked']['outline'] | undefined {
  const sameIncrease = command.opts<{ increase?: string }>().increase === worked.increase;
  const ownLean = command.getOptionValueSource('lean') === 'cli';
  return sameIncrease && !ownLean ? worked.outline : undefined;
}

/**
 * Reads the file of `--swatch` for a command that has its pattern already: the thread is taken
 * from it; its stitch comes too late and is only compared.
 *
 * Throws what `readBytes` and `parseSwatch` throw.
 */
export async function useSwatchLate(command: Command): Promise<SwatchUse> {
  const swatch = await readSwatch(command);
  if (swatch === undefined) return noSwatch;
  return {
    measured: swatch,
    pattern: (made) => patternWithSwatch(made, swatch),
    warnings: ({ shape }, beadMm) => [
      ...swatchWarnings(swatch, shape, beadMm),
      ...swatchTooLate(swatch, shape),
    ],
  };
}

async function readSwatch(command: Command): Promise<Swatch | undefined> {
  const { swatch: file, beads } = command.opts<{ swatch?: string; beads?: string }>();
  if (file === undefined) return undefined;
  if (file === '-' && (beads === '-' || command.args.includes('-'))) {
    const second = beads === '-' ? '--beads -' : '-';
    contradict('--swatch -', second, 'input');
  }
  const { parseSwatch } = await import('../../core/swatch/swatch-file.js');
  return parseSwatch(textOf(await readBytes(file), file), nameIn(file));
}

/** To so many parts of one. */
function rounded(value: number | undefined, parts: number): number | undefined {
  return value === undefined ? undefined : Math.round(value * parts) / parts;
}
