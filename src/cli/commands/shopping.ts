import type { Command } from 'commander';
import { RondureError, warningSentence } from '../../core/errors.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { shoppingList, usualClothWidthCm } from '../../core/pages/lists/shopping.js';
import type { ShoppingWish } from '../../core/pages/lists/shopping.js';
import { shoppingJson } from '../../core/pages/lists/shopping-json.js';
import { isShoppingList, shoppingCsv, shoppingText } from '../../core/pages/lists/shopping-text.js';
import { threadWarnings } from '../../core/thread/fit.js';
import { checkFileFree, writeOutputFile } from '../../node/output/output-file.js';
import type { Words } from '../../words/index.js';
import type { Io } from '../run/io.js';
import { underGroup } from '../options/described.js';
import { decimal, option, shown, whole } from '../options/option-makers.js';
import { lengthBetween } from '../options/values.js';
import { printOptions, refusePrintContradictions } from '../options/output-options.js';
import { swatchOption, useSwatchLate } from '../options/swatch-option.js';
import {
  refuseThreadContradictions,
  threadOptions,
  withThread,
} from '../options/thread-options.js';
import type { ThreadOptions } from '../options/thread-options.js';

interface ShoppingOptions extends ThreadOptions {
  output?: string;
  pieces: number;
  panels?: number;
  beadReserve: number;
  clothWidth?: number;
  lining: 'cloth' | 'crocheted';
  json?: true;
  quiet?: true;
  force?: true;
}

/** `shopping PATTERN`: everything to buy for one purse or for a batch. */
export function addShoppingCommand(program: Command, words: Words, io: Io): void {
  const said = words.shopping;
  const { off } = words.cli.options;
  const command = program
    .command('shopping')
    .description(said.about)
    .argument('<PATTERN>', words.edits.redrawPattern)
    .addHelpText('before', said.examples);
  const [json, quiet] = printOptions(words);
  json.description = said.json;
  const options = [
    ...underGroup(words, 'files', [
      shown(option('-o, --output <FILE>', said.output), said.outputDefault),
    ]),
    ...underGroup(words, 'amount', [
      whole('--pieces <COUNT>', said.pieces, 1, 10_000).default(1),
      shown(whole('--panels <COUNT>', said.panels, 1, 2), said.panelsDefault),
      decimal('--bead-reserve <PERCENT>', said.beadReserve, 0, 200).default(10),
    ]),
    ...underGroup(words, 'making', [
      shown(
        option('--cloth-width <SIZE>', said.clothWidth).argParser(
          lengthBetween('--cloth-width', 200, 5000),
        ),
        `${usualClothWidthCm}cm`,
      ),
      option('--lining <KIND>', said.liningKind).choices(['cloth', 'crocheted']).default('cloth'),
    ]),
    ...swatchOption(words),
    ...threadOptions(words),
    json,
    quiet,
    ...underGroup(words, 'printing', [shown(option('--force', said.force), off)]),
  ];
  for (const one of options) command.addOption(one);
  command.action(async (file: string) => shop(command, file, words, io));
}

async function shop(command: Command, file: string, words: Words, io: Io): Promise<void> {
  const options = command.opts<ShoppingOptions>();
  const said = words.shopping;
  const { output, panels } = options;
  refusePrintContradictions(options);
  refuseThreadContradictions(options);
  const asCsv = output !== undefined && /\.csv$/i.test(output);
  if (output !== undefined && !asCsv && !/\.txt$/i.test(output)) {
    const expected = { kind: 'name-of-list' } as const;
    throw new RondureError('option-value', { option: '--output', got: output, expected });
  }
  const { signal } = io;
  const isOurs = (older: Uint8Array) => isShoppingList(older, words);
  const write = { force: options.force === true, isOurs, signal };
  if (output !== undefined) await checkFileFree(output, write);
  const { readPattern } = await import('../../node/read/read-pattern.js');
  const swatch = await useSwatchLate(command);
  const pattern: Pattern = withThread(swatch.pattern(await readPattern(file)), options);
  if (panels === 1 && pattern.panels.length === 2) {
    throw new RondureError('usage', { problem: { kind: 'pattern-has-two-panels' } });
  }
  const wish: ShoppingWish = {
    pieces: options.pieces,
    panels: panels === 1 ? 1 : 2,
    beadReservePercent: options.beadReserve,
    lining: options.lining,
    ...(options.clothWidth !== undefined && { clothWidthCm: options.clothWidth / 10 }),
  };
  const warnings = [...swatch.warnings(pattern), ...threadWarnings(pattern)];
  if (output !== undefined) {
    const content = asCsv ? shoppingCsv(pattern, words, wish) : shoppingText(pattern, words, wish);
    await guarded(io, () => writeOutputFile(output, content, write));
  }
  if (options.quiet) return;
  if (options.json) {
    return io.out(shoppingJson(shoppingList(pattern, wish), warnings, words, output));
  }
  if (output === undefined) return io.out(shoppingText(pattern, words, wish));
  const { title } = pattern;
  const facts = { title, file: output, pieces: options.pieces, panels: panels === 1 ? 1 : 2 };
  const notes = warnings.map(
    (one) => `${words.cli.summary.warning} ${warningSentence(words, one)}`,
  );
  io.out(`${[said.written(facts), ...notes].join('\n')}\n`);
}

/** Ctrl-C while the file is written puts everything back before the program ends. */
async function guarded(io: Io, work: () => Promise<void>): Promise<void> {
  io.guard?.(true);
  try {
    await work();
  } finally {
    io.guard?.(false);
  }
}
