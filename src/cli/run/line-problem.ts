import type { CommanderError } from 'commander';
import type { LineProblem } from '../../words/en/usage.js';

/** What commander found wrong with a command line, as data: its own sentences hold it between quotation marks. */
export function lineProblem({ code, message }: CommanderError, command: string): LineProblem {
  const detail = message.replace(/^error: /, '').replace(/\s*\n\s*/g, ' ');
  const [, got, near = ''] = /'(.*?)'(?: \(Did you mean (?:one of )?(.*)\?\))?$/.exec(detail) ?? [];
  const meant = near === '' ? [] : near.split(', ');
  switch (code) {
    case 'commander.unknownOption':
      return { kind: 'unknown-option', got, near: meant, command };
    case 'commander.unknownCommand':
      return { kind: 'unknown-command', got, near: meant, command };
    case 'commander.missingArgument':
      return { kind: 'argument-missing', name: got, command };
    case 'commander.optionMissingArgument':
      return { kind: 'value-missing', option: /'(.*)'/.exec(detail)![1], command };
    case 'commander.excessArguments': {
      const [expected, given] = detail.match(/\d+/g)!.slice(-2).map(Number);
      return { kind: 'too-many-arguments', expected, got: given, command };
    }
    default:
      return { kind: 'parser', detail: detail.charAt(0).toUpperCase() + detail.slice(1), command };
  }
}
