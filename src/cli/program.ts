import { Command, CommanderError } from 'commander';
import { RondureError, errorSentence } from '../core/errors.js';
import { packageVersion } from '../node/package-version.js';
import type { Words } from '../words/index.js';
import { addBlankCommand } from './blank.js';
import { addChartCommand } from './chart.js';
import { exitCodeFor, exitCodes } from './exit-codes.js';
import type { Io } from './io.js';
import { addReadCommand } from './read.js';

/** The whole command line, ready to be parsed; prints and exits only through `io`. */
export function makeProgram(words: Words, io: Io): Command {
  const program = new Command('rondure')
    .description(words.cli.about)
    .version(packageVersion(), '-V, --version', words.cli.options.version)
    .helpOption('-h, --help', words.cli.options.help)
    .helpCommand(false)
    .addHelpText('before', words.cli.examples)
    .addHelpText('after', `\n${words.cli.tryHelp}`)
    .showSuggestionAfterError(true)
    .exitOverride()
    .configureOutput({ writeOut: (text) => io.out(text), writeErr: () => {} });
  addChartCommand(program, words, io);
  addBlankCommand(program, words, io);
  addReadCommand(program, words, io);
  for (const command of program.commands) command.copyInheritedSettings(program);
  return program;
}

/**
 * Parses and runs one command line.
 *
 * @param argv what follows the program's name
 * @returns the exit code, as documented in README
 */
export async function run(argv: readonly string[], words: Words, io: Io): Promise<number> {
  const asJson = argv.includes('--json');
  const program = makeProgram(words, io);
  try {
    if (argv.length === 0) program.help({ error: false });
    await program.parseAsync([...argv], { from: 'user' });
    return exitCodes.done;
  } catch (error) {
    return tell(error, words, io, asJson);
  }
}

function tell(error: unknown, words: Words, io: Io, asJson: boolean): number {
  if (error instanceof CommanderError && error.exitCode === 0) return exitCodes.done;
  const known = asOurs(error, words);
  if (!known) {
    const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
    io.err(`${words.cli.bug}\n${text}\n`);
    return exitCodes.bug;
  }
  const message = errorSentence(words, known);
  io.err(
    asJson
      ? JSON.stringify({ error: { code: known.code, message, facts: known.facts ?? {} } }) + '\n'
      : `${words.cli.error} ${message}\n`,
  );
  return exitCodeFor(known.code);
}

/** Commander's own complaints become usage errors in one sentence. */
function asOurs(error: unknown, words: Words): RondureError | undefined {
  if (error instanceof RondureError) return error;
  if (!(error instanceof CommanderError)) return undefined;
  const problem = error.message.replace(/^error: /, '').replace(/\s*\n\s*/g, ' ');
  const ended = /[.?)]$/.test(problem) ? problem : `${problem}.`;
  const sentence = ended.charAt(0).toUpperCase() + ended.slice(1);
  return new RondureError('usage', { problem: `${sentence} ${words.cli.tryHelp}` });
}
