import { Command, CommanderError } from 'commander';
import { RondureError, errorSentence } from '../core/errors.js';
import { packageVersion } from '../node/package-version.js';
import type { Words } from '../words/index.js';
import { addBeadsCommand } from './beads.js';
import { addBlankCommand } from './blank.js';
import { addBookletCommand } from './booklet.js';
import { addChartCommand } from './chart.js';
import { addCheckCommand } from './check.js';
import { exitCodeFor, exitCodes } from './exit-codes.js';
import { addFindCommand } from './find.js';
import { addFrameCommand } from './frame.js';
import { helpWidth, layOutHelp } from './help.js';
import type { Io } from './io.js';
import { addLiningCommand } from './lining.js';
import { addMendCommand } from './mend.js';
import { addShoppingCommand } from './shopping.js';
import { addRedrawCommand } from './redraw.js';
import { addRecolourCommand } from './recolour.js';
import { addRoundsCommand } from './rounds.js';
import { addReadCommand } from './read.js';
import { addSwatchCommand } from './swatch.js';

/**
 * Control characters in names must not reach a terminal; line ends stay only where a list of
 * problems goes on.
 */
// eslint-disable-next-line no-control-regex
const controls = /\n(?! {2}\S)|[\u0000-\u0009\u000b-\u001f\u007f-\u009f]+/g;

/** The whole command line, ready to be parsed; prints and exits only through `io`. */
export function makeProgram(words: Words, io: Io): Command {
  const program = new Command('rondure')
    .description(words.cli.about)
    .version(packageVersion(), '-V, --version', words.cli.options.version)
    .helpOption('-h, --help', words.cli.options.help)
    .helpCommand(false)
    .addHelpText('before', words.cli.allExamples)
    .addHelpText('after', `\n${words.cli.tryHelp('COMMAND')}`)
    .showSuggestionAfterError(true)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => io.out(text),
      writeErr: () => {},
      getOutHelpWidth: () => helpWidth,
      getOutHasColors: () => false,
    });
  addChartCommand(program, words, io);
  addRedrawCommand(program, words, io);
  addRecolourCommand(program, words, io);
  addCheckCommand(program, words, io);
  addRoundsCommand(program, words, io);
  addBeadsCommand(program, words, io);
  addBlankCommand(program, words, io);
  addReadCommand(program, words, io);
  addShoppingCommand(program, words, io);
  addFindCommand(program, words, io);
  addMendCommand(program, words, io);
  addFrameCommand(program, words, io);
  addSwatchCommand(program, words, io);
  addLiningCommand(program, words, io);
  addBookletCommand(program, words, io);
  layOutHelp(program, words);
  return program;
}

/** Whether errors go out as JSON, also when the rest of the command line cannot be understood. */
export function wantsJson(argv: readonly string[]): boolean {
  const end = argv.indexOf('--');
  return (end < 0 ? argv : argv.slice(0, end)).includes('--json');
}

/**
 * Parses and runs one command line.
 *
 * @param argv what follows the program's name
 * @returns the exit code, as documented in README
 */
export async function run(argv: readonly string[], words: Words, io: Io): Promise<number> {
  const asJson = wantsJson(argv);
  const program = makeProgram(words, io);
  const known = program.commands.some((command) => command.name() === argv[0]);
  const name = known ? argv[0] : '';
  try {
    if (argv.length === 0) program.help({ error: false });
    await program.parseAsync([...argv], { from: 'user' });
    return exitCodes.done;
  } catch (error) {
    return tell(error, words, io, { asJson, command: name });
  }
}

function tell(
  error: unknown,
  words: Words,
  io: Io,
  { asJson, command }: { asJson: boolean; command: string },
): number {
  if (error instanceof CommanderError && error.exitCode === 0) return exitCodes.done;
  const known = asOurs(error, words, command);
  if (!known) {
    const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
    io.err(asJson ? errorJson('bug', `${words.cli.bug}\n${text}`) : `${words.cli.bug}\n${text}\n`);
    return exitCodes.bug;
  }
  const message = errorSentence(words, known).replace(controls, ' ');
  io.err(asJson ? errorJson(known.code, message, known.facts) : `${words.cli.error} ${message}\n`);
  return exitCodeFor(known.code);
}

/** What a program reads on standard error with `--json`: one object, one line. */
export function errorJson(code: string, message: string, facts: object = {}): string {
  return JSON.stringify({ error: { code, message, facts } }) + '\n';
}

/** Commander's own complaints become usage errors in one sentence. */
function asOurs(error: unknown, words: Words, command: string): RondureError | undefined {
  if (error instanceof RondureError) return error;
  if (!(error instanceof CommanderError)) return undefined;
  const problem = error.message.replace(/^error: /, '').replace(/\s*\n\s*/g, ' ');
  const ended = /[.?)]$/.test(problem) ? problem : `${problem}.`;
  const sentence = ended.charAt(0).toUpperCase() + ended.slice(1);
  return new RondureError('usage', { problem: `${sentence} ${words.cli.tryHelp(command)}` });
}
