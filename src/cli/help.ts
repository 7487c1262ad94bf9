import type { EventEmitter } from 'node:events';
import { Help, Option } from 'commander';
import type { Command } from 'commander';
import { RondureError } from '../core/errors.js';
import type { Words } from '../words/index.js';
import { similarTo } from './similar.js';

/** Help is written for the narrowest usual terminal, in columns. */
export const helpWidth = 80;

type Group = keyof Words['cli']['groups'];
/** Options of `swatch` that are read off a ruler. */
const measured = [
  '--rim-stitches',
  '--rim-mm',
  '--turn',
  '--from-round',
  '--to-round',
  '--marked-wedge',
  '--thread-mm',
  '--thread-stitches',
  '--fifty-beads',
  '--bead-mm',
  '--lies',
  '--ruler',
  '--protractor',
  '--photo',
  '--points',
  '--pixels',
  '--ruler-length',
];
/** Where an option stands in help, by its long name; what is not named here stands under `rest`. */
const groupOf: Record<string, Group> = {
  '--output': 'files',
  '--beads': 'files',
  '--blank': 'files',
  '--size': 'shape',
  '--wedges': 'shape',
  '--rounds': 'shape',
  '--across': 'shape',
  '--round-height': 'shape',
  '--stitch-width': 'shape',
  '--increase': 'shape',
  '--lean': 'shape',
  '--outline': 'shape',
  '--construction': 'shape',
  '--hand': 'shape',
  '--beads-face': 'shape',
  '--start': 'shape',
  '--place': 'picture',
  '--zoom': 'picture',
  '--shift': 'picture',
  '--rotate': 'picture',
  '--mirror': 'picture',
  '--repeat': 'picture',
  '--art': 'picture',
  '--paper': 'picture',
  '--ink': 'picture',
  '--mask': 'picture',
  '--back': 'picture',
  '--from-picture': 'picture',
  '--rows': 'picture',
  '--columns': 'picture',
  '--colours': 'colours',
  '--colors': 'colours',
  '--background': 'colours',
  '--keep': 'colours',
  '--leave-out': 'colours',
  '--unpainted': 'colours',
};
for (const name of [
  '--swap',
  '--merge',
  '--limit',
  '--use-stock',
  '--proof',
  '--tidy',
  '--dither',
  '--detail',
])
  groupOf[name] = 'colours';
for (const name of ['--length-beads', '--length-m', '--length']) groupOf[name] = 'thread';
for (const name of [
  '--frame',
  '--bare-rounds',
  '--kind',
  '--width',
  '--height',
  '--corner-radius',
]) {
  groupOf[name] = 'frame';
}
for (const name of ['--hinge-width', '--fixing', '--channel-depth', '--hole-spacing']) {
  groupOf[name] = 'frame';
}
for (const name of ['--ratio', '--gather']) groupOf[name] = 'frame';
groupOf['--swatch'] = 'shape';
for (const name of measured) groupOf[name] = 'measured';
for (const name of ['--measured', '--allowance', '--ease', '--opening', '--gap'])
  groupOf[name] = 'making';
const printing = [
  '--title',
  '--booklet',
  '--language',
  '--json',
  '--quiet',
  '--force',
  '--dry-run',
];
for (const name of printing) groupOf[name] = 'printing';
for (const name of ['--thread-per-stitch', '--thread-diameter', '--thread-tex', '--thread-name'])
  groupOf[name] = 'thread';
for (const name of ['--reserve', '--tail']) groupOf[name] = 'thread';
for (const name of ['--pieces', '--panels', '--bead-reserve']) groupOf[name] = 'amount';

/**
 * Gives every command the same manners: its options in groups, the defaults said, exit codes last,
 * and a likely meaning for a mistyped choice. Examples stand first, put there by each command.
 */
export function layOutHelp(program: Command, words: Words): void {
  program.configureHelp({ optionDescription: describeOption });
  program.addHelpText('after', `\n${words.cli.exitCodes}`);
  for (const command of program.commands) {
    command.copyInheritedSettings(program);
    for (const option of command.options) {
      const usual = words.cli.groups[groupOf[option.long ?? ''] ?? 'rest'];
      option.helpGroup(option.helpGroupHeading ?? usual);
      if (option.argChoices) option.argParser(choiceOf(option, option.argChoices));
    }
    const help = new Option('-h, --help', words.cli.options.help);
    command.addHelpOption(help.helpGroup(words.cli.groups.printing));
    const { listenerCount } = command as Command & Pick<EventEmitter, 'listenerCount'>;
    if (listenerCount.call(command, 'afterHelp') === 0) {
      command.addHelpText('after', `\n${words.cli.exitCodes}`);
    }
  }
}

/** Help shows every default, also where the option's absence means something. */
function describeOption(option: Option): string {
  const plain = new Help().optionDescription(option);
  const { defaultValue, defaultValueDescription: said } = option;
  return said !== undefined && defaultValue === undefined ? `${plain} (default: ${said})` : plain;
}

/** Reads a value that must be one of a few words. */
function choiceOf(option: Option, choices: readonly string[]) {
  return (got: string): string => {
    if (choices.includes(got)) return got;
    const near = similarTo(got, choices);
    throw new RondureError('option-value', {
      option: option.long ?? option.flags,
      got: got.replace(/\s+/g, ' '),
      expected: choices.join(', '),
      ...(near !== undefined && { near }),
    });
  };
}
