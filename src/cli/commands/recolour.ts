import type { Command } from 'commander';
import { RondureError } from '../../core/errors.js';
import { letters } from '../../core/pattern/marks.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { patternReport } from '../../core/pattern/report.js';
import { pastStockWarnings, recolour } from '../../core/beads/recolour.js';
import type { RecolourWish } from '../../core/beads/recolour.js';
import type { Words } from '../../words/index.js';
import { beadNamed } from '../options/bead-named.js';
import { runFolderCommand } from '../run/folder-command.js';
import type { Io } from '../run/io.js';
import { underGroup } from '../options/described.js';
import { option, shown, whole } from '../options/option-makers.js';
import {
  contradict,
  printOptions,
  refuseInputTwice,
  refuseOutputContradictions,
  writeOptions,
} from '../options/output-options.js';
import type { OutputOptions } from '../options/output-options.js';
import { panelNamed } from '../options/panel-option.js';
import { paletteFor } from '../options/palette-for.js';
import { withFolder } from '../run/pattern-folder.js';
import { swatchOption, useSwatchLate } from '../options/swatch-option.js';
import { threadOptions } from '../options/thread-options.js';
import type { ThreadOptions } from '../options/thread-options.js';
import { list } from '../options/values.js';

interface RecolourOptions extends OutputOptions, ThreadOptions {
  swap?: string[];
  panel?: string;
  fromRound?: number;
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
    ...underGroup(words, 'files', [option('-o, --output <DIR>', words.edits.redrawOutput)]),
    ...underGroup(words, 'colours', [
      shown(option('--swap <A=BEAD>', said.swap).argParser(list), none),
      shown(option('--panel <PANEL>', said.panel), said.panelDefault),
      shown(whole('--from-round <R>', said.fromRound, 1, 80), said.fromRoundDefault),
      shown(option('--merge <B=C>', said.merge).argParser(list), none),
      shown(option('--leave-out <BEADS>', said.leaveOut).argParser(list), none),
      shown(whole('--limit <K>', said.limit, 1, 24), said.limitDefault),
    ]),
    ...underGroup(words, 'files', [shown(option('--beads <FILE>', said.beads), said.beadsDefault)]),
    ...underGroup(words, 'shape', [
      shown(option('--size <SIZE>', words.cli.options.size), words.cli.options.sizeDefault),
    ]),
    ...swatchOption(words),
    ...threadOptions(words),
    ...printOptions(words),
    ...writeOptions(words),
  ];
  for (const one of options) command.addOption(one);
  command.action(async (file: string) => {
    const given = command.opts<RecolourOptions>();
    const { swap, merge, leaveOut, limit, beads } = given;
    if (!swap && !merge && !leaveOut && limit === undefined && beads === undefined) {
      throw new RondureError('usage', { problem: { kind: 'nothing-to-change' } });
    }
    for (const [asked, name] of [
      [given.panel, '--panel'],
      [given.fromRound, '--from-round'],
    ] as const) {
      if (asked === undefined || swap) continue;
      contradict(name, '--swap', 'nothing-swapped');
    }
    const options = withFolder(given, file);
    refuseInputTwice('PATTERN', file, beads);
    refuseOutputContradictions(options);
    const { readPattern } = await import('../../node/read/read-pattern.js');
    const read = await readPattern(file);
    const swatch = await useSwatchLate(command);
    const pattern = swatch.pattern(read);
    const { wish, notes } = await wishFrom(pattern, options);
    const made = recolour(pattern, wish);
    const report = { ...patternReport(made.pattern), recoloured: made.report };
    report.warnings.unshift(
      ...pastStockWarnings(pattern, made.pattern),
      ...notes,
      ...swatch.warnings(pattern),
    );
    await runFolderCommand(options, words, io, () =>
      Promise.resolve({ pattern: made.pattern, report }),
    );
  });
}

async function wishFrom(pattern: Pattern, options: RecolourOptions) {
  const { swap, merge, leaveOut, limit, beads } = options;
  const { panel, fromRound } = options;
  const part = {
    ...(panel !== undefined && { panel: panelNamed(pattern, panel) }),
    ...(fromRound !== undefined && { fromRound }),
  };
  const wish: RecolourWish = {
    ...(limit !== undefined && { limit }),
    ...(Object.keys(part).length > 0 && { swapOnly: part }),
  };
  const palette = swap || beads !== undefined ? await paletteFor(options) : undefined;
  wish.swap = (swap ?? []).map((text) => {
    const [letter, name] = halves('--swap', text, 'swap');
    const index = beadNamed(palette!.beads, '--swap', name);
    return { letter, bead: palette!.beads[index] };
  });
  wish.merge = (merge ?? []).map((text) => {
    const [from, into] = halves('--merge', text, 'merge');
    return { from, into: letterIn('--merge', text, into, 'merge') };
  });
  const again = palette && !swap ? palette.beads : undefined;
  if (again) {
    wish.beads = again;
    wish.leaveOutOfBeads = (leaveOut ?? []).map((name) => beadNamed(again, '--leave-out', name));
  } else if (leaveOut) wish.leaveOut = leaveOut.map((name) => letterNamed(pattern, name));
  return { wish, notes: palette?.notes ?? [] };
}

/** `A=op-07`, with or without spaces, small letters too. */
function halves(option: string, text: string, kind: 'swap' | 'merge'): [string, string] {
  const at = text.indexOf('=');
  if (at < 1 || text.slice(at + 1).trim() === '') {
    throw new RondureError('option-value', { option, got: text, expected: { kind } });
  }
  return [letterIn(option, text, text.slice(0, at), kind), text.slice(at + 1).trim()];
}

function letterIn(option: string, whole: string, text: string, kind: 'swap' | 'merge'): string {
  const letter = text.trim().toUpperCase();
  if (letter.length === 1 && letters.includes(letter)) return letter;
  throw new RondureError('option-value', { option, got: whole, expected: { kind } });
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
