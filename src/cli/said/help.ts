import type { EventEmitter } from 'node:events';
import { Help, Option } from 'commander';
import type { Command } from 'commander';
import { RondureError } from '../../core/errors.js';
import type { Words } from '../../words/index.js';
import { similarTo } from './similar.js';

/** Help is written for the narrowest usual terminal, in columns. */
export const helpWidth = 80;

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
      option.helpGroup(option.helpGroupHeading ?? words.cli.groups.rest);
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
      expected: { kind: 'one-of', choices },
      ...(near !== undefined && { near }),
    });
  };
}
