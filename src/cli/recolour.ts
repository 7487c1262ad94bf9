import type { Command } from 'commander';
import { RondureError } from '../core/errors.js';
import { letters } from '../core/pattern/schema.js';
import type { Pattern } from '../core/pattern/schema.js';
import { patternReport } from '../core/pattern/report.js';
import { recolour } from '../core/recolour.js';
import type { RecolourWish } from '../core/recolour.js';
import type { Words } from '../words/index.js';
import { beadNamed } from './chart-wish.js';
import { runFolderCommand } from './folder-command.js';
import type { Io } from './io.js';
import { option, shown, whole } from './option-makers.js';
import {
  printOptions,
  refuseInputTwice,
  refuseOutputContradictions,
  writeOptions,
} from './output-options.js';
import type { OutputOptions } from './output-options.js';
import { paletteFor } from './palette-for.js';
import { withFolder } from './pattern-folder.js';
import { swatchOption, useSwatchLate } from './swatch-option.js';
import { threadOptions } from './thread-options.js';
import type { ThreadOptions } from './thread-options.js';
import { list } from './values.js';

interface RecolourOptions extends OutputOptions, ThreadOptions {
  swap?: string[];
  merge?: string[];
  leaveOut?: string[];
  limit?: number;
  beads?: string;
  size?: string;
}

/** `recolour PATTERN`: other beads for a pattern, without its picture. */
export function addRecolourCommand(program: Command, words: Words, io: Io): void {
  const said = words.recolour;
  const command = program
    .command('recolour')
    .alias('recolor')
    .description(said.about)
    .argument('<PATTERN>', words.edits.redrawPattern)
    .helpOption('-h, --help', words.cli.options.help)
    .addHelpText('before', said.examples)
    .addHelpText('after', `\n${words.cli.exitCodes}`);
  const { none } = words.cli.options;
  const options = [
    option('-o, --output <DIR>', words.edits.redrawOutput),
    shown(option('--swap <A=BEAD>', said.swap).argParser(list), none),
    shown(option('--merge <B=C>', said.merge).argParser(list), none),
    shown(option('--leave-out <BEADS>', said.leaveOut).argParser(list), none),
    shown(whole('--limit <K>', said.limit, 1, 24), said.limitDefault),
    shown(option('--beads <FILE>', said.beads), said.beadsDefault),
    shown(option('--size <SIZE>', words.cli.options.size), words.cli.options.sizeDefault),
    swatchOption(words),
    ...threadOptions(words),
    ...printOptions(words),
    ...writeOptions(words),
  ];
  for (const one of options) command.addOption(one);
  command.action(async (file: string) => {
    const given = command.opts<RecolourOptions>();
    const { swap, merge, leaveOut, limit, beads } = given;
    if (!swap && !merge && !leaveOut && limit === undefined && beads === undefined) {
      throw new RondureError('usage', { problem: said.nothing });
    }
    const options = withFolder(given, file, words);
    refuseInputTwice('PATTERN', file, beads);
    refuseOutputContradictions(options, words);
    const { readPattern } = await import('../node/read-pattern.js');
    const read = await readPattern(file, words);
    const swatch = await useSwatchLate(command, words);
    const pattern = swatch.pattern(read);
    const { wish, notes } = await wishFrom(pattern, options, words);
    const made = recolour(pattern, wish);
    const report = { ...patternReport(made.pattern), recoloured: made.report };
    report.warnings.unshift(...notes, ...swatch.warnings(pattern));
    await runFolderCommand(options, words, io, () =>
      Promise.resolve({ pattern: made.pattern, report }),
    );
  });
}

async function wishFrom(pattern: Pattern, options: RecolourOptions, words: Words) {
  const { swap, merge, leaveOut, limit, beads } = options;
  const wish: RecolourWish = { ...(limit !== undefined && { limit }) };
  const palette = swap || beads !== undefined ? await paletteFor(options) : undefined;
  wish.swap = (swap ?? []).map((text) => {
    const [letter, name] = halves('--swap', text, words.recolour.swapForm);
    const index = beadNamed(palette!.beads, '--swap', name);
    return { letter, bead: palette!.beads[index] };
  });
  wish.merge = (merge ?? []).map((text) => {
    const [from, into] = halves('--merge', text, words.recolour.mergeForm);
    return { from, into: letterIn('--merge', text, into, words.recolour.mergeForm) };
  });
  const again = palette && !swap ? palette.beads : undefined;
  if (again) {
    wish.beads = again;
    wish.leaveOutOfBeads = (leaveOut ?? []).map((name) => beadNamed(again, '--leave-out', name));
  } else if (leaveOut) wish.leaveOut = leaveOut.map((name) => letterNamed(pattern, name));
  return { wish, notes: palette?.notes ?? [] };
}

/** `A=op-07`, with or without spaces, small letters too. */
function halves(option: string, text: string, expected: string): [string, string] {
  const at = text.indexOf('=');
  if (at < 1 || text.slice(at + 1).trim() === '') {
    throw new RondureError('option-value', { option, got: text, expected });
  }
  return [letterIn(option, text, text.slice(0, at), expected), text.slice(at + 1).trim()];
}

function letterIn(option: string, whole: string, text: string, expected: string): string {
  const letter = text.trim().toUpperCase();
  if (letter.length === 1 && letters.includes(letter)) return letter;
  throw new RondureError('option-value', { option, got: whole, expected });
}

/** A letter of the pattern, or the letter of the bead with that id or name. */
function letterNamed(pattern: Pattern, name: string): string {
  const upper = name.toUpperCase();
  if (pattern.beads.some(({ letter }) => letter === upper)) return upper;
  const wanted = name.toLowerCase();
  const found =
    pattern.beads.find(({ id }) => id.toLowerCase() === wanted) ??
    pattern.beads.find((bead) => bead.name.toLowerCase() === wanted);
  if (found) return found.letter;
  throw new RondureError('bead-unknown', { option: '--leave-out', got: name });
}
