import { Command, CommanderError } from 'commander';
import { RondureError, errorSentence } from '../core/errors.js';
import { packageVersion } from '../node/package-version.js';
import type { Words } from '../words/index.js';
import { exitCodeFor, exitCodes } from './run/exit-codes.js';
import { helpWidth, layOutHelp } from './said/help.js';
import { printable } from './run/io.js';
import type { Io } from './run/io.js';
import { lineProblem } from './run/line-problem.js';

type AddCommand = (program: Command, words: Words, io: Io) => void;

/** Every command, in the order of help; its module is loaded only when it is wanted. */
const commands: Readonly<Record<string, () => Promise<AddCommand>>> = {
  chart: async () => (await import('./commands/chart.js')).addChartCommand,
  redraw: async () => (await import('./commands/redraw.js')).addRedrawCommand,
  recolour: async () => (await import('./commands/recolour.js')).addRecolourCommand,
  check: async () => (await import('./commands/check.js')).addCheckCommand,
  rounds: async () => (await import('./commands/rounds.js')).addRoundsCommand,
  beads: async () => (await import('./commands/beads.js')).addBeadsCommand,
  blank: async () => (await import('./commands/blank.js')).addBlankCommand,
  read: async () => (await import('./commands/read.js')).addReadCommand,
  shopping: async () => (await import('./commands/shopping.js')).addShoppingCommand,
  find: async () => (await import('./commands/find.js')).addFindCommand,
  mend: async () => (await import('./commands/mend.js')).addMendCommand,
  frame: async () => (await import('./commands/frame.js')).addFrameCommand,
  swatch: async () => (await import('./commands/swatch.js')).addSwatchCommand,
  lining: async () => (await import('./commands/lining.js')).addLiningCommand,
  booklet: async () => (await import('./commands/booklet.js')).addBookletCommand,
  page: async () => (await import('./commands/page.js')).addPageCommand,
};

/**
 * Control characters in names must not reach a terminal; line ends stay only where a list of
 * problems goes on.
 */
// eslint-disable-next-line no-control-regex
const controls = /\n(?! {2}\S)|[\u0000-\u0009\u000b-\u001f\u007f-\u009f]+/g;

/**
 * The command line, ready to be parsed; prints and exits only through `io`.
 *
 * @param only the command that is wanted; where there is no such one, all are there
 */
export async function makeProgram(words: Words, io: Io, only = ''): Promise<Command> {
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
  const wanted = Object.hasOwn(commands, only) ? [commands[only]] : Object.values(commands);
  for (const add of await Promise.all(wanted.map((load) => load()))) add(program, words, io);
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
 * @returns the exit code, as documented in docs/guide/exit-codes.md
 */
export async function run(argv: readonly string[], words: Words, to: Io): Promise<number> {
  const asJson = wantsJson(argv);
  const io = printable(to, asJson);
  const program = await makeProgram(words, io, argv[0]);
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
  const known = asOurs(error, command);
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

/** Commander's own complaints become usage errors. */
function asOurs(error: unknown, command: string): RondureError | undefined {
  if (error instanceof RondureError) return error;
  if (!(error instanceof CommanderError)) return undefined;
  return new RondureError('usage', { problem: lineProblem(error, command) });
}
